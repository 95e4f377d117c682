package logbook

// This file attaches a photo that lies in a file.

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"unicode"
)

// AddPhotoFile is AddPhoto of a file; without a caption its name stands for one.
func (b *Book) AddPhotoFile(id VisitID, path, caption string) (PhotoID, error) {
	data, err := readPhotoFile(path)
	if err != nil {
		return 0, err
	}
	if caption == "" {
		caption = captionOf(path)
	}
	photo, err := b.AddPhoto(id, data, caption)
	var t *Trouble
	if errors.As(err, &t) && errors.Is(err, ErrRefused) {
		of := *t
		of.File = path
		return 0, &of
	}
	return photo, err
}

// captionOf is a file's name without its ending, as far as it can be shown.
func captionOf(path string) string {
	name := filepath.Base(path)
	name = strings.Map(func(r rune) rune {
		if !unicode.IsPrint(r) {
			return -1
		}
		return r
	}, strings.ToValidUTF8(strings.TrimSuffix(name, filepath.Ext(name)), ""))
	for len(name) > longestText {
		runes := []rune(name)
		name = string(runes[:len(runes)-1])
	}
	return name
}

// readPhotoFile reads a file that is no larger than a photo.
func readPhotoFile(path string) ([]byte, error) {
	cannot := func(what string) error {
		return refused("photo", what, "a photo of at most 64 MB", "name a photo that can be read")
	}
	of := func(err error) error {
		t := err.(*Trouble)
		t.File = path
		return t
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, of(cannot("a file that cannot be opened"))
	}
	defer f.Close()
	if info, err := f.Stat(); err != nil || !info.Mode().IsRegular() {
		return nil, of(cannot("no file"))
	}
	data, err := io.ReadAll(io.LimitReader(f, mostPhotoBytes+1))
	switch {
	case err != nil:
		return nil, of(cannot("a file that cannot be read"))
	case len(data) > mostPhotoBytes:
		return nil, of(cannot(fmt.Sprintf("more than %d bytes", mostPhotoBytes)))
	}
	return data, nil
}
