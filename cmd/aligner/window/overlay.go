package window

// This file lays states over one another while gauging and moving: as gauged an
// outline, as planned a ghost, in the picture and on the faces alike; and draws
// what is to be done at each mount.

import (
	"math"

	"aligner/hulls/visit"
	"aligner/kinematics"
	"aligner/scene"
	"aligner/scene/faces"
)

// layOver shows the engine as gauged, once something is tried beside it, and as
// planned. In the picture that is the plan's end; on the faces the gap to expect
// after the step that is next.
func (w *Window) layOver(d *visit.Document) {
	w.picture.State.Gauged, w.picture.State.Planned, w.picture.State.Turns = nil, nil, nil
	w.faces.What.AsGauged, w.faces.What.Planned = nil, nil
	if w.stage == stageTry || w.mind.liftMM == nil {
		return
	}
	none := make([]float64, len(d.Hull.Mounts))
	if m := d.Tried(); len(m.NutFlats) > 0 || len(m.SlideMM) > 0 {
		w.picture.State.Gauged, w.faces.What.AsGauged = w.laid(d, none, none)
	}
	if step := w.mind.step(); w.stage == stageMove && step != nil {
		flats, slides := w.mind.left()
		w.picture.State.Planned, _ = w.laid(d, flats, slides)
		ab := step.After.MeanMM
		w.faces.What.Planned = &faces.Gap{G0MM: math.Hypot(ab[0], ab[1]), CosMM: ab[0], SinMM: ab[1]}
		next := &Step{Steps: floats(step.NutFlats), SlideMM: step.SlideMM}
		w.picture.State.Turns = Turns(w.speaker, w.units(), &d.Hull, flats, slides, next)
	}
}

// laid is the engine as found and moved on by so much, as the picture and the
// faces show it.
func (w *Window) laid(d *visit.Document, flats, slideMM []float64) (*scene.Movement, *faces.Gap) {
	s := kinematics.State{Held: w.now.state.Held, Afloat: w.now.state.Afloat}
	for i, m := range d.Hull.Mounts {
		s.LiftMM = append(s.LiftMM, flats[i]*m.LiftPerStepMM())
		s.SlideMM = append(s.SlideMM, slideMM[i])
	}
	s = from(s, w.mind.liftMM, w.mind.slideMM)
	var r kinematics.Result
	if w.boat.line.Solve(&s, &r) != nil || !r.Gap.Known {
		return nil, nil
	}
	var m scene.Movement
	w.boat.model.Read(w.boat.line, &s, &r, &m)
	return &m, &faces.Gap{G0MM: r.Gap.G0MM, CosMM: r.Gap.CosMM, SinMM: r.Gap.SinMM}
}

func floats(n []int) []float64 {
	f := make([]float64, len(n))
	for i, v := range n {
		f[i] = float64(v)
	}
	return f
}
