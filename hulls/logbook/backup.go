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
	return whole(to, func(part string) error {
		_, err := b.db.ExecContext(ctx, "VACUUM INTO ?", part)
		return err
	})
}

// whole makes a file that appears only when it is whole and on the disk. make
// writes it under another name.
func whole(to string, make func(part string) error) error {
	to, err := filepath.Abs(to)
	if err != nil {
		return told(to, err)
	}
	taken := trouble(ErrRefused, to, "a file of that name", "one that is not there yet", "name another file")
	if _, err := os.Lstat(to); err == nil {
		return taken
	}
	part := to + ".part"
	for _, beside := range []string{"", "-wal", "-shm", "-journal"} { // of an attempt that was killed, and of this one
		if err := os.Remove(part + beside); err != nil && !errors.Is(err, os.ErrNotExist) {
			return told(to, err)
		}
		defer os.Remove(part + beside)
	}
	f, err := os.OpenFile(part, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600) // for its owner alone, as a logbook is
	if err != nil {
		return notWritable(to)
	}
	if err := errors.Join(f.Close(), make(part)); err != nil {
		return renamed(told(to, err), to)
	}
	if err := toTheDisk(part); err != nil {
		return told(to, err)
	}
	// A link fails where a rename would replace what came meanwhile; not every
	// disk has links.
	if err := os.Link(part, to); errors.Is(err, os.ErrExist) {
		return taken
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
