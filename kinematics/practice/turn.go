package practice

// This file turns nuts and shifts slides: what a learner asks for, checked against
// what the boat lets him do.

import (
	"fmt"
	"maps"
	"math"
	"slices"

	"aligner/hulls"
)

// asked is a Turn by the hull's order of mounts.
type asked struct {
	steps   []int
	slideMM []float64
}

func (w *Work) turn(t *Turn) (Told, error) {
	a, err := w.asked(t)
	if err != nil {
		return Told{}, err
	}
	if s := w.hidden.stuck; s >= 0 && a.steps[s] != 0 {
		name := w.hull.Mounts[s].Name
		w.bench.StuckNut(name)
		return Told{Stuck: name}, nil
	}
	if err := w.bench.Move(a.steps, a.slideMM); err != nil {
		return Told{}, err
	}
	for i := range w.hull.Mounts {
		w.tally.Steps += max(a.steps[i], -a.steps[i])
		w.nutsMM[i] += float64(a.steps[i]) * w.hull.Mounts[i].LiftPerStepMM()
		w.slidMM[i] += a.slideMM[i]
	}
	w.tally.Rounds++
	w.gauging, w.tight = false, false
	return Told{}, nil
}

// asked reads a Turn, and refuses what no mount has or allows.
func (w *Work) asked(t *Turn) (asked, error) {
	n := len(w.hull.Mounts)
	a := asked{make([]int, n), make([]float64, n)}
	for _, name := range slices.Sorted(maps.Keys(t.NutFlats)) {
		i, err := w.mount(name)
		if err != nil {
			return a, err
		}
		a.steps[i] = t.NutFlats[name]
	}
	for _, name := range slices.Sorted(maps.Keys(t.SlideMM)) {
		i, err := w.mount(name)
		if err != nil {
			return a, err
		}
		a.slideMM[i] = t.SlideMM[name]
	}
	nothing := true
	for i, m := range w.hull.Mounts {
		nothing = nothing && a.steps[i] == 0 && a.slideMM[i] == 0
		lift, slide := w.nutsMM[i]+float64(a.steps[i])*m.LiftPerStepMM(), w.slidMM[i]+a.slideMM[i]
		if !inside(lift, m.NutRangeMM) {
			return a, fmt.Errorf("%s: nut at %.2f mm, %g to %g is there: %w", m.Name, lift, m.NutRangeMM[0], m.NutRangeMM[1], ErrBeyond)
		}
		if !inside(slide, m.SlideRangeMM) {
			return a, fmt.Errorf("%s: slid to %.2f mm, %g to %g is there: %w", m.Name, slide, m.SlideRangeMM[0], m.SlideRangeMM[1], ErrBeyond)
		}
	}
	if nothing {
		return a, ErrNothing
	}
	return a, nil
}

// inside reports whether v is in a range, a hair beyond let pass; NaN is not.
func inside(v float64, r [2]float64) bool {
	const hairMM = 1e-9
	return v >= r[0]-hairMM && v <= r[1]+hairMM && !math.IsInf(v, 0)
}

func (w *Work) mount(name string) (int, error) {
	i := slices.IndexFunc(w.hull.Mounts, func(m hulls.Mount) bool { return m.Name == name })
	if i < 0 {
		return 0, fmt.Errorf("mount %q: %s has none of that name: %w", name, w.hull.Name, ErrUnknown)
	}
	return i, nil
}
