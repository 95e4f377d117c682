package logbook

// This file copies a logbook while it is in use, and looks whether one is sound.

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
)

// Backup writes the logbook as it stands to a new file, while others go on
// reading and writing. The file appears when it is whole; one that is there
// already is left alone.
func (b *Book) Backup(ctx context.Context, to string) error {
	to, err := filepath.Abs(to)
	if err != nil {
		return b.told(err)
	}
	if _, err := os.Lstat(to); !errors.Is(err, os.ErrNotExist) {
		return trouble(ErrRefused, to, "a file of that name", "one that is not there yet", "name another file")
	}
	part := to + ".part"
	defer os.Remove(part) // gone already when all is well
	if err := os.Remove(part); err != nil && !errors.Is(err, os.ErrNotExist) {
		return told(to, err)
	}
	if _, err := b.db.ExecContext(ctx, "VACUUM INTO ?", part); err != nil {
		return told(to, err)
	}
	if err := toTheDisk(part); err != nil {
		return told(to, err)
	}
	// A link fails where a rename would replace what came meanwhile; not every
	// disk has links.
	if err := os.Link(part, to); errors.Is(err, os.ErrExist) {
		return trouble(ErrRefused, to, "a file of that name", "one that is not there yet", "name another file")
	} else if err != nil {
		return told(to, os.Rename(part, to))
	}
	return nil
}

// toTheDisk waits until the disk has a file.
func toTheDisk(path string) error {
	f, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	defer f.Close()
	return f.Sync()
}

// Check looks through the whole file. It may take a second for each 100 MB.
func (b *Book) Check(ctx context.Context) error {
	return b.read(ctx, func(tx *sql.Tx) error {
		rows, err := tx.QueryContext(ctx, "PRAGMA integrity_check(1)")
		if err != nil {
			return err
		}
		defer rows.Close()
		for rows.Next() {
			var line string
			if err := rows.Scan(&line); err != nil {
				return err
			}
			if line != "ok" {
				return damaged(b.path, fmt.Sprintf("the file damaged (%s)", strings.ReplaceAll(line, "\n", " ")))
			}
		}
		return rows.Err()
	})
}
