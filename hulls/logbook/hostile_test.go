package logbook

// This file tests bundles made to do harm, or damaged: each is refused by name
// in one line, and nothing changes.

import (
	"archive/zip"
	"bytes"
	"crypto/sha256"
	"encoding/binary"
	"encoding/hex"
	"fmt"
	"hash/crc32"
	"io/fs"
	"slices"
	"strings"
	"testing"
)

// unpacked are the files of a bundle.
func unpacked(t testing.TB, data []byte) map[string]string {
	t.Helper()
	a, err := openArchive(bytes.NewReader(data), int64(len(data)), "bundle")
	if err != nil {
		t.Fatal(err)
	}
	files := map[string]string{}
	for name := range a.entries {
		text, err := a.read(name)
		if err != nil {
			t.Fatal(err)
		}
		files[name] = string(text)
	}
	return files
}

// packed is a zip file of some files.
func packed(t testing.TB, files map[string]string) []byte {
	t.Helper()
	return zipOf(t, func(z *zip.Writer) {
		var names []string
		for name := range files {
			names = append(names, name)
		}
		slices.Sort(names)
		for _, name := range names {
			if err := put(z, name, []byte(files[name])); err != nil {
				t.Fatal(err)
			}
		}
	})
}

func zipOf(t testing.TB, fill func(z *zip.Writer)) []byte {
	t.Helper()
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	fill(z)
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// rewrite is a bundle with its files changed.
func rewrite(t testing.TB, data []byte, change func(files map[string]string)) []byte {
	t.Helper()
	files := unpacked(t, data)
	change(files)
	return packed(t, files)
}

// hostile is a sound bundle and how it is spoilt.
type hostile struct {
	t     testing.TB
	good  []byte
	names struct{ visit, photo string }
	uid   string // of that visit
}

// change spoils the files, and the zip file is made anew.
func (h *hostile) change(change func(files map[string]string)) []byte {
	return rewrite(h.t, h.good, change)
}

// text replaces in one file, where it must occur.
func (h *hostile) text(name, old, new string) []byte {
	return h.change(func(files map[string]string) {
		if !strings.Contains(files[name], old) {
			h.t.Fatalf("%s holds no %q", name, old)
		}
		files[name] = strings.Replace(files[name], old, new, 1)
	})
}

// also adds entries with their own headers after the sound ones.
func (h *hostile) also(more ...*zip.FileHeader) []byte {
	return zipOf(h.t, func(z *zip.Writer) {
		for name, text := range unpacked(h.t, h.good) {
			if err := put(z, name, []byte(text)); err != nil {
				h.t.Fatal(err)
			}
		}
		for _, header := range more {
			w, err := z.CreateHeader(header)
			if err != nil {
				h.t.Fatal(err)
			}
			if !strings.HasSuffix(header.Name, "/") {
				w.Write([]byte("harm"))
			}
		}
	})
}

func (h *hostile) named(name string) []byte { return h.also(&zip.FileHeader{Name: name}) }

// bytes spoils the zip file itself at a signature's n-th occurrence.
func (h *hostile) bytes(signature string, spoil func(at []byte)) []byte {
	data := bytes.Clone(h.good)
	i := bytes.Index(data, []byte(signature))
	if i < 0 {
		h.t.Fatalf("no %q", signature)
	}
	spoil(data[i:])
	return data
}

// The signatures and offsets of a zip file's records (APPNOTE.TXT 4.3).
const (
	localHeader   = "PK\x03\x04"
	centralHeader = "PK\x01\x02"
	endRecord     = "PK\x05\x06"
)

// raw is a sound bundle with one file's packed data and sizes as given.
func (h *hostile) raw(name string, method uint16, data []byte, size uint64, sum uint32) []byte {
	return zipOf(h.t, func(z *zip.Writer) {
		for other, text := range unpacked(h.t, h.good) {
			if other == name {
				continue
			}
			if err := put(z, other, []byte(text)); err != nil {
				h.t.Fatal(err)
			}
		}
		w, err := z.CreateRaw(&zip.FileHeader{Name: name, Method: method, CompressedSize64: uint64(len(data)), UncompressedSize64: size, CRC32: sum})
		if err != nil {
			h.t.Fatal(err)
		}
		w.Write(data)
	})
}

// photo has the bundle's photo be other bytes, under their own name.
func (h *hostile) photo(data []byte) []byte {
	return h.change(func(files map[string]string) {
		sum := sha256.Sum256(data)
		old, _ := between(h.names.photo, photoFolder, photoExt)
		delete(files, h.names.photo)
		files[photoFolder+hex.EncodeToString(sum[:])+photoExt] = string(data)
		files[manifestName] = strings.ReplaceAll(files[manifestName], old, hex.EncodeToString(sum[:]))
	})
}

func aHostile(t testing.TB) *hostile {
	b := inFolder(t)
	h := &hostile{t: t, good: exported(t, b, aBoat(t, b))}
	for name := range unpacked(t, h.good) {
		if uid, ok := between(name, visitFolder, visitExt); ok {
			h.names.visit, h.uid = name, uid
		}
		if strings.HasPrefix(name, photoFolder) {
			h.names.photo = name
		}
	}
	return h
}

// hostileBundles by what is wrong with each; want is part of the refusal.
func hostileBundles(h *hostile) []struct {
	what, want string
	data       []byte
} {
	zeros := func(n int) string { return strings.Repeat(" ", n) }
	bomb := packed(h.t, map[string]string{"x": zeros(3 << 20)}) // for its packed data
	body := func(zipped []byte) []byte {
		n := binary.LittleEndian.Uint32(zipped[bytes.Index(zipped, []byte(centralHeader))+20:])
		start := leastHeader + 1 // the name is one letter long
		return zipped[start : start+int(n)]
	}(bomb)
	huge := asJPEG(h.t, quarters(MostPhotoPX+8, 8))
	jpegs := asJPEG(h.t, quarters(40, 30))
	return []struct {
		what, want string
		data       []byte
	}{
		// The file as a whole.
		{"nothing", "no zip file", nil},
		{"a text", "no zip file", []byte("dear diary")},
		{"cut off", "no zip file", h.good[:len(h.good)*2/3]},
		{"its end lost", "no zip file", h.good[:len(h.good)-5]},
		{"its beginning lost", "", h.good[40:]},
		{"empty zip", "found nothing; wanted the file", packed(h.t, nil)},
		{"a picture", "no zip file", jpegs},
		{"too many entries", "entries", zipOf(h.t, func(z *zip.Writer) {
			for i := range mostEntries + 1 {
				put(z, fmt.Sprint("photos/", i), nil)
			}
		})},
		{"directory that lies of its length", "no zip file", h.bytes(endRecord, func(at []byte) { binary.LittleEndian.PutUint16(at[10:], 9999) })},
		{"directory elsewhere", "", h.bytes(endRecord, func(at []byte) { binary.LittleEndian.PutUint32(at[16:], 0xfffffff0) })},
		{"an entry far away", "", h.bytes(centralHeader, func(at []byte) { binary.LittleEndian.PutUint32(at[42:], 0x7ffffff0) })},

		// Paths.
		{"a path up", "leads out", h.named("../evil.hull.json")},
		{"a path up and down", "leads out", h.named("visits/../../evil")},
		{"a path from the root", "leads out", h.named("/etc/passwd")},
		{"a drive", "leads out", h.named(`C:\evil.exe`)},
		{"a drive without its slash", "leads out", h.named("C:evil")},
		{"backslashes", "leads out", h.named(`visits\` + h.uid + visitExt)},
		{"backslashes up", "leads out", h.named(`..\..\evil`)},
		{"a network path", "leads out", h.named("//server/share/evil")},
		{"a dot", "leads out", h.named("./bundle.json")},
		{"an empty part", "leads out", h.named("visits//x")},
		{"an empty name", "leads out", h.named("")},
		{"another stream", "leads out", h.named("bundle.json:evil")},
		{"a nought byte", "belongs to no bundle", h.named("bundle.json\x00.exe")},
		{"a line break", "belongs to no bundle", h.named("bundle\n.json")},
		{"letters turned round", "belongs to no bundle", h.named("\u202enosj.eldnub")},
		{"no UTF-8", "", h.named("\xff\xfe")},
		{"a very long name", "", h.named(strings.Repeat("x", 60000))},
		{"a program", "belongs to no bundle", h.named("autorun.exe")},
		{"a hidden file", "belongs to no bundle", h.named(".bashrc")},
		{"a folder", "belongs to no bundle", h.named("photos/")},
		{"a bundle in a bundle", "belongs to no bundle", h.named("inner.zip")},
		{"a visit by no uid", "belongs to no bundle", h.named("visits/first.visit.json")},
		{"a uid in capitals", "belongs to no bundle", h.named("visits/" + strings.Repeat("A", 32) + visitExt)},
		{"capitals", "belongs to no bundle", h.named("BUNDLE.JSON")},
		{"a link", "a link or device", h.also(func() *zip.FileHeader {
			f := &zip.FileHeader{Name: "photos/" + strings.Repeat("a", 64) + photoExt}
			f.SetMode(fs.ModeSymlink | 0o777)
			return f
		}())},
		{"a device", "a link or device", h.also(func() *zip.FileHeader {
			f := &zip.FileHeader{Name: "photos/" + strings.Repeat("a", 64) + photoExt}
			f.SetMode(fs.ModeDevice | 0o666)
			return f
		}())},

		// Entries.
		{"a file twice", "the file twice", h.named(manifestName)},
		{"a visit twice", "the file twice", h.named(h.names.visit)},
		{"a password", "under a password", h.bytes(centralHeader, func(at []byte) { at[8] |= 1 })},
		{"an unknown method", "packing method 99", h.raw(boatName, 99, []byte("x"), 1, 0)},
		{"LZMA", "packing method 14", h.raw(boatName, 14, []byte("x"), 1, 0)},
		{"a bomb", "packed into", h.raw(h.names.visit, zip.Deflate, body, 3<<20, crc32.ChecksumIEEE([]byte(zeros(3<<20))))},
		{"a bomb that hides its size", "does not unpack", h.raw(h.names.visit, zip.Deflate, body, 1000, crc32.ChecksumIEEE([]byte(zeros(3<<20))))},
		{"a size of 16 million terabytes", "bytes; wanted at most", h.raw(h.names.visit, zip.Deflate, body, 1<<63, 0)},
		{"a manifest too large", "bytes; wanted at most", h.raw(manifestName, zip.Store, []byte("{}"), mostManifest+1, 0)},
		{"a hull too large", "bytes; wanted at most", h.raw(boatName, zip.Store, []byte("{}"), 2<<20, 0)},
		{"too much in all", "more than 128 MB of texts", zipOf(h.t, func(z *zip.Writer) {
			for i := range mostTexts/mostVisitFile + 1 {
				w, err := z.CreateRaw(&zip.FileHeader{Name: fmt.Sprintf("visits/%032x.visit.json", i), Method: zip.Deflate, CompressedSize64: 100 << 10, UncompressedSize64: mostVisitFile})
				if err != nil {
					h.t.Fatal(err)
				}
				w.Write(make([]byte, 100<<10))
			}
		})},
		{"a wrong checksum", "does not unpack", h.raw(boatName, zip.Store, []byte("{}"), 2, 7)},
		{"shorter than it says", "", h.raw(boatName, zip.Store, []byte("{}"), 3, 0)},
		{"files laid over each other", "laid over", h.over()},

		// The list.
		{"no list", "bundle.json: found nothing", h.change(func(f map[string]string) { delete(f, manifestName) })},
		{"no hull", "boat.hull.json: found nothing", h.change(func(f map[string]string) { delete(f, boatName) })},
		{"a visit lacking", "found nothing; wanted the file, which", h.change(func(f map[string]string) { delete(f, h.names.visit) })},
		{"a photo lacking", "found nothing; wanted the file, which", h.change(func(f map[string]string) { delete(f, h.names.photo) })},
		{"a visit not listed", "does not list", h.change(func(f map[string]string) {
			f[visitFolder+strings.Repeat("0", 32)+visitExt] = f[h.names.visit]
		})},
		{"a later format", `found "bundle/2"; wanted "bundle/1"`, h.text(manifestName, "bundle/1", "bundle/2")},
		{"an unknown key", "an unknown key", h.text(manifestName, `"format"`, `"run": "rm -rf /", "format"`)},
		{"a uid that is a path", "32 digits", h.text(manifestName, h.uid, "../../../../../../../../../evil0")},
		{"a visit listed twice", "twice", h.text(manifestName, `"visits": [`, `"visits": [{"visit": "`+h.uid+`"},`)},
		{"a photo of no visit", "a photo of visit", h.text(manifestName, `"photos": [`, `"photos": [{"visit": "`+strings.Repeat("0", 32)+`", "sha256": "`+strings.Repeat("0", 64)+`", "added": "2026-05-14T09:00:00Z"},`)},
		{"a photo by no sum", "64 digits", h.text(manifestName, `"photos": [`, `"photos": [{"visit": "`+h.uid+`", "sha256": "../x", "added": "2026-05-14T09:00:00Z"},`)},
		{"a photo of no moment", "a moment such as", h.text(manifestName, `"added": "2`, `"added": "soon 2`)},
		{"a caption of two lines", "one line", h.text(manifestName, `"caption": "`, `"caption": "\n`)},
		{"a caption too long", "at most 200", h.text(manifestName, `"caption": "`, `"caption": "`+strings.Repeat("x", 300))},
		{"a list of lists", "nested", h.change(func(f map[string]string) { f[manifestName] = strings.Repeat("[", 1000) })},
		{"a list that is none", "an object", h.change(func(f map[string]string) { f[manifestName] = "[]" })},
		{"null", "found null", h.change(func(f map[string]string) {
			f[manifestName] = `{"format": "bundle/1", "hull": null, "visits": [], "photos": []}`
		})},

		// What is listed.
		{"a hull that is none", "wanted", h.change(func(f map[string]string) { f[boatName] = "{}" })},
		{"an impossible hull", "found", h.text(boatName, `"length_mm": `, `"length_mm": -`)},
		{"a hull of NaN", "NaN", h.text(boatName, `"length_mm": `, `"length_mm": NaN, "x": `)},
		{"a visit that is none", "wanted", h.change(func(f map[string]string) { f[h.names.visit] = "{}" })},
		{"a visit without its hull", "wanted the hull itself", h.change(func(f map[string]string) {
			f[h.names.visit] = `{"format": "visit/1", "hull": "/etc/passwd", "date": ""}`
		})},
		{"a visit with a result", "an unknown key", h.text(h.names.visit, `"date"`, `"verdict": "within", "date"`)},
		{"a visit cut off", "cut off", h.change(func(f map[string]string) { f[h.names.visit] = f[h.names.visit][:200] })},
		{"a visit of half a letter", "UTF-8", h.text(h.names.visit, `"date"`, "\"note\": \"\xc3\", \"date\"")},
		{"a photo that is none", "no JPEG", h.photo([]byte("<script>"))},
		{"a photo of another kind", "no JPEG", h.photo([]byte("\x89PNG\r\n\x1a\n"))},
		{"a photo too wide", "pixels; wanted at most 1600", h.photo(huge)},
		{"a photo cut off", "cannot be read", h.photo(jpegs[:len(jpegs)-20])},
		{"a photo under another name", "another photo than its name says", h.change(func(f map[string]string) { f[h.names.photo] = string(jpegs) })},
	}
}

// over has two entries of the directory tell the same data.
func (h *hostile) over() []byte {
	data := packed(h.t, map[string]string{photoFolder + strings.Repeat("a", 64) + photoExt: "same", photoFolder + strings.Repeat("b", 64) + photoExt: "same"})
	at := bytes.LastIndex(data, []byte(centralHeader))
	binary.LittleEndian.PutUint32(data[at+42:], 0) // the second begins where the first does
	return data
}

func TestHostileBundles(t *testing.T) {
	h := aHostile(t)
	b := inFolder(t)
	aBoat(t, b)
	before := contents(t, b)
	all := hostileBundles(h)
	if len(all) < 60 {
		t.Errorf("only %d bundles", len(all))
	}
	for _, c := range all {
		from, err := ReadBundle(bytes.NewReader(c.data), int64(len(c.data)), "boat.zip")
		if err == nil {
			_, err = b.Import(t.Context(), from, TakeTheirs)
		}
		switch {
		case err == nil:
			t.Errorf("%s: imported", c.what)
		case !strings.HasPrefix(err.Error(), "boat.zip") || !strings.Contains(err.Error(), c.want) || strings.ContainsAny(err.Error(), "\n\r\x00") || len(err.Error()) > 1200:
			t.Errorf("%s:\n got %.300q\nwant %s", c.what, err, c.want)
		}
	}
	wantContents(t, b, before)
	if _, err := ReadBundle(bytes.NewReader(h.good), mostPacked+1, "boat.zip"); err == nil || !strings.Contains(err.Error(), "bytes; wanted at most") {
		t.Errorf("a file too large: %v", err)
	}
	bundleOf(t, h.good) // which is what all of them were made of
}
