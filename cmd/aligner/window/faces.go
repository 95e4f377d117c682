package window

// This file is the coupling faces close up: the gap at twelve hours round a
// clock, with the sides of the boat and the direction of view written.

import (
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/kinematics"
	"aligner/report/say"
)

// faces is the widget.
type faces struct {
	widget.BaseWidget
	outer, inner *canvas.Circle
	spokes       [12]*canvas.Line // as long as the gap there
	numbers      [12]*canvas.Text
	sides        [2]*canvas.Text // at 3 and at 9 o'clock
	middle       [3]*canvas.Text
	view         *canvas.Text
	rays         [12]ray
}

// ray is an hour's direction on the screen, and its gap as a share of the
// largest.
type ray struct{ x, y, share float32 }

// Open and tight are told by a colour-blind-safe pair, and by the numbers.
var (
	openColour  = color.NRGBA{31, 105, 178, 255}
	tightColour = color.NRGBA{214, 110, 20, 255}
)

func newFaces() *faces {
	f := &faces{outer: canvas.NewCircle(color.Transparent), inner: canvas.NewCircle(color.Transparent)}
	text := func() *canvas.Text {
		t := canvas.NewText("", color.Black)
		t.Alignment = fyne.TextAlignCenter
		return t
	}
	for i := range f.numbers {
		f.spokes[i] = canvas.NewLine(openColour)
		f.numbers[i] = text()
	}
	for i := range f.middle {
		f.middle[i] = text()
	}
	f.sides[0], f.sides[1], f.view = text(), text(), text()
	f.ExtendBaseWidget(f)
	return f
}

// CreateRenderer lays the clock out.
func (f *faces) CreateRenderer() fyne.WidgetRenderer {
	objects := []fyne.CanvasObject{f.outer, f.inner}
	for i := range f.numbers {
		objects = append(objects, f.spokes[i], f.numbers[i])
	}
	for _, t := range f.middle {
		objects = append(objects, t)
	}
	objects = append(objects, f.sides[0], f.sides[1], f.view)
	return &facesRenderer{f, objects}
}

// MinSize holds twelve numbers apart.
func (f *faces) MinSize() fyne.Size { return fyne.NewSize(230, 230) }

// show puts a gap on the clock. What has no gap to show says so in the middle.
func (f *faces) show(r *kinematics.Result, u say.Units, lookingAft bool, textSize float32) {
	s := words.In("en")
	spread := r.Gap.SpreadMM()
	known := r.Gap.Known && r.Held != kinematics.Bolted
	for i := range f.numbers {
		hour := i // as stored; the place on the screen may be mirrored
		f.numbers[i].Text = ""
		f.spokes[i].Hidden = !known || spread == 0
		if known {
			gap := r.Gap.AtHourMM(hour)
			f.numbers[i].Text = u.Gap(gap)
			f.spokes[i].StrokeColor, f.spokes[i].StrokeWidth = openColour, 7
			if gap < spread/4 {
				f.spokes[i].StrokeColor, f.spokes[i].StrokeWidth = tightColour, 3
			}
		}
	}
	f.sides[0].Text, f.sides[1].Text = "STBD", "PORT"
	id := words.SeenForward
	if lookingAft {
		f.sides[0].Text, f.sides[1].Text, id = "PORT", "STBD", words.SeenAft
	}
	f.view.Text = s.Say(id, nil)
	f.middle[0].Text, f.middle[1].Text, f.middle[2].Text = f.middleWords(r, u, lookingAft)
	colour := theme.Color(theme.ColorNameForeground)
	all := append([]*canvas.Text{f.sides[0], f.sides[1], f.view}, f.numbers[:]...)
	for _, t := range append(all, f.middle[:]...) {
		t.Color, t.TextSize = colour, 13*textSize
	}
	f.middle[0].TextSize, f.middle[0].TextStyle = 18*textSize, fyne.TextStyle{Bold: true}
	f.sides[0].TextStyle, f.sides[1].TextStyle = fyne.TextStyle{Bold: true}, fyne.TextStyle{Bold: true}
	f.outer.StrokeColor, f.outer.StrokeWidth = colour, 1.5
	f.inner.StrokeColor, f.inner.StrokeWidth = theme.Color(theme.ColorNamePlaceHolder), 1
	f.gaps(r, lookingAft)
	f.Refresh()
}

