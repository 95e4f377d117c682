package logbook

// This file opens a logbook to read, and reads a copy where its place is
// read-only: a log ahead of the file does not open there.

import (
	"context"
	"database/sql"
	"errors"
	"io"
	"os"
	"path/filepath"
)

func openToRead(path string) (*Book, error) {
	b, err := connect(path, Read, nil)
	if err != nil {
		return nil, err
	}
	err = b.looksSound()
	if err == nil {
		return b, nil
	}
	b.Close()
	if !errors.Is(err, ErrReadOnly) {
		return nil, err
	}
	return openCopy(path)
}

// looksSound reads the version and something of each table.
func (b *Book) looksSound() error {
	return b.read(context.Background(), func(tx *sql.Tx) error {
		version, err := b.versionOf(tx, len(migrations))
		switch {
		case err != nil:
			return err
		case version < len(migrations):
			return trouble(ErrReadOnly, b.path, "a logbook of an earlier version", "it brought forward once", "open it to write once; it is brought forward then")
		}
		n := 0
		return tx.QueryRow("SELECT (SELECT count(*) FROM (SELECT 1 FROM hulls LIMIT 1)) + (SELECT count(*) FROM (SELECT 1 FROM edits LIMIT 1))").Scan(&n)
	})
}

// openCopy reads a copy in the folder for temporary files, brought forward if it
// is of an earlier version. Close deletes it.
func openCopy(path string) (*Book, error) {
	folder, err := os.MkdirTemp("", "logbook-")
	if err != nil {
		return nil, told(path, err)
	}
	b, err := copied(path, folder)
	if err != nil {
		os.RemoveAll(folder)
		return nil, err
	}
	return b, nil
}

func copied(path, folder string) (*Book, error) {
	to := filepath.Join(folder, FileName)
	if err := copyBook(path, to); err != nil {
		return nil, err
	}
	writable, err := open(to, Write, nil) // takes the log in, and brings it forward
	if err != nil {
		return nil, renamed(err, path)
	}
	if err := writable.Close(); err != nil {
		return nil, renamed(err, path)
	}
	b, err := connect(to, Read, nil)
	if err != nil {
		return nil, err
	}
	if err := b.looksSound(); err != nil {
		b.Close()
		return nil, renamed(err, path)
	}
	b.path, b.copy = path, folder
	return b, nil
}

// copyBook copies a logbook with the log ahead of it.
func copyBook(from, to string) error {
	if err := copyFile(from, to); err != nil {
		return notReadable(from, err)
	}
	for _, beside := range []string{"-wal", "-journal"} {
		if err := copyFile(from+beside, to+beside); err != nil && !errors.Is(err, os.ErrNotExist) {
			return notReadable(from, err)
		}
	}
	return nil
}

func copyFile(from, to string) error {
	in, err := os.Open(from)
	if err != nil {
		return err
	}
	defer in.Close()
	out, err := os.OpenFile(to, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600)
	if err != nil {
		return err
	}
	if _, err := io.Copy(out, in); err != nil {
		out.Close()
		return err
	}
	return out.Close()
}

// renamed tells trouble with a copy as trouble with what was copied.
func renamed(err error, path string) error {
	var t *Trouble
	if !errors.As(err, &t) {
		return err
	}
	of := *t
	of.File = path
	return &of
}
