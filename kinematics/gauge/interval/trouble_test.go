package interval

// This file holds what a fit says of readings that contradict each other, agree
// too well, leave something open, begin far off or are no numbers.

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"
)

var (
	single = []float64{1}
	inf    = math.Inf(1)
)

// TestContradiction: two intervals of one place that do not meet give the
// middle, and with sigma free a sigma of half the distance, near enough: that of
// two numbers so far apart.
func TestContradiction(t *testing.T) {
	for _, gap := range []float64{2, 10, 1e3, 1e5, 1e8} {
		p := Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: single, Least: 0, Most: 1}, {X: single, Least: gap, Most: gap + 1}}}
		for _, free := range []bool{false, true} {
			r := Fit(p, Settings{FreeSigma: free})
			want := (gap + 1) / 2
			if r.Status != Converged || math.Abs(r.B[0]-want) > 1e-12*want || r.Iterations > 20 {
				t.Errorf("%g apart, free %v: %v, %.15g after %d steps, want %g", gap, free, r.Status, r.B, r.Iterations, want)
			}
			if free && math.Abs(r.Sigma/(gap/2)-1) > 0.1 && gap > 2 {
				t.Errorf("%g apart: sigma %g, want about %g", gap, r.Sigma, gap/2)
			}
		}
	}
}

// TestOneReading: one interval and weak beliefs about three unknowns. Of sigma's
// own width the interval is nearly a number, its middle, and of its variance,
// sigma's and the 1/12 of the interval, little matters beside the beliefs'.
func TestOneReading(t *testing.T) {
	x := []float64{1, 0.5, -2}
	for _, wide := range []float64{30, 1e3, 1e5} {
		p := Problem{Unknowns: 3, Sigma: 1, Rows: []Row{{X: x, Least: 3, Most: 4}}}
		square := 0.0
		for j := range x {
			belief := make([]float64, 3)
			belief[j] = 1
			p.Rows = append(p.Rows, Row{X: belief, Scale: wide})
			square += x[j] * x[j]
		}
		r := Fit(p, Settings{})
		if r.Status != Converged {
			t.Fatalf("beliefs of %g: %v", wide, r.Status)
		}
		at, along := 0.0, square*wide*wide
		for j := range x {
			at += x[j] * r.B[j]
			// The belief's variance, less what the reading takes along x.
			want := wide * wide * (1 - x[j]*x[j]*wide*wide/(along+1+1./12))
			if got := r.Covariance.At(j, j); math.Abs(got/want-1) > 1e-4 {
				t.Errorf("beliefs of %g: variance %d %.9g, want %.9g", wide, j, got, want)
			}
		}
		if want := 3.5 * along / (along + 1 + 1./12); math.Abs(at-want) > 1e-3 {
			t.Errorf("beliefs of %g: the law gives %.9g, want %.9g", wide, at, want)
		}
	}
}

// TestPerfectIntervals: one law meets every interval. At a floor of a tenth of
// the leaves' step there is an answer; at a five-hundredth of it every limit is
// so many sigma off that the likelihood is flat, and the fit says so.
func TestPerfectIntervals(t *testing.T) {
	p := round([12][2]float64{})
	for i, goes := range []float64{14, 12, 10, 7, 5, 5, 5, 7, 10, 12, 14, 15} {
		p.Rows[i].Least, p.Rows[i].Most = goes, goes+1
	}
	for _, c := range []struct {
		floor  float64
		status Status
	}{{0.3, Converged}, {0.1, Converged}, {0.002, Undetermined}, {0, Undetermined}} {
		r := Fit(p, Settings{FreeSigma: true, FloorSigma: c.floor})
		floor := c.floor
		if floor == 0 {
			floor = p.Sigma / 1000
		}
		if r.Status != c.status || !r.AtFloor || r.Sigma != floor {
			t.Errorf("floor %g: %v, sigma %g, at floor %v", c.floor, r.Status, r.Sigma, r.AtFloor)
		}
		if r.Status == Converged && (r.Covariance.At(3, 3) != 0 || r.Covariance.At(0, 3) != 0) {
			t.Errorf("floor %g: a variance %g of a sigma that was not found", c.floor, r.Covariance.At(3, 3))
		}
		for i, row := range p.Rows { // whatever it is called, the law is one that meets them
			at := 0.0
			for j, x := range row.X {
				at += x * r.B[j]
			}
			if !(at >= row.Least && at <= row.Most) {
				t.Errorf("floor %g: row %d at %g, not in %g..%g", c.floor, i, at, row.Least, row.Most)
			}
		}
	}
}

