package window

// This file puts the readings of the gauging that goes on onto the faces, and
// where to gauge next.

import (
	"math"
	"slices"

	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/say"
	"aligner/scene/faces"
)

// markReadings marks them while gauging, and nothing at other stages.
func (w *Window) markReadings(d *visit.Document) {
	w.faces.What.Marks, w.faces.What.NextRad, w.faces.What.MarksLess = nil, nil, false
	if w.stage != stageGauge {
		return
	}
	if event := lastGauging(&d.Visit); event >= 0 {
		added := w.addedAt(&d.Visit, event)
		for i, r := range d.Visit.Events[event].Gauging.Readings {
			odd, unused := w.gauging.became(event, i)
			for _, m := range marksOf(r) {
				m.Odd, m.Unused = odd, unused && !odd
				less := added.at(m.ClockRad)
				m.LeastMM, m.MostMM = m.LeastMM-less, m.MostMM-less
				w.faces.What.MarksLess = w.faces.What.MarksLess || math.Abs(less) > leastLessMM
				w.faces.What.Marks = append(w.faces.What.Marks, m)
			}
		}
	}
	if w.gauging.kinds.kind() == "leaf" {
		if deg, _, wanted := w.gauging.askedFor(&d.Visit); wanted {
			next := deg * math.Pi / 180
			w.faces.What.NextRad = &next
		}
	}
}

// leastLessMM is what is not worth a word: a tenth of a thou.
const leastLessMM = 0.1 * say.MMPerThou

// added is what a gauging reads beside the gap drawn, at each place.
type added struct{ g0MM, cosMM, sinMM float64 }

func (a added) at(clockRad float64) float64 {
	sin, cos := math.Sincos(clockRad)
	return a.g0MM + a.cosMM*cos + a.sinMM*sin
}

// addedAt is what stands between the faces, how far they are held apart, and what
// of run-out the readings have shown: the faces are drawn without.
func (w *Window) addedAt(v *visit.Visit, event int) (a added) {
	g := v.Events[event].Gauging
	dummy := gauge.DummyMM(g)
	a = added{g.Apart.MM(), dummy[0], dummy[1]}
	e := w.mind.estimate
	if e == nil || e.Status != gauge.Ready {
		return a
	}
	for half, turn := range [2]float64{g.ShaftTurnDeg, g.FlangeTurnDeg} {
		r := e.RunOut[half]
		if !r.Untrue {
			continue
		}
		sin, cos := math.Sincos(turn * math.Pi / 180)
		a.cosMM += r.MeanMM[0]*cos - r.MeanMM[1]*sin
		a.sinMM += r.MeanMM[0]*sin + r.MeanMM[1]*cos
	}
	for _, s := range e.Seatings {
		if !slices.Contains(s.Events, event) || s.State >= len(e.States) {
			continue
		}
		// The faces are drawn touching, where the gap at their centre is what the
		// tilt makes it.
		cos, sin := e.States[s.State].CosMM, e.States[s.State].SinMM
		touch := math.Hypot(cos+a.cosMM, sin+a.sinMM)
		if g.Apart.Given() {
			touch = s.G0MM - a.g0MM
		}
		a.g0MM += touch - math.Hypot(cos, sin)
	}
	return a
}

// marksOf are what a reading says of the gap, each at its place. A leaf carried
// round says it at the middle of every arc; kinds that tell no gap have no mark.
func marksOf(r visit.Reading) []faces.Mark {
	at := func(deg, least, most float64) faces.Mark {
		return faces.Mark{ClockRad: deg * math.Pi / 180, LeastMM: least, MostMM: most}
	}
	switch r := r.(type) {
	case visit.Leaf:
		least, most := visit.WithinMM(r.Goes, r.Stops)
		return []faces.Mark{at(r.ClockDeg, least, most)}
	case visit.LeafRound:
		var all []faces.Mark
		for _, a := range r.Enters {
			all = append(all, at(a.FromDeg+a.SpanDeg()/2, r.Leaf.MM(), math.Inf(1)))
		}
		for _, a := range r.Stops {
			all = append(all, at(a.FromDeg+a.SpanDeg()/2, math.Inf(-1), r.Leaf.MM()))
		}
		return all
	}
	return nil
}
