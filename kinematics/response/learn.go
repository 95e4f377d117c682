package response

// This file learns from what a boat answered: one Gaussian update round the
// model's response, by all moves made so far.

import (
	"errors"
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
)

// Story is what has been gauged and done: for each state the estimate of [A,
// B], all with their joint covariance (A0, B0, A1 ...), and the moves, in steps
// by item, that led from one state to the next.
type Story struct {
	GapMM    [][2]float64
	CovMM2   *mat.SymDense
	Moves    [][]float64 // one less than states
	Fastened []bool      // something was tightened on the way too
}

// moved counts the changes in which something was moved, not only tightened.
func (s *Story) moved() (n int) {
	for _, moves := range s.Moves {
		if slices.ContainsFunc(moves, func(v float64) bool { return v != 0 }) {
			n++
		}
	}
	return n
}

// Learnt is the response after the update, and the present gap, which the
// update knows better too.
type Learnt struct {
	Response *Response
	GapMM    [2]float64
	GapCov   [2][2]float64
	// Cross is the covariance of the present gap with the response: rows A, B.
	Cross     [2][]float64
	Surprises []Surprise
	// Told is how far the error of each item's response has been narrowed down,
	// 0 not at all to 1 wholly. Where it is small the moves so far cannot tell.
	Told []float64
	// Answers compare each move with what was expected of it, in order.
	Answers []Answer
}

// Surprise is a change too far from the expected for the tolerances.
type Surprise struct {
	Change             int // from state Change to the next
	ExpectedMM         [2]float64
	FoundMM            [2]float64
	StandardDeviations float64
	Causes             []Cause
}

// Cause is what commonly makes a boat answer otherwise than expected.
type Cause string

// The causes.
const (
	JamNutTight  Cause = "jam nut tight"
	ShaftBinding Cause = "shaft binding"
	Touching     Cause = "something touching"
	SoftFoot     Cause = "soft foot"
	TiredRubber  Cause = "tired rubber"
	WrongWay     Cause = "turned the wrong way"
	Misread      Cause = "misread"
)

// Settling between two gaugings, and what tightening may do on top, as standard
// deviations of A and B (our own judgement).
const (
	settlingMM  = 0.2 * 0.0254
	fasteningMM = 3 * 0.0254
)

// surprising is the chi-squared, of two degrees, that chance exceeds once in
// ten thousand times.
const surprising = 18.42

// Learn updates a response by a story of at least one state.
func (r *Response) Learn(s Story) (*Learnt, error) {
	l, err := r.learn(s)
	if err == nil {
		l.Answers, err = r.Answers(s)
	}
	return l, err
}

// learn is Learn without the comparison of each answer.
func (r *Response) learn(s Story) (*Learnt, error) {
	k := len(s.GapMM)
	if k == 0 || len(s.Moves) != k-1 || s.CovMM2.SymmetricDim() != 2*k {
		return nil, errors.New("a story needs a gap and a covariance for each state, and a move between any two")
	}
	l := &Learnt{Response: r, GapMM: s.GapMM[k-1], Told: make([]float64, len(r.Items))}
	n := len(r.Mean)
	l.Cross = [2][]float64{make([]float64, n), make([]float64, n)}
	for a := range 2 {
		for b := range 2 {
			l.GapCov[a][b] = s.CovMM2.At(2*k-2+a, 2*k-2+b)
		}
	}
	if k == 1 {
		return l, nil
	}
	u := newUpdate(r, &s)
	if widen := u.surprises(l); widen > 1 {
		// The tolerances do not hold this boat: believe it rather than the model.
		wide := *r
		wide.Cov = mat.NewSymDense(n, nil)
		wide.Cov.ScaleSym(widen, r.Cov)
		u = newUpdate(&wide, &s)
	}
	return l, u.apply(l)
}

// update is the linear algebra of it: o = M dR + D e + q, with dR the error of
// the response, e the states' errors and q settling.
type update struct {
	r          *Response
	s          *Story
	n, k       int
	m, d       *mat.Dense
	innovation *mat.VecDense
	spread     *mat.SymDense // covariance of the innovation
}

func newUpdate(r *Response, s *Story) *update {
	u := &update{r: r, s: s, n: len(r.Mean), k: len(s.GapMM)}
	rows := 2 * (u.k - 1)
	u.m, u.d = mat.NewDense(rows, u.n, nil), mat.NewDense(rows, 2*u.k, nil)
	u.innovation = mat.NewVecDense(rows, nil)
	for c, moves := range s.Moves {
		said := r.Change(moves)
		for a := range 2 {
			i := 2*c + a
			for j, v := range moves {
				u.m.Set(i, 2*j+a, v)
			}
			u.d.Set(i, 2*c+a, -1)
			u.d.Set(i, 2*c+2+a, 1)
			u.innovation.SetVec(i, s.GapMM[c+1][a]-s.GapMM[c][a]-said[a])
		}
	}
	var mc, mcm, dc, dcd mat.Dense
	mc.Mul(u.m, r.Cov)
	mcm.Mul(&mc, u.m.T())
	dc.Mul(u.d, s.CovMM2)
	dcd.Mul(&dc, u.d.T())
	u.spread = mat.NewSymDense(rows, nil)
	for i := range rows {
		for j := i; j < rows; j++ {
			u.spread.SetSym(i, j, mcm.At(i, j)+dcd.At(i, j))
		}
		q := settlingMM * settlingMM
		if len(s.Fastened) > i/2 && s.Fastened[i/2] {
			q += fasteningMM * fasteningMM
		}
		u.spread.SetSym(i, i, u.spread.At(i, i)+q)
	}
	return u
}

