package boats

// This file is a boat's past, in place of the list: her visits on a time line,
// what moved before the one chosen and why, plots, and its photos.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/cmd/aligner/photos"
	"aligner/hulls/logbook"
	"aligner/report/history"
)

// past is one boat's.
type past struct {
	p    *Page
	desk page.Desk // Escape goes back to the list
	hull logbook.HullLine
	past *history.Past // nil: still being worked out

	box    fyne.CanvasObject
	visits *page.List
	text   *widget.Label
	scroll *container.Scroll
	plots  *plots
	strip  *photos.Strip
	told   *widget.Label
}

// showPast turns to the past of the boat chosen.
func (p *Page) showPast() {
	if p.boat.line == nil {
		return
	}
	p.turnToPast()
	p.desk.Window.Canvas().Focus(p.past.visits)
}

// ShowPast turns to the past of a boat before the page is shown.
func (p *Page) ShowPast(l logbook.HullLine) {
	p.words.SetText(l.Name) // what Escape goes back to
	if p.boat.line == nil || p.boat.line.ID != l.ID {
		p.boat.show(&l)
	}
	p.turnToPast()
}

func (p *Page) turnToPast() {
	t := &past{p: p, hull: *p.boat.line, desk: p.desk}
	t.desk.Key = t.key
	t.lay()
	p.past = t
	p.stack.Objects = []fyne.CanvasObject{t.box}
	p.stack.Refresh()
	t.workOut()
}

// leavePast goes back to the list.
func (p *Page) leavePast() {
	p.past = nil
	p.stack.Objects = []fyne.CanvasObject{p.all}
	p.stack.Refresh()
	p.again() // photos may have come
	p.boat.enter()
}

func (t *past) lay() {
	say := func(id words.ID) string { return t.p.say(id, nil) }
	title := widget.NewLabel(t.p.say(words.HistoryTitle, words.Args{"Name": t.hull.Name}))
	title.TextStyle.Bold = true
	title.Truncation = fyne.TextTruncateEllipsis
	button := func(id words.ID, do func()) fyne.CanvasObject { return page.NewButton(t.desk.Key, say(id), do) }
	buttons := container.NewHBox(button(words.PastOpen, t.open), button(words.BoatsBegin, t.p.boat.beginVisit))
	t.text = widget.NewLabel(say(words.PastWait))
	t.text.Wrapping = fyne.TextWrapWord
	t.scroll = container.NewVScroll(t.text)
	t.visits = page.NewList(t.desk.Key, t.count, newRow, t.row, t.choose)
	t.visits.Open = func(int) { t.open() }
	left := container.NewVSplit(t.visits, t.scroll)
	left.SetOffset(timeLineShare)
	t.told = widget.NewLabel("")
	t.told.Wrapping = fyne.TextWrapWord
	t.told.Hide()
	t.plots = newPlots(t.desk)
	t.strip = photos.New(t.desk)
	right := container.NewBorder(t.plots.choice, t.strip.Content(), nil, nil, t.plots.picture)
	foot := container.NewHBox(layout.NewSpacer(), button(words.PastBoats, t.p.leavePast))
	t.box = container.NewPadded(container.NewBorder(container.NewBorder(nil, nil, nil, buttons, title), container.NewVBox(t.told, foot), nil, nil,
		container.New(page.Columns{Share: 0.42, Least: 300}, left, right)))
}

// timeLineShare is how much of the left column the visits take.
const timeLineShare = 0.38

// key takes the keys that mean the same everywhere, but that Escape goes back to
// the list first; left and right scroll what is said.
func (t *past) key(k *fyne.KeyEvent) bool {
	switch k.Name {
	case fyne.KeyEscape:
		t.p.leavePast()
		return true
	case fyne.KeyLeft, fyne.KeyRight:
		if t.p.desk.Window.Canvas().Focused() != fyne.Focusable(t.visits) {
			return false
		}
		by := t.scroll.Size().Height / 2
		if k.Name == fyne.KeyLeft {
			by = -by
		}
		most := max(0, t.text.MinSize().Height-t.scroll.Size().Height)
		t.scroll.ScrollToOffset(fyne.NewPos(0, min(max(0, t.scroll.Offset.Y+by), most)))
		return true
	}
	return t.p.desk.Key(k)
}

// workOut works the visits out aside.
func (t *past) workOut() {
	var worked *history.Past
	var err error
	work := func() { worked, err = history.Of(t.p.book, t.hull.ID) }
	rest := func() {
		if t.p.past != t {
			return // left meanwhile
		}
		if err != nil {
			t.p.fail(err)
			return
		}
		t.past = worked
		t.plots.show(worked)
		t.visits.Refresh()
		if n := len(worked.Entries); n > 0 {
			t.visits.Select(0)
		} else {
			t.text.SetText(t.p.say(words.HistoryNone, words.Args{"Name": t.hull.Name}))
			t.strip.Show(nil, 0)
		}
	}
	t.p.aside(work, rest)
}

func (t *past) count() int {
	if t.past == nil {
		return 0
	}
	return len(t.past.Entries)
}

// entry is that of a line, the latest visit first.
func (t *past) entry(line int) int { return len(t.past.Entries) - 1 - line }

func (t *past) speech() history.Speech {
	return history.Speech{Speaker: t.desk.Speaker, Units: t.desk.Looks.Units, Past: t.past}
}

// row fills the line of one visit: its date and hours, how she was found and
// left.
func (t *past) row(line int, o fyne.CanvasObject) {
	if line >= t.count() {
		return
	}
	e := &t.past.Entries[t.entry(line)]
	both := o.(*fyne.Container).Objects
	top := both[0].(*fyne.Container).Objects
	write(top[0], e.Date, true)
	u := t.desk.Looks.Units
	hours := ""
	if e.EngineHours.Known {
		hours = t.p.say(words.PastHours, words.Args{"Hours": u.Plain(e.EngineHours.Value, 1)})
	}
	write(top[1], hours, false)
	gap := func(g history.Gap) string {
		if !g.Known {
			return "?"
		}
		return u.GapWithUnit(g.SpreadMM)
	}
	write(both[1], t.p.say(words.PastRow, words.Args{"Found": gap(e.Begin), "Left": gap(e.HandOver)}), false)
}

// choose says what moved before a visit, and what it was; and shows its photos.
func (t *past) choose(line int) {
	if line >= t.count() {
		return
	}
	i, s := t.entry(line), t.speech()
	parts := s.Visit(i)
	moved := s.Change(i)
	if moved == nil {
		moved = []string{t.p.say(words.HistoryFirst, nil)}
	}
	parts = append(append(moved, ""), parts...)
	t.text.SetText(strings.Join(parts, "\n"))
	t.scroll.ScrollToTop()
	t.strip.Show(t.p.book, logbook.VisitID(t.past.Entries[i].Number))
}

// open goes on with the visit chosen.
func (t *past) open() {
	if line := t.visits.Chosen(); line >= 0 && line < t.count() {
		if err := t.p.do.Open(logbook.VisitID(t.past.Entries[t.entry(line)].Number)); err != nil {
			t.p.fail(err)
		}
	}
}
