package gauge

// This file is the estimate: what is asked of the evidence, and the answer.

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/mat"

	"aligner/hulls/visit"
	"aligner/kinematics"
	"aligner/kinematics/gauge/interval"
)

// Status says whether there is an estimate.
type Status string

// Ready has every number. Nothing: no reading tells how the engine stands.
// Moved: something was moved after the last gauging; the states before are told,
// the present one is not known.
const (
	Ready   Status = "ready"
	Nothing Status = "nothing gauged"
	Moved   Status = "not gauged since the move"
)

// Estimate is what the readings of a visit mean. Beside Status, Aim and the
// rule every field is of a Ready one alone.
type Estimate struct {
	Status Status
	Aim    kinematics.Held // how the shaft is held in the gap told

	Rule       visit.Rule
	RuleChosen bool // else the default stands for it
	LimitMM    float64
	TargetMM   [2]float64 // [A, B] aimed at, at rest
	PowerMM    [2]float64 // what power adds to the gap at rest
	DummyMM    [2]float64 // what the dummy last gauged through adds, the shaft at its mark

	// Gap is what the engine's position gives in the present state, run-out
	// taken out.
	Gap      Gaussian
	OffsetMM [2]float64 // [y, z] of the engine's face centre off the shaft line
	OffsetSD [2]float64

	// RunOut of the shaft half and of the flange, each as gap with the half at
	// its mark; Untrue says the readings show more than is let pass.
	RunOut [2]RunOut

	Seatings []Seating
	States   []State
	// StateCovMM2 is the covariance of all states' A and B in turn: A0, B0, A1 ...
	StateCovMM2 *mat.SymDense

	Odd       []Odd
	Flat      bool // all readings that count can be two flat faces
	ForMoves  bool // good enough to move something by
	WhyNot    Refusal
	Untold    []Untold
	SetAside  []SetAside
	GapCount  int       // places gauged that count, in the present state
	ClockDeg  []float64 // where gaps were gauged in this visit, or, of too few places, every hour
	FeelMM    float64
	Verdict   Verdict
	Within    float64 // the probability that the rule is kept
	Next      *Next   // what would tell most; nil: nothing more is needed
	FitStatus interval.Status
	// TightenedSince: a mount was tightened after the last gauging, which may
	// have moved the engine.
	TightenedSince bool
}

// RunOut is one half's.
type RunOut struct {
	Gaussian
	Untrue   bool
	Measured bool
}

// Seating is one seating's gap at the faces' centre.
type Seating struct {
	Events   []int
	State    int
	G0MM, SD float64
	LeastMM  float64 // the least gap round the rim
	// Touching is what was said, Touched what the readings bear out.
	Touching, Touched bool
}

// Refusal says why a set is not good enough to move something by; "" if it is.
type Refusal string

// The refusals.
const (
	NotFlat   Refusal = "not flat"   // no two planes give these readings
	TakeAgain Refusal = "take again" // the odd reading first
	TooFew    Refusal = "too few"    // less than three places
	OneSided  Refusal = "one-sided"  // the places lie too close together
	NoOffset  Refusal = "no offset"  // centred gaps alone: the seated shaft would swing
)

// Estimate reads a visit. The error is of the program's own making.
func (m *Model) Estimate(v *visit.Visit) (*Estimate, error) {
	r := &Estimate{Aim: m.aim}
	r.Rule, r.RuleChosen = v.Rule.Chosen()
	r.LimitMM = r.Rule.LimitMM(2 * m.radiusMM)
	r.TargetMM[0], r.TargetMM[1] = v.Target.CosSinMM()
	r.PowerMM = m.PowerMM(v.UnderPower)
	for i := range r.TargetMM {
		r.TargetMM[i] -= r.PowerMM[i]
	}
	r.Verdict = CannotTell
	e := m.gather(v)
	r.DummyMM = e.dummyMM
	r.SetAside = e.setAside
	r.FeelMM = e.feel
	if len(e.states) == 0 {
		r.Status = Nothing
		return r, nil
	}
	f, odd, whole := e.flat()
	r.FitStatus = f.Status
	if f.Status != interval.Converged {
		return nil, fmt.Errorf("the estimate %s after %d steps", f.Status, f.Iterations)
	}
	r.Odd, r.Flat = odd, whole
	r.states(e, &f)
	if e.ahead {
		r.Status = Moved
		return r, nil
	}
	r.Status, r.TightenedSince = Ready, e.tighter
	r.present(e, &f)
	r.judge(e)
	r.untold(e, v)
	r.Next = m.next(e, &f, r, v)
	return r, nil
}

