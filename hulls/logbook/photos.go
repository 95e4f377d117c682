package logbook

// This file keeps photos of a visit.

import (
	"context"
	"crypto/sha256"
	"database/sql"
	"encoding/hex"
	"errors"
	"strings"
	"unicode"
	"unicode/utf8"
)

// PhotoID is a photo's number in one logbook.
type PhotoID int64

// Photo is what is told of a photo in a list.
type Photo struct {
	ID                PhotoID
	SHA256            string // of the JPEG kept
	Added             string // moment
	Caption           string
	WidthPX, HeightPX int
	Bytes             int
}

// AddPhoto attaches a photo (JPEG, PNG, GIF, WebP, TIFF or BMP) to a visit. A
// JPEG of at most MostPhotoPX is kept of it, upright, without the place and
// time a camera writes into it. The same photo twice is kept once.
func (b *Book) AddPhoto(id VisitID, picture []byte, caption string) (PhotoID, error) {
	if !plainLine(caption, longestText) {
		return 0, refused("caption", "a caption of many lines or letters", "one line of at most 200 bytes", "shorten it")
	}
	small, err := shrink(picture)
	if err != nil {
		return 0, err
	}
	var photo PhotoID
	err = b.write(func(tx *sql.Tx) error {
		photo, err = b.addPhoto(tx, id, small, caption, b.moment())
		return err
	})
	return photo, err
}

func (b *Book) addPhoto(tx *sql.Tx, id VisitID, p jpegPhoto, caption, moment string) (PhotoID, error) {
	known := 0
	if err := tx.QueryRow("SELECT count(*) FROM visits WHERE id = ?", id).Scan(&known); err != nil {
		return 0, err
	}
	if known == 0 {
		return 0, b.unknown("visit", id)
	}
	sum := sha256.Sum256(p.data)
	var photo PhotoID
	err := tx.QueryRow(`INSERT INTO photos (visit_id, sha256, added_at, caption, width_px, height_px, jpeg) VALUES (?, ?, ?, ?4, ?, ?, ?)
		ON CONFLICT (visit_id, sha256) DO UPDATE SET caption = ?4 RETURNING id`,
		id, hex.EncodeToString(sum[:]), moment, caption, p.widthPX, p.heightPX, p.data).Scan(&photo)
	return photo, err
}

// Photos lists a visit's photos in the order they were added.
func (b *Book) Photos(id VisitID) ([]Photo, error) {
	var list []Photo
	err := b.read(context.Background(), func(tx *sql.Tx) (err error) {
		list, err = photosOf(tx, id)
		return err
	})
	return list, err
}

func photosOf(tx *sql.Tx, id VisitID) ([]Photo, error) {
	rows, err := tx.Query("SELECT id, sha256, added_at, caption, width_px, height_px, length(jpeg) FROM photos WHERE visit_id = ? ORDER BY id", id)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	var list []Photo
	for rows.Next() {
		var p Photo
		if err := rows.Scan(&p.ID, &p.SHA256, &p.Added, &p.Caption, &p.WidthPX, &p.HeightPX, &p.Bytes); err != nil {
			return nil, err
		}
		list = append(list, p)
	}
	return list, rows.Err()
}

// PhotoJPEG is a photo itself.
func (b *Book) PhotoJPEG(id PhotoID) (data []byte, err error) {
	err = b.db.QueryRow("SELECT jpeg FROM photos WHERE id = ?", id).Scan(&data)
	if errors.Is(err, sql.ErrNoRows) {
		return nil, b.unknown("photo", id)
	}
	return data, b.told(err)
}

// RemovePhoto takes a photo out for good.
func (b *Book) RemovePhoto(id PhotoID) error {
	return b.write(func(tx *sql.Tx) error {
		done, err := tx.Exec("DELETE FROM photos WHERE id = ?", id)
		if err != nil {
			return err
		}
		if n, err := done.RowsAffected(); err != nil || n == 0 {
			return errors.Join(err, b.unknown("photo", id))
		}
		return nil
	})
}

// plainLine reports whether a text can be shown on one line.
func plainLine(s string, most int) bool {
	return len(s) <= most && utf8.ValidString(s) && strings.IndexFunc(s, func(r rune) bool { return !unicode.IsPrint(r) }) < 0
}
