package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io"
	"net/url"
	"os"
	"path/filepath"
)

// CrewExport is everything kept of one crew, or of all.
type CrewExport struct {
	Sessions []CrewSession `json:"sessions"`
	Answers  []CrewAnswer  `json:"answers"`
}

// ExportCrews gives everything kept of a crew; of all where crew is "".
func (s *Store) ExportCrews(ctx context.Context, crew string) (CrewExport, error) {
	var x CrewExport
	var err error
	if x.Sessions, err = s.CrewSessions(ctx, crew); err != nil {
		return x, err
	}
	x.Answers, err = s.CrewAnswers(ctx, crew)
	return x, err
}

// ImportCrews keeps what was exported, all of it or nothing. Sessions that are there already, by their code, stay as they
// are and are not counted.
func (s *Store) ImportCrews(ctx context.Context, x CrewExport) (sessions int, err error) {
	fresh := map[string]bool{}
	err = s.change(ctx, func(tx *sql.Tx) error {
		for _, c := range x.Sessions {
			_, _, _, err := sessionIDs(ctx, tx, c.Code)
			if err == nil {
				continue
			}
			if !errors.Is(err, ErrNotFound) {
				return err
			}
			if c.Code == "" || c.Crew == "" || c.Held.IsZero() {
				return fmt.Errorf("a session without code, crew or date cannot be kept: %q", c.Code)
			}
			if err := s.insertSession(ctx, tx, &c); err != nil {
				return err
			}
			fresh[c.Code] = true
		}
		for _, a := range x.Answers {
			if !fresh[a.Code] {
				continue
			}
			id, crew, _, err := sessionIDs(ctx, tx, a.Code)
			if err != nil {
				return err
			}
			person, err := personID(ctx, tx, crew, a.Person)
			if err != nil {
				return err
			}
			_, err = tx.ExecContext(ctx, "insert into crew_answer (session, person, question, belief, chosen, correct, answered) values (?, ?, ?, ?, ?, ?, ?)",
				id, person, a.Question, a.Belief, a.Chosen, a.Correct, moment(a.Answered))
			if err != nil {
				return err
			}
		}
		return nil
	})
	return len(fresh), err
}

// Backup writes a whole copy of the database, as it stands at this moment, to a file that does not exist yet.
func (s *Store) Backup(ctx context.Context, path string) error {
	if _, err := os.Stat(path); err == nil {
		return fmt.Errorf("%s exists already: name a new file", path)
	}
	if _, err := s.write.ExecContext(ctx, "vacuum into ?", path); err != nil {
		return fmt.Errorf("the backup cannot be written: %w", err)
	}
	return os.Chmod(path, 0o600)
}

// Restore puts a backup in the place of the database at path, which nobody may have open meanwhile. The backup is looked
// through first; what stood at path stays beside it with .before-restore at its end.
func Restore(ctx context.Context, backup, path string) error {
	address := url.URL{Scheme: "file", Opaque: (&url.URL{Path: backup}).EscapedPath(), RawQuery: "mode=ro"}
	from, err := sql.Open("sqlite", address.String())
	if err != nil {
		return err
	}
	defer from.Close()
	var sound string
	if err := from.QueryRowContext(ctx, "pragma integrity_check").Scan(&sound); err != nil || sound != "ok" {
		return fmt.Errorf("%s is no sound backup (%s): name a file that `hearsay crew backup` wrote", backup, errors.Join(errors.New(sound), err))
	}
	if err := from.Close(); err != nil {
		return err
	}
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return err
	}
	next := path + ".restoring"
	if err := copyFile(backup, next); err != nil {
		return err
	}
	defer os.Remove(next)
	if s, err := Open(ctx, next); err != nil { // a format that this version knows
		return err
	} else if err := s.Close(); err != nil {
		return err
	}
	if _, err := os.Stat(path); err == nil {
		if err := setAside(ctx, path); err != nil {
			return err
		}
	}
	return os.Rename(next, path)
}

// setAside renames the database, once it is known that nobody has it open and that its log is written into it.
func setAside(ctx context.Context, path string) error {
	db, err := open(path, "&_pragma=locking_mode(exclusive)&_pragma=busy_timeout(200)")
	if err != nil {
		return err
	}
	defer db.Close()
	db.SetMaxOpenConns(1)
	var busy, log, done int
	if err := db.QueryRowContext(ctx, "pragma wal_checkpoint(truncate)").Scan(&busy, &log, &done); err != nil || busy != 0 {
		return fmt.Errorf("%s is open elsewhere: stop `hearsay serve` first", path)
	}
	if _, err := db.ExecContext(ctx, "begin exclusive; commit"); err != nil {
		return fmt.Errorf("%s is open elsewhere: stop `hearsay serve` first", path)
	}
	if err := db.Close(); err != nil {
		return err
	}
	return os.Rename(path, path+".before-restore")
}

func copyFile(from, to string) error {
	in, err := os.Open(from)
	if err != nil {
		return err
	}
	defer in.Close()
	out, err := os.OpenFile(to, os.O_CREATE|os.O_WRONLY|os.O_TRUNC, 0o600)
	if err != nil {
		return err
	}
	defer out.Close()
	if _, err := io.Copy(out, in); err != nil {
		return err
	}
	return errors.Join(out.Sync(), out.Close())
}
