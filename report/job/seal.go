package job

// This file is the shaft's seal: how it is turned free before the shaft is moved,
// that it is set back, and what one that is not does to the result. A seal's
// maker goes before; that a bellows pushes the halves together is common practice,
// no source.

import (
	"slices"

	"aligner/hulls/visit"
)

// SetSealBack is the step of fastening that a seal turned free wants.
const SetSealBack FastenKind = "set seal back"

// SealText says how a seal is turned free; with none said, that it be said.
func SealText(s *visit.Seal) Text {
	kind := s.Kind
	if kind == "" {
		kind = "unsaid"
	}
	return text("seal", kind, nil)
}

// WithSeal puts setting the seal back into an order of fastening, before the
// shaft is turned by hand, where the seal was turned free.
func WithSeal(steps []FastenStep, v *visit.Visit) []FastenStep {
	if !v.Seal.Freed {
		return steps
	}
	args := Args{"Kind": v.Seal.Kind, "Pressed": Text{}}
	if v.Seal.PressedMM.Known {
		args["Pressed"] = LengthMM(v.Seal.PressedMM.Value)
	}
	back := FastenStep{Kind: SetSealBack, Text: text("fasten", string(SetSealBack), args), Sources: []Source{CommonPractice}}
	at := slices.IndexFunc(steps, func(s FastenStep) bool { return s.Kind == TurnHand })
	if at < 0 {
		at = len(steps)
	}
	return slices.Insert(slices.Clone(steps), at, back)
}

// seal is what the seal does to the result: a bellows not let off pushes the
// halves together, and one left free leaks.
func (g *grader) seal(v *visit.Visit) {
	gauged, bolted := false, v.HandedOver.Done()
	for _, e := range v.Events {
		gauged = gauged || e.Gauging != nil && len(e.Gauging.Readings) > 0
		bolted = bolted || e.Fasten != nil && e.Fasten.OfCoupling()
	}
	switch {
	case v.Seal.Kind == visit.SealFace && !v.Seal.Freed && gauged:
		g.add(SealPushes, nil)
	case v.Seal.Freed && !v.Seal.SetBack && bolted:
		g.add(SealLeft, nil)
	}
}
