package logbook

// This file reads a bundle and judges all of it before any of it is used.

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"image/jpeg"
	"io"
	"slices"
	"time"

	"aligner/hulls"
	"aligner/hulls/strictjson"
	"aligner/hulls/visit"
)

// Bundle is a hull with its visits and photos, read and found sound. What it was
// read from must stay open until it is imported.
type Bundle struct {
	archive *archive
	listed  bundled
	hull    hulls.Hull
	visits  map[string]visit.Document // by uid
	photos  map[string]jpegPhoto      // by sha256, without their data
}

// Hull is the boat as it was measured last.
func (b *Bundle) Hull() hulls.Hull { return b.hull }

var manifestFormat = &strictjson.Format{Noun: "bundle", MaxBytes: mostManifest}

// ReadBundle reads a bundle. The error is a *Trouble or a *hulls.Fault that names
// the file and the place in it.
func ReadBundle(r io.ReaderAt, size int64, file string) (*Bundle, error) {
	a, err := openArchive(r, size, file)
	if err != nil {
		return nil, err
	}
	b := &Bundle{archive: a, visits: map[string]visit.Document{}, photos: map[string]jpegPhoto{}}
	if err := b.readManifest(); err != nil {
		return nil, err
	}
	if err := b.complete(); err != nil {
		return nil, err
	}
	data, err := a.read(boatName)
	if err != nil {
		return nil, err
	}
	if b.hull, err = hulls.Parse(data, file+"/"+boatName); err != nil {
		return nil, err
	}
	for _, uid := range b.listed.visits {
		if b.visits[uid], err = a.readVisit(visitFolder + uid + visitExt); err != nil {
			return nil, err
		}
	}
	for _, listed := range b.listed.photos {
		if _, read := b.photos[listed.sha256]; read {
			continue
		}
		p, err := a.readPhoto(listed.sha256)
		if err != nil {
			return nil, err
		}
		p.data = nil // read again when it is imported: a bundle may hold more than fits in memory
		b.photos[listed.sha256] = p
	}
	return b, nil
}

func (b *Bundle) readManifest() error {
	data, err := b.archive.read(manifestName)
	if err != nil {
		return err
	}
	file := b.archive.file + "/" + manifestName
	root, fault := strictjson.Parse(data, file, manifestFormat)
	if fault != nil {
		return fault
	}
	d := &strictjson.Decoder{File: file, Format: manifestFormat}
	o := d.Object(root, "", "format", "hull", "visits", "photos")
	if format := o.Text("format"); len(d.Faults) == 0 && format != FormatBundle {
		d.Refuse("format", root.Member("format").Line, strictjson.Quoted(format), strictjson.Quoted(FormatBundle), "use the program that exported it")
	}
	m := &b.listed
	m.hull = uidOf(d, o, "hull")
	visits, path := o.List("visits", mostEntries)
	for i, n := range visits {
		v := d.Object(n, fmt.Sprintf("%s[%d]", path, i), "visit")
		m.visits = append(m.visits, uidOf(d, v, "visit"))
	}
	photos, path := o.List("photos", mostEntries)
	for i, n := range photos {
		p := d.Object(n, fmt.Sprintf("%s[%d]", path, i), "visit", "sha256", "added", "caption?")
		m.photos = append(m.photos, photoOf(d, p))
	}
	if len(d.Faults) > 0 {
		return &d.Faults[0]
	}
	return nil
}

func uidOf(d *strictjson.Decoder, o strictjson.Object, key string) string {
	n := o.Of(key, strictjson.IsString)
	if n != nil && !isUID(n.Text) {
		d.Refuse(strictjson.Join(o.Path, key), n.Line, n.Show(), "32 digits of 0 to 9 and a to f", exportAgain)
	}
	return o.Text(key)
}

