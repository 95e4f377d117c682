package logbook

// This file keeps boats that are being typed in beside the logbook: a draft is no
// boat yet, so it has no place among the hulls, but nothing typed is lost.

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"aligner/hulls"
)

// DraftID names a draft: that of a boat of the logbook, or of a new one.
type DraftID string

// DraftOf is the one draft of a boat of the logbook.
func DraftOf(id HullID) DraftID { return DraftID(fmt.Sprintf("boat-%d", id)) }

// NewDraftID names the draft of a new boat; no other has it.
func NewDraftID() DraftID { return DraftID("new-" + newUID()[:12]) }

// Hull is the boat of the logbook a draft is of; 0: a new one.
func (d DraftID) Hull() (id HullID) {
	if rest, ok := strings.CutPrefix(string(d), "boat-"); ok {
		fmt.Sscan(rest, &id)
	}
	return id
}

const draftEnd = ".hull.json"

// draftPath is where a draft lies.
func (b *Book) draftPath(id DraftID) string {
	return b.path + "-draft-" + strings.Map(func(r rune) rune {
		if r == '-' || r >= '0' && r <= '9' || r >= 'a' && r <= 'z' {
			return r
		}
		return -1
	}, string(id)) + draftEnd
}

// KeepDraft puts a draft on the disk, in place of what it was before.
func (b *Book) KeepDraft(id DraftID, h hulls.Hull) error {
	path := b.draftPath(id)
	f, err := os.Create(path + ".part")
	if err != nil {
		return b.told(err)
	}
	_, err = f.Write(hulls.Encode(h))
	if err == nil {
		err = f.Sync()
	}
	if closed := f.Close(); err == nil {
		err = closed
	}
	if err == nil {
		err = os.Rename(f.Name(), path)
	}
	if err != nil {
		os.Remove(f.Name())
	}
	return b.told(err)
}

// Draft is a draft kept; ok is false where there is none.
func (b *Book) Draft(id DraftID) (h hulls.Hull, ok bool, err error) {
	data, err := os.ReadFile(b.draftPath(id))
	if errors.Is(err, fs.ErrNotExist) {
		return h, false, nil
	}
	if err != nil {
		return h, false, b.told(err)
	}
	h, err = hulls.ParseDraft(data, b.draftPath(id))
	return h, err == nil, err
}

// Drafts are all there are that can be read, those written last first.
func (b *Book) Drafts() []DraftID {
	paths, _ := filepath.Glob(escaped(b.path) + "-draft-*" + draftEnd) // a bad pattern has no files
	slices.SortStableFunc(paths, func(x, y string) int { return lastWritten(y) - lastWritten(x) })
	var all []DraftID
	for _, path := range paths {
		id := DraftID(strings.TrimSuffix(strings.TrimPrefix(path, b.path+"-draft-"), draftEnd))
		if _, ok, err := b.Draft(id); ok && err == nil {
			all = append(all, id)
		}
	}
	return all
}

// escaped is a path in which no letter means more than itself to a pattern.
func escaped(path string) string {
	return strings.NewReplacer("*", `\*`, "?", `\?`, "[", `\[`).Replace(path)
}

// lastWritten is when, in milliseconds.
func lastWritten(path string) int {
	info, err := os.Stat(path)
	if err != nil {
		return 0
	}
	return int(info.ModTime().UnixMilli())
}

// DropDraft forgets a draft: it has become a boat, or is not wanted.
func (b *Book) DropDraft(id DraftID) error {
	if err := os.Remove(b.draftPath(id)); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return b.told(err)
	}
	return nil
}
