package history

// This file is a gap with its certainty: how wide, and where it opens.

import (
	"math"

	"aligner/kinematics/gauge"
)

// Gap is the gap an engine's position gives, run-out taken out.
type Gap struct {
	Known  bool
	MeanMM [2]float64 // [A, B]
	CovMM2 [2][2]float64

	SpreadMM, SpreadSDMM float64 // largest less smallest, one standard deviation
	// OpensAtDeg is where it is widest. OpensKnown says that the readings tell:
	// a gap not twice as large as its error across opens anywhere.
	OpensAtDeg, OpensSDDeg float64
	OpensKnown             bool
}

// sure is how many standard deviations are taken for told.
const sure = 2

// gapOf works out a gap's spread and direction.
func gapOf(mean [2]float64, cov [2][2]float64) Gap {
	g := Gap{Known: true, MeanMM: mean, CovMM2: cov}
	a := math.Hypot(mean[0], mean[1])
	along := [2]float64{1, 0}
	if a > 0 {
		along = [2]float64{mean[0] / a, mean[1] / a}
	}
	across := [2]float64{-along[1], along[0]}
	sdAcross := math.Sqrt(quadratic(cov, across))
	g.SpreadMM, g.SpreadSDMM = 2*a, 2*math.Sqrt(quadratic(cov, along))
	g.OpensKnown = a > sure*sdAcross
	if a > 0 {
		g.OpensAtDeg = math.Mod(math.Atan2(mean[1], mean[0])*180/math.Pi+360, 360)
		g.OpensSDDeg = min(180, math.Atan2(sdAcross, a)*180/math.Pi)
	}
	return g
}

func quadratic(cov [2][2]float64, v [2]float64) float64 {
	return max(0, v[0]*v[0]*cov[0][0]+2*v[0]*v[1]*cov[0][1]+v[1]*v[1]*cov[1][1])
}

// mostSDMM is the error across which a gap counts as gauged at all; before any
// reading it is a millimetre.
const mostSDMM = 0.3

// begun is the first state gauged, left the last; both unknown where nothing
// tells how the engine stood. left is unknown where something was moved since.
func begun(e *gauge.Estimate) Gap {
	if len(e.States) == 0 || e.StateCovMM2 == nil {
		return Gap{}
	}
	s := e.States[0]
	c := e.StateCovMM2
	return gauged(gauge.Gaussian{MeanMM: [2]float64{s.CosMM, s.SinMM}, CovMM2: [2][2]float64{{c.At(0, 0), c.At(0, 1)}, {c.At(1, 0), c.At(1, 1)}}})
}

func gauged(g gauge.Gaussian) Gap {
	if large, _, _ := g.Axes(); large > mostSDMM {
		return Gap{}
	}
	return gapOf(g.MeanMM, g.CovMM2)
}

func left(e *gauge.Estimate) Gap {
	if e.Status != gauge.Ready || len(e.States) == 0 {
		return Gap{}
	}
	return gauged(e.Gap)
}

// less is one gap minus another that was measured apart from it.
func less(a, b Gap) Gap {
	var cov [2][2]float64
	for i := range 2 {
		for j := range 2 {
			cov[i][j] = a.CovMM2[i][j] + b.CovMM2[i][j]
		}
	}
	return gapOf([2]float64{a.MeanMM[0] - b.MeanMM[0], a.MeanMM[1] - b.MeanMM[1]}, cov)
}
