package response

// This file compares what a boat answered to each move with what was expected
// when it was made: by the model, as corrected by all answers before it. It is
// what a plan would have told, so it can be held against what came.

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
)

// Answer is a boat's to what was moved between two gaugings.
type Answer struct {
	Change     int // from state Change to the next
	Mounts     []int
	Slid       bool // slides among what was moved
	Fastened   bool // something was tightened on the way too
	ExpectedMM [2]float64
	FoundMM    [2]float64
	// Share is how much of the expected change came, along its own direction:
	// 1 all of it. ReadSD is the part of its error that the gaugings make, SD
	// that of gaugings and tolerances together, by which it may differ from 1.
	Share, ReadSD, SD float64
	AcrossMM          float64 // what came at right angles to it
	Causes            []Cause // where it is off: what commonly makes it so
}

// Off reports whether more or less came than readings and tolerances explain, at
// two standard deviations.
func (a *Answer) Off() bool { return math.Abs(a.Share-1) > 2*a.SD }

// leastExpectedMM is the smallest change of [A, B] worth a share: under it the
// share is one of the readings' error.
const leastExpectedMM = 0.5 * 0.0254

// Answers lists them for a story, in its order; what was only tightened has
// none, nor what was expected to change next to nothing.
func (r *Response) Answers(s Story) ([]Answer, error) {
	var all []Answer
	for c, moves := range s.Moves {
		before, err := r.learn(s.upTo(c + 1))
		if err != nil {
			return nil, err
		}
		if a, ok := before.Response.answer(&s, c, moves); ok {
			all = append(all, a)
		}
	}
	return all, nil
}

// upTo is the story's first states.
func (s *Story) upTo(states int) Story {
	n := 2 * states
	part := Story{GapMM: s.GapMM[:states], CovMM2: mat.NewSymDense(n, nil), Moves: s.Moves[:states-1]}
	if len(s.Fastened) >= states-1 {
		part.Fastened = s.Fastened[:states-1]
	}
	for i := range n {
		for j := i; j < n; j++ {
			part.CovMM2.SetSym(i, j, s.CovMM2.At(i, j))
		}
	}
	return part
}

// answer is that to one change.
func (r *Response) answer(s *Story, c int, moves []float64) (Answer, bool) {
	a := Answer{Change: c, ExpectedMM: r.Change(moves), Fastened: len(s.Fastened) > c && s.Fastened[c]}
	size := math.Hypot(a.ExpectedMM[0], a.ExpectedMM[1])
	if size < leastExpectedMM {
		return a, false
	}
	for j, m := range moves {
		if m != 0 {
			for _, i := range r.Items[j].Mounts {
				if !slices.Contains(a.Mounts, i) {
					a.Mounts = append(a.Mounts, i)
				}
			}
			a.Slid = a.Slid || r.Items[j].Slide
		}
	}
	d := [2]float64{a.ExpectedMM[0] / size, a.ExpectedMM[1] / size}
	read, all := 0.0, 0.0
	for i := range 2 {
		a.FoundMM[i] = s.GapMM[c+1][i] - s.GapMM[c][i]
		for k := range 2 {
			was, is := s.CovMM2.At(2*c+i, 2*c+k), s.CovMM2.At(2*c+2+i, 2*c+2+k)
			between := s.CovMM2.At(2*c+i, 2*c+2+k) + s.CovMM2.At(2*c+2+i, 2*c+k)
			read += d[i] * d[k] * (was + is - between)
			all += d[i] * d[k] * r.spreadOf(moves, i, k)
		}
	}
	read += settlingMM * settlingMM
	if a.Fastened {
		read += fasteningMM * fasteningMM
	}
	a.Share = (a.FoundMM[0]*d[0] + a.FoundMM[1]*d[1]) / size
	a.AcrossMM = math.Abs(a.FoundMM[1]*d[0] - a.FoundMM[0]*d[1])
	a.ReadSD, a.SD = math.Sqrt(read)/size, math.Sqrt(read+all)/size
	if a.Off() {
		a.Causes = causesOf(a.ExpectedMM, a.FoundMM)
	}
	return a, true
}

// spreadOf is element i, k of the covariance of what moves are expected to do.
func (r *Response) spreadOf(moves []float64, i, k int) float64 {
	sum := 0.0
	for j, m := range moves {
		for l, n := range moves {
			sum += m * n * r.Cov.At(2*j+i, 2*l+k)
		}
	}
	return sum
}
