package logbook

// This file says what importing a bundle would change, and imports it: all of it
// or nothing.

import (
	"context"
	"database/sql"
	"errors"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// Change says how something in a bundle stands to the logbook.
type Change string

// It is not in the logbook, or in it just so, or otherwise.
const (
	IsNew     Change = "new"
	Same      Change = "same"
	Different Change = "different"
)

// Choice says what becomes of what is different.
type Choice int

const (
	// KeepOurs leaves it as it is in the logbook.
	KeepOurs Choice = iota
	// TakeTheirs makes it as it is in the bundle. Ours stays on record: the hull
	// as an earlier version, the visit as something to undo.
	TakeTheirs
)

// Changes are what an import would change, or changed.
type Changes struct {
	HullName string
	Hull     Change
	ID       HullID // of the hull; 0: it is not in the logbook yet
	Visits   []VisitChange
	Photos   map[Change]int // how many; Different: by their captions
	Alike    []HullLine     // other hulls here with the same name or HIN
}

// VisitChange is one visit of a bundle.
type VisitChange struct {
	UID, Date string
	Change    Change
	id        VisitID
}

// Any reports whether an import would change anything.
func (c Changes) Any(choice Choice) bool {
	changes := func(is Change) bool { return is == IsNew || is == Different && choice == TakeTheirs }
	for _, v := range c.Visits {
		if changes(v.Change) {
			return true
		}
	}
	return changes(c.Hull) || c.Photos[IsNew] > 0 || c.Photos[Different] > 0 && choice == TakeTheirs
}

// Compare says what importing a bundle would change, and changes nothing.
func (b *Book) Compare(ctx context.Context, from *Bundle) (c Changes, err error) {
	err = b.read(ctx, func(tx *sql.Tx) error {
		c, err = b.compare(tx, from)
		return err
	})
	return c, err
}

func (b *Book) compare(tx *sql.Tx, from *Bundle) (Changes, error) {
	c := Changes{HullName: from.hull.Name, Hull: IsNew, Photos: map[Change]int{}}
	err := tx.QueryRow("SELECT id FROM hulls WHERE uid = ?", from.listed.hull).Scan(&c.ID)
	switch {
	case err == nil:
		_, ours, err := newest(tx, c.ID)
		if err != nil {
			return c, err
		}
		c.Hull = sameOr(ours == string(hulls.Encode(from.hull)))
	case !errors.Is(err, sql.ErrNoRows):
		return c, err
	}
	for _, uid := range from.listed.visits {
		v, err := b.compareVisit(tx, from, uid, c.ID)
		if err != nil {
			return c, err
		}
		c.Visits = append(c.Visits, v)
	}
	if err := comparePhotos(tx, from, c); err != nil {
		return c, err
	}
	return c, alike(tx, from, &c)
}

func sameOr(same bool) Change {
	if same {
		return Same
	}
	return Different
}

func (b *Book) compareVisit(tx *sql.Tx, from *Bundle, uid string, hull HullID) (VisitChange, error) {
	theirs := from.visits[uid]
	v := VisitChange{UID: uid, Date: theirs.Visit.Date, Change: IsNew}
	var of HullID
	err := tx.QueryRow("SELECT id, hull_id FROM visits WHERE uid = ?", uid).Scan(&v.id, &of)
	switch {
	case errors.Is(err, sql.ErrNoRows):
		return v, nil
	case err != nil:
		return v, err
	case of != hull:
		return v, from.archive.refuse(visitFolder+uid+visitExt, "a visit that is of another hull here", "visits of this hull", "import it into another logbook")
	}
	ours, _, err := b.document(tx, v.id)
	if err != nil {
		return v, err
	}
	v1, h1 := onBoat(ours)
	v2, h2 := onBoat(theirs)
	v.Change = sameOr(v1 == v2 && h1 == h2)
	return v, nil
}

func comparePhotos(tx *sql.Tx, from *Bundle, c Changes) error {
	for _, p := range from.listed.photos {
		var caption string
		err := tx.QueryRow("SELECT caption FROM photos JOIN visits ON visits.id = visit_id WHERE uid = ? AND sha256 = ?", p.visit, p.sha256).Scan(&caption)
		switch {
		case errors.Is(err, sql.ErrNoRows):
			c.Photos[IsNew]++
		case err != nil:
			return err
		default:
			c.Photos[sameOr(caption == p.caption)]++
		}
	}
	return nil
}

// alike finds other hulls that may be the same boat, entered twice.
func alike(tx *sql.Tx, from *Bundle, c *Changes) error {
	plate, _ := plateOf(from.hull.HIN)
	rows, err := tx.Query(`SELECT hull_id, name, hin, owner_reference FROM derived_hulls
		WHERE hull_id <> ? AND (name = ? COLLATE NOCASE OR hin <> '' AND hin = ?) ORDER BY hull_id LIMIT 10`, c.ID, from.hull.Name, plate)
	if err != nil {
		return err
	}
	defer rows.Close()
	for rows.Next() {
		var l HullLine
		if err := rows.Scan(&l.ID, &l.Name, &l.HIN, &l.OwnerReference); err != nil {
			return err
		}
		c.Alike = append(c.Alike, l)
	}
	return rows.Err()
}

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
