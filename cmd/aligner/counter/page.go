package counter

// This file is the page: the handle between before and after, and the keys.

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/report/cost"
	"aligner/report/say"
	"aligner/scene"
)

// Boat is what is shown.
type Boat struct {
	Hull          hulls.Hull
	Before, After kinematics.State // as seated or centred
	Planned       bool             // After is not done yet
	Fault         kinematics.RunOut
}

// Page is the counter view.
type Page struct {
	desk    page.Desk
	boat    Boat
	line    *kinematics.DriveLine
	model   *scene.Model
	picture *drawn.Picture
	faces   *drawn.Faces
	moved   scene.Movement
	result  kinematics.Result
	share   float64 // 0 before, 1 after

	handle   *handle
	between  *widget.Label
	play     *page.Button
	size     *page.Button // true size, or larger
	caption  *widget.Label
	words    *fyne.Container
	scroll   *container.Scroll
	grow     *page.Grow
	override *container.ThemeOverride // of the words, which come and go
	all      fyne.CanvasObject
	err      error

	times  float64     // larger than life
	truly  bool        // shown at its true size
	costs  *cost.Costs // as the handle stands; nil: not worked out
	player player
	quiet  bool
}

// New makes the counter view of a boat.
func New(desk page.Desk, b Boat) *Page {
	p := &Page{desk: desk, boat: b, model: scene.NewModel(b.Hull), faces: drawn.NewFaces(), between: widget.NewLabel(""), caption: widget.NewLabel(""), words: container.NewVBox(), times: mostTimes}
	p.line, p.err = kinematics.Prepare(b.Hull)
	p.picture = drawn.NewPicture(drawn.Onlooker{Key: p.TypedKey, Rune: p.TypedRune})
	p.picture.SetModel(p.model)
	st := &p.picture.State
	st.Show = scene.ShowHull | scene.ShowDirections | scene.ShowBed | scene.ShowTouches
	st.Words, st.Dark, st.Afloat = say.Marks(desk.Speaker), desk.Looks.Dark, b.Before.Afloat
	p.grow = &page.Grow{PerWidth: timesPerWidth, Least: leastLarger, Most: mostLarger, Headline: headline, Changed: p.sizeType}
	p.player.every = ticking
	p.faces.Words = say.Faces(desk.Speaker)
	p.handle = newHandle(p.keys, p.playOrStop, p.TypedRune, func(v float64) {
		if !p.quiet {
			p.to(v)
		}
	})
	p.size = page.NewButton(p.keys, "", p.sizeOrTrue)
	p.play = page.NewButton(p.keys, p.say(words.CounterPlay, nil), p.playOrStop)
	p.lay()
	p.to(0)
	return p
}

func (p *Page) say(id words.ID, args words.Args) string { return p.desk.Speaker.Say(id, args) }

// lay puts the parts where doc.go draws them.
func (p *Page) lay() {
	after := words.CounterNow
	if p.boat.Planned {
		after = words.CounterAfter
	}
	p.caption.SizeName, p.caption.Truncation = captionSize, fyne.TextTruncateEllipsis
	p.between.Wrapping = fyne.TextWrapWord
	ends := container.NewBorder(nil, nil, widget.NewLabel(p.say(words.CounterBefore, nil)), widget.NewLabel(p.say(after, nil)), page.Track(p.handle))
	foot := container.NewBorder(nil, nil, nil, container.NewHBox(p.play, page.NewButton(p.desk.Key, p.say(words.PageBack, nil), p.desk.Back)), ends)
	p.override = p.grow.Over(p.words)
	p.scroll = container.NewVScroll(p.override)
	right := container.New(page.Upper{Share: facesShare}, p.faces, p.scroll)
	left := container.NewBorder(nil, container.NewBorder(nil, nil, nil, p.size, p.caption), nil, nil, p.picture)
	inner := container.NewBorder(nil, container.NewVBox(p.between, foot), nil, nil, container.New(page.Columns{Share: 0.54, Least: 300}, left, right))
	p.all = container.New(p.grow, p.grow.Over(inner))
}

