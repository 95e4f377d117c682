package window

// This file puts the readings of the gauging that goes on onto the faces, and
// where to gauge next.

import (
	"math"

	"aligner/hulls/visit"
	"aligner/scene/faces"
)

// markReadings marks them while gauging, and nothing at other stages.
func (w *Window) markReadings(d *visit.Document) {
	w.faces.What.Marks, w.faces.What.NextRad = nil, nil
	if w.stage != stageGauge {
		return
	}
	if event := lastGauging(&d.Visit); event >= 0 {
		for i, r := range d.Visit.Events[event].Gauging.Readings {
			odd, unused := w.gauging.became(event, i)
			for _, m := range marksOf(r) {
				m.Odd, m.Unused = odd, unused && !odd
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