func (f *faces) middleWords(r *kinematics.Result, u say.Units, lookingAft bool) (string, string, string) {
	s := words.In("en")
	switch {
	case r.Held == kinematics.Hanging:
		return s.Say(words.FacesHanging, nil), s.Say(words.FacesNoGap, nil), ""
	case r.Held == kinematics.Bolted:
		return s.Say(words.FacesBolted, nil), u.Moment(r.CouplingMomentNMM), s.Say(words.FacesMoment, nil)
	case u.RoundGap(r.Gap.SpreadMM()) == 0:
		return u.GapWithUnit(0), s.Say(words.FacesParallel, nil), ""
	}
	return u.GapWithUnit(r.Gap.SpreadMM()), s.Say(words.FacesSpread, nil),
		s.Say(words.FacesOpens, words.Args{"Clock": say.Clock(r.Gap.OpensAtDeg(), lookingAft)})
}

// gaps notes each hour's ray, the hours going round the other way when looking
// aft.
func (f *faces) gaps(r *kinematics.Result, lookingAft bool) {
	largest := r.Gap.G0MM + r.Gap.SpreadMM()/2
	for i := range f.rays {
		share := 0.0
		if r.Gap.Known && largest > 0 {
			share = r.Gap.AtHourMM(i) / largest
		}
		turn := float64(i)
		if lookingAft {
			turn = -turn
		}
		sin, cos := math.Sincos(turn * math.Pi / 6)
		f.rays[i] = ray{float32(sin), float32(-cos), float32(share)}
	}
}

// place lays everything out.
func (f *faces) place(s fyne.Size) {
	row := f.view.MinSize().Height
	r := min(s.Width/2-44, (s.Height-row)/2-row-10)
	cx, cy := s.Width/2, (s.Height-row)/2
	inner := r * 0.68
	f.outer.Move(fyne.NewPos(cx-r, cy-r))
	f.outer.Resize(fyne.NewSize(2*r, 2*r))
	f.inner.Move(fyne.NewPos(cx-inner, cy-inner))
	f.inner.Resize(fyne.NewSize(2*inner, 2*inner))
	at := func(t *canvas.Text, x, y float32) {
		m := t.MinSize()
		t.Resize(m)
		t.Move(fyne.NewPos(x-m.Width/2, y-m.Height/2))
	}
	for i := range f.spokes {
		d := f.rays[i]
		long := inner + (r-inner)*d.share
		f.spokes[i].Position1 = fyne.NewPos(cx+inner*d.x, cy+inner*d.y)
		f.spokes[i].Position2 = fyne.NewPos(cx+long*d.x, cy+long*d.y)
		at(f.numbers[i], cx+(r+20)*d.x, cy+(r+12)*d.y)
	}
	at(f.sides[0], cx+inner*0.68, cy+row*0.3)
	at(f.sides[1], cx-inner*0.68, cy+row*0.3)
	at(f.middle[0], cx, cy-row*2)
	at(f.middle[1], cx, cy-row*1.0)
	at(f.middle[2], cx, cy+row*1.7)
	at(f.view, cx, s.Height-row/2)
}

type facesRenderer struct {
	f       *faces
	objects []fyne.CanvasObject
}

// Layout places everything for a size.
func (r *facesRenderer) Layout(s fyne.Size) { r.f.place(s) }

// MinSize is the widget's.
func (r *facesRenderer) MinSize() fyne.Size { return r.f.MinSize() }

// Refresh redraws what changed.
func (r *facesRenderer) Refresh() {
	r.f.place(r.f.Size())
	for _, o := range r.objects {
		o.Refresh()
	}
}

// Objects are all there is.
func (r *facesRenderer) Objects() []fyne.CanvasObject { return r.objects }

// Destroy has nothing to do.
func (r *facesRenderer) Destroy() {}
