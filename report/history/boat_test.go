package history

// This file makes boats that are visited twice: left in line, then moved by a
// cause that the package is not told, and gauged by leaves again. The true hull
// is not quite the one told.

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
)

// happened is what is done to a boat between two visits.
type happened struct {
	lift, slide, stud []float64
	mark              []string
	newRubber, nStuds bool // nStuds: studs were not measured
}

func still(h *hulls.Hull) happened {
	n := len(h.Mounts)
	return happened{lift: make([]float64, n), slide: make([]float64, n), stud: make([]float64, n), mark: make([]string, n)}
}

// truth is a hull a tape measure might take for the one told.
func truth(h hulls.Hull, r *rand.Rand) hulls.Hull {
	h.Mounts, h.Bearings = slices.Clone(h.Mounts), slices.Clone(h.Bearings)
	part := func(v *float64, by float64) { *v *= 1 + by*(2*r.Float64()-1) }
	for i := range h.Mounts {
		k := &h.Mounts[i].StiffnessNPerMM
		part(&k.Along, 0.3)
		part(&k.ForeAft, 0.3)
		part(&k.Athwart, 0.3)
		for j := range 3 {
			h.Mounts[i].AtMM[j] += 10*r.Float64() - 5
		}
	}
	for i := range h.Bearings {
		part(&h.Bearings[i].RadialStiffnessNPerMM, 0.5)
		part(&h.Bearings[i].DiametralClearanceMM, 0.5)
	}
	return h
}

const hand = 0.3 * 0.0254 // mm, one standard deviation

// gaugedBy is the readings of a gap at eight places, faces touching, by leaves a
// thou apart; the second time with shaft and flange turned by half.
func gaugedBy(g kinematics.Gap, r *rand.Rand) []visit.Event {
	var all []visit.Event
	for turn := range 2 {
		e := visit.Gauging{Held: "seated", ShaftTurnDeg: float64(180 * turn), FlangeTurnDeg: float64(180 * turn)}
		for k := range 8 {
			deg := float64(45 * k)
			s, c := math.Sincos(deg * math.Pi / 180)
			gap := (math.Hypot(g.CosMM, g.SinMM) + g.CosMM*c + g.SinMM*s + hand*r.NormFloat64()) / 0.0254
			leaf := visit.Leaf{ClockDeg: deg, Stops: visit.Thou(math.Floor(max(0, gap)) + 1)}
			if gap >= 1 {
				leaf.Goes = visit.Thou(math.Floor(gap))
			}
			e.Readings = append(e.Readings, leaf)
		}
		all = append(all, visit.Event{Gauging: &e})
	}
	return all
}

// twice is two visits of a boat with something in between.
func twice(t testing.TB, told hulls.Hull, is happened, r *rand.Rand) []Visit {
	t.Helper()
	line, err := kinematics.Prepare(truth(told, r))
	if err != nil {
		t.Fatal(err)
	}
	var list []Visit
	off := make([]float64, len(told.Mounts)) // how she was left, not quite drawn
	for i := range off {
		off[i] = 0.2 * r.NormFloat64()
	}
	for k, date := range []string{"2026-05-14", "2027-04-20"} {
		s := kinematics.State{Held: kinematics.Seated, Afloat: true, LiftMM: slices.Clone(off), SlideMM: make([]float64, len(off))}
		v := visit.New(told.Name, told).Visit
		v.Date, v.State = date, visit.State{Boat: "afloat", EngineHours: visit.Known(100 + 50*float64(k))}
		if is.newRubber {
			v.State.MountAgeMonths = visit.Known(float64(11 * k))
		}
		for i, m := range told.Mounts {
			found := visit.MountFound{Mount: m.Name, Nut: visit.Free, Slide: visit.Free}
			if !is.nStuds {
				found.StudFoundMM = visit.Known(20 + float64(k)*is.stud[i])
			}
			if k == 1 {
				s.LiftMM[i] += is.lift[i]
				s.SlideMM[i] += is.slide[i]
				found.Mark = is.mark[i]
			}
			v.Mounts = append(v.Mounts, found)
		}
		v.HandedOver = visit.HandedOver{Date: date, NutsMarked: true}
		var res kinematics.Result
		if err := line.Solve(&s, &res); err != nil {
			t.Fatal(err)
		}
		v.Events = gaugedBy(res.Gap, r)
		d := visit.New(told.Name, told)
		d.Visit = v
		list = append(list, Visit{Number: int64(k + 1), Document: d})
	}
	return list
}

func worked(t testing.TB, list []Visit) *Past {
	t.Helper()
	p, err := Work(list)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func hullNamed(t testing.TB, name string) hulls.Hull { return builtin.Hull(t, name) }