func photoOf(d *strictjson.Decoder, o strictjson.Object) bundledPhoto {
	p := bundledPhoto{visit: uidOf(d, o, "visit"), sha256: o.Text("sha256"), added: o.Text("added"), caption: o.Text("caption")}
	if o.Node == nil {
		return p
	}
	if !isHex(p.sha256, 64) {
		d.Refuse(strictjson.Join(o.Path, "sha256"), o.Node.Line, strictjson.Quoted(p.sha256), "64 digits of 0 to 9 and a to f", exportAgain)
	}
	if _, err := time.Parse(time.RFC3339, p.added); err != nil {
		d.Refuse(strictjson.Join(o.Path, "added"), o.Node.Line, strictjson.Quoted(p.added), "a moment such as 2026-05-14T09:00:00Z", exportAgain)
	}
	if !plainLine(p.caption, longestText) {
		d.Refuse(strictjson.Join(o.Path, "caption"), o.Node.Line, strictjson.Quoted(p.caption), "one line of at most 200 bytes", "shorten it")
	}
	return p
}

// complete holds what is listed against what is there.
func (b *Bundle) complete() error {
	wanted := map[string]bool{manifestName: true, boatName: true}
	for _, uid := range b.listed.visits {
		if name := visitFolder + uid + visitExt; wanted[name] {
			return b.archive.refuse(manifestName, "visit "+uid+" twice", "each visit once", exportAgain)
		}
		wanted[visitFolder+uid+visitExt] = true
	}
	seen := map[[2]string]bool{}
	for _, p := range b.listed.photos {
		switch key := [2]string{p.visit, p.sha256}; {
		case !slices.Contains(b.listed.visits, p.visit):
			return b.archive.refuse(manifestName, "a photo of visit "+p.visit, "photos of the visits listed", exportAgain)
		case seen[key]:
			return b.archive.refuse(manifestName, "photo "+p.sha256+" twice", "each photo of a visit once", exportAgain)
		default:
			seen[key] = true
		}
		wanted[photoFolder+p.sha256+photoExt] = true
	}
	for name := range b.archive.entries {
		if !wanted[name] {
			return b.archive.refuse(name, "a file that bundle.json does not list", "what it lists and no more", exportAgain)
		}
	}
	for name := range wanted {
		if b.archive.entries[name] == nil {
			return b.archive.refuse(name, "nothing", "the file, which bundle.json lists", exportAgain)
		}
	}
	return nil
}

// readVisit reads a visit that holds its hull.
func (a *archive) readVisit(name string) (visit.Document, error) {
	data, err := a.read(name)
	if err != nil {
		return visit.Document{}, err
	}
	file := a.file + "/" + name
	d, report := visit.Open(data, file, func(hull string) (hulls.Hull, error) {
		return hulls.Hull{}, &hulls.Fault{File: file, Place: "hull", Value: strictjson.Quoted(hull), Limit: "the hull itself", Mend: exportAgain}
	})
	return d, report.Err()
}

// readPhoto reads a photo and sees that it is the picture its name says, no
// larger than one is kept.
func (a *archive) readPhoto(sum string) (jpegPhoto, error) {
	name := photoFolder + sum + photoExt
	data, err := a.read(name)
	if err != nil {
		return jpegPhoto{}, err
	}
	p := jpegPhoto{data: data}
	if found := sha256.Sum256(data); hex.EncodeToString(found[:]) != sum {
		return p, a.refuse(name, "another photo than its name says", "the one with that SHA-256", exportAgain)
	}
	head, err := jpeg.DecodeConfig(bytes.NewReader(data))
	switch {
	case err != nil:
		return p, a.refuse(name, "no JPEG ("+err.Error()+")", "a photo as the program keeps it", exportAgain)
	case head.Width > MostPhotoPX || head.Height > MostPhotoPX:
		return p, a.refuse(name, fmt.Sprintf("%d x %d pixels", head.Width, head.Height), fmt.Sprintf("at most %d either way", MostPhotoPX), exportAgain)
	}
	if _, err := jpeg.Decode(bytes.NewReader(data)); err != nil {
		return p, a.refuse(name, "a JPEG that cannot be read ("+err.Error()+")", "a photo as the program keeps it", exportAgain)
	}
	p.widthPX, p.heightPX = head.Width, head.Height
	return p, nil
}
