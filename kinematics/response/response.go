package response

// This file takes the response by differences, and its covariance.

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"

	"aligner/hulls"
	"aligner/kinematics"
)

// Response is how the gap [A, B], in mm, answers moves. A and B of item j are
// elements 2j and 2j+1. It is not changed once made.
type Response struct {
	Items []Item
	Mean  []float64
	Cov   *mat.SymDense
	// Learnt is how many changes of the visit it has been corrected by, Measured how
	// many answers of before.
	Learnt, Measured int
}

// Change is what moves, in steps by item, do to [A, B].
func (r *Response) Change(moves []float64) (ab [2]float64) {
	for j, m := range moves {
		ab[0] += r.Mean[2*j] * m
		ab[1] += r.Mean[2*j+1] * m
	}
	return ab
}

// Model is a hull made ready to be asked for its response anywhere.
type Model struct {
	Hull   *hulls.Hull
	Items  []Item
	Held   kinematics.Held
	Afloat bool
	// Measured is how many answers in the hull file it was corrected by.
	Measured int
	line     *kinematics.DriveLine
	cov      *mat.SymDense
	shift    []float64 // of the mean, by those answers; nil: none
}

// The model's own errors beside the hull's numbers: friction, a nut's play, the
// hull's bending; our own judgement.
const (
	modelPart    = 0.03
	modelFloorMM = 0.0003
)

// offsetSDMM is how far off its drawn height and side the engine is thought to
// stand, for where in its clearances that leaves the shaft.
const offsetSDMM = 1.5

// NewModel works out a hull's response about its drawn state, and its
// covariance.
func NewModel(h *hulls.Hull, held kinematics.Held, afloat bool) (*Model, error) {
	line, err := kinematics.Prepare(bonded(h))
	if err != nil {
		return nil, err
	}
	m := &Model{Hull: h, Items: Items(h), Held: held, Afloat: afloat, line: line}
	nominal, err := m.at(line, nil, nil)
	if err != nil {
		return nil, err
	}
	n := len(nominal)
	m.cov = mat.NewSymDense(n, nil)
	add := func(other []float64, part float64) {
		d := mat.NewVecDense(n, nil)
		for i := range n {
			d.SetVec(i, part*(other[i]-nominal[i]))
		}
		m.cov.SymRankOne(m.cov, 1, d)
	}
	for _, number := range numbers(h) {
		other, times, err := m.movedSomehow(number)
		if err != nil {
			return nil, fmt.Errorf("%s moved by its tolerance: %w", number.pointer, err)
		}
		add(other, times)
	}
	for side := range 4 { // up, down, to port, to starboard; two make one sd each
		all := make([]float64, len(h.Mounts))
		for i := range all {
			all[i] = offsetSDMM * float64(1-2*(side%2))
		}
		lift, slide := all, []float64(nil)
		if side >= 2 {
			lift, slide = nil, all
		}
		if other, err := m.at(line, lift, slide); err == nil {
			add(other, 0.7)
		}
	}
	for i, v := range nominal {
		own := modelPart*v*modelPart*v + modelFloorMM*modelFloorMM
		m.cov.SetSym(i, i, m.cov.At(i, i)+own)
	}
	return m, m.learnMeasured(nominal)
}

// moved is the response about the drawn state with one number moved.
func (m *Model) moved(n number, sds float64) ([]float64, error) {
	h := n.moved(m.Hull, sds)
	line, err := kinematics.Prepare(bonded(&h))
	if err != nil {
		return nil, err
	}
	return m.at(line, nil, nil)
}

// movedSomehow is the response with a number moved by one standard deviation. Where
// there is no boat that way, the other way tells as much; where there is none
// either way, a part of it, to be taken so many times.
func (m *Model) movedSomehow(n number) (other []float64, times float64, err error) {
	for _, part := range [...]float64{1, -1, 0.2, -0.2} {
		if other, err = m.moved(n, part); err == nil {
			return other, 1 / math.Abs(part), nil
		}
	}
	return nil, 0, err
}

// Mean is what the items do on a hull as drawn, as Response.Mean has it, without
// how sure that is. Nuts count in the hull's own flats or shims.
func Mean(h *hulls.Hull, items []Item, held kinematics.Held, afloat bool) ([]float64, error) {
	own := slices.Clone(items)
	for j, it := range own {
		if !it.Slide {
			own[j].MM = h.Mounts[it.Mounts[0]].LiftPerStepMM()
		}
	}
	line, err := kinematics.Prepare(bonded(h))
	if err != nil {
		return nil, err
	}
	return (&Model{Hull: h, Items: own, Held: held, Afloat: afloat}).at(line, nil, nil)
}

// bonded is the hull with its solid feet held down: shimmed in one plane, as a
// plan keeps them, none of them lifts, and the response is that of springs.
func bonded(h *hulls.Hull) hulls.Hull {
	c := *h
	c.Mounts = append([]hulls.Mount(nil), h.Mounts...)
	for i := range c.Mounts {
		if m := &c.Mounts[i]; m.Kind == hulls.Solid {
			m.Kind, m.ThreadPitchMM, m.ShimStepMM = hulls.Rubber, 6*m.ShimStepMM, 0
		}
	}
	return c
}

// probe is how many steps up and down a difference is taken over.
const probe = 1.0

// at takes the response of a line about lifts and slides.
func (m *Model) at(line *kinematics.DriveLine, liftMM, slideMM []float64) ([]float64, error) {
	n := len(m.Hull.Mounts)
	s := kinematics.State{Held: m.Held, Afloat: m.Afloat, LiftMM: make([]float64, n), SlideMM: make([]float64, n)}
	copy(s.LiftMM, liftMM)
	copy(s.SlideMM, slideMM)
	mean := make([]float64, 0, 2*len(m.Items))
	moves := make([]float64, len(m.Items))
	var r kinematics.Result
	for j := range m.Items {
		var ab [2][2]float64
		for side := range 2 {
			moves[j] = probe * float64(2*side-1)
			Add(m.Items, moves, s.LiftMM, s.SlideMM)
			err := line.Solve(&s, &r)
			moves[j] = -moves[j]
			Add(m.Items, moves, s.LiftMM, s.SlideMM)
			if err != nil {
				return nil, err
			}
			ab[side] = [2]float64{r.Gap.CosMM, r.Gap.SinMM}
		}
		moves[j] = 0
		mean = append(mean, (ab[1][0]-ab[0][0])/(2*probe), (ab[1][1]-ab[0][1])/(2*probe))
	}
	return mean, nil
}

// At is the response about lifts and slides, by mount (nil: drawn).
func (m *Model) At(liftMM, slideMM []float64) (*Response, error) {
	mean, err := m.at(m.line.Clone(), liftMM, slideMM)
	if err != nil {
		return nil, err
	}
	return &Response{Items: m.Items, Mean: m.shifted(mean), Cov: m.cov, Measured: m.Measured}, nil
}

// Solve answers a state of the hull, as the model holds it if s.Held is "".
func (m *Model) Solve(s kinematics.State) (*kinematics.Result, error) {
	if s.Held == "" {
		s.Held = m.Held
	}
	s.Afloat = m.Afloat
	var r kinematics.Result
	if err := m.line.Clone().Solve(&s, &r); err != nil {
		return nil, err
	}
	return &r, nil
}
