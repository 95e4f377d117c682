package window

// This file is gauging again with shaft and flange turned: both, or one alone,
// by a quarter; or as the estimate asks for.

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
)

// turnForm is that.
type turnForm struct {
	s        *gaugeSheet
	box      *fyne.Container
	proposed *page.Button

	same, marks, both, shaft, flange *page.Button

	to [2]float64 // what is proposed, of shaft and flange
}

func newTurnForm(s *gaugeSheet) *turnForm {
	w := s.w
	f := &turnForm{s: s}
	turn := func(id words.ID, shaft, flange float64) *page.Button {
		return newPress(w, w.speaker.Say(id, nil), func() { f.by(shaft, flange) })
	}
	f.same, f.both = turn(words.TurnSame, 0, 0), turn(words.TurnBoth, 90, 90)
	f.marks = newPress(w, w.speaker.Say(words.TurnMarks, nil), func() { f.begin(0, 0) })
	f.shaft, f.flange = turn(words.TurnShaft, 90, 0), turn(words.TurnFlange, 0, 90)
	f.proposed = newPress(w, "", func() { f.begin(f.to[0], f.to[1]) })
	f.proposed.Importance = widget.HighImportance
	f.box = container.NewVBox(w.heading(words.GaugeAgain), f.proposed,
		pair(f.same, f.marks), f.both, pair(f.shaft, f.flange))
	return f
}

// by turns on from how the last gauging was made.
func (f *turnForm) by(shaft, flange float64) {
	v := f.s.w.history.Now().Visit
	var from visit.Gauging
	for _, e := range v.Events {
		if e.Gauging != nil && !onlyStrips(e.Gauging) {
			from = *e.Gauging
		}
	}
	turned := func(deg, by float64) float64 { return math.Mod(deg+by+720, 360) }
	f.begin(turned(from.ShaftTurnDeg, shaft), turned(from.FlangeTurnDeg, flange))
}

// begin begins a gauging so turned, held as the one before; one without readings
// yet is turned on instead.
func (f *turnForm) begin(shaftDeg, flangeDeg float64) {
	w := f.s.w
	v := w.history.Now().Visit
	f.s.picked = -1
	if event := lastGauging(&v); event >= 0 && len(v.Events[event].Gauging.Readings) == 0 {
		g := *v.Events[event].Gauging
		g.ShaftTurnDeg, g.FlangeTurnDeg = shaftDeg, flangeDeg
		w.try(&visit.ChangeGauging{Event: event, Gauging: g})
	} else {
		g := f.s.hold.asked()
		g.ShaftTurnDeg, g.FlangeTurnDeg = shaftDeg, flangeDeg
		w.try(&visit.BeginGauging{Gauging: g})
	}
	w.win.Canvas().Focus(f.s.entry)
}

func (f *turnForm) show(_ *visit.Visit, _ int) {
	e := f.s.w.mind.estimate
	asked := e != nil && e.Status == gauge.Ready && e.Next != nil && e.Next.What == gauge.TurnShaft
	if asked {
		f.to = [2]float64{e.Next.ShaftTurnDeg, e.Next.FlangeTurnDeg}
		u := f.s.w.units()
		f.proposed.SetText(f.s.w.speaker.Say(words.TurnProposed, words.Args{"Shaft": u.Plain(f.to[0], 0), "Flange": u.Plain(f.to[1], 0)}))
	}
	showIf(f.proposed, asked)
}
