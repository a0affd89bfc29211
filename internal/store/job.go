package store

import (
	"context"
	"database/sql"
	"encoding/json"
	"errors"
	"time"
)

// Job is a kept job with its newest state.
type Job struct {
	ID      string
	Version int // counts the changes
	Created time.Time
	Changed time.Time
	State
}

// State is what a job said at one time.
type State struct {
	Number  int       // 1 is the first
	Name    string    // what somebody called it; "" for a state that was not named
	Kept    bool      // it stays as it is: the next change begins a new state
	Began   time.Time // of this state
	Changed time.Time
	Content
}

// Content is what people state in a job.
type Content struct {
	Title   string    // the same in all states of a job
	Said    string    // in plain words
	SaidAt  time.Time // when the words were said: "tomorrow" counts from here
	Stated  []Stated  // answered, corrected or imported, beside the words
	Dropped []string  // facts that are read in the words and are not meant
	Skipped []string  // facts nobody knows: not asked for again
}

// Stated is one fact as somebody wrote it.
type Stated struct {
	Fact    string `json:"fact"`
	Written any    `json:"written"` // text, or what JSON makes of a list or an hourly series
	// Begins is when the first hour of an hourly series is; zero where that is not told.
	Begins time.Time `json:"begins,omitzero"`
}

// stateLasts is how long changes go into the same state. What is typed and corrected in one sitting is one state.
const stateLasts = 10 * time.Minute

// CreateJob keeps a new job.
func (s *Store) CreateJob(ctx context.Context, c Content) (*Job, error) {
	now := s.now()
	j := &Job{ID: newID(), Version: 1, Created: now, Changed: now,
		State: State{Number: 1, Began: now, Changed: now, Content: c}}
	return j, s.change(ctx, func(tx *sql.Tx) error {
		_, err := tx.ExecContext(ctx, "insert into job (id, title, version, created, changed) values (?, ?, ?, ?, ?)",
			j.ID, c.Title, j.Version, moment(now), moment(now))
		if err != nil {
			return err
		}
		return writeState(ctx, tx, j.ID, &j.State)
	})
}

// Job gives a job with its newest state.
func (s *Store) Job(ctx context.Context, id string) (*Job, error) { return readJob(ctx, s.read, id) }

// ChangeJob changes a job: f gets it as it stands, and what f leaves in its content is kept. Nothing else changes the job
// meanwhile. An error of f leaves the job as it was.
func (s *Store) ChangeJob(ctx context.Context, id string, f func(j *Job) error) (*Job, error) {
	var j *Job
	err := s.change(ctx, func(tx *sql.Tx) error {
		var err error
		if j, err = readJob(ctx, tx, id); err != nil {
			return err
		}
		if err := f(j); err != nil {
			return err
		}
		now := s.now()
		if j.Kept || now.Sub(j.Began) > stateLasts {
			j.Number, j.Name, j.Kept, j.Began = j.Number+1, "", false, now
		}
		return saveJob(ctx, tx, j, now)
	})
	if err != nil {
		return nil, err
	}
	return j, nil
}

// KeepState keeps the newest state of a job as it is, under a name, so that it can be compared with later.
func (s *Store) KeepState(ctx context.Context, id, name string) error {
	return s.change(ctx, func(tx *sql.Tx) error {
		j, err := readJob(ctx, tx, id)
		if err != nil {
			return err
		}
		j.Kept, j.Name = true, name
		return writeState(ctx, tx, id, &j.State)
	})
}

// DeleteJob takes a job away with its states and marks.
func (s *Store) DeleteJob(ctx context.Context, id string) error {
	return s.change(ctx, func(tx *sql.Tx) error {
		done, err := tx.ExecContext(ctx, "delete from job where id = ?", id)
		if err != nil {
			return err
		}
		if n, err := done.RowsAffected(); err == nil && n == 0 {
			return ErrNotFound
		}
		return nil
	})
}

func saveJob(ctx context.Context, tx *sql.Tx, j *Job, now time.Time) error {
	j.Version++
	j.Changed, j.State.Changed = now, now
	_, err := tx.ExecContext(ctx, "update job set title = ?, version = ?, changed = ? where id = ?", j.Title, j.Version, moment(now), j.ID)
	if err != nil {
		return err
	}
	return writeState(ctx, tx, j.ID, &j.State)
}

func writeState(ctx context.Context, tx *sql.Tx, id string, st *State) error {
	var lists [3][]byte
	for i, list := range []any{nonNil(st.Stated), nonNil(st.Dropped), nonNil(st.Skipped)} {
		var err error
		if lists[i], err = json.Marshal(list); err != nil {
			return err
		}
	}
	_, err := tx.ExecContext(ctx, `insert or replace into job_state
		(job, number, name, kept, said, said_at, stated, dropped, skipped, began, changed) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
		id, st.Number, st.Name, st.Kept, st.Said, moment(st.SaidAt), string(lists[0]), string(lists[1]), string(lists[2]),
		moment(st.Began), moment(st.Changed))
	return err
}

func nonNil[T any](list []T) []T {
	if list == nil {
		return []T{}
	}
	return list
}

// reader is a database or a transaction.
type reader interface {
	QueryContext(ctx context.Context, query string, args ...any) (*sql.Rows, error)
	QueryRowContext(ctx context.Context, query string, args ...any) *sql.Row
}

const stateColumns = "s.number, s.name, s.kept, s.said, s.said_at, s.stated, s.dropped, s.skipped, s.began, s.changed, j.title"

func readJob(ctx context.Context, from reader, id string) (*Job, error) {
	j := &Job{ID: id}
	var created, changed string
	row := from.QueryRowContext(ctx, "select j.version, j.created, j.changed, "+stateColumns+
		" from job j join job_state s on s.job = j.id where j.id = ? order by s.number desc limit 1", id)
	err := scanState(&j.State, func(to ...any) error { return row.Scan(append([]any{&j.Version, &created, &changed}, to...)...) })
	if errors.Is(err, sql.ErrNoRows) {
		return nil, ErrNotFound
	}
	j.Created, j.Changed = readMoment(created), readMoment(changed)
	return j, err
}

func scanState(st *State, scan func(to ...any) error) error {
	var saidAt, stated, dropped, skipped, began, changed string
	if err := scan(&st.Number, &st.Name, &st.Kept, &st.Said, &saidAt, &stated, &dropped, &skipped, &began, &changed, &st.Title); err != nil {
		return err
	}
	st.SaidAt, st.Began, st.Changed = readMoment(saidAt), readMoment(began), readMoment(changed)
	return errors.Join(json.Unmarshal([]byte(stated), &st.Stated), json.Unmarshal([]byte(dropped), &st.Dropped),
		json.Unmarshal([]byte(skipped), &st.Skipped))
}
