package form

// This file is the right side: the picture with the tape laid on it, and under it
// where to put the tape and how much the field matters.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
	"github.com/go-gl/mathgl/mgl64"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/hulls/fields"
	"aligner/report/say"
	"aligner/scene"
)

// side is picture and words.
type side struct {
	p       *Page
	picture *drawn.Picture
	model   *scene.Model // nil: not made yet
	asked   bool         // one was asked for
	making  bool         // one is being made
	again   bool         // of a hull that has changed since
	old     bool         // the picture shows her before what does not fit
	view    string       // what the picture looks at
	title   *widget.Label
	tape    *widget.Label
	matter  *widget.Label
	box     *fyne.Container
}

func newSide(p *Page) *side {
	s := &side{p: p, title: widget.NewLabel(""), tape: widget.NewLabel(""), matter: widget.NewLabel("")}
	s.title.TextStyle.Bold = true
	for _, l := range []*widget.Label{s.title, s.tape, s.matter} {
		l.Wrapping = fyne.TextWrapWord
	}
	s.picture = drawn.NewPicture(s)
	s.picture.State.Show = scene.ShowHull | scene.ShowNames | scene.ShowDirections | scene.ShowTrueLine | scene.ShowBed
	s.picture.State.Words = say.Marks(p.desk.Speaker)
	s.picture.State.Dark = p.desk.Looks.Dark
	s.picture.SetTextSize(p.desk.Looks.TextSize)
	s.box = container.New(overWords{}, s.picture, container.NewVScroll(container.New(tight{}, s.title, s.tape, s.matter)))
	return s
}

// rebuild begins to make the picture of the hull as she is now, if she is a possible
// boat; the one before stands meanwhile.
func (s *side) rebuild() {
	s.old = len(s.p.report.Refusals) > 0
	if s.old && s.asked {
		return
	}
	h := s.p.h
	if s.old { // not even at the beginning: what she was taken over from
		h = s.p.d.base
	}
	s.asked = true
	if s.making { // one at a time; the latest is made after it
		s.again = true
		return
	}
	s.making = true
	var made *scene.Model
	s.p.do.Aside(func() { made = scene.NewModel(h) }, func() {
		s.making = false
		switch {
		case s.p.closed:
		case s.again:
			s.again = false
			s.rebuild()
		default:
			s.use(made)
		}
	})
}

// use puts a picture made in place of the one before, looked at from where the
// person had turned it.
func (s *side) use(m *scene.Model) {
	view, turned := s.picture.State.View, s.model != nil && s.picture.Fitted() == ""
	s.model = m
	s.picture.SetModel(m)
	s.view = "" // it is fitted again
	s.show()
	if turned {
		s.picture.State.View = view
	}
}

// show follows the field chosen.
func (s *side) show() {
	f := s.p.field(s.p.d.field)
	if len(s.p.parts[s.p.d.part].pointers) == 0 || f == nil {
		s.picture.State.Tape = nil
		s.look(scene.ViewWhole)
		put(s.title, s.p.h.Name)
		put(s.tape, s.oldNote(""))
		put(s.matter, "")
		s.settle()
		return
	}
	speaker := s.p.desk.Speaker
	put(s.title, say.Field(speaker, f))
	put(s.tape, s.oldNote(s.p.say(words.Of("tape", f.Key), nil)))
	matter := ""
	if e, ok := s.p.effects[f.Pointer]; ok {
		matter = say.Matter(speaker, s.p.units(), s.p.d.in, &e, f.Get(&s.p.h))
	} else if !s.p.noWork && s.p.effects == nil {
		matter = s.p.say(words.FormWorking, nil)
	}
	put(s.matter, matter)
	s.lay(f)
	s.settle()
}

// settle lays the words out again, whose heights have changed.
func (s *side) settle() { s.box.Refresh() }

func (s *side) oldNote(text string) string {
	if !s.old {
		return text
	}
	if text != "" {
		text += "\n"
	}
	return text + s.p.say(words.FormPictureOld, nil)
}

// lay lays the field's tape on the picture, and looks at it.
func (s *side) lay(f *fields.Field) {
	if s.model == nil {
		return
	}
	h := s.model.Hull()
	own, ok := fields.Find(h, f.Pointer) // of the hull that is drawn
	if !ok || own.Tape == nil {
		s.picture.State.Tape = nil
		s.look(viewOf(f.Group))
		return
	}
	var sight []mgl64.Vec3
	for _, p := range own.Tape.Sight {
		sight = append(sight, mgl64.Vec3(p.InS(h)))
	}
	s.picture.State.Tape = &scene.Tape{Sight: sight, From: mgl64.Vec3(own.Tape.From.InS(h)), To: mgl64.Vec3(own.Tape.To.InS(h)),
		Text: s.p.value(&own, own.Get(h).Number)}
	s.view = ""
	s.look(scene.ViewTape)
}

// viewOf is what to look at for a part.
func viewOf(g fields.Group) string {
	switch g.Part {
	case fields.Mount, fields.Bearing:
		return g.Name
	case fields.Coupling:
		return scene.ViewCoupling
	case fields.Engine:
		return scene.ViewEngine
	case fields.Propeller:
		return scene.ViewStrut
	case fields.Boat:
		return scene.ViewWhole
	}
	return "" // as it was: the field before looked at it
}

// look turns the picture, unless it looks there already.
func (s *side) look(view string) {
	if s.model == nil {
		return
	}
	if view == "" {
		s.picture.Refresh()
		return
	}
	if s.view == view {
		s.picture.Refresh()
		return
	}
	s.view = view
	s.picture.Fit(view, !s.p.desk.Looks.NoMotion && fyne.CurrentApp().Settings().ShowAnimations())
	s.picture.Refresh()
}

func (s *side) close() { s.picture.Close() }

// Nothing on this picture is taken by the hand but the view.

// TakeHandle needs nothing done: there are no handles.
func (s *side) TakeHandle(scene.HandleID) {}

// MoveHandle needs nothing done.
func (s *side) MoveHandle(scene.HandleID, float64, bool) {}

// LeaveHandle needs nothing done.
func (s *side) LeaveHandle() {}

// Touched needs nothing done: the keyboard stays with the field.
func (s *side) Touched() {}

// PictureKey hands a key on.
func (s *side) PictureKey(k *fyne.KeyEvent) { s.p.keys(k) }

// PictureRune needs nothing done.
func (s *side) PictureRune(rune) {}
