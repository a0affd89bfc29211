package store

import (
	"context"
	"database/sql"
	"encoding/json"
	"errors"
	"strings"
)

// Crews lists the names of the crews.
func (s *Store) Crews(ctx context.Context) ([]string, error) {
	return s.names(ctx, "select name from crew order by name")
}

// CrewPeople lists the people of a crew, by the names or numbers they were given.
func (s *Store) CrewPeople(ctx context.Context, crew string) ([]string, error) {
	return s.names(ctx, "select p.name from crew_person p join crew c on c.id = p.crew where c.name = ? order by p.name", crew)
}

func (s *Store) names(ctx context.Context, query string, args ...any) ([]string, error) {
	rows, err := s.read.QueryContext(ctx, query, args...)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	names := []string{}
	for rows.Next() {
		var name string
		if err := rows.Scan(&name); err != nil {
			return nil, err
		}
		names = append(names, name)
	}
	return names, rows.Err()
}

const sessionColumns = "s.id, s.code, c.name, s.title, s.language, s.beliefs, s.quiz, s.open, s.held from crew_session s join crew c on c.id = s.crew"

// CrewSession gives a session by its code.
func (s *Store) CrewSession(ctx context.Context, code string) (*CrewSession, error) {
	list, err := s.sessions(ctx, "where s.code = ?", strings.ToUpper(strings.TrimSpace(code)))
	if err == nil && len(list) == 0 {
		err = ErrNotFound
	}
	if err != nil {
		return nil, err
	}
	return &list[0], nil
}

// CrewSessions lists the sessions of a crew, the oldest first; of every crew where crew is "".
func (s *Store) CrewSessions(ctx context.Context, crew string) ([]CrewSession, error) {
	return s.sessions(ctx, "where ? in ('', c.name) order by s.held, s.id", crew)
}

func (s *Store) sessions(ctx context.Context, where string, args ...any) ([]CrewSession, error) {
	rows, err := s.read.QueryContext(ctx, "select "+sessionColumns+" "+where, args...)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	list, ids := []CrewSession{}, []string{}
	for rows.Next() {
		var c CrewSession
		var id, beliefs, held string
		if err := rows.Scan(&id, &c.Code, &c.Crew, &c.Title, &c.Language, &beliefs, &c.Quiz, &c.Open, &held); err != nil {
			return nil, err
		}
		if err := json.Unmarshal([]byte(beliefs), &c.Beliefs); err != nil {
			return nil, err
		}
		c.Held = readMoment(held)
		list, ids = append(list, c), append(ids, id)
	}
	if err := errors.Join(rows.Err(), rows.Close()); err != nil {
		return nil, err
	}
	for i := range list {
		if list[i].Present, err = s.names(ctx, "select p.name from crew_present t join crew_person p on p.id = t.person where t.session = ? order by p.name", ids[i]); err != nil {
			return nil, err
		}
	}
	return list, nil
}

const answerColumns = `select s.code, p.name, a.question, a.belief, a.chosen, a.correct, a.answered from crew_answer a
	join crew_session s on s.id = a.session join crew_person p on p.id = a.person join crew c on c.id = s.crew `

// CrewAnswers lists the answers of a crew as its sessions came; of every crew where crew is "".
func (s *Store) CrewAnswers(ctx context.Context, crew string) ([]CrewAnswer, error) {
	return s.answers(ctx, answerColumns+"where ? in ('', c.name) order by s.held, s.id, a.question, p.name", crew)
}

// SessionAnswers lists the answers of one session.
func (s *Store) SessionAnswers(ctx context.Context, code string) ([]CrewAnswer, error) {
	return s.answers(ctx, answerColumns+"where s.code = ? order by a.question, p.name", code)
}

func (s *Store) answers(ctx context.Context, query string, args ...any) ([]CrewAnswer, error) {
	rows, err := s.read.QueryContext(ctx, query, args...)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	list := []CrewAnswer{}
	for rows.Next() {
		var a CrewAnswer
		var answered string
		if err := rows.Scan(&a.Code, &a.Person, &a.Question, &a.Belief, &a.Chosen, &a.Correct, &answered); err != nil {
			return nil, err
		}
		a.Answered = readMoment(answered)
		list = append(list, a)
	}
	return list, rows.Err()
}

// ForgetPerson takes somebody away with every answer and attendance.
func (s *Store) ForgetPerson(ctx context.Context, crew, name string) error {
	return s.forget(ctx, "delete from crew_person where name = ? and crew = (select id from crew where name = ?)", name, crew)
}

// ForgetCrew takes a crew away with its people and sessions.
func (s *Store) ForgetCrew(ctx context.Context, crew string) error {
	return s.forget(ctx, "delete from crew where name = ?", crew)
}

// forget deletes, and has the pages and the log that held it overwritten: what is deleted is not to be found in the file.
func (s *Store) forget(ctx context.Context, query string, args ...any) error {
	if _, err := s.write.ExecContext(ctx, "pragma secure_delete = on"); err != nil {
		return err
	}
	err := s.change(ctx, func(tx *sql.Tx) error {
		done, err := tx.ExecContext(ctx, query, args...)
		if err != nil {
			return err
		}
		if n, err := done.RowsAffected(); err == nil && n == 0 {
			return ErrNotFound
		}
		return nil
	})
	if err != nil {
		return err
	}
	_, err = s.write.ExecContext(ctx, "pragma wal_checkpoint(truncate)")
	return err
}
