package form

// This file is the sheets after the parts: looking over, what matters, comparing; and
// the buttons under a part.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/logbook"
	"aligner/kinematics/sensitivity"
	"aligner/report/say"
)

// sheet fills the middle; fill is nil for a part's fields. It gives what takes the
// keyboard first.
type sheet struct {
	fill func(*fyne.Container) fyne.Focusable
}

// sheet is the one shown.
func (p *Page) sheet() sheet {
	switch p.parts[p.d.part].sheet {
	case words.FormLookOver:
		return sheet{p.lookOver}
	case words.FormMatters:
		return sheet{p.whatMatters}
	case words.FormCompare:
		return sheet{p.compare}
	case words.FormAnswers:
		return sheet{p.answers}
	case words.FormKeep:
		return sheet{p.keep}
	}
	return sheet{}
}

// text adds a paragraph.
func text(box *fyne.Container, s string, bold bool) {
	l := widget.NewLabel(s)
	l.Wrapping, l.TextStyle.Bold = fyne.TextWrapWord, bold
	box.Add(l)
}

// addPartButtons adds what can be added to a part, or taken away.
func (p *Page) addPartButtons() {
	add := func(id words.ID, e fields.Edit) {
		p.middle.Add(p.button(id, func() {
			if p.edit(e) {
				p.turnTo(p.d.part)
			}
		}))
	}
	switch g := p.parts[p.d.part].group; g.Part {
	case fields.Engine, fields.Mount:
		if len(p.h.Mounts) == 4 {
			add(words.FormSixMounts, fields.Mounts{Number: 6})
		} else if len(p.h.Mounts) == 6 {
			add(words.FormFourMounts, fields.Mounts{Number: 4})
		}
	case fields.Shaft:
		add(words.FormAddBearing, fields.MoreBearings{})
	case fields.Bearing:
		add(words.FormAddBearing, fields.MoreBearings{})
		if len(p.h.Bearings) > 1 {
			add(words.FormDropBearing, fields.LessBearings{Index: g.Index})
		}
	case fields.LogTube:
		if p.h.StuffingBox == nil {
			add(words.FormWithBox, fields.Box{On: true})
		}
	case fields.StuffingBox:
		add(words.FormWithoutBox, fields.Box{})
	}
}

// lookOver lists what does not fit, what is odd, and what is not measured.
func (p *Page) lookOver(box *fyne.Container) fyne.Focusable {
	s := p.desk.Speaker
	for _, f := range p.report.Refusals {
		text(box, p.say(words.FormDoesNotFit, words.Args{"Fault": p.placed(&f)}), true)
	}
	odd := append(append([]hulls.Fault{}, p.report.Doubts...), hulls.MirrorDoubts(p.h)...)
	if len(p.report.Refusals) == 0 {
		text(box, p.say(words.FormAllFits, nil), true)
	}
	for _, f := range odd {
		text(box, p.say(words.FormOdd, words.Args{"Fault": p.placed(&f)}), false)
	}
	if len(odd) == 0 {
		text(box, p.say(words.FormNothingOdd, nil), false)
	}
	assumed := 0
	for _, f := range p.list {
		if f.Assumed {
			assumed++
		}
	}
	if assumed > 0 {
		text(box, s.Say(words.FormCountAssumed, words.Args{"Count": assumed}), false)
	}
	sided := &tick{keys: p.keys}
	sided.Text = p.say(words.FormOneSided, nil)
	sided.ExtendBaseWidget(sided)
	sided.SetChecked(p.h.OneSided)
	sided.OnChanged = func(on bool) { p.edit(fields.Lopsided{On: on}) }
	box.Add(sided)
	text(box, p.say(words.FormOneSidedMeans, nil), false)
	return sided
}

// placed is a fault with the field's name for its place.
func (p *Page) placed(f *hulls.Fault) string {
	for i := range p.list {
		if p.list[i].Place() == f.Place {
			return say.Field(p.desk.Speaker, &p.list[i]) + ": " + p.fault(f)
		}
	}
	return p.desk.Speaker.Retell(f.Error())
}

// mostMatters is how many numbers are told.
const mostMatters = 16

// whatMatters ranks the numbers.
func (p *Page) whatMatters(box *fyne.Container) fyne.Focusable {
	switch {
	case p.effects == nil && !p.noWork:
		text(box, p.say(words.FormWorking, nil), false)
	case p.noWork:
		text(box, p.say(words.FormNoWorking, nil), false)
	default:
		text(box, p.say(words.FormMattersTitle, nil), true)
	}
	told := 0
	for _, e := range p.ranked {
		f := p.field(e.Field.Pointer)
		if f == nil || e.Verdict() == sensitivity.Nothing || told == mostMatters {
			continue
		}
		told++
		b := page.NewButton(p.keys, say.Field(p.desk.Speaker, f), func() {
			p.turnTo(p.partOf(f.Pointer))
			p.choose(f.Pointer)
			p.focus()
		})
		b.Importance, b.Alignment = widget.LowImportance, widget.ButtonAlignLeading
		box.Add(b)
		text(box, strings.TrimSpace(say.Matter(p.desk.Speaker, p.units(), p.d.in, &e, f.Get(&p.h))+" "+say.KnownNow(p.desk.Speaker, p.units(), p.d.in, &e)), false)
	}
	return nil
}

// compare lists what differs from another boat.
func (p *Page) compare(box *fyne.Container) fyne.Focusable {
	others := append([]hulls.Hull{p.d.base}, builtIn()...)
	if p.do.Book != nil {
		if lines, err := p.do.Book.Hulls(logbook.HullQuery{Limit: 100}); err == nil {
			for _, l := range lines {
				if kept, err := p.do.Book.Hull(l.ID); err == nil {
					others = append(others, kept.Hull)
				}
			}
		}
	}
	names := make([]string, len(others))
	for i, h := range others {
		names[i] = h.Name
	}
	lines := container.New(tight{})
	list := func(i int) {
		lines.RemoveAll()
		all := fields.Compare(&p.h, &others[i])
		if len(all) == 0 {
			text(lines, p.say(words.CompareSame, words.Args{"NameA": p.h.Name, "NameB": others[i].Name}), true)
		} else {
			text(lines, p.say(words.CompareCount, words.Args{"Count": len(all)}), true)
		}
		for _, d := range all {
			text(lines, say.Difference(p.desk.Speaker, p.units(), p.d.in, &d, p.h.Name, others[i].Name), false)
		}
		lines.Refresh()
	}
	choose := &asked{keys: p.keys}
	choose.Options = names
	choose.ExtendBaseWidget(choose)
	choose.SetSelectedIndex(0)
	choose.OnChanged = func(string) { list(choose.SelectedIndex()) }
	box.Add(container.NewBorder(nil, nil, widget.NewLabel(p.say(words.FormCompareWith, nil)), nil, choose))
	box.Add(lines)
	list(0)
	return choose
}
