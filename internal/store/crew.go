package store

import (
	"context"
	"crypto/rand"
	"database/sql"
	"encoding/json"
	"errors"
	"strings"
	"time"
)

// CrewSession is one gathering of a crew: what was told, and what is asked.
type CrewSession struct {
	Code     string    `json:"code"` // what the crew types to answer
	Crew     string    `json:"crew"` // its name
	Title    string    `json:"title"`
	Language string    `json:"language"`
	Beliefs  []string  `json:"beliefs"`        // told, topic/name
	Quiz     string    `json:"quiz,omitempty"` // its JSON; "" for a talk alone
	Open     bool      `json:"open"`           // answers are taken
	Held     time.Time `json:"held"`
	Present  []string  `json:"present"` // names or numbers, sorted
}

// CrewAnswer is what one person chose.
type CrewAnswer struct {
	Code     string    `json:"code"` // of the session
	Person   string    `json:"person"`
	Question int       `json:"question"` // of the session's quiz, from 0
	Belief   string    `json:"belief"`
	Chosen   int       `json:"chosen"`
	Correct  bool      `json:"correct"`
	Answered time.Time `json:"answered"`
}

// ErrClosed says that a session takes no more answers.
var ErrClosed = errors.New("the session is closed; it takes no more answers")

// newCode makes a short name that can be read aloud: without letters and digits that look alike.
func newCode() string {
	const letters = "ABCDEFGHJKMNPQRSTUVWXYZ23456789"
	var code []byte
	for buffer := make([]byte, 1); len(code) < 6; {
		rand.Read(buffer)
		if int(buffer[0]) < 256/len(letters)*len(letters) { // every letter is as likely as the others
			code = append(code, letters[int(buffer[0])%len(letters)])
		}
	}
	return string(code)
}

// CreateCrewSession keeps a session, makes the crew where there is none of that name, and gives the session its code.
func (s *Store) CreateCrewSession(ctx context.Context, c CrewSession) (*CrewSession, error) {
	if strings.TrimSpace(c.Crew) == "" {
		return nil, errors.New("the crew has no name")
	}
	if c.Held.IsZero() {
		c.Held = s.now()
	}
	c.Code = newCode()
	return &c, s.change(ctx, func(tx *sql.Tx) error { return s.insertSession(ctx, tx, &c) })
}

func (s *Store) insertSession(ctx context.Context, tx *sql.Tx, c *CrewSession) error {
	crew, err := s.crewID(ctx, tx, c.Crew)
	if err != nil {
		return err
	}
	beliefs, err := json.Marshal(nonNil(c.Beliefs))
	if err != nil {
		return err
	}
	id := newID()
	_, err = tx.ExecContext(ctx, "insert into crew_session (id, code, crew, title, language, beliefs, quiz, open, held) values (?, ?, ?, ?, ?, ?, ?, ?, ?)",
		id, c.Code, crew, c.Title, c.Language, string(beliefs), c.Quiz, c.Open, moment(c.Held))
	if err != nil {
		return err
	}
	return setPresent(ctx, tx, id, crew, c.Present)
}

// crewID gives the id of a crew, which is made where there is none of that name.
func (s *Store) crewID(ctx context.Context, tx *sql.Tx, name string) (string, error) {
	_, err := tx.ExecContext(ctx, "insert into crew (id, name, created) values (?, ?, ?) on conflict do nothing", newID(), strings.TrimSpace(name), moment(s.now()))
	if err != nil {
		return "", err
	}
	var id string
	err = tx.QueryRowContext(ctx, "select id from crew where name = ?", strings.TrimSpace(name)).Scan(&id)
	return id, err
}

func setPresent(ctx context.Context, tx *sql.Tx, session, crew string, names []string) error {
	for _, name := range names {
		person, err := personID(ctx, tx, crew, name)
		if err != nil {
			return err
		}
		if _, err := tx.ExecContext(ctx, "insert into crew_present (session, person) values (?, ?) on conflict do nothing", session, person); err != nil {
			return err
		}
	}
	return nil
}

// personID gives the id of somebody in a crew, who is new where the name is.
func personID(ctx context.Context, tx *sql.Tx, crew, name string) (string, error) {
	name = strings.TrimSpace(name)
	if name == "" {
		return "", errors.New("somebody has no name: write a name or a number")
	}
	if _, err := tx.ExecContext(ctx, "insert into crew_person (id, crew, name) values (?, ?, ?) on conflict do nothing", newID(), crew, name); err != nil {
		return "", err
	}
	var id string
	err := tx.QueryRowContext(ctx, "select id from crew_person where crew = ? and name = ?", crew, name).Scan(&id)
	return id, err
}

// AddPresent keeps who was at a session.
func (s *Store) AddPresent(ctx context.Context, code string, names []string) error {
	return s.change(ctx, func(tx *sql.Tx) error {
		id, crew, _, err := sessionIDs(ctx, tx, code)
		if err != nil {
			return err
		}
		return setPresent(ctx, tx, id, crew, names)
	})
}

func sessionIDs(ctx context.Context, tx *sql.Tx, code string) (id, crew string, open bool, err error) {
	err = tx.QueryRowContext(ctx, "select id, crew, open from crew_session where code = ?", strings.ToUpper(strings.TrimSpace(code))).Scan(&id, &crew, &open)
	if errors.Is(err, sql.ErrNoRows) {
		err = ErrNotFound
	}
	return id, crew, open, err
}

// Answer keeps answers of a session, all of them or none. Whoever answers was there. From a phone the first answer to a
// question counts, and a closed session takes none; on paper (again) a later one replaces it.
func (s *Store) Answer(ctx context.Context, code string, answers []CrewAnswer, again bool) error {
	return s.change(ctx, func(tx *sql.Tx) error {
		id, crew, open, err := sessionIDs(ctx, tx, code)
		if err != nil {
			return err
		}
		if !open && !again {
			return ErrClosed
		}
		insert := "insert or ignore into"
		if again {
			insert = "insert or replace into"
		}
		for _, a := range answers {
			person, err := personID(ctx, tx, crew, a.Person)
			if err != nil {
				return err
			}
			if err := setPresent(ctx, tx, id, crew, []string{a.Person}); err != nil {
				return err
			}
			if a.Answered.IsZero() {
				a.Answered = s.now()
			}
			_, err = tx.ExecContext(ctx, insert+" crew_answer (session, person, question, belief, chosen, correct, answered) values (?, ?, ?, ?, ?, ?, ?)",
				id, person, a.Question, a.Belief, a.Chosen, a.Correct, moment(a.Answered))
			if err != nil {
				return err
			}
		}
		return nil
	})
}

// CloseCrewSession ends the taking of answers, or opens it again.
func (s *Store) CloseCrewSession(ctx context.Context, code string, open bool) error {
	return s.change(ctx, func(tx *sql.Tx) error {
		id, _, _, err := sessionIDs(ctx, tx, code)
		if err != nil {
			return err
		}
		_, err = tx.ExecContext(ctx, "update crew_session set open = ? where id = ?", open, id)
		return err
	})
}
