package logbook

// This file keeps the boat that is being typed in beside the logbook: a draft is
// no boat yet, so it has no place among the hulls, but nothing typed is lost.

import (
	"errors"
	"io/fs"
	"os"

	"aligner/hulls"
)

// draftPath is where the one draft lies.
func (b *Book) draftPath() string { return b.path + "-draft.hull.json" }

// KeepDraft puts a draft on the disk, in place of the one before.
func (b *Book) KeepDraft(h hulls.Hull) error {
	path := b.draftPath()
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

// Draft is the draft kept; ok is false where there is none that can be read.
func (b *Book) Draft() (h hulls.Hull, ok bool, err error) {
	data, err := os.ReadFile(b.draftPath())
	if errors.Is(err, fs.ErrNotExist) {
		return h, false, nil
	}
	if err != nil {
		return h, false, b.told(err)
	}
	h, err = hulls.ParseDraft(data, b.draftPath())
	return h, err == nil, err
}

// DropDraft forgets the draft: it has become a boat, or is not wanted.
func (b *Book) DropDraft() error {
	if err := os.Remove(b.draftPath()); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return b.told(err)
	}
	return nil
}