// TestFarOff: any start and any first sigma lead to the same optimum, sigma
// given in at most 12 steps from 1e4 sigma off, free in at most 40.
func TestFarOff(t *testing.T) {
	_, fits := readSurvreg(t)
	tobin := fits["tobin"].problem()
	for name, p := range map[string]Problem{"feelers": round(fg1), "tobin": tobin} {
		for _, free := range []bool{false, true} {
			for _, sigma := range []float64{1e-4, 1e-2, 1, 1e2, 1e4} {
				if !free {
					p.Sigma = sigma
				}
				p.Start = nil
				want := Fit(p, Settings{FreeSigma: free, FloorSigma: 1e-6})
				most := 12
				if free {
					p.Sigma, most = sigma, 40
				}
				for _, off := range [][]float64{{1, 0, 0}, {-1, 0, 0}, {1, -1, 1}, {0, 1, 1}} {
					p.Start = make([]float64, 3)
					for j := range off {
						p.Start[j] = want.B[j] + 1e4*sigma*off[j]
					}
					r := Fit(p, Settings{FreeSigma: free, FloorSigma: 1e-6})
					what := fmt.Sprintf("%s, free %v, sigma %g, start %v", name, free, sigma, p.Start)
					if r.Status != Converged || r.Iterations > most {
						t.Errorf("%s: %v after %d steps", what, r.Status, r.Iterations)
						continue
					}
					alike(t, what, r, want.B, want.Sigma, want.LogLikelihood, want.Covariance.At)
				}
			}
		}
	}
}

// TestNoHold: where the rows do not settle every unknown, there is no number.
func TestNoHold(t *testing.T) {
	extra := func(column func(x []float64) float64) Problem {
		p := round(fg1)
		p.Unknowns++
		for i, r := range p.Rows {
			p.Rows[i].X = append(slices.Clone(r.X), column(r.X))
		}
		return p
	}
	rows := func(rows ...Row) Problem { return Problem{Unknowns: 1, Sigma: 1, Rows: rows} }
	for name, p := range map[string]Problem{
		"an unknown in no row":     extra(func([]float64) float64 { return 0 }),
		"two that go together":     extra(func(x []float64) float64 { return x[0] + 3*x[1] - 0.1*x[2] }),
		"no rows":                  rows(),
		"no limits":                rows(Row{X: single, Least: -inf, Most: inf}),
		"limits on one side":       rows(Row{X: single, Least: 0, Most: inf}, Row{X: single, Least: 1, Most: inf}),
		"fewer rows than unknowns": {Unknowns: 2, Sigma: 1, Rows: []Row{{X: []float64{1, 1}, Least: 3, Most: 4}}},
	} {
		for _, free := range []bool{false, true} {
			r := Fit(p, Settings{FreeSigma: free})
			if r.Status != Undetermined || r.Covariance != nil {
				t.Errorf("%s, free %v: %v after %d steps, %v", name, free, r.Status, r.Iterations, r.B)
			}
		}
	}
}

// TestTogether: columns that go together are told apart from rounding, whatever
// they are and however many.
func TestTogether(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 7))
	for n := range 300 {
		p := invented(random)
		p.Rows = p.Rows[:len(p.Rows)-p.Unknowns] // without the beliefs
		mix := make([]float64, p.Unknowns)
		for j := range mix {
			mix[j] = random.NormFloat64()
		}
		for i := range p.Rows {
			extra := 0.0
			for j, x := range p.Rows[i].X {
				extra += mix[j] * x
			}
			p.Rows[i].X = append(p.Rows[i].X, extra)
		}
		p.Unknowns++
		if r := Fit(p, Settings{FreeSigma: n%2 == 0}); r.Status != Undetermined {
			t.Errorf("problem %d, %d unknowns: %v, %v", n, p.Unknowns, r.Status, r.B)
		}
	}
}

// TestNearlyTogether: two columns a part apart have a condition near the part's
// square; a double tells 1e-5, and not 1e-8, from none.
func TestNearlyTogether(t *testing.T) {
	random := rand.New(rand.NewPCG(8, 8))
	for n := range 100 {
		for part, want := range map[float64]Status{1e-5: Converged, 1e-8: Undetermined, 3e-8: Undetermined} {
			p := Problem{Unknowns: 2, Sigma: 1}
			for range 20 {
				x, y := random.NormFloat64(), random.NormFloat64()
				p.Rows = append(p.Rows, Row{X: []float64{x, x + part*random.NormFloat64()}, Least: y, Most: y})
			}
			if r := Fit(p, Settings{FreeSigma: n%2 == 0}); r.Status != want {
				t.Errorf("%g apart: %v, %v", part, r.Status, r.B)
			}
		}
	}
}

// TestSigmaWithoutHold: no more and no less than nought hold b there, but of any
// sigma are as likely: it is at its floor. No more than a bit and no less than
// more are the likelier the larger sigma is, without end.
func TestSigmaWithoutHold(t *testing.T) {
	for _, gap := range []float64{0, 1e-3, 1, 100} {
		p := Problem{Unknowns: 1, Rows: []Row{{X: single, Least: -inf, Most: 1}, {X: single, Least: 1 + gap, Most: inf}}}
		for _, p.Sigma = range []float64{0.1, 1, 1e3} {
			for _, start := range []float64{0, 1e-3, 2, -30} {
				p.Start = []float64{start}
				if r := Fit(p, Settings{}); r.Status != Converged || math.Abs(r.B[0]-1-gap/2) > 1e-9*p.Sigma {
					t.Errorf("gap %g from %g, sigma %g: %v, %v", gap, start, p.Sigma, r.Status, r.B)
				}
				r := Fit(p, Settings{FreeSigma: true})
				if atFloor := r.Status == Converged && r.AtFloor; atFloor != (gap == 0) || !atFloor && r.Status != Undetermined {
					t.Errorf("gap %g from %g, sigma %g, free: %v after %d steps, sigma %g", gap, start, p.Sigma, r.Status, r.Iterations, r.Sigma)
				}
			}
		}
	}
}

