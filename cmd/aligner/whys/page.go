package whys

// This file is the page: which nut, which step, and the keys.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/why"
	"aligner/report/say"
)

// Page is the page of why.
type Page struct {
	desk   page.Desk
	moves  []why.Move // of the first boat: each nut, each slide
	at     int        // which
	step   int        // how many steps are told
	sides  [2]*side
	choose *widget.Select
	told   *fyne.Container // the table; empty: not worked out yet
	steps  *fyne.Container
	below  *container.Scroll
	halves *container.Split
	grow   *page.Grow
	large  *container.ThemeOverride // of the words
	quiet  bool
	all    fyne.CanvasObject
}

// New makes the page of a boat, with another beside her.
func New(desk page.Desk, h, other hulls.Hull, afloat bool) *Page {
	p := &Page{desk: desk}
	for i, hull := range []hulls.Hull{h, other} {
		p.sides[i] = newSide(p, hull, afloat)
	}
	var names []string
	for i := range h.Mounts {
		p.moves = append(p.moves, why.Move{Mounts: []int{i}, Steps: 1})
	}
	for i := range h.Mounts {
		p.moves = append(p.moves, why.Move{Mounts: []int{i}, Slide: true, Steps: 1})
	}
	for _, m := range p.moves {
		names = append(names, say.WhyMove(desk.Speaker, desk.Looks.Units, &h, &why.Why{Mounts: m.Mounts, Slide: m.Slide, Steps: m.Steps}))
	}
	p.choose = widget.NewSelect(names, func(string) {
		if i := p.choose.SelectedIndex(); !p.quiet && i >= 0 {
			p.turnTo(i)
		}
	})
	p.lay()
	p.turnTo(0)
	return p
}

func (p *Page) say(id words.ID, args words.Args) string { return p.desk.Speaker.Say(id, args) }

// lay puts the parts where doc.go draws them.
func (p *Page) lay() {
	button := func(id words.ID, do func()) fyne.CanvasObject { return page.NewButton(p.keys, p.say(id, nil), do) }
	top := container.NewHBox(container.NewGridWrap(fyne.NewSize(chooseWide, p.choose.MinSize().Height), p.choose), button(words.WhyNext, func() { p.further(1) }), button(words.WhyAgain, func() { p.further(-p.step) }),
		button(words.WhyTableButton, p.showTable), layout.NewSpacer(), page.NewButton(p.desk.Key, p.say(words.PageBack, nil), p.desk.Back))
	p.told = container.NewStack()
	p.told.Hide()
	both := func(a, b fyne.CanvasObject) *fyne.Container { return container.NewGridWithColumns(2, a, b) }
	p.steps = both(p.sides[0].words, p.sides[1].words)
	grow := &page.Grow{PerWidth: timesPerWidth, Least: 1, Most: mostLarger, Changed: p.sizeType}
	p.grow, p.large = grow, grow.Over(container.NewStack(p.steps, p.told))
	p.below = container.NewVScroll(p.large)
	pictures := both(p.sides[0].picture, p.sides[1].picture)
	p.halves = container.NewVSplit(pictures, p.below)
	p.halves.SetOffset(picturesShare)
	p.all = container.New(grow, container.NewBorder(top, nil, nil, nil, p.halves))
}

// A class stands back: type is so many times its usual size in a window so wide.
const timesPerWidth, mostLarger = 1.0 / 1280, 1.8

// sizeType shows the pictures' words in the type's size.
func (p *Page) sizeType() {
	for _, s := range p.sides {
		s.picture.SetTextSize(float64(p.grow.Times()) * p.desk.Looks.TextSize)
		s.picture.Refresh()
	}
}

// The moves' names are read in so much width; the pictures have so much of the height,
// less beside the table.
const (
	chooseWide    = 280
	picturesShare = 0.6
	besideTable   = 0.34
)

// turnTo takes another move apart, from the start.
func (p *Page) turnTo(i int) {
	p.at, p.step = i, 0
	p.quiet = true
	p.choose.SetSelectedIndex(i)
	p.quiet = false
	for _, s := range p.sides {
		s.take(p.moves[i])
	}
	p.show()
}

// further tells so many steps more.
func (p *Page) further(by int) {
	most := 0
	for _, s := range p.sides {
		most = max(most, len(s.steps))
	}
	p.step = min(max(p.step+by, 0), most)
	p.hideTable()
	p.show()
}

func (p *Page) show() {
	for _, s := range p.sides {
		s.show(p.step)
	}
	p.steps.Refresh()
	if p.below.Size().Height > 0 { // the step last told is in sight
		p.below.Refresh() // as tall as its words are now
		p.below.ScrollToBottom()
	}
}

// showTable shows the table of all nuts in place of the steps, or these again.
func (p *Page) showTable() {
	if p.told.Visible() {
		p.hideTable()
		return
	}
	if len(p.told.Objects) == 0 {
		p.told.Add(p.newTable())
		p.large.Refresh() // it is in large type too
	}
	p.steps.Hide()
	p.told.Show()
	p.halves.SetOffset(besideTable)
	p.below.ScrollToTop()
}

func (p *Page) hideTable() {
	if !p.told.Visible() {
		return
	}
	p.halves.SetOffset(picturesShare)
	p.told.Hide()
	p.steps.Show()
}

// Content is the page.
func (p *Page) Content() fyne.CanvasObject { return p.all }

// Focus is nothing: keys come to the page.
func (p *Page) Focus() fyne.Focusable { return nil }

// keys takes the keys of the page.
func (p *Page) keys(k *fyne.KeyEvent) bool {
	if p.desk.Key(k) {
		return true
	}
	n := len(p.moves)
	switch k.Name {
	case fyne.KeyBackspace, fyne.KeyLeft:
		p.further(-1)
	case fyne.KeyRight:
		p.further(1)
	case fyne.KeyHome:
		p.further(-p.step)
	case fyne.KeyPageDown:
		page.Leaf(p.below, 1)
	case fyne.KeyPageUp:
		page.Leaf(p.below, -1)
	case fyne.KeyUp:
		p.turnTo((p.at + n - 1) % n)
	case fyne.KeyDown:
		p.turnTo((p.at + 1) % n)
	default:
		return false
	}
	return true
}

// TypedKey takes the page's keys when nothing has the keyboard.
func (p *Page) TypedKey(k *fyne.KeyEvent) {
	if !p.keys(k) && k.Name == fyne.KeySpace {
		p.further(1)
	}
}

// TypedRune shows the table.
func (p *Page) TypedRune(r rune) {
	if r == 't' || r == 'T' {
		p.showTable()
	}
}

// Close gives the pictures back.
func (p *Page) Close() {
	for _, s := range p.sides {
		s.picture.Close()
	}
}

// heldOf is how the shaft is held where the gap is taken apart.
func heldOf(h *hulls.Hull) kinematics.Held {
	if h.Coupling.HasPilot() {
		return kinematics.Seated
	}
	return kinematics.Centred
}
