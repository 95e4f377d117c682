package report

// This file holds what a sheet is made of and how it is wanted.

import (
	"time"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/report/history"
	"aligner/report/paper"
	"aligner/report/say"
)

// Kind is a kind of sheet.
type Kind string

// The kinds there are.
const (
	Bay      Kind = "bay"
	Record   Kind = "record"
	Customer Kind = "customer"
	Class    Kind = "class"
)

// Kinds are all of them.
var Kinds = []Kind{Bay, Record, Customer, Class}

// Input is what a sheet tells of. The estimate must be of the document's visit,
// the plan of both.
type Input struct {
	Document visit.Document
	Estimate *gauge.Estimate
	Plan     *plan.Plan
}

// Options say how a sheet is wanted.
type Options struct {
	Kind    Kind
	Size    paper.Size // "": A4
	Units   say.Units
	Speaker words.Speaker   // zero: English
	Seen    visit.Direction // a record is always seen looking forward
	// Today dates a sheet whose visit has no date: "2026-05-14".
	Today string
	// Program is what made it, with its version.
	Program string
	// FileName and File are the visit file, to be put into a record. None: the
	// visit is written anew.
	FileName string
	File     []byte
	// Photos and Past go into a record: photos of the visit, and the boat's past
	// where her visits are kept.
	Photos []Photo
	Past   *history.Past
	// Quick leaves soft shadows out of the pictures, which take most of the time.
	Quick bool
}

// Work estimates and plans a visit.
func Work(d visit.Document) (Input, error) {
	in := Input{Document: d}
	m, err := gauge.NewModel(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		return in, err
	}
	if in.Estimate, err = m.Estimate(&d.Visit); err != nil {
		return in, err
	}
	p, err := plan.NewPlanner(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		return in, err
	}
	in.Plan, err = p.Plan(&d.Visit, in.Estimate, plan.Settings{})
	return in, err
}

// Until is a document as it stood after its first so many events.
func Until(d visit.Document, events int) visit.Document {
	d.Visit.Events = d.Visit.Events[:min(max(events, 0), len(d.Visit.Events))]
	return d
}

// BeforeMoving is how many events there were before anything was moved or
// tightened.
func BeforeMoving(v *visit.Visit) int {
	for i, e := range v.Events {
		if e.Gauging == nil {
			return i
		}
	}
	return len(v.Events)
}

// drawer draws one document.
type drawer struct {
	*paper.Sheet
	in Input
	o  Options
	s  words.Speaker
	u  say.Units
	h  *hulls.Hull
	v  *visit.Visit
	e  *gauge.Estimate
	p  *plan.Plan
	// hide leaves out what the plan says.
	hide bool
	// few tells gaps at no more positions than half a page's width takes.
	few bool
	// least is the smallest type of a bay card, in points; 0: any.
	least float64
}

// begin is an empty document.
func begin(in Input, o Options) *drawer {
	d := &drawer{in: in, o: o, s: o.Speaker, u: o.Units, h: &in.Document.Hull, v: &in.Document.Visit, e: in.Estimate, p: in.Plan}
	if d.s == (words.Speaker{}) {
		d.s = words.In("en")
	}
	d.Sheet = paper.New(paper.Head{
		Title: d.title(), Subject: d.say(words.Of("paper_kind", string(o.Kind)), nil), Program: o.Program,
		Size: o.Size, Date: d.date(), Regular: assets.Font("regular"), Bold: assets.Font("bold"),
	})
	return d
}

func (d *drawer) say(id words.ID, args words.Args) string { return d.s.Say(id, args) }

// title names the document: "Bay card: Kittiwake, 2026-04-08".
func (d *drawer) title() string {
	title := d.say(words.Of("paper_kind", string(d.o.Kind)), nil) + ": " + d.h.Name
	if date := d.dateText(); date != "" {
		title += ", " + date
	}
	return title
}

// dateText is the visit's date, or today's.
func (d *drawer) dateText() string {
	if d.v.Date != "" {
		return d.v.Date
	}
	return d.o.Today
}

// date is the same as a time; where there is none, a day of no meaning.
func (d *drawer) date() time.Time {
	if t, err := time.Parse(time.DateOnly, d.dateText()); err == nil {
		return t
	}
	return time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)
}
