package troubles

// This file is the page.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/history"
	"aligner/report/trouble"
)

// Do is what the page asks of the window.
type Do struct {
	Now      func() visit.Document
	Estimate func() *gauge.Estimate // nil: none
	Edit     func(visit.Edit)
	Past     func() (*history.Past, int64, error) // and the visit's number in it; asked for aside; nil: none is kept
}

// Page is the page of troubles.
type Page struct {
	desk page.Desk
	do   Do

	at      int          // the symptom shown
	skipped int          // how many of the next tests were passed over
	test    trouble.Test // shown; "": none
	closed  bool
	shake   string       // of this boat, once worked out
	boat    trouble.Boat // what is known of her, once worked out

	list             *page.List
	causes, how      *widget.Label
	next, told       *widget.Label
	why, known       *widget.Label
	good, bad, other *page.Button
	right            *fyne.Container
	all              fyne.CanvasObject
}

// New makes the page of the visit on the window.
func New(desk page.Desk, do Do) *Page {
	p := &Page{desk: desk, do: do}
	for _, l := range []**widget.Label{&p.causes, &p.how, &p.next, &p.told, &p.why, &p.known} {
		*l = widget.NewLabel("")
		(*l).Wrapping = fyne.TextWrapWord
	}
	p.next.TextStyle.Bold = true
	p.list = page.NewList(p.keys, func() int { return len(trouble.Symptoms) }, newLine, p.line, func(i int) {
		p.at, p.skipped = i, 0
		p.show()
	})
	p.list.Open = p.note
	p.good = p.button(words.TroubleGoodButton, func() { p.answer(trouble.Good) })
	p.bad = p.button(words.TroubleBadButton, func() { p.answer(trouble.Bad) })
	p.other = p.button(words.TroubleSkipButton, p.another)
	p.lay()
	p.begin()
	p.know()
	return p
}

func (p *Page) say(id words.ID, args words.Args) string { return p.desk.Speaker.Say(id, args) }

func (p *Page) button(id words.ID, do func()) *page.Button {
	return page.NewButton(p.keys, p.say(id, nil), do)
}

func (p *Page) heading(id words.ID) *widget.Label {
	l := widget.NewLabel(p.say(id, nil))
	l.TextStyle.Bold = true
	return l
}

// lay puts the parts where doc.go draws them.
func (p *Page) lay() {
	p.right = container.NewVBox(p.heading(words.TroubleMayBe), p.causes, p.known, widget.NewSeparator(),
		p.next, p.how, container.NewHBox(p.good, p.bad, p.other), widget.NewSeparator(), p.told, p.why)
	left := container.NewBorder(p.heading(words.TroubleChoose), nil, nil, nil, p.list)
	foot := container.NewHBox(layout.NewSpacer(), page.NewButton(p.desk.Key, p.say(words.PageBack, nil), p.desk.Back))
	p.all = container.NewPadded(container.NewBorder(nil, foot, nil, nil, container.New(page.Columns{Share: 0.38, Least: 280}, left, container.NewVScroll(p.right))))
}

// begin shows the first symptom noted, or the first there is.
func (p *Page) begin() {
	d := p.do.Now()
	at := 0
	for i, s := range trouble.Symptoms {
		if len(d.Visit.Trouble.Symptoms) > 0 && d.Visit.Trouble.Symptoms[0] == string(s) {
			at = i
		}
	}
	p.list.Select(at)
}

// Content is the page.
func (p *Page) Content() fyne.CanvasObject { return p.all }

// Focus is the list of symptoms.
func (p *Page) Focus() fyne.Focusable { return p.list }

// TypedKey moves through the symptoms.
func (p *Page) TypedKey(k *fyne.KeyEvent) {
	if !p.keys(k) {
		p.list.Arrows(k)
	}
}

// TypedRune answers the test shown.
func (p *Page) TypedRune(r rune) {
	switch strings.ToLower(string(r)) {
	case "y":
		p.answer(trouble.Good)
	case "z":
		p.answer(trouble.Bad)
	case "k":
		p.another()
	}
}

// Close tells what is still being worked out aside that nobody waits for it.
func (p *Page) Close() { p.closed = true }

