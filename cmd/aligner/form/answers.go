package form

// This file is the sheet on which is entered what the boat answered to one nut.

import (
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/kinematics"
	"aligner/kinematics/response"
	"aligner/report/say"
)

// answers lists what was measured, and takes another.
func (p *Page) answers(box *fyne.Container) fyne.Focusable {
	u := p.units()
	text(box, p.say(words.FormAnswerHow, words.Args{"Unit": u.GapUnit()}), false)
	entry := func() *page.Entry { return page.NewEntry(p.keys) }
	mount, flats, before, after, right := &asked{keys: p.keys}, entry(), entry(), entry(), entry()
	for _, m := range p.h.Mounts {
		mount.Options = append(mount.Options, m.Name)
	}
	mount.ExtendBaseWidget(mount)
	mount.SetSelectedIndex(0)
	right.SetText(u.Plain(map[bool]float64{true: 0.02, false: 0.7}[u.Metric], 2))
	add := func() {
		m, why := p.answerOf(p.h.Mounts[mount.SelectedIndex()].Name, flats.Text, before.Text, after.Text, right.Text)
		switch {
		case why != "":
			p.tell(why)
		case p.edit(fields.Answered{Measured: m}):
			p.focus()
		}
	}
	next := func(from *page.Entry, to fyne.Focusable) {
		from.OnSubmitted = func(string) { p.desk.Window.Canvas().Focus(to) }
	}
	next(flats, before)
	next(before, after)
	next(after, right)
	right.OnSubmitted = func(string) { add() }
	label := func(id words.ID) fyne.CanvasObject { return widget.NewLabel(p.say(id, nil)) }
	box.Add(container.New(layout.NewFormLayout(),
		label(words.FormAnswerMount), mount, label(words.FormAnswerFlats), flats,
		label(words.FormAnswerBefore), before, label(words.FormAnswerAfter), after,
		label(words.FormAnswerError), right))
	box.Add(p.button(words.FormAnswerAdd, add))
	if p.do.Book != nil && p.d.id != 0 {
		box.Add(p.button(words.FormEarlier, p.takeEarlier))
	}
	for _, m := range p.h.MeasuredResponse {
		text(box, p.said(&m), false)
	}
	if n := len(p.h.MeasuredResponse); n > 0 {
		box.Add(p.button(words.FormAnswerForget, func() { p.edit(fields.Forget{Index: n - 1}) }))
	} else {
		text(box, p.say(words.FormAnswerNone, nil), false)
	}
	return mount
}

// takeEarlier takes in what she answered in the logbook's visits.
func (p *Page) takeEarlier() {
	h, added, err := Earlier(p.do.Book, p.d.id, p.h)
	if err == nil && added > 0 {
		p.edit(fields.Replace{Hull: h})
	}
	if err != nil {
		p.tell(p.desk.Speaker.Retell(err.Error()))
		return
	}
	p.tell(p.say(words.HullLearnt, words.Args{"Name": p.h.Name, "Count": added, "All": len(p.h.MeasuredResponse)}))
	p.focus()
}

// said is one answer in a line: what it changed, and what the hull's figures say it
// should have, without what was learnt.
func (p *Page) said(m *hulls.Measured) string {
	s, u := p.desk.Speaker, p.units()
	var moved []string
	for _, mount := range slices.Sorted(maps.Keys(m.NutFlats)) {
		moved = append(moved, s.Say(words.FormAnswerMoved, words.Args{"Mount": mount, "Flats": u.Plain(m.NutFlats[mount], 2)}))
	}
	for _, mount := range slices.Sorted(maps.Keys(m.SlideMM)) {
		moved = append(moved, mount+" "+u.MM(m.SlideMM[mount]))
	}
	topSaid, sideSaid := "-", "-"
	items := response.Items(&p.h)
	if mean, err := response.Mean(&p.h, items, kinematics.Held(m.Held), m.Afloat); err == nil {
		r := response.Response{Items: items, Mean: mean}
		ab := r.Change(response.MovesOf(&p.h, items, m.NutFlats, m.SlideMM))
		topSaid, sideSaid = u.Gap(2*ab[0]), u.Gap(2*ab[1])
	}
	return s.Say(words.FormAnswerLine, words.Args{"TopSaid": topSaid, "SideSaid": sideSaid, "When": m.When, "Moved": strings.Join(moved, ", "),
		"Top": u.Gap(2 * (m.After.CosMM - m.Before.CosMM)), "Side": u.Gap(2 * (m.After.SinMM - m.Before.SinMM)), "Unit": u.GapUnit()})
}

// answerOf reads what was typed; why says what is wrong with it.
func (p *Page) answerOf(mount, flats, before, after, right string) (m hulls.Measured, why string) {
	n, ok := plain(flats)
	if !ok || n == 0 {
		return m, p.say(words.FormBadNumber, words.Args{"Text": flats, "Example": "3"})
	}
	each, ok := p.gap(right)
	if !ok || each <= 0 {
		return m, p.say(words.FormBadNumber, words.Args{"Text": right, "Example": p.units().Plain(0.7, 1)})
	}
	m = hulls.Measured{When: time.Now().Format(time.DateOnly), NutFlats: map[string]float64{mount: n}, Held: string(heldOf(&p.h)), ErrorMM: each / math.Sqrt2}
	if m.Before, why = p.fourGaps(before, each); why != "" {
		return m, why
	}
	m.After, why = p.fourGaps(after, each)
	return m, why
}

// fourGaps reads gaps at 12, 3, 6 and 9 o'clock. Those of two flat faces obey
// 12 + 6 = 3 + 9, here within four times the error of the sum.
func (p *Page) fourGaps(typed string, each float64) (g hulls.FaceGap, why string) {
	four := strings.Fields(strings.ReplaceAll(typed, ";", " "))
	var at [4]float64
	ok := len(four) == len(at)
	for i := 0; ok && i < len(at); i++ {
		at[i], ok = p.gap(four[i])
	}
	if !ok {
		return g, p.say(words.FormAnswerFour, words.Args{"Text": typed})
	}
	if a, b := at[0]+at[2], at[1]+at[3]; math.Abs(a-b) > 4*2*each {
		u := p.units()
		return g, p.say(words.FormAnswerBent, words.Args{"A": u.GapWithUnit(a), "B": u.GapWithUnit(b)})
	}
	return hulls.FaceGap{CosMM: (at[0] - at[2]) / 2, SinMM: (at[1] - at[3]) / 2}, ""
}

// gap reads a gap in the unit on the screen.
func (p *Page) gap(typed string) (float64, bool) {
	v, ok := plain(typed)
	if !p.units().Metric {
		v *= say.MMPerThou
	}
	return v, ok
}

// plain reads a number, a decimal comma as good as a point.
func plain(typed string) (float64, bool) {
	v, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(typed), ",", ".", 1), 64)
	return v, err == nil && !math.IsInf(v, 0) && !math.IsNaN(v)
}