// TestStepsStayOnTheLine: whatever the step, what is tried lies on it in b/sigma
// and 1/sigma, above the floor, and at most ten times as wide as before.
func TestStepsStayOnTheLine(t *testing.T) {
	p := Problem{Unknowns: 1, Sigma: 3, Start: []float64{2}, Rows: []Row{{X: single, Least: 0, Most: 1}}}
	w, ok := newWork(&p, &Settings{FreeSigma: true, FloorSigma: 0.5})
	if !ok {
		t.Fatal("invalid")
	}
	for _, nu := range []float64{-1e9, -2, -1, -0.95, -0.5, 0, 0.5, 4.9, 5, 5.1, 100, 1e9} {
		w.step.SetVec(0, 0.7)
		w.step.SetVec(1, nu)
		part := w.reach()
		w.try(part)
		sigma, b := w.trial.sigma, w.trial.b[0]
		if !(part > 0 && part <= 1 && sigma >= 0.5 && sigma <= 30*(1+1e-12)) {
			t.Errorf("step %g: part %g, sigma %g", nu, part, sigma)
		}
		if want := 3 / (1 + part*nu); math.Abs(sigma/want-1) > 1e-9 {
			t.Errorf("step %g: sigma %g, on the line %g", nu, sigma, want)
		}
		if want := 2 + sigma*part*0.7; math.Abs(b-want) > 1e-12 {
			t.Errorf("step %g: b %g, on the line %g", nu, b, want)
		}
	}
}

// TestInvalid: a number that is none, or a shape that does not fit.
func TestInvalid(t *testing.T) {
	good := Row{X: single, Least: 3, Most: 4}
	nan := math.NaN()
	for name, c := range map[string]struct {
		p Problem
		s Settings
	}{
		"no unknown":        {Problem{Sigma: 1}, Settings{}},
		"no sigma":          {Problem{Unknowns: 1, Rows: []Row{good}}, Settings{}},
		"sigma below":       {Problem{Unknowns: 1, Sigma: -1, Rows: []Row{good}}, Settings{}},
		"sigma NaN":         {Problem{Unknowns: 1, Sigma: nan, Rows: []Row{good}}, Settings{}},
		"sigma infinite":    {Problem{Unknowns: 1, Sigma: inf, Rows: []Row{good}}, Settings{}},
		"floor NaN":         {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{good}}, Settings{FreeSigma: true, FloorSigma: nan}},
		"floor infinite":    {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{good}}, Settings{FreeSigma: true, FloorSigma: inf}},
		"floor below":       {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{good}}, Settings{FreeSigma: true, FloorSigma: -1}},
		"start NaN":         {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{good}, Start: []float64{nan}}, Settings{}},
		"start infinite":    {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{good}, Start: []float64{inf}}, Settings{}},
		"start too long":    {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{good}, Start: []float64{1, 2}}, Settings{}},
		"x NaN":             {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: []float64{nan}, Most: 1}}}, Settings{}},
		"x infinite":        {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: []float64{inf}, Most: 1}}}, Settings{}},
		"x too long":        {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: []float64{1, 2}, Most: 1}}}, Settings{}},
		"least NaN":         {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: single, Least: nan, Most: 1}}}, Settings{}},
		"most NaN":          {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: single, Most: nan}}}, Settings{}},
		"least over most":   {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: single, Least: 2, Most: 1}}}, Settings{}},
		"at plus infinity":  {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: single, Least: inf, Most: inf}}}, Settings{}},
		"at minus infinity": {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: single, Least: -inf, Most: -inf}}}, Settings{}},
		"scale NaN":         {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: single, Most: 1, Scale: nan}}}, Settings{}},
		"scale infinite":    {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: single, Most: 1, Scale: inf}}}, Settings{}},
		"scale below":       {Problem{Unknowns: 1, Sigma: 1, Rows: []Row{{X: single, Most: 1, Scale: -1}}}, Settings{}},
	} {
		if r := Fit(c.p, c.s); r.Status != Invalid {
			t.Errorf("%s: %v", name, r.Status)
		}
	}
	if r := Fit(Problem{Unknowns: 1, Sigma: 1, Rows: []Row{good}}, Settings{}); r.Status != Converged {
		t.Errorf("the good row: %v", r.Status)
	}
}

// TestIterationsEnd: a fit stopped early says so, and has counted its steps.
func TestIterationsEnd(t *testing.T) {
	r := Fit(round(fg1), Settings{FreeSigma: true, MostIteration: 2})
	if r.Status != Stalled || r.Iterations != 2 || r.Covariance != nil {
		t.Errorf("%v after %d steps", r.Status, r.Iterations)
	}
}
