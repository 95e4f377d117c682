package main

// This file keeps the window's edits in the logbook.

import (
	"reflect"
	"time"

	"aligner/cmd/aligner/window"
	"aligner/hulls"
	"aligner/hulls/logbook"
)

// logbookKeeper opens the logbook when something is to be kept.
type logbookKeeper struct{ book *logbook.Book }

// open opens the logbook at its place.
func (k *logbookKeeper) open() error {
	if k.book != nil {
		return nil
	}
	b, err := openLogbook(logbook.Write)
	if err != nil {
		return err
	}
	k.book = b
	return nil
}

// Begin enters the hull, unless it is there as it is, and begins a visit today.
func (k *logbookKeeper) Begin(h hulls.Hull) (window.Past, error) {
	if err := k.open(); err != nil {
		return nil, err
	}
	id, err := k.hull(h)
	if err != nil {
		return nil, err
	}
	v, err := k.book.NewVisit(id, time.Now().Format(time.DateOnly))
	if err != nil {
		return nil, err
	}
	s, err := k.book.Begin(v)
	if err != nil {
		return nil, err
	}
	return s, nil
}

// hull finds a hull by name and content, or enters it.
func (k *logbookKeeper) hull(h hulls.Hull) (logbook.HullID, error) {
	lines, err := k.book.Hulls(logbook.HullQuery{Words: h.Name})
	if err != nil {
		return 0, err
	}
	for _, line := range lines {
		if line.Name != h.Name {
			continue
		}
		if kept, err := k.book.Hull(line.ID); err == nil && reflect.DeepEqual(kept.Hull, h) {
			return line.ID, nil
		}
	}
	return k.book.NewHull(h)
}

// latest is the visit worked on last, or nil.
func (k *logbookKeeper) latest() window.Past {
	if k.open() != nil {
		return nil
	}
	id, ok, err := k.book.Latest()
	if err != nil || !ok {
		return nil
	}
	s, err := k.book.Begin(id)
	if err != nil {
		return nil
	}
	return s
}

func (k *logbookKeeper) close() {
	if k.book != nil {
		k.book.Close()
	}
}
