package boats

// This file is the page: what is typed, the list, and the keys that go between
// them.

import (
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/logbook"
)

// Do is what the page asks of the window.
type Do struct {
	Open  func(logbook.VisitID) error // goes on with a visit
	Begin func(logbook.HullID) error  // begins a visit of a boat
	Hull  func(name string)           // shows a built-in boat
	New   func()                      // begins a boat of one's own
	// Measure shows a boat's measurements, to be measured again.
	Measure func(logbook.HullID) error
}

// Page is the page of all boats.
type Page struct {
	desk page.Desk
	book *logbook.Book
	do   Do

	shelf shelf
	words *page.Entry
	count *widget.Label
	list  *page.List
	boat  *boat
	told  *widget.Label // what went wrong, or was done
	all   fyne.CanvasObject
	stack *fyne.Container // all, or the past
	past  *past           // nil: the list stands
}

// New makes the page of a logbook's boats.
func New(desk page.Desk, book *logbook.Book, do Do) *Page {
	p := &Page{desk: desk, book: book, do: do, shelf: shelf{book: book}, count: widget.NewLabel(""), told: widget.NewLabel("")}
	p.told.Wrapping = fyne.TextWrapWord
	p.told.Hide()
	p.words = page.NewEntry(p.typedInWords)
	p.words.SetPlaceHolder(p.say(words.BoatsFind, nil))
	p.words.OnChanged = p.find
	p.list = page.NewList(desk.Key, func() int { return p.shelf.count }, newRow, p.row, p.choose)
	p.list.Open = func(int) { p.boat.enter() }
	p.boat = newBoat(p)
	p.lay()
	p.find("")
	return p
}

func (p *Page) say(id words.ID, args words.Args) string { return p.desk.Speaker.Say(id, args) }

// lay puts the parts where doc.go draws them.
func (p *Page) lay() {
	button := func(id words.ID, do func()) fyne.CanvasObject { return page.NewButton(p.desk.Key, p.say(id, nil), do) }
	left := container.NewBorder(container.NewBorder(nil, nil, nil, p.count, p.words), nil, nil, nil, p.list)
	foot := container.NewHBox(button(words.FormMenuNew, p.do.New), button(words.BoatsTakeIn, p.takeIn), p.builtIn(), layout.NewSpacer(), button(words.PageBack, p.desk.Back))
	halves := container.New(page.Columns{Share: 0.42, Least: 300}, left, p.boat.box)
	p.all = container.NewPadded(container.NewBorder(nil, container.NewVBox(p.told, foot), nil, nil, halves))
	p.stack = container.NewStack(p.all)
}

// Content is the page.
func (p *Page) Content() fyne.CanvasObject { return p.stack }

// Focus is where words are typed, or a boat's visits.
func (p *Page) Focus() fyne.Focusable {
	if p.past != nil {
		return p.past.visits
	}
	return p.words
}

// TypedKey moves through the list.
func (p *Page) TypedKey(k *fyne.KeyEvent) {
	if p.past != nil {
		p.desk.Window.Canvas().Focus(p.past.visits)
		p.past.visits.TypedKey(k)
		return
	}
	p.list.Arrows(k)
}

// Dropped takes files dropped on the page: a boat's zip file into the logbook,
// photos to the visit chosen in a boat's past.
func (p *Page) Dropped(paths []string) bool {
	switch {
	case len(paths) == 1 && strings.EqualFold(filepath.Ext(paths[0]), ".zip"):
		p.TakeIn(paths[0])
	case p.past != nil:
		p.past.strip.Attach(paths...)
	default:
		return false
	}
	return true
}

// TypedRune types words, wherever the keyboard was.
func (p *Page) TypedRune(r rune) {
	if p.past != nil {
		return
	}
	p.desk.Window.Canvas().Focus(p.words)
	p.words.TypedRune(r)
}

// Close has nothing to give back: the logbook is the window's.
func (p *Page) Close() {}

// typedInWords takes the keys that mean something else than letters while words
// are typed.
func (p *Page) typedInWords(k *fyne.KeyEvent) bool { return p.desk.Key(k) || p.list.Arrows(k) }

// find looks for words and chooses the first boat that has them.
func (p *Page) find(typed string) {
	p.shelf.find(typed, p.aside, p.counted)
	p.counted()
	p.list.Forget()
	p.list.Refresh()
	p.list.ScrollToTop()
	if p.shelf.err != nil {
		p.fail(p.shelf.err)
	}
	if p.shelf.count > 0 {
		p.list.Select(0)
		return
	}
	p.boat.show(nil)
}

// again reads the list anew after something changed, and stays on its boat and on
// the visit chosen.
func (p *Page) again() {
	at, chosen := p.list.Chosen(), p.boat.visits.Chosen()
	var boat logbook.HullID
	if p.boat.line != nil {
		boat = p.boat.line.ID
	}
	stay := func() {
		p.counted()
		if at = p.shelf.place(boat, at); at < 0 {
			return
		}
		p.list.Select(at)
		if p.boat.line != nil && p.boat.line.ID == boat && chosen > 0 && chosen < len(p.boat.lines) {
			p.boat.visits.Select(chosen)
		}
	}
	p.shelf.find(p.words.Text, p.aside, stay)
	p.list.Forget()
	stay()
}

// Again reads the list anew when something was worked out meanwhile; a boat's past
// stays as it is.
func (p *Page) Again() {
	if p.past == nil {
		p.again()
	}
}

// counted says how many boats there are, as soon as that is known.
func (p *Page) counted() {
	id := words.BoatsCount
	if !p.shelf.counted {
		id = words.BoatsMany
	}
	p.count.SetText(p.say(id, words.Args{"Count": p.shelf.count}))
	p.list.Refresh()
}

// aside does work off the window's thread, where there is one for it.
func (p *Page) aside(work, rest func()) {
	if p.desk.Aside == nil {
		work()
		rest()
		return
	}
	p.desk.Aside(work, rest)
}

func (p *Page) choose(i int) {
	if l, ok := p.shelf.line(i); ok {
		p.boat.show(&l)
	}
}

// fail tells what went wrong; tell, what was done.
func (p *Page) fail(err error) { p.tell(p.desk.Speaker.Retell(err.Error())) }

func (p *Page) tell(text string) {
	told := p.told
	if p.past != nil {
		told = p.past.told
	}
	told.SetText(text)
	told.Show()
}