// keys takes the keys that mean the same all over the page: letters come as keys
// to a list or a button that has the keyboard.
func (p *Page) keys(k *fyne.KeyEvent) bool {
	if p.desk.Key(k) {
		return true
	}
	switch k.Name {
	case fyne.KeyY, fyne.KeyZ, fyne.KeyK:
		p.TypedRune(rune(k.Name[0]))
	case fyne.KeySpace:
		if p.desk.Window.Canvas().Focused() != fyne.Focusable(p.list) {
			return false // of a button
		}
		p.note(p.at)
	default:
		return false
	}
	return true
}

func newLine() fyne.CanvasObject {
	l := widget.NewLabel("")
	l.Truncation = fyne.TextTruncateEllipsis
	return l
}

// line is one symptom; one noted is marked.
func (p *Page) line(i int, o fyne.CanvasObject) {
	s, mark := trouble.Symptoms[i], "\u25cb "
	l := o.(*widget.Label)
	l.TextStyle.Bold = p.noted(s)
	if l.TextStyle.Bold {
		mark = "\u25cf "
	}
	l.SetText(mark + s.Name(p.desk.Speaker))
}

func (p *Page) noted(s trouble.Symptom) bool {
	d := p.do.Now()
	for _, noted := range d.Visit.Trouble.Symptoms {
		if noted == string(s) {
			return true
		}
	}
	return false
}

// note notes a symptom, or takes it back.
func (p *Page) note(i int) {
	s := trouble.Symptoms[i]
	p.do.Edit(&visit.NoteSymptom{Symptom: string(s), Gone: p.noted(s)})
	p.show()
}

// answer answers the test shown, and notes the symptom it was made for.
func (p *Page) answer(a trouble.Answer) {
	if p.test == "" {
		return
	}
	test := p.test
	if s := trouble.Symptoms[p.at]; !p.noted(s) {
		p.do.Edit(&visit.NoteSymptom{Symptom: string(s)})
	}
	p.do.Edit(&visit.AnswerTest{Test: string(test), Answer: string(a)})
	p.skipped = 0
	p.show()
}

func (p *Page) another() {
	p.skipped++
	p.show()
}

// show fills the right half.
func (p *Page) show() {
	in, d := p.desk.Speaker, p.do.Now()
	symptom := trouble.Symptoms[p.at]
	made, told := trouble.Made(&d.Visit), trouble.Told(&d, p.do.Estimate())
	f := trouble.WeighOn(p.boat, symptom, trouble.All(made, told))
	p.causes.SetText(strings.Join(f.Brief(in), "\n"))
	p.known.SetText(strings.Join(p.knownLines(symptom), "\n"))
	if p.known.Text == "" {
		p.known.Hide()
	} else {
		p.known.Show()
	}
	p.test = ""
	buttons := []*page.Button{p.good, p.bad, p.other}
	if len(f.Next) > 0 {
		p.test = f.Next[p.skipped%len(f.Next)]
		p.next.SetText(trouble.NextText(in, p.test))
		p.how.SetText(strings.Join(p.test.Text(in, &f), "\n"))
	} else {
		p.next.SetText(p.say(words.TroubleNoNext, nil))
		p.how.SetText("")
	}
	for _, b := range buttons {
		if p.test == "" {
			b.Hide()
		} else {
			b.Show()
		}
	}
	lines := trouble.MadeText(in, made, told)
	if len(lines) > 0 {
		lines = append([]string{p.say(words.TroubleMade, nil) + ":"}, lines...)
	}
	p.told.SetText(strings.Join(lines, "\n   "))
	p.tellShake(symptom, &d)
	p.list.Refresh()
	p.right.Refresh() // texts of other lengths
}

// tellShake says, of a symptom that is a shake, what line-up can do to this boat.
func (p *Page) tellShake(s trouble.Symptom, d *visit.Document) {
	if !s.Shakes() || !d.Hull.Coupling.BoltedKnown() { // how she is bolted through one is not known
		p.why.SetText("")
		return
	}
	if p.shake == "" {
		shake, err := trouble.ShakeOf(&d.Hull, d.Visit.State.Afloat())
		if err != nil {
			p.shake = p.desk.Speaker.Retell(err.Error())
		} else {
			p.shake = strings.Join(append([]string{p.say(words.TroubleShakeTitle, nil) + ":"}, shake.Text(p.desk.Speaker, p.desk.Looks.Units)...), "\n")
		}
	}
	p.why.SetText(p.shake)
}
