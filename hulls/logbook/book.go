package logbook

// This file opens and closes a logbook.

import (
	"context"
	"database/sql"
	"errors"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"time"
)

// Mode says what a logbook is opened for.
type Mode int

const (
	// Write reads and writes, and begins a logbook where there is none.
	Write Mode = iota
	// Read changes nothing. Another program may be writing meanwhile; what it
	// keeps shows at once. Where the place is read-only the book is a copy.
	Read
)

// Book is an open logbook. Its methods may be called from several goroutines.
type Book struct {
	path string
	mode Mode
	db   *sql.DB
	file os.FileInfo // what was opened, to notice when it is taken away
	copy string      // folder of the copy that is read instead; "": none
	now  func() time.Time
}

// busyFor is how long one waits for another program's turn to write.
const busyFor = 10 * time.Second

// connections at most: a list may be read while an edit is written.
const connections = 4

// Open opens the logbook in a file. The error is a *Trouble.
func Open(path string, mode Mode) (*Book, error) { return open(path, mode, nil) }

// open may give every connection more to begin with; tests bound the file so.
func open(path string, mode Mode, pragmas []string) (*Book, error) {
	path, err := filepath.Abs(path)
	if err != nil {
		return nil, told(path, err)
	}
	there, err := peek(path)
	if err != nil {
		return nil, err
	}
	if mode == Read {
		if !there {
			return nil, missing(path)
		}
		return openToRead(path)
	}
	if err := begin(path); err != nil {
		return nil, err
	}
	b, err := connect(path, Write, pragmas)
	if err != nil {
		return nil, err
	}
	if err := b.migrate(migrations); err != nil {
		b.Close()
		return nil, b.told(err)
	}
	return b, nil
}

// begin makes an empty file, for its owner alone, where there is none.
func begin(path string) error {
	if own, err := DefaultPath(); err == nil && own == path {
		if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
			return told(path, err)
		}
	}
	f, err := os.OpenFile(path, os.O_CREATE|os.O_RDWR, 0o600)
	switch {
	case errors.Is(err, os.ErrNotExist):
		return trouble(ErrMissing, path, "no folder to put the logbook in", "a folder that is there", "make the folder, or name another file with --logbook")
	case err != nil:
		return notWritable(path)
	}
	return f.Close()
}

// connect opens the file; nothing is read yet.
func connect(path string, mode Mode, pragmas []string) (*Book, error) {
	file, err := os.Stat(path)
	if err != nil {
		return nil, missing(path)
	}
	query := url.Values{"_txlock": {"immediate"}}
	query.Add("_pragma", "busy_timeout("+milliseconds(busyFor)+")")
	query.Add("_pragma", "foreign_keys(1)")
	query.Add("_pragma", "trusted_schema(0)")
	query.Add("_pragma", "secure_delete(1)")  // a photo taken out is gone
	query.Add("_pragma", "synchronous(full)") // an edit that is kept outlives a power cut too
	for _, p := range pragmas {
		query.Add("_pragma", p)
	}
	if mode == Read {
		query.Set("mode", "ro")
	} else {
		query.Set("mode", "rw")
	}
	db, err := sql.Open("sqlite", fileURI(path, query))
	if err != nil {
		return nil, told(path, err)
	}
	db.SetMaxOpenConns(connections)
	db.SetMaxIdleConns(connections)
	return &Book{path: path, mode: mode, db: db, file: file, now: time.Now}, nil
}

// fileURI names a file to SQLite, whatever characters are in its path.
func fileURI(path string, query url.Values) string {
	path = filepath.ToSlash(path)
	if !strings.HasPrefix(path, "/") { // C:/...
		path = "/" + path
	}
	return (&url.URL{Scheme: "file", Path: path, RawQuery: query.Encode()}).String()
}

// Close closes the logbook. Sessions on it end with it.
func (b *Book) Close() error {
	err := b.db.Close()
	if b.copy != "" {
		err = errors.Join(err, os.RemoveAll(b.copy))
	}
	return b.told(err)
}

// Path is the logbook's file.
func (b *Book) Path() string { return b.path }

// Writable reports whether the logbook was opened to write.
func (b *Book) Writable() bool { return b.mode == Write }

// Copied reports whether a copy is read because the place is read-only: what
// another program writes meanwhile does not show.
func (b *Book) Copied() bool { return b.copy != "" }

// write does something in one transaction that holds the turn to write from its
// beginning. It returns without an error only when all of it is on the disk, in
// the file that is at the path.
func (b *Book) write(do func(tx *sql.Tx) error) error {
	return b.writeWithin(context.Background(), do)
}

func (b *Book) writeWithin(ctx context.Context, do func(tx *sql.Tx) error) error {
	if b.mode != Write {
		return trouble(ErrReadOnly, b.path, "the logbook open for reading", "it open for writing", "close it and open it to write")
	}
	if err := b.stillThere(); err != nil {
		return err
	}
	tx, err := b.db.BeginTx(ctx, nil)
	if err != nil {
		return b.told(err)
	}
	if err := do(tx); err != nil {
		tx.Rollback() // the first error is the one to tell
		return b.told(err)
	}
	if err := tx.Commit(); err != nil {
		return b.told(err)
	}
	return b.stillThere()
}

// read sees one state of the logbook, whatever others write meanwhile.
func (b *Book) read(ctx context.Context, do func(tx *sql.Tx) error) error {
	tx, err := b.db.BeginTx(ctx, &sql.TxOptions{ReadOnly: true})
	if err != nil {
		return b.told(err)
	}
	defer tx.Rollback() // nothing was written
	return b.told(do(tx))
}

// moment is the present, as it is stored.
func (b *Book) moment() string { return b.now().UTC().Format("2006-01-02T15:04:05.000Z") }
