package practice

// This file judges moves: what they were made on, where and which way.

import (
	"errors"
	"math"

	"gonum.org/v1/gonum/mat"

	"aligner/hulls"
	"aligner/kinematics/gauge"
)

// What counts as a mistake. All are our own judgement.
const (
	widerThou    = 0.5  // a move that made the gap so much wider went the wrong way
	tellTaleThou = 2    // a half that runs out so far must be found before moving
	weakPart     = 0.6  // a nut that moves the gap by less than this part of the strongest is a weak one
	mostlyPart   = 0.6  // so much of a move's flats at weak nuts is the wrong end
	twistMM      = 0.25 // nuts so much farther out of one plane than the tool leaves them
)

// watchTurn does a move and judges it by what was known before.
func (j *judge) watchTurn(a Act) error {
	onWhat, err := j.basis()
	if err != nil {
		return err
	}
	engine0, marks0, err := j.bench.Truth()
	if err != nil {
		return err
	}
	per, err := j.bench.PerStepThou()
	if err != nil {
		return err
	}
	at := len(j.Acts)
	told, err := j.Do(a)
	if err != nil {
		return err
	}
	if told.Stuck != "" {
		if j.stuckKnown {
			j.fault(at, Mistake{Kind: ForcedNut, Mounts: []string{told.Stuck}})
		}
		j.stuckKnown = true
		return nil
	}
	if onWhat != "" {
		j.fault(at, Mistake{Kind: onWhat})
	}
	if tir := j.untrueTIR(); tir >= tellTaleThou && !j.turned {
		j.fault(at, Mistake{Kind: NotTurned, Thou: tir})
	}
	if j.tally.Rounds == 1 {
		j.judgeEnd(at, a.Turn, per)
	}
	engine1, marks1, err := j.bench.Truth()
	if err != nil {
		return err
	}
	switch wider := engine1 - engine0; {
	case wider <= widerThou:
	case marks1 < marks0 && j.untrueTIR() >= tellTaleThou:
		j.fault(at, Mistake{Kind: ChasedRunOut, Thou: wider})
	default:
		j.fault(at, Mistake{Kind: WrongWay, Thou: wider})
	}
	return nil
}

// basis judges what a move is made on; "": sound readings.
func (j *judge) basis() (Kind, error) {
	v := j.Visit()
	if !j.gauged(v) {
		n := len(v.Events)
		if n == 0 || v.Events[n-1].Gauging == nil || len(v.Events[n-1].Gauging.Readings) == 0 {
			return NotGauged, nil
		}
		switch v.Events[n-1].Gauging.Held {
		case "hanging":
			return HangingShaft, nil
		case "bolted":
			return BoltedFaces, nil
		}
		return NotGauged, nil
	}
	e, err := j.estimate(v)
	switch {
	case errors.Is(err, errNoEstimate):
		return NotGauged, nil
	case err != nil:
		return "", err
	case !e.Flat, e.WhyNot == gauge.NotFlat, e.WhyNot == gauge.TakeAgain:
		return Impossible, nil
	case !e.ForMoves:
		return TooFew, nil
	}
	return "", nil
}

// untrueTIR is how far the worse half runs out, in thou of largest less smallest.
func (j *judge) untrueTIR() float64 {
	return 2 * max(j.hidden.RunOut.ShaftMM, j.hidden.RunOut.FlangeMM) / mmPerThou
}

// judgeEnd judges at which end a first move was made, beside the tool's own.
func (j *judge) judgeEnd(at int, t *Turn, perStepThou []float64) {
	yours := weakShare(j.hull, t, perStepThou)
	for _, a := range j.tools.Acts {
		stuck := j.hidden.stuck
		if a.Turn != nil && (stuck < 0 || a.Turn.NutFlats[j.hull.Mounts[stuck].Name] == 0) { // else nothing turned
			if turnsNuts(a.Turn) && yours > mostlyPart && weakShare(j.hull, a.Turn, perStepThou) < mostlyPart {
				m := Mistake{Kind: WrongEnd}
				for _, mount := range j.hull.Mounts {
					if t.NutFlats[mount.Name] != 0 {
						m.Mounts = append(m.Mounts, mount.Name)
					}
				}
				j.fault(at, m)
			}
			return
		}
	}
}

// turnsNuts reports whether a move is not of slides alone.
func turnsNuts(t *Turn) bool {
	for _, n := range t.NutFlats {
		if n != 0 {
			return true
		}
	}
	return false
}

// weakShare is the part of a move's steps made at nuts that the gap hardly answers.
func weakShare(h *hulls.Hull, t *Turn, perStepThou []float64) float64 {
	strongest, weak, all := 0.0, 0.0, 0.0
	for i, thou := range perStepThou {
		strongest = max(strongest, thou/h.Mounts[i].LiftPerStepMM())
	}
	for i, m := range h.Mounts {
		steps := math.Abs(float64(t.NutFlats[m.Name]))
		all += steps
		if perStepThou[i]/m.LiftPerStepMM() < weakPart*strongest {
			weak += steps
		}
	}
	if all == 0 {
		return 0
	}
	return weak / all
}

// judgeTwist judges how far out of one plane the nuts were left.
func (j *judge) judgeTwist() error {
	yours, err := outOfPlaneMM(j.hull, j.nutsMM)
	if err != nil {
		return err
	}
	tools, err := outOfPlaneMM(j.hull, j.tools.nutsMM)
	if err != nil {
		return err
	}
	if yours > tools+twistMM {
		j.fault(ofTheWhole, Mistake{Kind: Twisted, MM: yours})
	}
	return nil
}

// outOfPlaneMM is how far the worst nut stands off the plane that fits all of them
// best: what the engine's frame must twist by, or a mount be pressed.
func outOfPlaneMM(h *hulls.Hull, liftMM []float64) (float64, error) {
	n := len(liftMM)
	at, lift := mat.NewDense(n, 3, nil), mat.NewVecDense(n, liftMM)
	for i, m := range h.Mounts {
		at.SetRow(i, []float64{1, m.AtMM[0], m.AtMM[1]})
	}
	var plane, off mat.VecDense
	if err := plane.SolveVec(at, lift); err != nil {
		return 0, err
	}
	off.MulVec(at, &plane)
	off.SubVec(lift, &off)
	return mat.Norm(&off, math.Inf(1)), nil
}
