package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// Condition is what an examination of a database found.
type Condition struct {
	Path   string
	There  bool // there is a file
	Format int  // of what is written there
	Known  int  // the format this program writes
	Jobs   int
	Crews  int
}

// Examine looks at the database at path without changing it: whether it is whole, of a format that this program knows, and can be
// written to. Where there is none it looks whether one could be made.
func Examine(ctx context.Context, path string) (Condition, error) {
	files, err := migrations.ReadDir("migrations")
	if err != nil {
		return Condition{}, err
	}
	c := Condition{Path: path, Known: len(files)}
	file, err := os.OpenFile(path, os.O_RDWR, 0)
	if errors.Is(err, fs.ErrNotExist) {
		return c, canBeMade(path)
	}
	if err != nil {
		return c, fmt.Errorf("%w: give the user who runs hearsay the right to write there, or name another file", err)
	}
	c.There = true
	if err := file.Close(); err != nil {
		return c, err
	}
	db, err := open(path, "&_txlock=immediate")
	if err != nil {
		return c, err
	}
	defer db.Close()
	db.SetMaxOpenConns(1)
	return c, c.examine(ctx, db)
}

func (c *Condition) examine(ctx context.Context, db *sql.DB) error {
	if err := db.QueryRowContext(ctx, "pragma user_version").Scan(&c.Format); err != nil {
		return fmt.Errorf("%s is no database that can be read (%w): put it aside, and use a backup or another file", c.Path, err)
	}
	if c.Format > c.Known {
		return fmt.Errorf("a later version of hearsay wrote it (format %d, this one knows %d): use that version, or another file", c.Format, c.Known)
	}
	for _, check := range []string{"integrity_check", "foreign_key_check"} {
		if err := clean(ctx, db, check); err != nil {
			return err
		}
	}
	tx, err := db.BeginTx(ctx, nil) // takes the lock of a writer
	if err != nil {
		return fmt.Errorf("it cannot be written to now: %w", err)
	}
	defer tx.Rollback()
	if c.Format < c.Known {
		return nil // its tables are made or changed when it is opened
	}
	if err := tx.QueryRowContext(ctx, "select count(*) from job").Scan(&c.Jobs); err != nil {
		return err
	}
	return tx.QueryRowContext(ctx, "select count(*) from crew").Scan(&c.Crews)
}

// clean runs a check of the database itself, which gives rows for what is wrong, or one that says ok.
func clean(ctx context.Context, db *sql.DB, check string) error {
	rows, err := db.QueryContext(ctx, "pragma "+check)
	if err != nil {
		return fmt.Errorf("it is damaged (%w): put it aside, and restore a backup", err)
	}
	defer rows.Close()
	var wrong []string
	for rows.Next() {
		var first, a, b, c any
		columns, err := rows.Columns()
		if err != nil {
			return err
		}
		if err := rows.Scan([]any{&first, &a, &b, &c}[:len(columns)]...); err != nil {
			return err
		}
		if text := fmt.Sprint(first); text != "ok" {
			wrong = append(wrong, text)
		}
	}
	if err := rows.Err(); err != nil {
		return fmt.Errorf("it is damaged (%w): put it aside, and restore a backup", err)
	}
	if len(wrong) > 0 {
		return fmt.Errorf("it is damaged (%.300s): put it aside, and restore a backup", strings.Join(wrong, "; "))
	}
	return nil
}

// canBeMade looks whether a file could be made at path: in the first folder above it that is there.
func canBeMade(path string) error {
	dir := filepath.Dir(path)
	for {
		info, err := os.Stat(dir)
		if err == nil && !info.IsDir() {
			return fmt.Errorf("%s is no folder: name another file", dir)
		}
		if err == nil {
			break
		}
		if above := filepath.Dir(dir); above != dir {
			dir = above
			continue
		}
		return err
	}
	try, err := os.CreateTemp(dir, ".hearsay-*")
	if err != nil {
		return fmt.Errorf("none is there and none can be made: %w: name a file in a folder that can be written to", err)
	}
	return errors.Join(try.Close(), os.Remove(try.Name()))
}
