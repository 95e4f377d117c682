package main

// This file finds the logbook and what is in it by what was typed.

import (
	"errors"
	"fmt"
	"os"
	"strconv"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
)

// logbookFile is what --logbook says; "": this person's own logbook. It is set
// once, before any verb runs.
var logbookFile string

// logbookPath is where the logbook is.
func logbookPath() (string, error) {
	if logbookFile != "" {
		return logbookFile, nil
	}
	return logbook.DefaultPath()
}

// openLogbook opens the logbook for a verb that is about it.
func openLogbook(mode logbook.Mode) (*logbook.Book, error) {
	path, err := logbookPath()
	if err != nil {
		return nil, err
	}
	return logbook.Open(path, mode)
}

// withLogbook does something with the logbook open.
func withLogbook(mode logbook.Mode, do func(b *logbook.Book) error) error {
	b, err := openLogbook(mode)
	if err != nil {
		return err
	}
	return errors.Join(do(b), b.Close())
}

// lookIn does something with the logbook if there is one. One that is named must
// be there.
func lookIn(do func(b *logbook.Book) error) error {
	path, err := logbookPath()
	if err != nil {
		return nil // no home folder, so no logbook of one's own
	}
	if _, err := os.Stat(path); err != nil && logbookFile == "" {
		return nil
	}
	return withLogbook(logbook.Read, do)
}

// findHull finds a hull by its number, name or hull identification number.
func findHull(b *logbook.Book, typed string) (logbook.HullID, error) {
	if n, err := strconv.ParseInt(typed, 10, 64); err == nil {
		if _, err := b.Hull(logbook.HullID(n)); !errors.Is(err, logbook.ErrUnknown) {
			return logbook.HullID(n), err
		}
	}
	// Names are found in lower case and by their words; the name itself decides.
	lines, err := b.Hulls(logbook.HullQuery{Words: typed, Limit: 1000})
	if err != nil {
		return 0, err
	}
	plate := typed
	if hin, _, err := hulls.ParseHIN(typed); err == nil {
		plate = hin.String()
	}
	var found []logbook.HullID
	for _, l := range lines {
		if strings.EqualFold(l.Name, typed) || l.HIN != "" && l.HIN == plate {
			found = append(found, l.ID)
		}
	}
	switch len(found) {
	case 0:
		return 0, noEntry(typed, words.NoEntryHull)
	case 1:
		return found[0], nil
	}
	return 0, &hulls.Fault{File: quotedIfEmpty(typed), Value: speaker.Say(words.SeveralHulls, words.Args{"Numbers": strings.Trim(fmt.Sprint(found), "[]")}),
		Limit: speaker.Say(words.SeveralLimit, nil), Mend: speaker.Say(words.SeveralMend, nil)}
}

// errNoEntry is a name or number that is not in the logbook.
var errNoEntry = errors.New("no such entry")

type missingEntry struct{ *hulls.Fault }

func (m missingEntry) Unwrap() []error { return []error{errNoEntry, m.Fault} }

func noEntry(typed string, what words.ID) error {
	return missingEntry{&hulls.Fault{File: quotedIfEmpty(typed), Value: speaker.Say(what, nil),
		Limit: speaker.Say(words.NoEntryLimit, nil), Mend: speaker.Say(words.NoEntryMend, nil)}}
}

func quotedIfEmpty(s string) string {
	if s == "" {
		return `""`
	}
	return s
}

// findVisit finds a visit by its number.
func findVisit(b *logbook.Book, typed string) (logbook.VisitID, visit.Document, error) {
	n, err := strconv.ParseInt(typed, 10, 64)
	if err != nil {
		return 0, visit.Document{}, noEntry(typed, words.NoEntryVisit)
	}
	d, err := b.Document(logbook.VisitID(n))
	if errors.Is(err, logbook.ErrUnknown) {
		err = noEntry(typed, words.NoEntryVisit)
	}
	return logbook.VisitID(n), d, err
}

// withHull is a visit file that holds its hull.
func withHull(d visit.Document) []byte {
	v, h := d.Visit, d.Hull
	v.HullName, v.Embedded = "", &h
	return visit.Encode(v)
}

// keptHull is the file of a hull in the logbook; nil where there is none.
func keptHull(typed string) (file []byte, err error) {
	err = lookIn(func(b *logbook.Book) error {
		id, err := findHull(b, typed)
		if err != nil {
			return err
		}
		h, err := b.Hull(id)
		file = hulls.Encode(h.Hull)
		return err
	})
	if errors.Is(err, errNoEntry) {
		return nil, nil
	}
	return file, err
}

// keptVisit is the file of a visit in the logbook; nil where there is none.
func keptVisit(typed string) (file []byte, err error) {
	err = lookIn(func(b *logbook.Book) error {
		_, d, err := findVisit(b, typed)
		if err == nil {
			file = withHull(d)
		}
		return err
	})
	if errors.Is(err, errNoEntry) {
		return nil, nil
	}
	return file, err
}

// asFault is the one line of an error, if it is told in one.
func asFault(err error) *hulls.Fault {
	var f *hulls.Fault
	if errors.As(err, &f) {
		return f
	}
	return &hulls.Fault{Value: err.Error(), Limit: speaker.Say(words.NoEntryLimit, nil), Mend: speaker.Say(words.NoEntryMend, nil)}
}
