package sensitivity

// This file takes the differences.

import (
	"math"
	"slices"

	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/kinematics"
	"aligner/kinematics/response"
)

// Effect is what one field does to the answer.
type Effect struct {
	Field fields.Field
	// NutMMPerUnit is the change of what a flat (or shim) does at the gap, of the
	// nut it changes most; SlideMMPerUnit that of a slide's step. In mm for each
	// unit of the field; 0: it has none.
	NutMMPerUnit, SlideMMPerUnit float64
	// Plus is the plus-or-minus the number is known to now.
	Plus float64
	// Care, Guess and Now are the shares of the answer that a plus-or-minus makes:
	// measured with care, taken unmeasured, and as the number is known now.
	Care, Guess, Now float64
}

// Verdict is what a share comes to.
type Verdict string

// The verdicts, from the least to the most worth measuring.
const (
	Nothing   Verdict = "nothing"    // it does not change the answer
	UsualDoes Verdict = "usual does" // even unmeasured it hardly matters
	TapeDoes  Verdict = "tape does"  // measured as told it hardly matters
	Decides   Verdict = "decides"    // even so it matters: measure well, or let the boat tell
)

// matters is the share from which a number is told to matter.
const matters = 0.03

// Verdict says how well a number is worth knowing.
func (e *Effect) Verdict() Verdict {
	switch {
	case e.Care < 1e-4 && e.Guess < 1e-4:
		return Nothing
	case e.Guess > 0 && e.Guess < matters:
		return UsualDoes
	case e.Care < matters:
		return TapeDoes
	}
	return Decides
}

// Effects are those of all fields of a hull, in the order of fields.List.
func Effects(h *hulls.Hull, held kinematics.Held, afloat bool) ([]Effect, error) {
	items := response.Items(h)
	mean, err := response.Mean(h, items, held, afloat)
	if err != nil {
		return nil, err
	}
	w := &weigher{h: h, items: items, held: held, afloat: afloat}
	w.nut, w.slide = largest(items, mean, nil)
	var all []Effect
	for _, f := range fields.List(h) {
		all = append(all, w.effect(f))
	}
	return all, nil
}

// Ranked is the effects, those most worth measuring first: by what they may change
// as the numbers are known now.
func Ranked(all []Effect) []Effect {
	ranked := slices.Clone(all)
	slices.SortStableFunc(ranked, func(a, b Effect) int {
		switch {
		case a.Now > b.Now:
			return -1
		case a.Now < b.Now:
			return 1
		}
		return 0
	})
	return ranked
}

// weigher holds what all fields are weighed against.
type weigher struct {
	h          *hulls.Hull
	items      []response.Item
	held       kinematics.Held
	afloat     bool
	nut, slide float64 // the most telling one's
}

func (w *weigher) effect(f fields.Field) Effect {
	e := Effect{Field: f}
	care := f.CarePlus(w.h)
	shift := f.Shift
	if f.Kind == fields.Thread && f.Group.Part == fields.Mount {
		care, shift = threadPitchMM, w.shiftPitch(f.Group.Index)
	}
	if !(care > 0) {
		return e
	}
	e.NutMMPerUnit, e.SlideMMPerUnit = w.perUnit(shift, care)
	e.Care, e.Guess = w.share(&e, care), w.share(&e, f.GuessPlus(w.h))
	now := response.Tolerance(w.h, f.Pointer)
	if now == 0 && f.Kind.IsNumber() {
		now = care
	}
	e.Plus, e.Now = now, w.share(&e, now)
	return e
}

// threadPitchMM is how far the pitches of threads that are taken for each other
// stand apart: M16x2 for M16x1.5.
const threadPitchMM = 0.5

func (w *weigher) shiftPitch(mount int) func(*hulls.Hull, float64) {
	return func(h *hulls.Hull, by float64) { h.Mounts[mount].ThreadPitchMM += by }
}

func (w *weigher) share(e *Effect, plus float64) float64 {
	return max(plus*e.NutMMPerUnit/w.nut, plus*e.SlideMMPerUnit/w.slide)
}

// perUnit moves a number both ways, or, where there is no boat that way, one.
func (w *weigher) perUnit(shift func(*hulls.Hull, float64), by float64) (nut, slide float64) {
	var ends [2][]float64
	var at [2]float64
	for side := range 2 {
		at[side] = by * float64(1-2*side)
		for _, part := range [...]float64{1, 0} { // as it is, failing that
			moved := w.h.Clone()
			shift(&moved, part*at[side])
			mean, err := response.Mean(&moved, w.items, w.held, w.afloat)
			if err == nil {
				ends[side], at[side] = mean, part*at[side]
				break
			}
		}
	}
	if ends[0] == nil || ends[1] == nil || at[0] == at[1] {
		return 0, 0
	}
	nut, slide = largest(w.items, ends[0], ends[1])
	return nut / (at[0] - at[1]), slide / (at[0] - at[1])
}

// largest is the largest length of [A, B] over the nuts, and over the slides, of
// one answer or of the difference of two.
func largest(items []response.Item, mean, less []float64) (nut, slide float64) {
	for j, it := range items {
		a, b := mean[2*j], mean[2*j+1]
		if less != nil {
			a, b = a-less[2*j], b-less[2*j+1]
		}
		if v := math.Hypot(a, b); it.Slide {
			slide = max(slide, v)
		} else {
			nut = max(nut, v)
		}
	}
	return nut, slide
}
