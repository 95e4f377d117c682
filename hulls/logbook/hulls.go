package logbook

// This file keeps hulls: each version of what was measured.

import (
	"context"
	"crypto/rand"
	"database/sql"
	"encoding/hex"
	"errors"

	"aligner/hulls"
)

// HullID is a hull's number in one logbook.
type HullID int64

// Hull is a boat as it was measured last.
type Hull struct {
	ID      HullID
	UID     string // the same in every logbook the hull is taken to
	Version int64  // which of its versions this is
	Hull    hulls.Hull
}

// NewHull enters a hull. One that hulls.Validate refuses is refused.
func (b *Book) NewHull(h hulls.Hull) (HullID, error) {
	if err := hulls.Validate(h).Err(); err != nil {
		return 0, err
	}
	var id HullID
	err := b.write(func(tx *sql.Tx) (err error) {
		id, _, err = b.addHull(tx, newUID(), hulls.Encode(h))
		return err
	})
	return id, err
}

// addHull enters a hull's file under a uid.
func (b *Book) addHull(tx *sql.Tx, uid string, file []byte) (HullID, int64, error) {
	done, err := tx.Exec("INSERT INTO hulls (uid, added_at) VALUES (?, ?)", uid, b.moment())
	if err != nil {
		return 0, 0, err
	}
	n, err := done.LastInsertId()
	if err != nil {
		return 0, 0, err
	}
	version, err := b.addVersion(tx, HullID(n), file)
	return HullID(n), version, err
}

// addVersion makes a file a hull's newest.
func (b *Book) addVersion(tx *sql.Tx, id HullID, file []byte) (int64, error) {
	done, err := tx.Exec("INSERT INTO hull_versions (hull_id, added_at, file) VALUES (?, ?, ?)", id, b.moment(), string(file))
	if err != nil {
		return 0, err
	}
	version, err := done.LastInsertId()
	if err != nil {
		return 0, err
	}
	return version, deriveHull(tx, id)
}

// SaveHull enters a hull as it was measured again. Visits begun before keep the
// hull they began with. Nothing is added where nothing changed.
func (b *Book) SaveHull(id HullID, h hulls.Hull) error {
	if err := hulls.Validate(h).Err(); err != nil {
		return err
	}
	file := hulls.Encode(h)
	return b.write(func(tx *sql.Tx) error {
		_, now, err := newest(tx, id)
		switch {
		case errors.Is(err, sql.ErrNoRows):
			return b.unknown("hull", id)
		case err != nil || now == string(file):
			return err
		}
		_, err = b.addVersion(tx, id, file)
		return err
	})
}

// newest is a hull's last version and its file.
func newest(tx *sql.Tx, id HullID) (version int64, file string, err error) {
	err = tx.QueryRow("SELECT id, file FROM hull_versions WHERE hull_id = ? ORDER BY id DESC LIMIT 1", id).Scan(&version, &file)
	return version, file, err
}

// Hull gives a hull as it was measured last.
func (b *Book) Hull(id HullID) (Hull, error) {
	h := Hull{ID: id}
	err := b.read(context.Background(), func(tx *sql.Tx) error {
		err := tx.QueryRow("SELECT uid FROM hulls WHERE id = ?", id).Scan(&h.UID)
		if errors.Is(err, sql.ErrNoRows) {
			return b.unknown("hull", id)
		}
		if err != nil {
			return err
		}
		var file string
		if h.Version, file, err = newest(tx, id); err != nil {
			return err
		}
		h.Hull, err = b.parseHull(file)
		return err
	})
	return h, err
}

// Versions counts how often a hull was measured.
func (b *Book) Versions(id HullID) (n int, err error) {
	err = b.db.QueryRow("SELECT count(*) FROM hull_versions WHERE hull_id = ?", id).Scan(&n)
	return n, b.told(err)
}

// parseHull reads what this package wrote: what it cannot read is damaged.
func (b *Book) parseHull(file string) (hulls.Hull, error) {
	h, err := hulls.Parse([]byte(file), b.path)
	if err != nil {
		return h, damaged(b.path, "a hull that cannot be read ("+err.Error()+")")
	}
	return h, nil
}

// newUID is a random name that no other hull or visit has.
func newUID() string {
	var id [16]byte
	rand.Read(id[:]) // never fails
	return hex.EncodeToString(id[:])
}

// isUID reports whether a text is of newUID's form.
func isUID(s string) bool { return isHex(s, 32) }

func isHex(s string, digits int) bool {
	if len(s) != digits {
		return false
	}
	for _, c := range s {
		if (c < '0' || c > '9') && (c < 'a' || c > 'f') {
			return false
		}
	}
	return true
}
