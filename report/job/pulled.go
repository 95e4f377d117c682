package job

// This file finds the mount whose tightening pulled the engine off.
//
// Between two gaugings with nothing but tightening between, the gap changed by
// D, two numbers. One nut alone explains it if some turn x of it does:
//
//	D = R_j x + error,   cov = cov before + cov after + settling + x^2 Cov R_j
//
// For each nut the x of least squares, weighed by that covariance, and what it
// leaves. Tightening draws a foot down, on to a nut that stood below it, or
// drags the adjusting nut down with the jam nut (common practice, no source), so
// a nut that went down goes before one that would have to have gone up. Slides
// are asked only where no nut explains it: a clamp that slipped.
//
// Two numbers often cannot tell four corners apart: port and starboard of a pair
// move the gap alike but for a little to the side. Then it says so, and
// tightening one at a time tells. It leaves out two mounts pulling at once.

import (
	"cmp"
	"math"
	"slices"

	"aligner/hulls"
	"aligner/kinematics/gauge"
	"aligner/kinematics/response"
)

// PullStatus is how the search ended.
type PullStatus string

// The ends.
const (
	Unmoved    PullStatus = "unmoved"     // the change is no more than the readings err by
	Named      PullStatus = "named"       // one mount explains it
	CannotTell PullStatus = "cannot tell" // several explain it alike
	Slipped    PullStatus = "slipped"     // no nut does, a slide does
	NotOne     PullStatus = "not one"     // nothing by itself does
)

// Pull is one explanation.
type Pull struct {
	Mounts []int
	Slide  bool
	Steps  float64 // flats or shims, or mm of a slide, that tightening moved it by
	// Ease is the mend: so many steps the other way, to half a flat or shim, or
	// to a quarter of a mm.
	Ease       float64
	ResidualMM float64 // widest gap round the rim it leaves unexplained
	ChiSquared float64 // the same against its error, one degree of freedom
}

// Pulled is what a change of the gap says of the tightening.
type Pulled struct {
	Status   PullStatus
	ChangeMM [2]float64 // [A, B] after less before
	Alike    []Pull     // what explains it, the best first; one where Named
	Others   []Pull     // what does not
}

// Limits of the search. Beyond a turn of a nut, or 3 mm of a slide, it was not
// the tightening (our own judgement); the chi-squares are those chance exceeds
// once in twenty times (two degrees) and in a hundred (one), and odds of ten to
// one.
const (
	settledMM    = 0.2 * 0.0254
	mostFlats    = 6.0
	mostSlipMM   = 3.0
	noChange     = 5.99
	fits         = 6.63
	tenToOne     = 4.605
	easeFlats    = 0.5
	easeSlideMM  = 0.25
	mostRefining = 20
)

// PulledBy names what best explains a change of the gap that came with
// tightening. r is the response of the boat as it stands; tightened are the
// mounts tightened between the gaugings, nil for all.
func PulledBy(h *hulls.Hull, r *response.Response, before, after gauge.Gaussian, tightened []int) Pulled {
	p := Pulled{Status: Unmoved}
	var cov [2][2]float64
	for a := range 2 {
		p.ChangeMM[a] = after.MeanMM[a] - before.MeanMM[a]
		for b := range 2 {
			cov[a][b] = before.CovMM2[a][b] + after.CovMM2[a][b]
		}
		cov[a][a] += settledMM * settledMM
	}
	if weighed(p.ChangeMM, cov) <= noChange {
		return p
	}
	var down, up, slips []Pull
	for j, it := range r.Items {
		if !anyOf(it.Mounts, tightened) {
			continue
		}
		pull, ok := explain(h, r, j, p.ChangeMM, cov)
		switch {
		case !ok:
			p.Others = append(p.Others, pull)
		case it.Slide:
			slips = append(slips, pull)
		case pull.Steps < 0:
			down = append(down, pull)
		default:
			up = append(up, pull)
		}
	}
	p.choose(down, up, slips)
	slices.SortStableFunc(p.Others, func(a, b Pull) int { return cmp.Compare(a.ChiSquared, b.ChiSquared) })
	return p
}

