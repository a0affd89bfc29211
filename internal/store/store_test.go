package store

import (
	"context"
	"database/sql"
	"fmt"
	"os"
	"path/filepath"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func open4(t *testing.T) (*Store, string) {
	t.Helper()
	path := filepath.Join(t.TempDir(), "kept here", "hear?say#1.db") // a name that an address could trip over
	s, err := Open(t.Context(), path)
	require.NoError(t, err)
	t.Cleanup(func() { s.Close() })
	return s, path
}

func TestAJobComesBackAsItWasKept(t *testing.T) {
	s, path := open4(t)
	said := time.Date(2026, 11, 25, 13, 4, 5, 0, time.UTC)
	c := Content{Title: "Shop floor", Said: "9 yards, 4000 psi", SaidAt: said,
		Stated:  []Stated{{Fact: "order.slump", Written: "4 in", Begins: time.Date(2026, 12, 3, 7, 0, 0, 0, time.UTC)}, {Fact: "strength.tests", Written: []any{"3000 psi", "3200 psi"}}},
		Dropped: []string{"load.volume"}, Skipped: []string{"weather.low"}}
	j, err := s.CreateJob(t.Context(), c)
	require.NoError(t, err)
	require.NoError(t, s.Close())

	s, err = Open(t.Context(), path)
	require.NoError(t, err)
	defer s.Close()
	back, err := s.Job(t.Context(), j.ID)
	require.NoError(t, err)
	assert.Equal(t, c, back.Content)
	assert.Equal(t, 1, back.Version)
	_, err = os.Stat(path)
	assert.NoError(t, err, "the database lies where it was asked for")
}

func TestStates(t *testing.T) {
	s, _ := open4(t)
	now := time.Date(2026, 11, 25, 8, 0, 0, 0, time.UTC)
	s.now = func() time.Time { return now }
	say := func(id, words string) *Job {
		j, err := s.ChangeJob(t.Context(), id, func(j *Job) error { j.Said = words; return nil })
		require.NoError(t, err)
		return j
	}
	j, err := s.CreateJob(t.Context(), Content{Said: "one"})
	require.NoError(t, err)

	now = now.Add(time.Minute)
	j = say(j.ID, "two")
	assert.Equal(t, 1, j.Number, "what is typed in one sitting is one state")

	require.NoError(t, s.KeepState(t.Context(), j.ID, "as ordered"))
	j = say(j.ID, "three")
	assert.Equal(t, 2, j.Number, "a kept state is not changed")

	now = now.Add(stateLasts + time.Second)
	j = say(j.ID, "four")
	assert.Equal(t, 3, j.Number, "the next sitting is another state")

	states, err := s.States(t.Context(), j.ID)
	require.NoError(t, err)
	var said, names []string
	for _, st := range states {
		said, names = append(said, st.Said), append(names, st.Name)
	}
	assert.Equal(t, []string{"four", "three", "two"}, said)
	assert.Equal(t, []string{"", "", "as ordered"}, names)
	st, err := s.StateOf(t.Context(), j.ID, 1)
	require.NoError(t, err)
	assert.Equal(t, "two", st.Said)
}

func TestAChangeThatFailsChangesNothing(t *testing.T) {
	s, _ := open4(t)
	j, err := s.CreateJob(t.Context(), Content{Said: "one"})
	require.NoError(t, err)
	_, err = s.ChangeJob(t.Context(), j.ID, func(j *Job) error { j.Said = "two"; return fmt.Errorf("no") })
	assert.ErrorContains(t, err, "no")
	back, err := s.Job(t.Context(), j.ID)
	require.NoError(t, err)
	assert.Equal(t, "one", back.Said)
}

func TestWhatIsNotThere(t *testing.T) {
	s, _ := open4(t)
	_, err := s.Job(t.Context(), "none")
	assert.ErrorIs(t, err, ErrNotFound)
	_, err = s.States(t.Context(), "none")
	assert.ErrorIs(t, err, ErrNotFound)
	_, err = s.StateOf(t.Context(), "none", 1)
	assert.ErrorIs(t, err, ErrNotFound)
	assert.ErrorIs(t, s.DeleteJob(t.Context(), "none"), ErrNotFound)
	assert.ErrorIs(t, s.KeepState(t.Context(), "none", "x"), ErrNotFound)
	assert.ErrorIs(t, s.SetMark(t.Context(), "none", "water/over-limit", Mark{}), ErrNotFound)
}

func TestTheListFindsByTitleAndWords(t *testing.T) {
	s, _ := open4(t)
	for _, c := range []Content{{Title: "Shop floor", Said: "9 yards"}, {Title: "Driveway", Said: "50% of it tomorrow"}, {Title: "Steps"}} {
		_, err := s.CreateJob(t.Context(), c)
		require.NoError(t, err)
	}
	for find, want := range map[string]int{"": 3, "SHOP": 1, "yards": 1, "50%": 1, "5_%": 0, "%": 1, "nothing": 0} {
		list, err := s.Jobs(t.Context(), find, 10)
		require.NoError(t, err)
		assert.Len(t, list, want, find)
	}
	list, err := s.Jobs(t.Context(), "", 2)
	require.NoError(t, err)
	assert.Len(t, list, 2)
}

func TestMarksGoWithTheirJob(t *testing.T) {
	s, _ := open4(t)
	j, err := s.CreateJob(t.Context(), Content{})
	require.NoError(t, err)
	require.NoError(t, s.SetMark(t.Context(), j.ID, "water/over-limit", Mark{Reading: "0.48"}))
	require.NoError(t, s.SetMark(t.Context(), j.ID, "water/over-limit", Mark{Ticked: true, Reading: "0.49", Initials: "JR"}))
	marks, err := s.Marks(t.Context(), j.ID)
	require.NoError(t, err)
	require.Len(t, marks, 1)
	m := marks["water/over-limit"]
	assert.True(t, m.Ticked)
	assert.Equal(t, "0.49 JR", m.Reading+" "+m.Initials)

	require.NoError(t, s.DeleteJob(t.Context(), j.ID))
	marks, err = s.Marks(t.Context(), j.ID)
	require.NoError(t, err)
	assert.Empty(t, marks)
}

func TestManyChangeAtOnce(t *testing.T) {
	s, _ := open4(t)
	j, err := s.CreateJob(t.Context(), Content{})
	require.NoError(t, err)
	var all sync.WaitGroup
	for i := range 20 {
		all.Go(func() {
			_, err := s.ChangeJob(context.Background(), j.ID, func(j *Job) error {
				j.Stated = append(j.Stated, Stated{Fact: fmt.Sprint(i), Written: "x"})
				return nil
			})
			assert.NoError(t, err)
		})
	}
	all.Wait()
	back, err := s.Job(t.Context(), j.ID)
	require.NoError(t, err)
	assert.Len(t, back.Stated, 20, "no change is written over by another")
	assert.Equal(t, 21, back.Version)
}

func TestALaterFormatIsRefused(t *testing.T) {
	s, path := open4(t)
	require.NoError(t, s.change(t.Context(), func(tx *sql.Tx) error {
		_, err := tx.Exec("pragma user_version = 999")
		return err
	}))
	s.Close()
	_, err := Open(t.Context(), path)
	assert.ErrorContains(t, err, "a later version of hearsay wrote it")
}

func TestAFileThatIsNoDatabaseIsRefused(t *testing.T) {
	path := filepath.Join(t.TempDir(), "notes.txt")
	require.NoError(t, os.WriteFile(path, []byte("Remember to order the blankets, all of them, before Friday."), 0o600))
	_, err := Open(t.Context(), path)
	assert.ErrorContains(t, err, "cannot be used")
}
