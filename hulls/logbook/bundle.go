package logbook

// This file says what a bundle is, one hull with all its visits to carry
// elsewhere, and writes one.
//
//	bundle.json                  which hull, visits and photos there are
//	boat.hull.json               the hull as it was measured last
//	visits/UID.visit.json        each visit, with the hull as it was then
//	photos/SHA256.jpg            each photo
//
// The hull and visit files are such as every verb takes: a bundle can be
// unpacked and used without a logbook. What was undone stays at home, and so
// does what is derived. The same contents give the same bytes.

import (
	"archive/zip"
	"context"
	"database/sql"
	"errors"
	"io"

	"aligner/hulls"
	"aligner/hulls/strictjson"
	"aligner/hulls/visit"
)

// FormatBundle is the value of a bundle's "format" key.
const FormatBundle = "bundle/1"

// The names in a bundle.
const (
	manifestName = "bundle.json"
	boatName     = "boat.hull.json"
	visitFolder  = "visits/"
	visitExt     = ".visit.json"
	photoFolder  = "photos/"
	photoExt     = ".jpg"
)

// bundled is what a bundle lists.
type bundled struct {
	hull   string // uid
	visits []string
	photos []bundledPhoto
}

type bundledPhoto struct {
	visit, sha256, added, caption string
}

func (m *bundled) encode() []byte {
	e := &strictjson.Encoder{}
	e.Open("", '{')
	e.Text("format", FormatBundle)
	e.Text("hull", m.hull)
	e.Open("visits", '[')
	for i, uid := range m.visits {
		e.Item(i, '{')
		e.Text("visit", uid)
		e.Close('}')
	}
	e.Close(']')
	e.Open("photos", '[')
	for i, p := range m.photos {
		e.Item(i, '{')
		e.Text("visit", p.visit)
		e.Text("sha256", p.sha256)
		e.Text("added", p.added)
		e.OptionalText("caption", p.caption)
		e.Close('}')
	}
	e.Close(']')
	e.Close('}')
	e.EndLine()
	return e.Bytes()
}

// Export writes a hull with all its visits and photos as a bundle.
func (b *Book) Export(ctx context.Context, hull HullID, w io.Writer) error {
	return b.read(ctx, func(tx *sql.Tx) error {
		m := bundled{}
		err := tx.QueryRow("SELECT uid FROM hulls WHERE id = ?", hull).Scan(&m.hull)
		if errors.Is(err, sql.ErrNoRows) {
			return b.unknown("hull", hull)
		}
		if err != nil {
			return err
		}
		_, boat, err := newest(tx, hull)
		if err != nil {
			return err
		}
		visits, err := visitsOf(tx, hull)
		if err != nil {
			return err
		}
		for _, v := range visits {
			m.visits = append(m.visits, v.uid)
			m.photos = append(m.photos, v.photos...)
		}
		z := zip.NewWriter(w)
		if err := put(z, manifestName, m.encode()); err != nil {
			return err
		}
		if err := put(z, boatName, []byte(boat)); err != nil {
			return err
		}
		if err := b.putVisits(ctx, tx, z, visits); err != nil {
			return err
		}
		return z.Close()
	})
}

// keptVisit is a visit with its photos, by their names.
type keptVisit struct {
	id     VisitID
	uid    string
	photos []bundledPhoto
}

// visitsOf are a hull's visits in the order they were entered.
func visitsOf(tx *sql.Tx, hull HullID) ([]keptVisit, error) {
	rows, err := tx.Query(`SELECT visits.id, visits.uid, coalesce(photos.sha256, ''), coalesce(photos.added_at, ''), coalesce(photos.caption, '')
		FROM visits LEFT JOIN photos ON photos.visit_id = visits.id WHERE hull_id = ? ORDER BY visits.id, photos.id`, hull)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	var list []keptVisit
	for rows.Next() {
		var v keptVisit
		var p bundledPhoto
		if err := rows.Scan(&v.id, &v.uid, &p.sha256, &p.added, &p.caption); err != nil {
			return nil, err
		}
		if n := len(list); n == 0 || list[n-1].id != v.id {
			list = append(list, v)
		}
		if p.sha256 != "" {
			p.visit = v.uid
			last := &list[len(list)-1]
			last.photos = append(last.photos, p)
		}
	}
	return list, rows.Err()
}

func (b *Book) putVisits(ctx context.Context, tx *sql.Tx, z *zip.Writer, visits []keptVisit) error {
	packed := map[string]bool{} // a photo of two visits is packed once
	for _, v := range visits {
		if err := ctx.Err(); err != nil {
			return err
		}
		d, _, err := b.document(tx, v.id)
		if err != nil {
			return err
		}
		if err := put(z, visitFolder+v.uid+visitExt, withHull(d)); err != nil {
			return err
		}
		for _, p := range v.photos {
			if packed[p.sha256] {
				continue
			}
			packed[p.sha256] = true
			var data []byte
			if err := tx.QueryRow("SELECT jpeg FROM photos WHERE visit_id = ? AND sha256 = ?", v.id, p.sha256).Scan(&data); err != nil {
				return err
			}
			if err := put(z, photoFolder+p.sha256+photoExt, data); err != nil {
				return err
			}
		}
	}
	return nil
}

// withHull is a visit file that holds its hull, and so needs nothing beside it.
func withHull(d visit.Document) []byte {
	v, h := d.Visit, d.Hull
	v.HullName, v.Embedded = "", &h
	return visit.Encode(v)
}

// onBoat is a visit file without the hull in it, to compare visits by.
func onBoat(d visit.Document) (visitFile, hullFile string) {
	v := d.Visit
	v.HullName, v.Embedded = d.Hull.Name, nil
	return string(visit.Encode(v)), string(hulls.Encode(d.Hull))
}

func put(z *zip.Writer, name string, data []byte) error {
	w, err := z.Create(name)
	if err == nil {
		_, err = w.Write(data)
	}
	return err
}
