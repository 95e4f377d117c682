package response

// This file holds what is said of a boat's answers: a boat that gives so much of
// what the model says is told with that share.

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/mat"

	"aligner/kinematics"
)

// answered is the story of one move to which a boat gave a share of the model's
// change, gauged with an error of a tenth of a thou.
func answered(r *Response, moves []float64, shares ...float64) Story {
	s := Story{GapMM: [][2]float64{{0.1, -0.05}}}
	for _, share := range shares {
		last := s.GapMM[len(s.GapMM)-1]
		c := r.Change(moves)
		s.GapMM = append(s.GapMM, [2]float64{last[0] + share*c[0], last[1] + share*c[1]})
		s.Moves = append(s.Moves, moves)
	}
	s.CovMM2 = mat.NewSymDense(2*len(s.GapMM), nil)
	for i := range 2 * len(s.GapMM) {
		s.CovMM2.SetSym(i, i, 0.00254*0.00254)
	}
	return s
}

func TestAnswersTellTheShare(t *testing.T) {
	h := hull(t, "kittiwake")
	m, err := NewModel(h, kinematics.Seated, false)
	if err != nil {
		t.Fatal(err)
	}
	r, err := m.At(nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	moves := make([]float64, len(r.Items))
	moves[0], moves[1] = 4, 4
	for _, c := range []struct {
		share float64
		off   bool
		cause Cause
	}{{1, false, ""}, {0.3, true, JamNutTight}, {0, true, JamNutTight}, {-1, true, WrongWay}, {2.2, true, TiredRubber}} {
		l, err := r.Learn(answered(r, moves, c.share))
		if err != nil {
			t.Fatal(err)
		}
		if len(l.Answers) != 1 {
			t.Fatalf("share %v: %d answers", c.share, len(l.Answers))
		}
		a := l.Answers[0]
		if math.Abs(a.Share-c.share) > 1e-9 || a.Off() != c.off || !slices.Equal(a.Mounts, []int{0, 1}) || a.Slid {
			t.Errorf("share %v told as %+v, off %v", c.share, a, a.Off())
		}
		if c.off && (len(a.Causes) == 0 || a.Causes[0] != c.cause) {
			t.Errorf("share %v: causes %v, want %v first", c.share, a.Causes, c.cause)
		}
		if a.SD < a.ReadSD || a.ReadSD <= 0 {
			t.Errorf("errors %v of the readings, %v in all", a.ReadSD, a.SD)
		}
	}
	// Once learnt, the same answer is what is expected.
	l, err := r.Learn(answered(r, moves, 0.6, 0.6, 0.6))
	if err != nil {
		t.Fatal(err)
	}
	if first, last := l.Answers[0], l.Answers[2]; !first.Off() || last.Off() || math.Abs(last.Share-1) > math.Abs(first.Share-1)/2 {
		t.Errorf("the first answer %.2f, the third %.2f of what was expected by then", first.Share, last.Share)
	}
	moves[0], moves[1] = 0, 0
	if l, err = r.Learn(answered(r, moves, 1)); err != nil || len(l.Answers) != 0 {
		t.Errorf("nothing moved: %v, %v", l.Answers, err)
	}
}
