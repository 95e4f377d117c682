package logbook

// This file throws any bytes at the readers of bundles.

import (
	"bytes"
	"reflect"
	"strings"
	"testing"
)

// Whatever the bytes, reading a bundle ends; one that is taken arrives whole and
// is exported again as a bundle that is the same.
func FuzzBundle(f *testing.F) {
	h := aHostile(f)
	f.Add(h.good)
	for _, c := range hostileBundles(h) {
		if len(c.data) < 100_000 {
			f.Add(c.data)
		}
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		from, err := ReadBundle(bytes.NewReader(data), int64(len(data)), "fuzz.zip")
		if err != nil {
			if strings.ContainsAny(err.Error(), "\n\r") {
				t.Errorf("told on two lines: %q", err)
			}
			return
		}
		b := inFolder(t)
		c, err := b.Import(t.Context(), from, KeepOurs)
		if err != nil {
			t.Fatalf("found sound, and not imported: %v", err)
		}
		again, err := b.Compare(t.Context(), bundleOf(t, exported(t, b, c.ID)))
		if err != nil || again.Any(TakeTheirs) {
			t.Errorf("exported again it differs: %+v (%v)", again, err)
		}
	})
}

// The same for the list of a bundle as any text: what is taken is written again
// as a list that reads the same.
func FuzzManifest(f *testing.F) {
	h := aHostile(f)
	files := unpacked(f, h.good)
	f.Add(files[manifestName])
	f.Add("{}")
	f.Add(`{"format": "bundle/1", "hull": "` + h.uid + `", "visits": [], "photos": []}`)
	read := func(t *testing.T, manifest string) (*Bundle, error) {
		zipped := packed(t, map[string]string{manifestName: manifest})
		a, err := openArchive(bytes.NewReader(zipped), int64(len(zipped)), "fuzz.zip")
		if err != nil {
			return nil, err
		}
		b := &Bundle{archive: a}
		return b, b.readManifest()
	}
	f.Fuzz(func(t *testing.T, manifest string) {
		b, err := read(t, manifest)
		if err != nil {
			return
		}
		again, err := read(t, string(b.listed.encode()))
		if err != nil || !reflect.DeepEqual(b.listed, again.listed) {
			t.Errorf("%+v is written as a list that reads %+v (%v)", b.listed, again.listed, err)
		}
	})
}
