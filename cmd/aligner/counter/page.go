package counter

// This file is the page: the handle between before and after, and the keys.

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
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

	handle  *widget.Slider
	between *widget.Label
	play    *page.Button
	words   *fyne.Container
	all     fyne.CanvasObject
	err     error

	costs  *cost.Costs // as the handle stands; nil: not worked out
	player player
	quiet  bool
}

// timesLarger is how much movement is exaggerated.
const timesLarger = 150

// New makes the counter view of a boat.
func New(desk page.Desk, b Boat) *Page {
	p := &Page{desk: desk, boat: b, model: scene.NewModel(b.Hull), faces: drawn.NewFaces(), between: widget.NewLabel(""), words: container.NewVBox()}
	p.line, p.err = kinematics.Prepare(b.Hull)
	p.picture = drawn.NewPicture(drawn.Onlooker{Key: p.TypedKey, Rune: p.TypedRune})
	p.picture.SetModel(p.model)
	st := &p.picture.State
	st.Show = scene.ShowHull | scene.ShowDirections | scene.ShowBed | scene.ShowTouches
	st.Words, st.Dark, st.Exaggeration, st.Afloat = say.Marks(desk.Speaker), desk.Looks.Dark, timesLarger, b.Before.Afloat
	p.picture.SetTextSize(larger * desk.Looks.TextSize)
	p.faces.Words = say.Faces(desk.Speaker)
	p.handle = widget.NewSlider(0, 1)
	p.handle.Step = 0.05
	p.handle.OnChanged = func(v float64) {
		if !p.quiet {
			p.to(v)
		}
	}
	p.play = page.NewButton(p.keys, p.say(words.CounterPlay, nil), p.playOrStop)
	p.lay()
	p.to(0)
	return p
}

// larger is how much larger than usual the type is.
const larger = 1.3

func (p *Page) say(id words.ID, args words.Args) string { return p.desk.Speaker.Say(id, args) }

// lay puts the parts where doc.go draws them.
func (p *Page) lay() {
	after := words.CounterNow
	if p.boat.Planned {
		after = words.CounterAfter
	}
	small := widget.NewLabel(p.say(words.CounterLarger, words.Args{"Times": p.desk.Looks.Units.Plain(timesLarger, 0)}))
	small.SizeName = captionSize
	foot := container.NewBorder(nil, nil, widget.NewLabel(p.say(words.CounterBefore, nil)),
		container.NewHBox(widget.NewLabel(p.say(after, nil)), p.play, layout.NewSpacer(), page.NewButton(p.desk.Key, p.say(words.PageBack, nil), p.desk.Back)), page.Track(p.handle))
	right := container.New(page.Upper{Share: 0.46}, p.faces, container.NewVScroll(p.words))
	left := container.NewBorder(nil, small, nil, nil, p.picture)
	p.all = container.NewPadded(container.NewBorder(nil, container.NewVBox(p.between, foot), nil, nil, container.New(page.Columns{Share: 0.58, Least: 300}, left, right)))
}

// to moves the handle: 0 before, 1 after.
func (p *Page) to(share float64) {
	p.player.stop()
	p.player.steps = nil // of another position
	p.play.SetText(p.say(words.CounterPlay, nil))
	p.share = min(max(math.Round(100*share)/100, 0), 1)
	p.quiet = true
	p.handle.SetValue(p.share)
	p.quiet = false
	p.costs = nil
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
	p.picture.Refresh()
	looks := p.desk.Looks
	looks.TextSize *= larger
	p.faces.SetResult(&p.result, p.boat.Hull.Coupling.OuterDiameterMM, looks)
	p.tell()
}

// Content is the page.
func (p *Page) Content() fyne.CanvasObject { return p.all }

// Focus is nothing: keys come to the page.
func (p *Page) Focus() fyne.Focusable { return nil }

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

// TypedRune has no letters.
func (p *Page) TypedRune(rune) {}

// Close stops what plays and gives the picture back.
func (p *Page) Close() {
	p.player.stop()
	p.picture.Close()
}