// surprises names the changes that are too far off, and says by how much the
// response's covariance has to be widened for the worst to be no surprise.
func (u *update) surprises(l *Learnt) (widen float64) {
	widen = 1
	for c, moves := range u.s.Moves {
		o := [2]float64{u.innovation.AtVec(2 * c), u.innovation.AtVec(2*c + 1)}
		a, b, d := u.spread.At(2*c, 2*c), u.spread.At(2*c, 2*c+1), u.spread.At(2*c+1, 2*c+1)
		chi := (o[0]*o[0]*d - 2*o[0]*o[1]*b + o[1]*o[1]*a) / (a*d - b*b)
		if chi < surprising {
			continue
		}
		widen = math.Max(widen, chi/2)
		s := Surprise{Change: c, ExpectedMM: u.r.Change(moves), StandardDeviations: math.Sqrt(chi)}
		s.FoundMM = [2]float64{s.ExpectedMM[0] + o[0], s.ExpectedMM[1] + o[1]}
		s.Causes = causesOf(s.ExpectedMM, s.FoundMM)
		l.Surprises = append(l.Surprises, s)
	}
	return widen
}

// causesOf compares what was found with what was expected: too little of it, the
// other way, too much, or to the side.
func causesOf(expected, found [2]float64) []Cause {
	size := math.Hypot(expected[0], expected[1])
	if size == 0 {
		return []Cause{Touching, Misread}
	}
	along := (found[0]*expected[0] + found[1]*expected[1]) / (size * size)
	across := math.Abs(found[1]*expected[0]-found[0]*expected[1]) / (size * size)
	switch {
	case across > math.Abs(along-1):
		return []Cause{ShaftBinding, SoftFoot, Touching, Misread}
	case along < -0.3:
		return []Cause{WrongWay, ShaftBinding, Misread}
	case along < 1:
		return []Cause{JamNutTight, Touching, ShaftBinding, TiredRubber}
	}
	return []Cause{TiredRubber, SoftFoot, Misread}
}

// apply makes the update.
func (u *update) apply(l *Learnt) error {
	var chol mat.Cholesky
	if !chol.Factorize(u.spread) {
		return errors.New("the changes' covariance is not one")
	}
	// C_R M' and C_e D', the latter for the last state only.
	var rm, ed mat.Dense
	rm.Mul(u.r.Cov, u.m.T())
	ed.Mul(u.s.CovMM2, u.d.T())
	last := ed.Slice(2*u.k-2, 2*u.k, 0, 2*(u.k-1))
	var so mat.VecDense
	if err := chol.SolveVecTo(&so, u.innovation); err != nil {
		return err
	}
	var dr, e mat.VecDense
	dr.MulVec(&rm, &so)
	e.MulVec(last, &so)

	var srm, sed, rr, ee, re mat.Dense
	if err := chol.SolveTo(&srm, rm.T()); err != nil {
		return err
	}
	if err := chol.SolveTo(&sed, last.T()); err != nil {
		return err
	}
	rr.Mul(&rm, &srm)
	ee.Mul(last, &sed)
	re.Mul(last, &srm) // minus cov(e, R), that is plus cov(v, R)

	next := &Response{Items: u.r.Items, Mean: append([]float64(nil), u.r.Mean...), Cov: mat.NewSymDense(u.n, nil), Learnt: u.s.moved(), Measured: u.r.Measured}
	for i := range u.n {
		next.Mean[i] += dr.AtVec(i)
		for j := i; j < u.n; j++ {
			next.Cov.SetSym(i, j, u.r.Cov.At(i, j)-(rr.At(i, j)+rr.At(j, i))/2)
		}
	}
	for j := range l.Told {
		before := u.r.Cov.At(2*j, 2*j) + u.r.Cov.At(2*j+1, 2*j+1)
		l.Told[j] = 1 - math.Sqrt(math.Max(0, next.Cov.At(2*j, 2*j)+next.Cov.At(2*j+1, 2*j+1))/before)
	}
	for a := range 2 {
		l.GapMM[a] -= e.AtVec(a)
		for b := range 2 {
			l.GapCov[a][b] -= (ee.At(a, b) + ee.At(b, a)) / 2
		}
		for i := range u.n {
			l.Cross[a][i] = re.At(a, i)
		}
	}
	l.Response = next
	return nil
}
