package boats

// This file is the boat chosen: what she is, what can be done, her visits and
// the photos of one of them.

import (
	"bytes"
	"image"
	_ "image/jpeg" // photos are kept as JPEG

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/logbook"
	"aligner/report/say"
)

// boat is the right half of the page.
type boat struct {
	p                     *Page
	line                  *logbook.HullLine // nil: none
	box                   *fyne.Container
	name, what, due, none *widget.Label
	begin, past           *page.Button
	measure, carry        *page.Button
	visits                *page.List
	lines                 []logbook.VisitLine
	photos                *fyne.Container
}

// mostVisits is how many of a boat's visits are listed: more than a boat has.
const mostVisits = 500

func newBoat(p *Page) *boat {
	b := &boat{p: p, name: widget.NewLabel(""), what: widget.NewLabel(""), due: widget.NewLabel(""),
		none: widget.NewLabel(p.say(words.BoatsNone, nil)), photos: container.NewHBox()}
	b.name.TextStyle.Bold = true
	for _, l := range []*widget.Label{b.what, b.due, b.none} {
		l.Wrapping = fyne.TextWrapWord
	}
	b.begin = page.NewButton(p.desk.Key, p.say(words.BoatsBegin, nil), b.beginVisit)
	b.measure = page.NewButton(p.desk.Key, p.say(words.FormMeasure, nil), b.measureAgain)
	b.carry = page.NewButton(p.desk.Key, p.say(words.BoatsTakeOut, nil), b.takeOut)
	b.past = page.NewButton(p.desk.Key, p.say(words.PastTitle, nil), p.showPast)
	b.visits = page.NewList(b.key, func() int { return len(b.lines) }, newRow, b.row, b.choose)
	b.visits.Open = b.open
	head := container.NewVBox(container.New(tight{}, b.name, b.what, b.due), container.New(&page.Flow{Narrow: 320}, b.begin, b.past, b.measure, b.carry))
	b.box = container.NewBorder(container.NewVBox(b.none, head), container.NewHScroll(b.photos), nil, nil, b.visits)
	return b
}

// key takes the keys that mean the same everywhere; in her visits, right turns to
// her past.
func (b *boat) key(k *fyne.KeyEvent) bool {
	if k.Name == fyne.KeyRight {
		b.p.showPast()
		return true
	}
	return b.p.desk.Key(k)
}

// show puts a boat on the right half; nil: none was found.
func (b *boat) show(l *logbook.HullLine) {
	b.line = l
	b.lines = nil
	b.visits.Forget()
	for _, o := range []fyne.CanvasObject{b.name, b.what, b.due, b.begin, b.past, b.measure, b.carry} {
		if l == nil {
			o.Hide()
		} else {
			o.Show()
		}
	}
	b.photos.RemoveAll()
	if l == nil {
		b.none.Show()
		b.visits.Refresh()
		return
	}
	b.none.Hide()
	s, u := b.p.desk.Speaker, b.p.desk.Looks.Units
	b.name.SetText(l.Name)
	b.what.SetText(short(s, u, l))
	b.due.SetText(say.NextCheck(s, l))
	if b.due.Text == "" {
		b.due.Hide()
	}
	lines, err := b.p.book.Visits(logbook.VisitQuery{Hull: l.ID, Limit: mostVisits})
	if err != nil {
		b.p.fail(err)
	}
	b.lines = lines
	b.visits.Refresh()
	if len(lines) > 0 {
		b.visits.Select(0)
		b.visits.ScrollToTop() // chosen before it was laid out
	}
}

// row fills the line of one visit.
func (b *boat) row(i int, o fyne.CanvasObject) {
	if i >= len(b.lines) {
		return
	}
	both, l := o.(*fyne.Container).Objects, &b.lines[i]
	top := both[0].(*fyne.Container).Objects
	write(top[0], b.p.say(words.BoatsVisit, words.Args{"Date": l.Date}), true)
	write(both[1], visitLine(b.p.desk.Speaker, b.p.desk.Looks.Units, l), false)
}

// enter gives the keyboard to the visits, or where there are none to beginning
// one.
func (b *boat) enter() {
	c := b.p.desk.Window.Canvas()
	switch {
	case b.line == nil:
	case len(b.lines) == 0:
		c.Focus(b.begin)
	default:
		c.Focus(b.visits)
	}
}

func (b *boat) open(i int) {
	if err := b.p.do.Open(b.lines[i].ID); err != nil {
		b.p.fail(err)
	}
}

func (b *boat) measureAgain() {
	if err := b.p.do.Measure(b.line.ID); err != nil {
		b.p.fail(err)
	}
}

func (b *boat) beginVisit() {
	if err := b.p.do.Begin(b.line.ID); err != nil {
		b.p.fail(err)
	}
}

// thumbDP is the height of a photo beside the visits.
const thumbDP = 120

// choose shows the photos of a visit.
func (b *boat) choose(i int) {
	b.photos.RemoveAll()
	if i >= len(b.lines) || b.lines[i].Photos == 0 {
		return
	}
	list, err := b.p.book.Photos(b.lines[i].ID)
	if err != nil {
		b.p.fail(err)
		return
	}
	for _, photo := range list {
		data, err := b.p.book.PhotoJPEG(photo.ID)
		if err != nil {
			b.p.fail(err)
			continue
		}
		picture, _, err := image.Decode(bytes.NewReader(data))
		if err != nil {
			b.p.fail(err)
			continue
		}
		shown := canvas.NewImageFromImage(picture)
		shown.FillMode = canvas.ImageFillContain
		shown.SetMinSize(fyne.NewSize(thumbDP*float32(photo.WidthPX)/float32(max(photo.HeightPX, 1)), thumbDP))
		caption := widget.NewLabel(photo.Caption)
		caption.Truncation = fyne.TextTruncateEllipsis
		b.photos.Add(container.NewBorder(nil, caption, nil, nil, shown))
	}
}
