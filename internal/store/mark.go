package store

import (
	"context"
	"database/sql"
	"time"
)

// Mark is what somebody put beside one line of a job's checklist.
type Mark struct {
	Ticked   bool
	Reading  string
	Initials string
	Changed  time.Time
}

// SetMark keeps the mark beside a practice of a job's checklist.
func (s *Store) SetMark(ctx context.Context, job, practice string, m Mark) error {
	return s.change(ctx, func(tx *sql.Tx) error {
		if _, err := readJob(ctx, tx, job); err != nil {
			return err
		}
		_, err := tx.ExecContext(ctx, "insert or replace into job_mark (job, practice, ticked, reading, initials, changed) values (?, ?, ?, ?, ?, ?)",
			job, practice, m.Ticked, m.Reading, m.Initials, moment(s.now()))
		return err
	})
}

// Marks gives the marks of a job's checklist by practice.
func (s *Store) Marks(ctx context.Context, job string) (map[string]Mark, error) {
	rows, err := s.read.QueryContext(ctx, "select practice, ticked, reading, initials, changed from job_mark where job = ?", job)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	marks := map[string]Mark{}
	for rows.Next() {
		var practice, changed string
		var m Mark
		if err := rows.Scan(&practice, &m.Ticked, &m.Reading, &m.Initials, &changed); err != nil {
			return nil, err
		}
		m.Changed = readMoment(changed)
		marks[practice] = m
	}
	return marks, rows.Err()
}
