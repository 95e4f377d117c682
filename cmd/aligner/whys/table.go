package whys

// This file is the table of what one flat of each nut and one slide of each end does
// to the gap at 12, 3, 6 and 9 o'clock, as a table with columns.

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/kinematics/why"
	"aligner/report/say"
)

// newTable makes the table of a boat, or says why there is none.
func (p *Page) newTable() fyne.CanvasObject {
	s, u := p.sides[0], p.desk.Looks.Units
	rows, err := why.Table(&s.hull, s.held, s.afloat)
	if err != nil {
		return read(p.desk.Speaker.Retell(err.Error()))
	}
	cells := &page.Cells{Columns: 7}
	var objects []fyne.CanvasObject
	put := func(text string, bold, right bool) {
		l := widget.NewLabel(text)
		l.TextStyle.Bold = bold
		if right {
			l.Alignment = fyne.TextAlignTrailing
		}
		objects = append(objects, l)
	}
	put("", true, false)
	for _, id := range []words.ID{words.WhyAt12, words.WhyAt3, words.WhyAt6, words.WhyAt9} {
		put(p.say(id, nil), true, true)
	}
	put("\u00b1", true, true)
	put(p.say(words.WhyCoupling, nil), true, false)
	for i := range rows {
		r := &rows[i]
		what := say.WhyRowName(p.desk.Speaker, u, &s.hull, r)
		if r.Hardly {
			what += " *"
		}
		name := widget.NewLabel(what)
		cells.First = max(cells.First, name.MinSize().Width)
		name.Wrapping = fyne.TextWrapWord
		name.Refresh()
		objects = append(objects, name)
		for _, deg := range hours {
			put(fine(u, atHour(r, deg), true), false, true)
		}
		put(fine(u, math.Hypot(r.SD[0], r.SD[1]), false), false, true)
		put(say.WhyCoupling(p.desk.Speaker, u, &why.Why{FaceMM: r.FaceMM}), false, false)
	}
	cells.First *= p.grow.Times()
	title := read(say.WhyTitle(p.desk.Speaker, u, &s.hull, s.held))
	title.TextStyle.Bold = true
	return container.NewVBox(title, container.New(cells, objects...), read(p.say(words.WhyTableRead, words.Args{"Unit": u.GapUnit()})), read(p.say(words.WhyWords, nil)))
}

// read is a paragraph.
func read(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.Wrapping = fyne.TextWrapWord
	return l
}

// fine writes a change a digit finer than a gap: steps are many, and what is rounded
// off each adds up.
func fine(u say.Units, mm float64, sign bool) string {
	v, decimals := mm/say.MMPerThou, 2
	if u.Metric {
		v, decimals = mm, 4
	}
	ten := math.Pow10(decimals)
	v = math.Round(v*ten) / ten
	text := u.Fixed(math.Abs(v), decimals)
	switch {
	case v < 0:
		return "\u2212" + text
	case v > 0 && sign:
		return "+" + text
	}
	return text
}
