package logbook

// This file says what importing a bundle would change.

import (
	"context"
	"database/sql"
	"errors"

	"aligner/hulls"
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

// Differs reports whether something is both here and in the bundle, and not the
// same.
func (c Changes) Differs() bool {
	for _, v := range c.Visits {
		if v.Change == Different {
			return true
		}
	}
	return c.Hull == Different || c.Photos[Different] > 0
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

// AllNew is what Compare says where there is no logbook yet.
func (b *Bundle) AllNew() Changes {
	c := Changes{HullName: b.hull.Name, Hull: IsNew, Photos: map[Change]int{IsNew: len(b.listed.photos)}}
	for _, uid := range b.listed.visits {
		c.Visits = append(c.Visits, VisitChange{UID: uid, Date: b.visits[uid].Visit.Date, Change: IsNew})
	}
	return c
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
