package store

import (
	"context"
	"database/sql"
	"errors"
	"strings"
	"time"
)

// Line is a job in the list.
type Line struct {
	ID      string
	Title   string
	Said    string
	States  int
	Changed time.Time
}

// Jobs lists jobs, the one changed last first. With find, only those whose title or words contain it, case aside.
func (s *Store) Jobs(ctx context.Context, find string, most int) ([]Line, error) {
	like := "%" + strings.NewReplacer(`\`, `\\`, "%", `\%`, "_", `\_`).Replace(find) + "%"
	rows, err := s.read.QueryContext(ctx, `select j.id, j.title, s.said, s.number, j.changed from job j
		join job_state s on s.job = j.id and s.number = (select max(number) from job_state where job = j.id)
		where j.title like ? escape '\' or s.said like ? escape '\' order by j.changed desc, j.id limit ?`, like, like, most)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	list := []Line{}
	for rows.Next() {
		var l Line
		var changed string
		if err := rows.Scan(&l.ID, &l.Title, &l.Said, &l.States, &changed); err != nil {
			return nil, err
		}
		l.Changed = readMoment(changed)
		list = append(list, l)
	}
	return list, rows.Err()
}

// States lists the states of a job, newest first.
func (s *Store) States(ctx context.Context, id string) ([]State, error) {
	rows, err := s.read.QueryContext(ctx, "select "+stateColumns+
		" from job j join job_state s on s.job = j.id where j.id = ? order by s.number desc", id)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	var list []State
	for rows.Next() {
		var st State
		if err := scanState(&st, rows.Scan); err != nil {
			return nil, err
		}
		list = append(list, st)
	}
	if len(list) == 0 {
		return nil, errors.Join(ErrNotFound, rows.Err())
	}
	return list, rows.Err()
}

// StateOf gives one state of a job.
func (s *Store) StateOf(ctx context.Context, id string, number int) (*State, error) {
	var st State
	row := s.read.QueryRowContext(ctx, "select "+stateColumns+
		" from job j join job_state s on s.job = j.id where j.id = ? and s.number = ?", id, number)
	err := scanState(&st, row.Scan)
	if errors.Is(err, sql.ErrNoRows) {
		return nil, ErrNotFound
	}
	return &st, err
}
