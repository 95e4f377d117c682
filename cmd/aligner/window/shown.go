package window

// This file works out what is shown: a pure function of a document and of the
// one before it, through a prepared drive line.

import (
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics"
	"aligner/scene"
)

// boat is everything prepared once for a hull.
type boat struct {
	hull  hulls.Hull
	line  *kinematics.DriveLine
	model *scene.Model
}

// newBoat prepares a hull.
func newBoat(h hulls.Hull) (*boat, error) {
	line, err := kinematics.Prepare(h)
	if err != nil {
		return nil, err
	}
	return &boat{hull: h, line: line, model: scene.NewModel(h)}, nil
}

// shown is what a document comes to. Where err is set there are no numbers.
type shown struct {
	state  kinematics.State
	result kinematics.Result
	move   scene.Movement
	err    error
}

// stateOf is a document's trial as the mechanics take it.
func stateOf(d *visit.Document) kinematics.State {
	t := &d.Trial
	s := kinematics.State{
		Held: kinematics.Held(t.Held), Afloat: t.Afloat, LeverOn: t.LeverOn,
		ThrustN: t.ThrustN, TorqueNMM: 1000 * t.TorqueNM,
	}
	for i := range d.Hull.Mounts {
		m := &d.Hull.Mounts[i]
		s.LiftMM = append(s.LiftMM, t.Steps[i]*m.LiftPerStepMM())
		s.SlideMM = append(s.SlideMM, t.SlideMM[i])
	}
	return s
}

// from counts a state from an engine as found instead of as drawn; nil: drawn.
func from(s kinematics.State, liftMM, slideMM []float64) kinematics.State {
	for i, mm := range liftMM {
		s.LiftMM[i] += mm
		s.SlideMM[i] += slideMM[i]
	}
	return s
}

// work fills s from a document, using its memory again.
func (b *boat) work(d *visit.Document, liftMM, slideMM []float64, s *shown) {
	s.state = from(stateOf(d), liftMM, slideMM)
	s.err = b.line.Solve(&s.state, &s.result)
	if s.err == nil {
		b.model.Read(b.line, &s.state, &s.result, &s.move)
	}
}

// workBefore is work for the state a change is told from; the picture is not
// asked for it.
func (b *boat) workBefore(d *visit.Document, liftMM, slideMM []float64, s *shown) {
	s.state = from(stateOf(d), liftMM, slideMM)
	s.err = b.line.Solve(&s.state, &s.result)
}
