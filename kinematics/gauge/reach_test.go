package gauge

// This file tests that nothing is asked for where no leaf can be got at.

import (
	"testing"

	"aligner/hulls/visit"
)

func TestAsksWithinReachOnly(t *testing.T) {
	m := model(t, "Kittiwake")
	leaf := func(deg, goes, stops float64) visit.Reading {
		return visit.Leaf{ClockDeg: deg, Goes: visit.Thou(goes), Stops: visit.Thou(stops)}
	}
	for _, reach := range []visit.Arc{{}, {FromDeg: 270, ToDeg: 90}, {FromDeg: 120, ToDeg: 200}, {FromDeg: 31, ToDeg: 44}} {
		v := visit.Visit{HullName: "Kittiwake", Date: "2026-05-14", Reach: reach}
		for n := range 3 { // two places too few, then all that is asked for
			g := &visit.Gauging{Held: "seated"}
			for i := range n {
				g.Readings = append(g.Readings, leaf(float64(32+5*i), 3, 4))
			}
			v.Events = []visit.Event{{Gauging: g}}
			e, err := m.Estimate(&v)
			if err != nil {
				t.Fatal(err)
			}
			if e.Next != nil && !reach.Reaches(e.Next.ClockDeg) {
				t.Errorf("reach %+v, %d readings: asks for %v degrees", reach, n, e.Next.ClockDeg)
			}
		}
	}
}
