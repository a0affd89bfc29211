package store

import (
	"bufio"
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// answerUntilKilled plays the phones of a session: it says each answer that was acknowledged, until it is killed.
func answerUntilKilled(path, code string) {
	s, err := Open(context.Background(), path)
	for i := 0; err == nil; i++ {
		person := fmt.Sprintf("%d-%d", os.Getpid(), i)
		err = s.Answer(context.Background(), code, []CrewAnswer{{Person: person, Question: i % 7, Belief: "water/extra-evaporates", Chosen: 1}}, false)
		if err == nil {
			fmt.Println(person + ";")
		}
	}
	fmt.Println("failed:", err)
	os.Exit(1)
}

// kills is how often the session is killed.
const kills = 100

func TestNoAcknowledgedAnswerIsLostWhenASessionIsKilledAHundredTimes(t *testing.T) {
	path := filepath.Join(t.TempDir(), "kept.db")
	s, err := Open(t.Context(), path)
	require.NoError(t, err)
	made, err := s.CreateCrewSession(t.Context(), CrewSession{Crew: "north", Open: true})
	require.NoError(t, err)
	require.NoError(t, s.Close())
	acknowledged := map[string]bool{}
	for i := range kills {
		child := exec.Command(os.Args[0])
		child.Env = append(os.Environ(), "ANSWER_IN="+path, "ANSWER_CODE="+made.Code)
		out, err := child.StdoutPipe()
		require.NoError(t, err)
		require.NoError(t, child.Start())
		lines := bufio.NewScanner(out)
		for n := 0; lines.Scan(); n++ {
			require.False(t, strings.HasPrefix(lines.Text(), "failed"), lines.Text())
			if person, whole := strings.CutSuffix(lines.Text(), ";"); whole {
				acknowledged[person] = true
			}
			if n == 1 { // in the middle: a few milliseconds on, never at the same place
				time.AfterFunc(time.Duration(i%10)*700*time.Microsecond, func() { child.Process.Kill() })
			}
		}
		child.Wait()
	}
	require.Greater(t, len(acknowledged), kills, "too little was answered to show anything")
	t.Logf("%d answers acknowledged over %d kills", len(acknowledged), kills)
	s, err = Open(t.Context(), path)
	require.NoError(t, err)
	defer s.Close()
	answers, err := s.SessionAnswers(t.Context(), made.Code)
	require.NoError(t, err)
	for _, a := range answers {
		delete(acknowledged, a.Person)
	}
	assert.Empty(t, acknowledged, "lost")
	var sound string
	require.NoError(t, s.read.QueryRowContext(t.Context(), "pragma integrity_check").Scan(&sound))
	assert.Equal(t, "ok", sound)
}

func TestTheFirstAnswerFromAPhoneCountsAndPaperReplacesIt(t *testing.T) {
	s, err := Open(t.Context(), filepath.Join(t.TempDir(), "kept.db"))
	require.NoError(t, err)
	defer s.Close()
	made, err := s.CreateCrewSession(t.Context(), CrewSession{Crew: "north", Open: true})
	require.NoError(t, err)
	give := func(person string, chosen int, again bool) error {
		return s.Answer(t.Context(), strings.ToLower(made.Code), []CrewAnswer{{Person: person, Question: 2, Belief: "b/b", Chosen: chosen}}, again)
	}
	chosen := func() int {
		all, err := s.SessionAnswers(t.Context(), made.Code)
		require.NoError(t, err)
		require.Len(t, all, 1)
		return all[0].Chosen
	}
	require.NoError(t, give("Ana", 1, false))
	require.NoError(t, give("ana ", 3, false))
	assert.Equal(t, 1, chosen())
	require.NoError(t, give("ANA", 2, true))
	assert.Equal(t, 2, chosen())
	require.NoError(t, s.CloseCrewSession(t.Context(), made.Code, false))
	assert.ErrorIs(t, give("Luis", 1, false), ErrClosed)
	assert.ErrorIs(t, s.Answer(t.Context(), "NOSUCH", nil, false), ErrNotFound)
	assert.Error(t, give("  ", 1, true))
	got, err := s.CrewSession(t.Context(), made.Code)
	require.NoError(t, err)
	assert.Equal(t, []string{"Ana"}, got.Present)
}

func TestTwentyAnswerAtOnce(t *testing.T) {
	s, err := Open(t.Context(), filepath.Join(t.TempDir(), "kept.db"))
	require.NoError(t, err)
	defer s.Close()
	made, err := s.CreateCrewSession(t.Context(), CrewSession{Crew: "north", Open: true})
	require.NoError(t, err)
	var all sync.WaitGroup
	for i := range 20 {
		all.Go(func() {
			for q := range 10 {
				assert.NoError(t, s.Answer(t.Context(), made.Code, []CrewAnswer{{Person: fmt.Sprint(i), Question: q, Belief: "b/b"}}, false))
			}
		})
	}
	all.Wait()
	answers, err := s.SessionAnswers(t.Context(), made.Code)
	require.NoError(t, err)
	assert.Len(t, answers, 200)
}

func TestRestoringIsRefusedWhileTheDatabaseIsOpen(t *testing.T) {
	folder := t.TempDir()
	path, backup := filepath.Join(folder, "kept.db"), filepath.Join(folder, "copy.db")
	s, err := Open(t.Context(), path)
	require.NoError(t, err)
	_, err = s.CreateCrewSession(t.Context(), CrewSession{Crew: "north"})
	require.NoError(t, err)
	require.NoError(t, s.Backup(t.Context(), backup))
	assert.Error(t, s.Backup(t.Context(), backup), "a backup is never written over")
	assert.Error(t, Restore(t.Context(), backup, path))
	require.NoError(t, s.ForgetCrew(t.Context(), "North"))
	require.NoError(t, s.Close())
	require.NoError(t, Restore(t.Context(), backup, path))
	s, err = Open(t.Context(), path)
	require.NoError(t, err)
	defer s.Close()
	crews, err := s.Crews(t.Context())
	require.NoError(t, err)
	assert.Equal(t, []string{"north"}, crews)
}
