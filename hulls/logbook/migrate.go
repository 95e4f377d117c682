package logbook

// This file knows a logbook from a stranger's file and brings older ones
// forward. A format is an append-only list of scripts; the file's version says
// how many of them ran.

import (
	"bytes"
	"context"
	"database/sql"
	_ "embed"
	"encoding/binary"
	"errors"
	"fmt"
	"io"
	"net/url"
	"os"
	"strconv"
	"time"
)

// Application is the application id in a logbook's header: "Algn".
const Application = 0x416c676e

// Version is the format this program writes.
var Version = len(migrations)

//go:embed migrations/1.sql
var first string

// migrations in order. One that was ever released is never changed.
var migrations = []string{first}

// Offsets in the header of an SQLite file, which is big-endian
// (https://www.sqlite.org/fileformat.html, section 1.3).
const (
	headerBytes   = 100
	headerMagic   = "SQLite format 3\x00"
	atPageCount   = 28
	atVersion     = 60
	atApplication = 68
)

// peek looks at a file without touching it, so that a stranger's stays as it
// is. It reports whether there is one that holds anything.
func peek(path string) (there bool, err error) {
	info, err := os.Stat(path)
	switch {
	case errors.Is(err, os.ErrNotExist):
		return false, nil
	case err != nil:
		return false, told(path, err)
	case !info.Mode().IsRegular():
		return false, trouble(ErrStranger, path, "no file but a "+kindOf(info), "a logbook", "name a file")
	case info.Size() == 0:
		return false, nil
	}
	header, err := readHeader(path)
	switch {
	case err != nil:
		return false, notReadable(path, err)
	case !bytes.HasPrefix(header, []byte(headerMagic)):
		return false, noHeader(path, info.Size())
	}
	switch id := binary.BigEndian.Uint32(header[atApplication:]); {
	case id == Application:
		return true, nil
	case id != 0 || hasTables(path):
		return false, stranger(path)
	}
	return true, nil // begun, and killed before it held anything
}

func readHeader(path string) ([]byte, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	header := make([]byte, headerBytes)
	if _, err := io.ReadFull(f, header); err != nil && !errors.Is(err, io.ErrUnexpectedEOF) {
		return nil, err
	}
	return header, nil
}

func kindOf(info os.FileInfo) string {
	if info.IsDir() {
		return "folder"
	}
	return "device or pipe"
}

// noHeader is a file without SQLite's first bytes: some other file, or a logbook
// whose beginning is lost, which still has whole pages.
func noHeader(path string, size int64) error {
	if size%pageBytes == 0 {
		return damaged(path, "no beginning of a logbook")
	}
	return stranger(path)
}

// pageBytes is the size of the pages of the file, SQLite's usual one.
const pageBytes = 4096

func stranger(path string) error {
	return trouble(ErrStranger, path, "another program's file", "a logbook", "name a logbook, or a file that is not there yet")
}

func notReadable(path string, err error) error {
	return trouble(ErrMissing, path, "a file that cannot be read ("+reason(err)+")", "a logbook", "see whose file it is")
}

// reason is the bare cause of an error of the file system.
func reason(err error) string {
	var at *os.PathError
	if errors.As(err, &at) {
		return at.Err.Error()
	}
	return err.Error()
}

// hasTables reports whether a file without an application id is in use. A
// transaction of creation cut short leaves its journal behind; such a file is
// judged when the journal is undone.
func hasTables(path string) bool {
	if _, err := os.Stat(path + "-journal"); err == nil {
		return false
	}
	db, err := sql.Open("sqlite", fileURI(path, url.Values{"mode": {"ro"}, "immutable": {"1"}}))
	if err != nil {
		return true
	}
	defer db.Close()
	n := 0
	err = db.QueryRow("SELECT count(*) FROM sqlite_schema").Scan(&n)
	return err != nil || n > 0
}

// migrate brings the file to the last of the scripts, each in one transaction
// with its version.
func (b *Book) migrate(scripts []string) error {
	for {
		done := false
		err := b.write(func(tx *sql.Tx) error {
			version, err := b.versionOf(tx, len(scripts))
			if err != nil || version == len(scripts) {
				done = true
				return err
			}
			if _, err := tx.Exec(scripts[version]); err != nil {
				return fmt.Errorf("migration %d: %w", version+1, err)
			}
			_, err = tx.Exec(fmt.Sprintf("PRAGMA application_id = %d; PRAGMA user_version = %d", Application, version+1))
			return err
		})
		if err != nil {
			return err
		}
		if done {
			return b.aheadOfTheFile()
		}
	}
}

// versionOf is how many scripts ran; it refuses strangers and later versions.
func (b *Book) versionOf(tx *sql.Tx, known int) (int, error) {
	var id, version, tables int
	row := tx.QueryRow("SELECT (SELECT application_id FROM pragma_application_id), (SELECT user_version FROM pragma_user_version), (SELECT count(*) FROM sqlite_schema)")
	switch err := row.Scan(&id, &version, &tables); {
	case err != nil:
		return 0, err
	case id == 0 && version == 0 && tables == 0:
		return 0, nil
	case id != Application || version < 1:
		return 0, stranger(b.path)
	case version > known:
		return 0, trouble(ErrNewer, b.path, fmt.Sprintf("a logbook of version %d", version), fmt.Sprintf("version %d or earlier", known), "use the newer program that wrote it")
	}
	return version, nil
}

// aheadOfTheFile has edits written to a log ahead of the file (SQLite's WAL), so
// that others can read meanwhile. It is set once the application id is in the
// file itself.
func (b *Book) aheadOfTheFile() error {
	ctx, cancel := context.WithTimeout(context.Background(), busyFor)
	defer cancel()
	for {
		var now string
		err := b.db.QueryRowContext(ctx, "PRAGMA journal_mode = wal").Scan(&now)
		switch {
		case err == nil && now == "wal":
			return nil
		case err == nil:
			return trouble(ErrReadOnly, b.path, "a disk that cannot keep a log ahead of the file", "a disk of this machine", "keep the logbook on another disk")
		case !errors.Is(b.told(err), ErrBusy) || ctx.Err() != nil:
			return err
		}
		time.Sleep(5 * time.Millisecond) // another program is switching, too
	}
}

func milliseconds(d time.Duration) string { return strconv.FormatInt(d.Milliseconds(), 10) }
