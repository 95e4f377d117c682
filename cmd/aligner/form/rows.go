package form

// This file is the fields of one part, a row each, the chosen one with its limits
// and faults under it.

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/kinematics/response"
	"aligner/report/say"
)

const captionSize = theme.SizeNameCaptionText

// row is one field.
type row struct {
	p       *Page
	pointer string
	line    *line // typed; nil: chosen from a list
	pick    *pick
	mark    *widget.Label
	wrong   string // what was typed and is no value
	under   *fyne.Container
	limits  *widget.Label
	faults  *widget.Label
	usual   *page.Button
	box     *fyne.Container
}

func (p *Page) newRow(f *fields.Field) *row {
	r := &row{p: p, pointer: f.Pointer, mark: widget.NewLabel(""), limits: widget.NewLabel(""), faults: widget.NewLabel("")}
	name := widget.NewLabel(say.FieldName(p.desk.Speaker, f))
	name.Truncation = fyne.TextTruncateEllipsis
	unit := widget.NewLabel(say.FieldUnit(p.desk.Speaker, f, p.d.in))
	unit.SizeName = captionSize
	r.mark.TextStyle.Bold = true
	for _, l := range []*widget.Label{r.limits, r.faults} {
		l.Wrapping, l.SizeName = fyne.TextWrapWord, captionSize
	}
	r.faults.TextStyle.Bold = true
	var input fyne.CanvasObject
	if f.Kind == fields.Choice {
		r.pick = newPick(r, f)
		input = r.pick
	} else {
		r.line = newLine(r)
		input = r.line
	}
	r.usual = page.NewButton(p.keys, p.say(words.FormUsual, nil), func() {
		if p.edit(fields.LeaveToUsual{Pointer: r.pointer}) {
			r.wrong = ""
			p.next(r.pointer)
		}
	})
	r.usual.Alignment = widget.ButtonAlignLeading
	r.under = container.NewVBox(r.limits, r.faults, r.usual)
	r.under.Hide()
	r.box = container.New(tight{}, container.New(fieldShares, name, input, unit, r.mark), r.under)
	r.show(f)
	return r
}

// show fills the row with what the hull says.
func (r *row) show(f *fields.Field) {
	v := f.Get(&r.p.h)
	if r.wrong == "" {
		if r.line != nil {
			r.line.write(r.p.units().Entry(f, v, r.p.d.in))
		} else {
			r.pick.write(f, v.Text)
		}
	}
	refused := f.Faults(r.p.report.Refusals)
	mark := ""
	switch {
	case len(refused) > 0 || r.wrong != "":
		mark = markFault
	case f.Assumed:
		mark = markAssumed
	}
	if r.mark.Text != mark {
		r.mark.SetText(mark)
	}
	r.showUnder(f, refused)
}

// showUnder fills what stands under a field: what does not fit and what is odd,
// and of the chosen one its limits and the usual.
func (r *row) showUnder(f *fields.Field, refused []hulls.Fault) {
	faults := r.wrong
	add := func(id words.ID, all []hulls.Fault) {
		for _, fault := range all {
			if faults != "" {
				faults += "\n"
			}
			faults += r.p.say(id, words.Args{"Fault": r.p.fault(&fault)})
		}
	}
	add(words.FormDoesNotFit, refused)
	add(words.FormOdd, f.Faults(r.p.report.Doubts))
	put(r.faults, faults)
	chosen := r.pointer == r.p.d.field
	limits := ""
	if chosen {
		limits = r.p.limits(f)
	}
	put(r.limits, limits)
	if r.usual.Hide(); chosen && f.Usual != nil {
		r.usual.Show()
	}
	if r.under.Show(); !chosen && faults == "" {
		r.under.Hide()
	}
}

// put writes a label, or takes it away where there is nothing to say.
func put(l *widget.Label, text string) {
	if l.Text != text {
		l.SetText(text)
	}
	if text == "" {
		l.Hide()
	} else {
		l.Show()
	}
}

// fault is a fault without its place, which the field is.
func (p *Page) fault(f *hulls.Fault) string {
	bare := hulls.Fault{Value: f.Value, Limit: f.Limit, Mend: f.Mend}
	return p.desk.Speaker.Retell(bare.Error())
}

// limits says what a field may be.
func (p *Page) limits(f *fields.Field) string {
	text := ""
	bare := func(v float64) string { return p.units().Entry(f, fields.Value{Number: v}, p.d.in) }
	switch l := f.Limit; {
	case f.Kind == fields.Thread:
		text = p.say(words.FormThreads, words.Args{"Threads": few(f.Choices)})
	case !f.Kind.IsNumber():
	case l.Low > l.Least && l.High < l.Most && l.Low < l.High:
		text = p.say(words.FormLimits, words.Args{"Least": bare(l.Least), "Most": p.value(f, l.Most), "Low": bare(l.Low), "High": p.value(f, l.High)})
	default:
		text = p.say(words.FormLimitsOnly, words.Args{"Least": bare(l.Least), "Most": p.value(f, l.Most)})
	}
	if f.Usual != nil {
		text += "\n" + p.say(words.FormUsualIs, words.Args{"Value": p.value(f, f.Usual.Value), "Plus": p.value(f, f.Usual.Plus)})
	}
	if f.Assumed {
		source := words.FormTakenOver
		if f.Usual != nil && f.Usual.Value == f.Get(&p.h).Number {
			source = words.FormUsualTaken
		}
		if text != "" {
			text += "\n"
		}
		text += p.say(words.FormNotMeasured, words.Args{"Source": p.say(source, nil), "Plus": p.value(f, p.h.Tolerance[f.Pointer])})
	} else if plus := response.Tolerance(&p.h, f.Pointer); plus > 0 {
		example := bare(f.Get(&p.h).Number) + " ± " + bare(f.CarePlus(&p.h)/2)
		text += "\n" + p.say(words.FormKnown, words.Args{"Plus": p.value(f, plus), "Example": example})
	}
	return text
}

// few is a list short enough to be read.
func few(all []string) string {
	const most = 9
	text := ""
	for i, s := range all {
		switch {
		case i == most:
			return text + " ..."
		case i > 0:
			text += ", "
		}
		text += s
	}
	return text
}

// fill makes the sheet shown anew.
func (p *Page) fill() {
	sheet := p.sheet()
	p.rows = nil
	p.middle.RemoveAll()
	if sheet.fill != nil {
		p.first = sheet.fill(p.middle)
	} else {
		p.first = nil
		own := p.parts[p.d.part].pointers
		if !slices.Contains(own, p.d.field) {
			p.d.field = own[0]
		}
		for _, pointer := range own {
			r := p.newRow(p.field(pointer))
			p.rows = append(p.rows, r)
			p.middle.Add(r.box)
			if pointer == p.d.field || p.first == nil {
				p.first = r.input()
			}
		}
		p.addPartButtons()
	}
	p.middle.Refresh()
	p.scroll.ScrollToTop()
}

// refill shows the rows there are as the hull is now.
func (p *Page) refill() {
	for _, r := range p.rows {
		r.show(p.field(r.pointer))
	}
	p.middle.Refresh()
}

// input is what takes the keyboard.
func (r *row) input() fyne.Focusable {
	if r.line != nil {
		return r.line
	}
	return r.pick
}
