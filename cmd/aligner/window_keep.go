package main

// This file keeps the window's edits in the logbook.

import (
	"errors"
	"reflect"
	"time"

	"aligner/cmd/aligner/form"
	"aligner/cmd/aligner/window"
	"aligner/hulls"
	"aligner/hulls/logbook"
)

// logbookKeeper opens the logbook when something is to be kept.
type logbookKeeper struct{ book *logbook.Book }

// Book is the logbook at its place; where it cannot be written, to be read.
func (k *logbookKeeper) Book() (*logbook.Book, error) {
	if k.book != nil {
		return k.book, nil
	}
	b, err := openLogbook(logbook.Write)
	if errors.Is(err, logbook.ErrReadOnly) {
		b, err = openLogbook(logbook.Read)
	}
	if err != nil {
		return nil, err
	}
	k.book = b
	return b, nil
}

// Begin enters the hull, unless it is there as it is, and begins a visit today.
func (k *logbookKeeper) Begin(h hulls.Hull) (window.Past, error) {
	if _, err := k.Book(); err != nil {
		return nil, err
	}
	id, err := k.hull(h)
	if err != nil {
		return nil, err
	}
	return k.BeginOn(id)
}

// BeginOn begins a visit today of a hull that is in the logbook.
func (k *logbookKeeper) BeginOn(id logbook.HullID) (window.Past, error) {
	b, err := k.Book()
	if err != nil {
		return nil, err
	}
	v, err := b.NewVisit(id, time.Now().Format(time.DateOnly))
	if err != nil {
		return nil, err
	}
	return k.GoOn(v)
}

// GoOn goes on with a visit.
func (k *logbookKeeper) GoOn(id logbook.VisitID) (window.Past, error) {
	b, err := k.Book()
	if err != nil {
		return nil, err
	}
	s, err := b.Begin(id)
	if err != nil {
		return nil, err // not s: a nil session is no nil Past
	}
	return s, nil
}

// WorkOut puts into the lists what a visit came to, and into the boat's measurements
// what she answered in it. One that cannot be worked out stays as lists had it, marked
// as changed since.
func (k *logbookKeeper) WorkOut(p window.Past) {
	s, ok := p.(*logbook.Session)
	if !ok || k.book == nil {
		return
	}
	d := s.Now()
	_ = form.LearnFrom(k.book, s.Visit(), &d) // hulls learn makes it again
	if sum, err := summary(d); err == nil {
		_ = k.book.Summarise(s.Visit(), s.LastEdit(), sum) // derived: hulls refresh makes it again
	}
}

// hull finds a hull by name and content, or enters it. What one in the logbook has
// answered since makes her no other boat.
func (k *logbookKeeper) hull(h hulls.Hull) (logbook.HullID, error) {
	lines, err := k.book.Hulls(logbook.HullQuery{Words: h.Name})
	if err != nil {
		return 0, err
	}
	for _, line := range lines {
		if line.Name != h.Name {
			continue
		}
		kept, err := k.book.Hull(line.ID)
		if err != nil {
			continue
		}
		if len(h.MeasuredResponse) == 0 {
			kept.Hull.MeasuredResponse = nil
		}
		if reflect.DeepEqual(kept.Hull, h) {
			return line.ID, nil
		}
	}
	return k.book.NewHull(h)
}

// latest is the visit worked on last, or nil.
func (k *logbookKeeper) latest() window.Past {
	b, err := k.Book()
	if err != nil || !b.Writable() {
		return nil
	}
	id, ok, err := b.Latest()
	if err != nil || !ok {
		return nil
	}
	p, err := k.GoOn(id)
	if err != nil {
		return nil
	}
	return p
}

func (k *logbookKeeper) close() {
	if k.book != nil {
		k.book.Close()
	}
}
