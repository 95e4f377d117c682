package copied

// This file writes rows for a spreadsheet, all of the same columns. Numbers are
// in the units wanted, each with its unit in a column of its own; where the
// decimal sign is a comma, cells are parted by semicolons. Clock positions are
// degrees looking forward, whichever way the person looks.

import (
	"encoding/csv"
	"strconv"
	"strings"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/say"
)

// columns are the same in every language: they are for programs.
var columns = []string{"event", "what", "kind", "place", "clock_deg", "goes", "stops", "value", "unit", "note"}

type rows struct {
	w *csv.Writer
	u say.Units
}

// Rows is the visit as a table with a header.
func Rows(s words.Speaker, u say.Units, r Results) string {
	var b strings.Builder
	t := &rows{csv.NewWriter(&b), u}
	if u.DecimalComma {
		t.w.Comma = ';'
	}
	t.w.Write(columns)
	for i, e := range r.Document.Visit.Events {
		t.event(i+1, e)
	}
	if e := r.Estimate; e != nil && e.Status == gauge.Ready {
		t.estimate(s, e)
	}
	if p := r.Plan; p != nil {
		for i, m := range r.Document.Hull.Mounts {
			if p.NutFlats[i] != 0 {
				t.row("", "plan", "nut", m.Name, "", "", "", t.plain(float64(p.NutFlats[i])), "flats", "")
			}
			if p.SlideMM[i] != 0 {
				t.row("", "plan", "slide", m.Name, "", "", "", t.plain(p.SlideMM[i]), "mm", "")
			}
		}
	}
	t.w.Flush() // into memory: it cannot fail
	return b.String()
}

func (t *rows) row(cells ...string) { t.w.Write(cells) }

func (t *rows) plain(v float64) string { return t.u.Plain(v, 6) }

func (t *rows) estimate(s words.Speaker, e *gauge.Estimate) {
	gap := func(what string, mm float64) {
		t.row("", "estimate", what, "", "", "", "", t.u.Gap(mm), t.u.GapUnit(), "")
	}
	gap("cos", e.Gap.MeanMM[0])
	gap("sin", e.Gap.MeanMM[1])
	large, _, _ := e.Gap.Axes()
	gap("error", 2*large)
	gap("limit", e.LimitMM)
	t.row("", "estimate", "probability within", "", "", "", "", t.u.Plain(e.Within, 4), "", s.Say(words.Of("verdict", string(e.Verdict)), nil))
}

func (t *rows) event(number int, e visit.Event) {
	n := strconv.Itoa(number)
	switch {
	case e.Gauging != nil:
		g := e.Gauging
		t.row(n, "gauging", g.Held, g.HeldBy, "", "", "", t.plain(g.ShaftTurnDeg), "deg shaft turned", g.Note)
		if g.FlangeTurnDeg != g.ShaftTurnDeg {
			t.row(n, "gauging", g.Held, g.HeldBy, "", "", "", t.plain(g.FlangeTurnDeg), "deg flange turned", "")
		}
		for _, r := range g.Readings {
			t.reading(n, r)
		}
	case e.Move != nil:
		for name, flats := range sorted(e.Move.NutFlats) {
			t.row(n, "move", "nut", name, "", "", "", t.plain(flats), "flats", e.Move.Note)
		}
		for name, mm := range sorted(e.Move.SlideMM) {
			t.row(n, "move", "slide", name, "", "", "", t.plain(mm), "mm", e.Move.Note)
		}
	case e.Fasten != nil:
		value, unit := "", ""
		if torque := e.Fasten.Torque; torque.Unit != "" {
			value, unit = t.plain(torque.Value), string(torque.Unit)
		}
		t.row(n, "fasten", "", e.Fasten.What, "", "", "", value, unit, e.Fasten.Note)
	}
}

// reading writes lengths in the unit wanted; an arc is "from-to" in degrees.
func (t *rows) reading(n string, r visit.Reading) {
	unit := t.u.GapUnit()
	clock := ""
	if deg, ok := visit.ClockOf(r); ok {
		clock = t.plain(deg)
	}
	row := func(place, goes, stops, value, note string) {
		t.row(n, "reading", r.Kind(), place, clock, goes, stops, value, unit, note)
	}
	switch r := r.(type) {
	case visit.Leaf:
		row("", t.length(r.Goes), t.length(r.Stops), "", r.Note)
	case visit.LeafRound:
		row("", t.arcs(r.Enters), t.arcs(r.Stops), t.length(r.Leaf), r.Note)
	case visit.RimStep:
		row(r.High, t.length(r.Goes), t.length(r.Stops), "", r.Note)
	case visit.Dial:
		row(r.On, "", "", t.length(r.Reads), r.Note)
	case visit.RunOut:
		if r.LowDeg.Known {
			clock = t.plain(r.LowDeg.Value)
		}
		row(r.Half+", "+r.On, "", "", t.length(r.TIR), r.Note)
	case visit.Clearance:
		row(r.Where+", "+r.End, t.length(r.Goes), t.length(r.Stops), "", r.Note)
	case visit.Pilot:
		unit = ""
		row(r.Enters, "", "", "", r.Note)
	}
}

func (t *rows) length(l visit.Length) string {
	switch {
	case !l.Given():
		return ""
	case t.u.Metric:
		return t.u.Plain(l.MM(), 4)
	}
	return t.u.Plain(l.Thou(), 3)
}

func (t *rows) arcs(list []visit.Arc) string {
	var all []string
	for _, a := range list {
		all = append(all, t.plain(a.FromDeg)+"-"+t.plain(a.ToDeg))
	}
	return strings.Join(all, " ")
}
