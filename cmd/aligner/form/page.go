package form

// This file is the page: what it is made of, and how it follows the draft.

import (
	"reflect"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/logbook"
	"aligner/kinematics/sensitivity"
	"aligner/report/say"
)

// Do is what the page asks of the window.
type Do struct {
	// Book is the logbook to keep boats in; nil: there is none.
	Book *logbook.Book
	// Kept is told each time the boat was kept in the logbook, and may say why that
	// is not all; nil: nobody asks.
	Kept func(hulls.Hull) error
	// Work shows the boat in the window, to be worked on; nil: not offered.
	Work func(hulls.Hull)
	// Aside works in the background and then shows, on the window's own goroutine.
	Aside func(work, show func())
}

// Page is the form.
type Page struct {
	desk page.Desk
	do   Do
	d    *Draft

	h       hulls.Hull
	list    []fields.Field
	report  hulls.Report
	effects map[string]sensitivity.Effect // by pointer; nil: not worked out
	ranked  []sensitivity.Effect
	noWork  bool // they cannot be
	// weighing: they are being worked out; weighAgain: of a hull that has changed
	// since.
	weighing, weighAgain bool
	closed               bool

	parts      []part
	left       *fyne.Container
	leftScroll *container.Scroll
	middle     *fyne.Container // the sheet shown
	scroll     *container.Scroll
	rows       []*row
	side       *side
	told       *widget.Label
	undo       *page.Button
	redo       *page.Button
	whole      *fyne.Container
	first      fyne.Focusable
}

// New makes the page of a draft.
func New(desk page.Desk, d *Draft, do Do) *Page {
	p := &Page{desk: desk, do: do, d: d}
	if !d.asked {
		d.in = fields.Inches(!desk.Looks.Units.Metric)
	}
	p.told = widget.NewLabel("")
	p.told.Wrapping = fyne.TextWrapWord
	p.told.Hide()
	p.whole = container.NewStack()
	p.side = newSide(p)
	d.goOn(do.Book)
	p.build()
	if d.old {
		d.old = false
		p.tell(p.say(words.FormOldDraft, nil))
	}
	return p
}

// build shows the questions, or the form.
func (p *Page) build() {
	if p.d.past == nil {
		p.whole.Objects = []fyne.CanvasObject{p.askFirst()}
		p.whole.Refresh()
		return
	}
	p.left, p.middle = container.New(tight{}), container.New(tight{})
	p.leftScroll = container.NewVScroll(p.left)
	p.scroll = container.NewVScroll(p.middle)
	p.undo, p.redo = p.button(words.Undo, p.goBack), p.button(words.Redo, p.goOn)
	units := &asked{keys: p.keys}
	units.Options = []string{"mm", "in"}
	units.ExtendBaseWidget(units)
	units.SetSelectedIndex(map[fields.Inches]int{false: 0, true: 1}[p.d.in])
	units.OnChanged = func(u string) {
		p.d.in, p.d.asked = u == "in", true
		p.renew(true)
	}
	legend := widget.NewLabel(p.say(words.FormLegend, nil))
	legend.SizeName = captionSize
	top := container.NewHBox(p.button(words.PageBack, p.desk.Back), legend, layout.NewSpacer(), units, p.undo, p.redo)
	body := container.New(thirds{}, p.leftScroll, p.scroll, p.side.box)
	p.whole.Objects = []fyne.CanvasObject{container.NewPadded(container.NewBorder(top, p.told, nil, nil, body))}
	p.renew(true)
	p.whole.Refresh()
}

func (p *Page) say(id words.ID, args words.Args) string { return p.desk.Speaker.Say(id, args) }

func (p *Page) button(id words.ID, do func()) *page.Button {
	return page.NewButton(p.keys, p.say(id, nil), do)
}

// value writes a field's value with its unit.
func (p *Page) value(f *fields.Field, v float64) string {
	return p.desk.Looks.Units.Value(p.desk.Speaker, f, fields.Value{Number: v}, p.d.in)
}

// renew works everything out afresh and shows it; anew also makes the rows anew.
func (p *Page) renew(anew bool) {
	if p.d.past == nil {
		return
	}
	before := p.h
	p.h = p.d.past.Now()
	p.list = fields.List(&p.h)
	p.report = hulls.Validate(p.h)
	parts := p.listParts()
	anew = anew || !reflect.DeepEqual(parts, p.parts)
	p.parts = parts
	p.d.part = min(p.d.part, len(parts)-1)
	if !reflect.DeepEqual(before, p.h) || !p.side.asked {
		p.weigh()
		p.side.rebuild()
	}
	if anew || p.sheet().fill != nil {
		p.fill()
	} else {
		p.refill()
	}
	p.showParts()
	p.side.show()
}

// tell says one thing at the foot; "" takes it away.
func (p *Page) tell(text string) {
	p.told.SetText(text)
	if text == "" {
		p.told.Hide()
	} else {
		p.told.Show()
	}
}

// Content is the page.
func (p *Page) Content() fyne.CanvasObject { return p.whole }

// Focus is the field chosen, or the first question.
func (p *Page) Focus() fyne.Focusable { return p.first }

// TypedKey takes the keys no field has taken.
func (p *Page) TypedKey(k *fyne.KeyEvent) { p.keys(k) }

// TypedRune needs nothing done.
func (p *Page) TypedRune(rune) {}

// Close gives the picture back.
func (p *Page) Close() {
	p.closed = true
	p.side.close()
}

// keys take what means the same in every field.
func (p *Page) keys(k *fyne.KeyEvent) bool {
	switch {
	case p.desk.Key != nil && p.desk.Key(k):
	case p.d.past == nil:
		return false
	case k.Name == fyne.KeyPageDown:
		p.turnTo(p.d.part + 1)
	case k.Name == fyne.KeyPageUp:
		p.turnTo(p.d.part - 1)
	default:
		return false
	}
	return true
}

// units are the window's; lengths are in the form's own.
func (p *Page) units() say.Units { return p.desk.Looks.Units }