// choose takes the likeliest kind that explains anything.
func (p *Pulled) choose(kinds ...[]Pull) {
	p.Status = NotOne
	for _, kind := range kinds {
		if p.Alike != nil || len(kind) == 0 {
			p.Others = append(p.Others, kind...)
			continue
		}
		slices.SortStableFunc(kind, func(a, b Pull) int { return cmp.Compare(a.ChiSquared, b.ChiSquared) })
		n := 1
		for n < len(kind) && kind[n].ChiSquared-kind[0].ChiSquared <= tenToOne {
			n++
		}
		p.Alike = kind[:n:n]
		p.Others = append(p.Others, kind[n:]...)
		switch {
		case n > 1:
			p.Status = CannotTell
		case kind[0].Slide:
			p.Status = Slipped
		default:
			p.Status = Named
		}
	}
}

// explain fits one item; false where it does not explain the change.
func explain(h *hulls.Hull, r *response.Response, j int, d [2]float64, cov [2][2]float64) (Pull, bool) {
	it := r.Items[j]
	pull := Pull{Mounts: it.Mounts, Slide: it.Slide}
	rj := [2]float64{r.Mean[2*j], r.Mean[2*j+1]}
	x := 0.0
	total := cov
	// The covariance grows with x, and x follows it: a few rounds settle both.
	for range mostRefining {
		w, ok := inverse(total)
		if !ok {
			return pull, false
		}
		wr := [2]float64{w[0][0]*rj[0] + w[0][1]*rj[1], w[1][0]*rj[0] + w[1][1]*rj[1]}
		next := (wr[0]*d[0] + wr[1]*d[1]) / (wr[0]*rj[0] + wr[1]*rj[1])
		done := math.Abs(next-x) < 1e-9
		x = next
		for a := range 2 {
			for b := range 2 {
				total[a][b] = cov[a][b] + x*x*r.Cov.At(2*j+a, 2*j+b)
			}
		}
		if done {
			break
		}
	}
	left := [2]float64{d[0] - rj[0]*x, d[1] - rj[1]*x}
	pull.ResidualMM = 2 * math.Hypot(left[0], left[1])
	pull.ChiSquared = weighed(left, total)
	most, step := mostFlats, easeFlats
	pull.Steps = x
	if it.Slide {
		pull.Steps, most, step = x*it.MM, mostSlipMM, easeSlideMM
	}
	if !it.Slide && h.Mounts[it.Mounts[0]].Kind == hulls.Solid {
		step = 1 // there is no half shim
	}
	pull.Ease = 0 - math.Round(pull.Steps/step)*step
	return pull, pull.ChiSquared <= fits && math.Abs(pull.Steps) <= most
}

// weighed is v' inverse(cov) v; infinite where there is no inverse.
func weighed(v [2]float64, cov [2][2]float64) float64 {
	w, ok := inverse(cov)
	if !ok {
		return math.Inf(1)
	}
	return v[0]*(w[0][0]*v[0]+w[0][1]*v[1]) + v[1]*(w[1][0]*v[0]+w[1][1]*v[1])
}

func inverse(m [2][2]float64) ([2][2]float64, bool) {
	det := m[0][0]*m[1][1] - m[0][1]*m[1][0]
	if !(det > 0) {
		return m, false
	}
	return [2][2]float64{{m[1][1] / det, -m[0][1] / det}, {-m[1][0] / det, m[0][0] / det}}, true
}

// anyOf reports whether one of some mounts is among others; nil are all.
func anyOf(mounts, among []int) bool {
	return among == nil || slices.ContainsFunc(mounts, func(m int) bool { return slices.Contains(among, m) })
}
