package logbook

// This file imports a bundle: all of it or nothing.

import (
	"context"
	"database/sql"
	"errors"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// Import takes a bundle into the logbook in one transaction and says what
// changed.
func (b *Book) Import(ctx context.Context, from *Bundle, choice Choice) (c Changes, err error) {
	err = b.writeWithin(ctx, func(tx *sql.Tx) error {
		if c, err = b.compare(tx, from); err != nil {
			return err
		}
		if err := b.importVisits(ctx, tx, from, &c, choice); err != nil {
			return err
		}
		return b.importPhotos(ctx, tx, from, choice)
	})
	return c, err
}

// importVisits takes in the hull and the visits. Each new visit brings the hull
// as it was then; the hull as it is to be now comes last, since the newest
// version is the one that holds.
func (b *Book) importVisits(ctx context.Context, tx *sql.Tx, from *Bundle, c *Changes, choice Choice) error {
	last := string(hulls.Encode(from.hull))
	if c.Hull == Different && choice == KeepOurs {
		var err error
		if _, last, err = newest(tx, c.ID); err != nil {
			return err
		}
	}
	if c.Hull == IsNew {
		done, err := tx.Exec("INSERT INTO hulls (uid, added_at) VALUES (?, ?)", from.listed.hull, b.moment())
		if err != nil {
			return err
		}
		id, err := done.LastInsertId()
		if err != nil {
			return err
		}
		c.ID = HullID(id)
	}
	known := map[string]int64{} // versions by their file, of those this import needs
	version := func(file string) (int64, error) {
		if v, ok := known[file]; ok {
			return v, nil
		}
		v, err := b.versionWith(tx, c.ID, file)
		known[file] = v
		return v, err
	}
	for _, v := range c.Visits {
		if err := ctx.Err(); err != nil {
			return err
		}
		theirs := from.visits[v.UID]
		switch {
		case v.Change == IsNew:
			id, err := version(string(hulls.Encode(theirs.Hull)))
			if err != nil {
				return err
			}
			if _, err := b.addVisit(tx, v.UID, c.ID, id, theirs); err != nil {
				return err
			}
		case v.Change == Different && choice == TakeTheirs:
			if err := b.replace(tx, v.id, theirs); err != nil {
				return err
			}
		}
	}
	if _, now, err := newest(tx, c.ID); err == nil && now == last {
		return deriveHull(tx, c.ID)
	}
	_, err := b.addVersion(tx, c.ID, []byte(last))
	return err
}

// versionWith is the version of a hull with a file; it is added where there is
// none.
func (b *Book) versionWith(tx *sql.Tx, id HullID, file string) (version int64, err error) {
	err = tx.QueryRow("SELECT id FROM hull_versions WHERE hull_id = ? AND file = ? ORDER BY id DESC LIMIT 1", id, file).Scan(&version)
	if errors.Is(err, sql.ErrNoRows) {
		return b.addVersion(tx, id, []byte(file))
	}
	return version, err
}

// replace makes a visit another one, as an edit that can be undone.
func (b *Book) replace(tx *sql.Tx, id VisitID, theirs visit.Document) (err error) {
	s := &Session{book: b, visit: id}
	if s.history, s.last, err = b.history(tx, id); err != nil {
		return err
	}
	v := theirs.Visit
	v.HullName, v.Embedded = theirs.Hull.Name, nil
	e := &visit.OpenVisit{Visit: v, HullName: theirs.Hull.Name, Hull: hulls.Encode(theirs.Hull)}
	next, err := s.history.Preview(e)
	if err != nil {
		return err
	}
	text, err := visit.Marshal(e)
	if err != nil {
		return err
	}
	return s.keep(tx, wasDone, text, next)
}

func (b *Book) importPhotos(ctx context.Context, tx *sql.Tx, from *Bundle, choice Choice) error {
	for _, p := range from.listed.photos {
		if err := ctx.Err(); err != nil {
			return err
		}
		var id VisitID
		var caption sql.NullString
		err := tx.QueryRow(`SELECT visits.id, photos.caption FROM visits LEFT JOIN photos ON visit_id = visits.id AND sha256 = ? WHERE uid = ?`, p.sha256, p.visit).Scan(&id, &caption)
		if err != nil {
			return err
		}
		if caption.Valid && (caption.String == p.caption || choice == KeepOurs) {
			continue
		}
		photo, err := from.archive.readPhoto(p.sha256)
		if err != nil {
			return err
		}
		if _, err := b.addPhoto(tx, id, photo, p.caption, p.added); err != nil {
			return err
		}
	}
	return nil
}
