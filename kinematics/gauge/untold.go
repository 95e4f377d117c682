package gauge

// This file names what the readings cannot tell apart.

import (
	"math"

	"aligner/hulls/visit"
)

// Untold is something the readings cannot tell, and by how much that matters.
type Untold struct {
	What     Unknown
	ClockDeg float64 // of OneDirection: where the tilt is not known
	SDMM     float64 // the error it leaves
}

// Unknown is one kind of it.
type Unknown string

// What may stay untold.
const (
	// EngineOrRunOut: gauged at one position of the shaft only, a crooked engine
	// and a crooked half look alike.
	EngineOrRunOut Unknown = "engine or run-out"
	// WhichHalf: turned together only, the halves' run-out shows as a sum.
	WhichHalf Unknown = "which half"
	// OneDirection: the places gauged lie too close together.
	OneDirection Unknown = "one direction"
	// Offset: face gaps alone do not say how high and how far to the side the
	// engine stands; seated, it is in the gap already.
	Offset Unknown = "offset"
	// SwingOfOffset: centred gaps say the tilt; the offset, which will swing the
	// seated shaft, has to be gauged too.
	SwingOfOffset Unknown = "swing of the offset"
)

// untold fills in what stays open.
func (r *Estimate) untold(e *evidence, v *visit.Visit) {
	turns := e.turns()
	measured := e.runOut[0].measured && e.runOut[1].measured
	if len(turns) < 2 && !measured {
		r.Untold = append(r.Untold, Untold{What: EngineOrRunOut, SDMM: math.Sqrt2 * trueFaceMM})
	} else if !apartTurned(turns) && !measured && (r.RunOut[0].Untrue || r.RunOut[1].Untrue) {
		r.Untold = append(r.Untold, Untold{What: WhichHalf})
	}
	if large, _, at := r.Gap.Axes(); large > untoldMM {
		deg := math.Mod(at*180/math.Pi+360, 180)
		r.Untold = append(r.Untold, Untold{What: OneDirection, ClockDeg: deg, SDMM: large})
	}
	if worst := max(r.OffsetSD[0], r.OffsetSD[1]); worst > offsetBeliefMM/2 {
		what := Offset
		if r.swingUntold(e) {
			what = SwingOfOffset
		}
		r.Untold = append(r.Untold, Untold{What: what, SDMM: worst})
	}
}

// turns are the different ways the halves were turned, in gaugings of gaps.
func (e *evidence) turns() []turned {
	var all []turned
	for s := range e.seatings {
		if e.seatings[s].gapRows == 0 {
			continue
		}
		known := false
		for _, t := range all {
			known = known || nearTurn(t, e.seatings[s].turn)
		}
		if !known {
			all = append(all, e.seatings[s].turn)
		}
	}
	return all
}

func nearTurn(a, b turned) bool {
	const near = 0.02
	return math.Hypot(a.shaftSin-b.shaftSin, a.shaftCos-b.shaftCos) < near &&
		math.Hypot(a.flangeSin-b.flangeSin, a.flangeCos-b.flangeCos) < near
}

// apartTurned reports whether one half was turned against the other.
func apartTurned(turns []turned) bool {
	if len(turns) < 2 {
		return false
	}
	first := turns[0]
	for _, t := range turns[1:] {
		sinS := t.shaftSin*first.shaftCos - t.shaftCos*first.shaftSin
		cosS := t.shaftCos*first.shaftCos + t.shaftSin*first.shaftSin
		sinF := t.flangeSin*first.flangeCos - t.flangeCos*first.flangeSin
		cosF := t.flangeCos*first.flangeCos + t.flangeSin*first.flangeSin
		if math.Hypot(sinS-sinF, cosS-cosF) > 0.2 {
			return true
		}
	}
	return false
}

func (e *evidence) onlyCentred() bool {
	for s := range e.seatings {
		if e.seatings[s].touching {
			return false
		}
	}
	return true
}
