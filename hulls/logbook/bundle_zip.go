package logbook

// This file looks a zip file over before anything in it is used: no name but
// those of a bundle, no size but what a bundle may have, nothing twice, nothing
// hidden in or under another. What is refused is named.

import (
	"archive/zip"
	"cmp"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"slices"
	"strings"

	"aligner/hulls"
	"aligner/hulls/strictjson"
	"aligner/hulls/visit"
)

// Bounds of a bundle. A boat seen every week for fifty years, with some photos
// each time, stays below them.
const (
	mostPacked      = 1 << 30 // bytes of the file
	mostUnpacked    = 1 << 30 // bytes of all it holds
	mostTexts       = 1 << 27 // of that, texts: they are held in memory until they are imported
	mostEntries     = 20_000
	mostManifest    = 8 << 20
	mostBundledJPEG = 8 << 20
	mostVisitFile   = visit.MaxFileBytes
	// A text that shrinks to less than a part in so many holds nothing that was
	// typed. Small ones may.
	mostShrunk    = 200
	freelyShrunk  = 64 << 10
	leastHeader   = 30 // bytes before an entry's data, its name not counted (APPNOTE.TXT 4.3.7)
	flagEncrypted = 1  // APPNOTE.TXT 4.4.4
)

// archive is a zip file that was looked over.
type archive struct {
	file    string // as the caller named it
	entries map[string]*zip.File
}

// refuse tells of an entry, or of the whole with "".
func (a *archive) refuse(entry, value, limit, mend string) error {
	return refusedIn(a.file, entry, value, limit, mend)
}

func refusedIn(file, place, value, limit, mend string) error {
	return &Trouble{ErrRefused, hulls.Fault{File: file, Place: place, Value: value, Limit: limit, Mend: mend}}
}

const exportAgain = "export the hull again"

// openArchive looks a zip file over.
func openArchive(r io.ReaderAt, size int64, file string) (*archive, error) {
	a := &archive{file: file, entries: map[string]*zip.File{}}
	if size > mostPacked {
		return nil, a.refuse("", fmt.Sprintf("%d bytes", size), fmt.Sprintf("at most %d", mostPacked), exportAgain)
	}
	z, err := zip.NewReader(r, size)
	if err != nil && !errors.Is(err, zip.ErrInsecurePath) { // such paths are told below, by name
		return nil, a.refuse("", "no zip file ("+err.Error()+")", "a bundle as the program exports it", exportAgain)
	}
	if len(z.File) > mostEntries {
		return nil, a.refuse("", fmt.Sprintf("%d entries", len(z.File)), fmt.Sprintf("at most %d", mostEntries), exportAgain)
	}
	all, texts := uint64(0), uint64(0)
	for _, f := range z.File {
		if err := a.lookAt(f); err != nil {
			return nil, err
		}
		if all += f.UncompressedSize64; all > mostUnpacked {
			return nil, a.refuse(f.Name, "more than 1 GB unpacked", "at most 1 GB in all", exportAgain)
		}
		if !strings.HasPrefix(f.Name, photoFolder) {
			if texts += f.UncompressedSize64; texts > mostTexts {
				return nil, a.refuse(f.Name, "more than 128 MB of texts", "at most 128 MB in all", exportAgain)
			}
		}
		a.entries[f.Name] = f
	}
	return a, a.apart(z.File)
}

