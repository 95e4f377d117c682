package report

// A sheet in German is German throughout: English is left only where a person
// typed it.

import (
	"reflect"
	"regexp"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/report/say"
)

// TestSheetsAreGerman takes the notes out of the built-in visits and looks for
// common English words, and for a decimal point, in what pdftotext reads.
func TestSheetsAreGerman(t *testing.T) {
	english := regexp.MustCompile(`(?i)\b(the|of|and|is|are|with|than|gap|turn|clock|gauged|leaf)\b`)
	point := regexp.MustCompile(`\b\d+\.\d+\b`)
	file := regexp.MustCompile(`\S+\.json`)
	for _, name := range assets.VisitNames() {
		d := silent(document(t, name))
		in := worked(t, d)
		for _, kind := range Kinds {
			if kind == Class {
				d := Until(d, BeforeMoving(&d.Visit))
				in = worked(t, d)
			}
			said := file.ReplaceAllString(text(t, made(t, in, Options{Kind: kind, Speaker: words.In("de"), Units: say.Units{DecimalComma: true}, Quick: true})), "")
			said = strings.ReplaceAll(said, "ISO 898-1 8.8", "") // a name, not a number
			if kind == Record {                                  // the hull file at its end is as it is
				said, _, _ = strings.Cut(said, "wie in der angehängten Bootsdatei")
			}
			if found := english.FindAllString(said, -1); found != nil {
				t.Errorf("%s, %s: English words %q", name, kind, found)
			}
			if found := point.FindAllString(said, -1); found != nil {
				t.Errorf("%s, %s: decimal points %q", name, kind, found)
			}
		}
	}
}

// silent is a visit without the notes in it, and without what was tightened by
// names of one's own.
func silent(d visit.Document) visit.Document {
	v := d.Visit
	v.Note, v.State.Note, v.Target.Reason = "", "", ""
	v.LookOver = append([]visit.Finding(nil), v.LookOver...)
	for i := range v.LookOver {
		v.LookOver[i].Note = ""
	}
	v.Mounts = append([]visit.MountFound(nil), v.Mounts...)
	for i := range v.Mounts {
		v.Mounts[i].Note = ""
	}
	v.Events = append([]visit.Event(nil), v.Events...)
	for i := range v.Events {
		e := &v.Events[i]
		switch {
		case e.Gauging != nil:
			g := *e.Gauging
			g.Note = ""
			g.Readings = nil
			for _, r := range e.Gauging.Readings {
				of := reflect.New(reflect.TypeOf(r)).Elem()
				of.Set(reflect.ValueOf(r))
				of.FieldByName("Note").SetString("")
				r = of.Interface().(visit.Reading)
				g.Readings = append(g.Readings, r)
			}
			e.Gauging = &g
		case e.Move != nil:
			m := *e.Move
			m.Note = ""
			e.Move = &m
		case e.Fasten != nil:
			f := *e.Fasten
			f.Note, f.What = "", "-"
			e.Fasten = &f
		}
	}
	d.Visit = v
	return d
}