// part copies two unknowns and their covariance out.
func part(f *fit, i int) Gaussian {
	c := f.Covariance
	return Gaussian{[2]float64{f.B[i], f.B[i+1]}, [2][2]float64{{c.At(i, i), c.At(i, i+1)}, {c.At(i, i+1), c.At(i+1, i+1)}}}
}

// states copies every state's gap, and the seatings'.
func (r *Estimate) states(e *evidence, f *fit) {
	r.States = append([]State(nil), e.states...)
	r.StateCovMM2 = mat.NewSymDense(2*len(e.states), nil)
	for k := range r.States {
		i := e.num.state(k)
		r.States[k].CosMM, r.States[k].SinMM = f.B[i], f.B[i+1]
		for l := range r.States {
			j := e.num.state(l)
			for a := range 2 {
				for b := range 2 {
					r.StateCovMM2.SetSym(2*k+a, 2*l+b, f.Covariance.At(i+a, j+b))
				}
			}
		}
	}
	for s := range e.seatings {
		seat, i := &e.seatings[s], e.num.seating(s)
		if seat.gapRows == 0 {
			continue
		}
		w, g0 := e.num.gapOf(f.B, seat.state, seat.turn), f.B[i]+seat.apartMM
		r.Seatings = append(r.Seatings, Seating{Events: seat.events, State: seat.state, G0MM: g0,
			SD: math.Sqrt(f.Covariance.At(i, i)), LeastMM: g0 - math.Hypot(w[0]+seat.dummyMM[0], w[1]+seat.dummyMM[1]),
			Touching: seat.touching, Touched: f.touching[s]})
	}
}

// present copies what belongs to the last state.
func (r *Estimate) present(e *evidence, f *fit) {
	last := len(e.states) - 1
	r.Gap = part(f, e.num.state(last))
	offset := part(f, e.num.state(last)+2)
	r.OffsetMM = offset.MeanMM
	r.OffsetSD = [2]float64{math.Sqrt(offset.CovMM2[0][0]), math.Sqrt(offset.CovMM2[1][1])}
	r.ClockDeg = e.reachable()
	for half, i := range [2]int{e.num.shaft(), e.num.flange()} {
		r.RunOut[half] = RunOut{part(f, i), f.untrue[half], e.runOut[half].measured}
		if r.RunOut[half].Measured {
			// Told by a dial rather than by the evidence against what is let pass.
			r.RunOut[half].Untrue = math.Hypot(r.RunOut[half].MeanMM[0], r.RunOut[half].MeanMM[1]) > letPassMM+dialMM
		}
	}
	for _, rows := range e.places() {
		if s := e.seatingOf(rows[0]); e.seatings[s].state == last {
			r.GapCount++
		}
	}
}

// judge gives the verdict, and says whether the set is good enough for moves.
func (r *Estimate) judge(e *evidence) {
	r.Verdict, r.Within = r.Gap.verdict(r.TargetMM, r.LimitMM/2)
	large, _, _ := r.Gap.Axes()
	switch {
	case !r.Flat:
		r.WhyNot = NotFlat
		r.Verdict = CannotTell
	case r.mustTakeAgain(e):
		r.WhyNot = TakeAgain
	case r.GapCount < 3:
		r.WhyNot = TooFew
	case r.swingUntold(e):
		r.WhyNot = NoOffset
	case large > untoldMM:
		r.WhyNot = OneSided
	}
	r.ForMoves = r.WhyNot == ""
}

// swingUntold reports whether the shaft was only gauged centred, and nothing says
// by how much the engine's offset would swing it once seated.
func (r *Estimate) swingUntold(e *evidence) bool {
	return e.model.aim == "seated" && e.onlyCentred() && max(r.OffsetSD[0], r.OffsetSD[1]) > offsetBeliefMM/2
}

// mustTakeAgain reports whether an odd reading of the present state has not
// been taken again since, at its place, by one that counts.
func (r *Estimate) mustTakeAgain(e *evidence) bool {
	for _, odd := range r.Odd {
		if odd.Event < r.States[len(r.States)-1].FirstEvent {
			continue
		}
		again := false
		for i, ref := range e.refs {
			later := ref.Event > odd.Event || ref.Event == odd.Event && ref.Reading > odd.Reading
			again = again || later && e.isGap(i) && math.Abs(ref.ClockDeg-odd.ClockDeg) < 1
		}
		if !again {
			return true
		}
	}
	return false
}