// facesShare is the faces' part of the right column's height.
const facesShare = 0.4

// to moves the handle: 0 before, 1 after.
func (p *Page) to(share float64) {
	p.player.stop()
	p.player.turn = nil // of another position
	p.play.SetText(p.say(words.CounterPlay, nil))
	p.share = min(max(math.Round(100*share)/100, 0), 1)
	p.quiet = true
	p.handle.SetValue(p.share)
	p.quiet = false
	p.costs = nil
	p.scroll.ScrollToTop()
	p.showStanding()
}

// state is the engine where the handle stands.
func (p *Page) state() kinematics.State {
	s := p.boat.Before
	mix := func(a, b []float64) []float64 {
		out := make([]float64, len(p.boat.Hull.Mounts))
		for i := range out {
			out[i] = (1-p.share)*at(a, i) + p.share*at(b, i)
		}
		return out
	}
	s.LiftMM, s.SlideMM = mix(p.boat.Before.LiftMM, p.boat.After.LiftMM), mix(p.boat.Before.SlideMM, p.boat.After.SlideMM)
	return s
}

func at(mm []float64, i int) float64 {
	if i < len(mm) {
		return mm[i]
	}
	return 0
}

// showStanding shows the boat unbolted, where the handle stands.
func (p *Page) showStanding() {
	if p.err == nil {
		s := p.state()
		if p.err = p.line.Solve(&s, &p.result); p.err == nil {
			p.model.Read(p.line, &s, &p.result, &p.moved)
		}
	}
	if p.err != nil {
		p.between.SetText(p.desk.Speaker.Retell(p.err.Error()))
		return
	}
	st := &p.picture.State
	st.Now, st.Spot, st.Touches = &p.moved, nil, nil
	p.times = p.timesOf()
	p.draw()
	p.tell()
}

// Content is the page.
func (p *Page) Content() fyne.CanvasObject { return p.all }

// Focus is nothing: keys come to the page.
func (p *Page) Focus() fyne.Focusable { return nil }

// draw shows picture and faces anew.
func (p *Page) draw() {
	p.picture.State.Exaggeration = p.times
	if p.truly {
		p.picture.State.Exaggeration = 1
	}
	p.picture.Refresh()
	looks := p.desk.Looks
	looks.TextSize *= float64(p.grow.Times())
	p.faces.SetResult(&p.result, p.boat.Hull.Coupling.OuterDiameterMM, looks)
	p.tellSize()
}

// keyStep is how far a key moves the handle.
const keyStep = 0.1

func (p *Page) keys(k *fyne.KeyEvent) bool {
	if p.desk.Key(k) {
		return true
	}
	switch k.Name {
	case fyne.KeyLeft:
		p.to(p.share - keyStep)
	case fyne.KeyRight:
		p.to(p.share + keyStep)
	case fyne.KeyHome:
		p.to(0)
	case fyne.KeyEnd:
		p.to(1)
	case fyne.KeyDown, fyne.KeyPageDown:
		page.Leaf(p.scroll, 1)
	case fyne.KeyUp, fyne.KeyPageUp:
		page.Leaf(p.scroll, -1)
	default:
		return false
	}
	return true
}

// TypedKey takes the page's keys.
func (p *Page) TypedKey(k *fyne.KeyEvent) {
	if !p.keys(k) && k.Name == fyne.KeySpace {
		p.playOrStop()
	}
}

// TypedRune shows the true size, or larger again.
func (p *Page) TypedRune(r rune) {
	if r == 't' || r == 'T' {
		p.sizeOrTrue()
	}
}

// Close stops what plays and gives the picture back.
func (p *Page) Close() {
	p.player.stop()
	p.picture.Close()
}
