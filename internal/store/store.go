// Package store owns what is kept: an embedded database of jobs with their earlier states and the marks on their
// checklists. What a function has returned without an error is on the disk.
package store

import (
	"context"
	"crypto/rand"
	"database/sql"
	"embed"
	"errors"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"time"

	_ "modernc.org/sqlite" // registers the database driver
)

// Store is an open database. It is safe for use by several goroutines at once.
type Store struct {
	write *sql.DB // one connection: SQLite takes one writer at a time
	read  *sql.DB
	now   func() time.Time
}

// ErrNotFound says that there is nothing by that name.
var ErrNotFound = errors.New("there is no such thing in the database")

//go:embed migrations/*.sql
var migrations embed.FS

// Open opens the database at path, makes it and its folder where there is none, and brings it up to date. It fails on a
// file that is no database, or one that a later version has written.
func Open(ctx context.Context, path string) (*Store, error) {
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return nil, fmt.Errorf("the folder for the database cannot be made: %w", err)
	}
	file, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE, 0o600) // what is kept is nobody else's to read
	if err != nil {
		return nil, fmt.Errorf("the database cannot be opened: %w", err)
	}
	file.Close()
	s := &Store{now: time.Now}
	if s.write, err = open(path, "&_txlock=immediate"); err != nil {
		return nil, err
	}
	s.write.SetMaxOpenConns(1)
	if err := s.migrate(ctx); err != nil {
		s.write.Close()
		return nil, fmt.Errorf("the database %s cannot be used: %w", path, err)
	}
	if s.read, err = open(path, "&_pragma=query_only(1)"); err != nil {
		s.write.Close()
		return nil, err
	}
	s.read.SetMaxOpenConns(4)
	return s, nil
}

// open connects with a write-ahead log and a full sync at each commit, so that nothing acknowledged is lost.
func open(path, more string) (*sql.DB, error) {
	address := url.URL{Scheme: "file", Opaque: (&url.URL{Path: path}).EscapedPath()}
	return sql.Open("sqlite", address.String()+
		"?_pragma=busy_timeout(5000)&_pragma=journal_mode(WAL)&_pragma=synchronous(FULL)&_pragma=foreign_keys(1)"+more)
}

// Close closes the database.
func (s *Store) Close() error { return errors.Join(s.read.Close(), s.write.Close()) }

// Check says whether the database answers.
func (s *Store) Check(ctx context.Context) error {
	var n int
	return s.read.QueryRowContext(ctx, "select count(*) from job where id = ''").Scan(&n)
}

// migrate runs the numbered files that the database has not seen yet, each in its own transaction.
func (s *Store) migrate(ctx context.Context) error {
	files, err := migrations.ReadDir("migrations")
	if err != nil {
		return err
	}
	var seen int
	if err := s.write.QueryRowContext(ctx, "pragma user_version").Scan(&seen); err != nil {
		return err
	}
	if seen > len(files) {
		return fmt.Errorf("a later version of hearsay wrote it (format %d, this one knows %d): use that version, or another file", seen, len(files))
	}
	for i := seen; i < len(files); i++ {
		text, err := migrations.ReadFile("migrations/" + files[i].Name())
		if err != nil {
			return err
		}
		err = s.change(ctx, func(tx *sql.Tx) error {
			_, err := tx.ExecContext(ctx, string(text)+fmt.Sprintf(";\npragma user_version = %d", i+1))
			return err
		})
		if err != nil {
			return fmt.Errorf("%s: %w", files[i].Name(), err)
		}
	}
	return nil
}

// change runs f in one transaction, which is on the disk when change returns without an error.
func (s *Store) change(ctx context.Context, f func(tx *sql.Tx) error) error {
	tx, err := s.write.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	if err := f(tx); err != nil {
		return errors.Join(err, tx.Rollback())
	}
	return tx.Commit()
}

// newID makes a name that nobody guesses and that can be read aloud.
func newID() string { return strings.ToLower(rand.Text()[:12]) }

// moment and readMoment write and read a time as the database holds it, so that times sort as text.
func moment(t time.Time) string { return t.UTC().Format("2006-01-02T15:04:05.000Z") }

func readMoment(text string) time.Time {
	t, _ := time.Parse("2006-01-02T15:04:05.000Z", text)
	return t
}
