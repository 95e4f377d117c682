package window

// This file lays states over one another while gauging and moving: as gauged an
// outline, as planned a ghost, in the picture and on the faces alike.

import (
	"aligner/hulls/visit"
	"aligner/kinematics"
	"aligner/scene"
	"aligner/scene/faces"
)

// layOver shows the engine as gauged, once something is tried beside it, and as
// planned.
func (w *Window) layOver(d *visit.Document) {
	w.picture.State.Gauged, w.picture.State.Planned = nil, nil
	w.faces.What.AsGauged, w.faces.What.Planned = nil, nil
	if w.stage == stageTry || w.mind.liftMM == nil {
		return
	}
	held := kinematics.State{Held: w.now.state.Held, Afloat: w.now.state.Afloat}
	lift, slide := make([]float64, len(d.Hull.Mounts)), make([]float64, len(d.Hull.Mounts))
	lay := func() (*scene.Movement, *faces.Gap) {
		s := held
		s.LiftMM, s.SlideMM = append([]float64(nil), lift...), append([]float64(nil), slide...)
		s = from(s, w.mind.liftMM, w.mind.slideMM)
		var r kinematics.Result
		if w.boat.line.Solve(&s, &r) != nil || !r.Gap.Known {
			return nil, nil
		}
		var m scene.Movement
		w.boat.model.Read(w.boat.line, &s, &r, &m)
		return &m, &faces.Gap{G0MM: r.Gap.G0MM, CosMM: r.Gap.CosMM, SinMM: r.Gap.SinMM}
	}
	for i := range lift {
		if d.Trial.Steps[i] != 0 || d.Trial.SlideMM[i] != 0 {
			w.picture.State.Gauged, w.faces.What.AsGauged = lay()
			break
		}
	}
	if p := w.mind.plan; w.stage == stageMove && p != nil && moves(p) {
		for i, m := range d.Hull.Mounts {
			lift[i], slide[i] = float64(p.NutFlats[i])*m.LiftPerStepMM(), p.SlideMM[i]
		}
		w.picture.State.Planned, w.faces.What.Planned = lay()
	}
}
