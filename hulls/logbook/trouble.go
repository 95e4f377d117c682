package logbook

// This file says what can go wrong with a logbook, in one line each that names
// the file, what was found, what was wanted and the mend.

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"

	"modernc.org/sqlite"
	lib "modernc.org/sqlite/lib"

	"aligner/hulls"
)

// Kinds of trouble, for errors.Is.
var (
	ErrMissing  = errors.New("logbook: not there")
	ErrStranger = errors.New("logbook: another program's file")
	ErrNewer    = errors.New("logbook: of a later version")
	ErrDamaged  = errors.New("logbook: damaged")
	ErrFull     = errors.New("logbook: disk full")
	ErrReadOnly = errors.New("logbook: cannot be written")
	ErrBusy     = errors.New("logbook: another program is writing")
	ErrGone     = errors.New("logbook: gone from its place")
	ErrChanged  = errors.New("logbook: changed by another program")
	ErrUnknown  = errors.New("logbook: no such entry")
	ErrRefused  = errors.New("logbook: refused")
)

// Trouble is an error of a known kind, told in one line. errors.As finds the
// *hulls.Fault in it.
type Trouble struct {
	Kind error
	hulls.Fault
}

// Unwrap gives the kind and the line.
func (t *Trouble) Unwrap() []error { return []error{t.Kind, &t.Fault} }

func trouble(kind error, file, value, limit, mend string) error {
	return &Trouble{kind, hulls.Fault{File: file, Value: value, Limit: limit, Mend: mend}}
}

// told turns an error of the database or the disk into trouble. Errors that are
// told already, and ends of a context, pass.
func (b *Book) told(err error) error { return told(b.path, err) }

func told(path string, err error) error {
	var known *Trouble
	var fault *hulls.Fault
	var engine *sqlite.Error
	switch {
	case err == nil, errors.As(err, &known), errors.As(err, &fault), errors.Is(err, context.Canceled), errors.Is(err, context.DeadlineExceeded):
		return err
	case errors.Is(err, syscall.ENOSPC):
		return full(path)
	case ofTheDisk(err):
		return notWritable(path)
	case errors.Is(err, sql.ErrConnDone), err.Error() == "sql: database is closed":
		return trouble(ErrGone, path, "the logbook closed", "it open", "open it again")
	case !errors.As(err, &engine):
		return fmt.Errorf("logbook: %w", err)
	}
	const primary = 0xff
	switch engine.Code() & primary {
	case lib.SQLITE_CORRUPT, lib.SQLITE_NOTADB:
		return damaged(path, "the file damaged")
	case lib.SQLITE_FULL:
		return full(path)
	case lib.SQLITE_READONLY, lib.SQLITE_PERM, lib.SQLITE_CANTOPEN:
		return notWritable(path)
	case lib.SQLITE_BUSY, lib.SQLITE_LOCKED:
		return trouble(ErrBusy, path, "another program writing for more than "+busyFor.String(), "a turn to write", "let it end, then do it again")
	case lib.SQLITE_IOERR:
		if engine.Code() == lib.SQLITE_IOERR_SHMSIZE || engine.Code() == lib.SQLITE_IOERR_WRITE {
			return full(path)
		}
		return trouble(ErrGone, path, fmt.Sprintf("the disk failing (%v)", engine), "a disk that reads and writes", "keep a copy of what is on it, and look at the disk")
	}
	return fmt.Errorf("logbook %s: %w", path, err)
}

// ofTheDisk reports whether the file system said no.
func ofTheDisk(err error) bool {
	var path *os.PathError
	var link *os.LinkError
	return errors.As(err, &path) || errors.As(err, &link) || errors.Is(err, fs.ErrPermission)
}

func damaged(path, what string) error {
	return trouble(ErrDamaged, path, what, "a sound logbook", "leave the file as it is; copy what can be read to a new one with: aligner hulls salvage "+filepath.Base(path)+" NEW")
}

func full(path string) error {
	return trouble(ErrFull, path, "no room left on the disk", "room for what was put in, which is not kept yet", "make room, then do it again")
}

func notWritable(path string) error {
	return trouble(ErrReadOnly, path, "a place that cannot be written", "a folder and a file that can", "open it for reading, or copy it elsewhere")
}

func missing(path string) error {
	return trouble(ErrMissing, path, "no file", "a logbook", "name another with --logbook, or enter a hull to begin one")
}

// stillThere holds the open file against its path: what is written to a file
// that was taken away is lost.
func (b *Book) stillThere() error {
	now, err := os.Stat(b.path)
	if err == nil && os.SameFile(now, b.file) {
		return nil
	}
	return trouble(ErrGone, b.path, "the logbook gone from its place", "it where it was opened",
		"bring the disk or file back; until then nothing more is kept")
}

// unknown is an entry that is not there.
func (b *Book) unknown(what string, id any) error {
	return trouble(ErrUnknown, b.path, fmt.Sprintf("no %s numbered %v", what, id), "one that is in the logbook", "list them, and name one of those")
}

// refused is something put in that cannot be taken.
func refused(place, value, limit, mend string) error {
	return &Trouble{ErrRefused, hulls.Fault{Place: place, Value: value, Limit: limit, Mend: mend}}
}