// lookAt judges one entry by what its header says.
func (a *archive) lookAt(f *zip.File) error {
	most, ok := mostBytesOf(f.Name)
	switch {
	case strings.HasPrefix(f.Name, "/"), strings.Contains(f.Name, `\`), strings.Contains(f.Name, ":"), !fs.ValidPath(strings.TrimSuffix(f.Name, "/")):
		return a.refuse(f.Name, "a path that leads out of the bundle", "names within it", "do not use this file")
	case !ok:
		return a.refuse(f.Name, "a file that belongs to no bundle", "bundle.json, boat.hull.json, visits/UID.visit.json and photos/SHA256.jpg", exportAgain)
	case a.entries[f.Name] != nil:
		return a.refuse(f.Name, "the file twice", "each file once", exportAgain)
	case !f.Mode().IsRegular():
		return a.refuse(f.Name, "a link or device", "plain files", "do not use this file")
	case f.Flags&flagEncrypted != 0:
		return a.refuse(f.Name, "a file under a password", "plain files", exportAgain)
	case f.Method != zip.Store && f.Method != zip.Deflate:
		return a.refuse(f.Name, fmt.Sprintf("packing method %d", f.Method), "stored or deflated files", exportAgain)
	case f.UncompressedSize64 > most:
		return a.refuse(f.Name, fmt.Sprintf("%d bytes", f.UncompressedSize64), fmt.Sprintf("at most %d", most), exportAgain)
	case f.UncompressedSize64 > freelyShrunk && f.UncompressedSize64/mostShrunk > f.CompressedSize64:
		return a.refuse(f.Name, fmt.Sprintf("%d bytes packed into %d", f.UncompressedSize64, f.CompressedSize64),
			fmt.Sprintf("at most %d to 1", mostShrunk), "do not use this file")
	}
	return nil
}

// mostBytesOf knows the names a bundle may have.
func mostBytesOf(name string) (most uint64, ok bool) {
	switch {
	case name == manifestName:
		return mostManifest, true
	case name == boatName:
		return hulls.MaxFileBytes, true
	}
	if uid, ok := between(name, visitFolder, visitExt); ok && isUID(uid) {
		return mostVisitFile, true
	}
	if sum, ok := between(name, photoFolder, photoExt); ok && isHex(sum, 64) {
		return mostBundledJPEG, true
	}
	return 0, false
}

func between(s, before, after string) (string, bool) {
	s, ok := strings.CutPrefix(s, before)
	if !ok {
		return "", false
	}
	return strings.CutSuffix(s, after)
}

// apart refuses entries whose data overlap: a small file could unpack to a large
// one by telling the same bytes many times.
func (a *archive) apart(files []*zip.File) error {
	type span struct {
		name     string
		from, to int64
	}
	spans := make([]span, 0, len(files))
	for _, f := range files {
		data, err := f.DataOffset()
		if err != nil {
			return a.refuse(f.Name, "no beginning of the file ("+err.Error()+")", "a whole bundle", exportAgain)
		}
		spans = append(spans, span{f.Name, data - leastHeader - int64(len(f.Name)), data + int64(f.CompressedSize64)})
	}
	slices.SortFunc(spans, func(x, y span) int { return cmp.Or(cmp.Compare(x.from, y.from), cmp.Compare(x.to, y.to)) })
	for i := 1; i < len(spans); i++ {
		if spans[i].from < spans[i-1].to {
			return a.refuse(spans[i].name, "a file laid over "+strictjson.Quoted(spans[i-1].name), "files one after another", "do not use this file")
		}
	}
	return nil
}

// read unpacks one entry, no more of it than its header says.
func (a *archive) read(name string) ([]byte, error) {
	f := a.entries[name]
	if f == nil {
		return nil, a.refuse(name, "nothing", "the file", exportAgain)
	}
	r, err := f.Open()
	if err != nil {
		return nil, a.refuse(name, "a file that does not unpack ("+err.Error()+")", "a whole bundle", exportAgain)
	}
	defer r.Close()
	data, err := io.ReadAll(io.LimitReader(r, int64(f.UncompressedSize64)+1))
	switch {
	case err != nil:
		return nil, a.refuse(name, "a file that does not unpack ("+err.Error()+")", "a whole bundle", exportAgain)
	case uint64(len(data)) != f.UncompressedSize64:
		return nil, a.refuse(name, "another size than it says", "a whole bundle", exportAgain)
	}
	return data, nil
}
