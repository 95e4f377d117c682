package gauge

// This file finds the reading that would tell most: a leaf of the set at a
// place that can be reached, the odd reading again, or the shaft turned and
// gauged anew.

import (
	"math"
	"slices"

	"aligner/hulls/visit"
)

// Next is what to gauge next.
type Next struct {
	What     Asked
	ClockDeg float64
	LeafMM   float64 // a thickness the set can make
	// ShaftTurnDeg and FlangeTurnDeg, from the marks: of a gauging anew.
	ShaftTurnDeg, FlangeTurnDeg float64
	Again                       *Odd
	// Doubt is p (1 - p) of the verdict, now and as it may be expected after.
	DoubtNow, DoubtAfter float64
}

// Asked says what kind of reading is asked for.
type Asked string

// The kinds of reading asked for.
const (
	TryLeaf     Asked = "try a leaf"
	TakeItAgain Asked = "read again"
	GaugeGaps   Asked = "gauge the gaps"   // at three places or more, well apart
	GaugeOffset Asked = "gauge the offset" // rim steps with the shaft centred, or seat it
	TurnShaft   Asked = "turn and gauge again"
)

// next is nil where the gap is within, or where what has to be known before a
// move is known.
func (m *Model) next(e *evidence, f *fit, r *Estimate, v *visit.Visit) *Next {
	if r.WhyNot == TakeAgain || r.WhyNot == NotFlat {
		odd := r.Odd[len(r.Odd)-1]
		first := r.States[len(r.States)-1].FirstEvent
		for _, o := range slices.Backward(r.Odd) { // of the present state, the worst
			if o.Event >= first && (r.WhyNot == NotFlat || !odd.Alone || odd.Event < first) {
				odd = o
			}
		}
		return &Next{What: TakeItAgain, ClockDeg: odd.ClockDeg, Again: &odd}
	}
	switch {
	case r.WhyNot == NoOffset:
		return &Next{What: GaugeOffset, DoubtNow: 0.25}
	case r.GapCount == 0, r.WhyNot == TooFew, r.WhyNot == OneSided:
		return &Next{What: GaugeGaps, ClockDeg: e.farthest(), DoubtNow: 0.25}
	}
	doubt := r.Within * (1 - r.Within)
	if r.Verdict == Within {
		return nil
	}
	if r.Verdict == Outside {
		// Something will have to be moved: run-out is found first, or it would be
		// chased with the mounts.
		if len(e.turns()) < 2 && !(e.runOut[0].measured && e.runOut[1].measured) {
			return m.turn(e, f, r, doubt)
		}
		return nil
	}
	best := m.bestLeaf(e, f, r, v, doubt)
	turn := m.turn(e, f, r, doubt)
	switch {
	case best == nil || doubt-best.DoubtAfter < leastGain*doubt:
		best = turn // which may be nil: nothing more can be told
	case turn != nil && doubt-turn.DoubtAfter > turnWorth*(doubt-best.DoubtAfter):
		best = turn
	}
	return best
}

// leastGain is the share of the doubt that a leaf must take away to be worth
// trying, turnWorth how many leaves' gain a gauging anew must bring.
const (
	leastGain = 0.03
	turnWorth = 4
)

// bestLeaf tries every place that can be reached with the leaves that might go
// or not, and takes what leaves the least doubt to be expected.
func (m *Model) bestLeaf(e *evidence, f *fit, r *Estimate, v *visit.Visit, doubt float64) *Next {
	last, seat := len(e.states)-1, len(e.seatings)-1
	leaves := v.Leaves.ThicknessesMM()
	var best *Next
	for _, deg := range e.reachable() {
		l := layer{e: e, seating: seat, turn: e.seatings[seat].turn, g: v.Events[e.seatings[seat].events[0]].Gauging}
		l.centred = l.g.Held == "centred"
		x, c := l.gapRow(deg, 0, true, true)
		x[e.num.seating(seat)] = 1
		c += e.seatings[seat].apartMM + e.seatings[seat].dummy(deg)
		says := e.predict(f, x, last)
		at, _ := slices.BinarySearch(leaves, says.mean+c)
		for _, leaf := range leaves[max(0, at-2):min(len(leaves), at+2)] {
			n := Next{What: TryLeaf, ClockDeg: deg, LeafMM: leaf, DoubtNow: doubt,
				DoubtAfter: r.doubtAfterLeaf(says, leaf-c, e.feel)}
			if best == nil || n.DoubtAfter < best.DoubtAfter-1e-12 {
				best = &n
			}
		}
	}
	return best
}

// farthest is the hour within reach farthest from every place gauged in the present state.
func (e *evidence) farthest() float64 {
	best, far := 0.0, -1.0
	for _, deg := range hours(e.reach) {
		near := 360.0
		for i, ref := range e.refs {
			if s := e.seatingOf(i); s >= 0 && e.seatings[s].state == len(e.states)-1 {
				near = math.Min(near, math.Abs(math.Mod(deg-ref.ClockDeg+540, 360)-180))
			}
		}
		if near > far+1e-9 {
			best, far = deg, near
		}
	}
	return best
}

// hours are the hours within reach; where none is, the ends of the arc.
func hours(reach visit.Arc) []float64 {
	var all []float64
	for hour := range 12 {
		if deg := float64(30 * hour); reach.Reaches(deg) {
			all = append(all, deg)
		}
	}
	if len(all) == 0 {
		return []float64{reach.FromDeg, reach.ToDeg}
	}
	return all
}

// reachable are the places gauged before, in the visit's order of the clock;
// with less than three of them, every hour within reach.
func (e *evidence) reachable() []float64 {
	var all []float64
	for i, ref := range e.refs {
		if e.isGap(i) && !slices.Contains(all, ref.ClockDeg) {
			all = append(all, ref.ClockDeg)
		}
	}
	slices.Sort(all)
	if len(all) >= 3 {
		return all
	}
	return hours(e.reach)
}

// says is what the estimate predicts of one row, and how it goes together with
// the present gap.
type says struct {
	mean, variance float64
	with           [2]float64
}

func (e *evidence) predict(f *fit, x []float64, state int) says {
	var s says
	n, c := e.num.total(), f.Covariance
	for i := range n {
		if x[i] == 0 {
			continue
		}
		s.mean += x[i] * f.B[i]
		for j := range n {
			s.variance += x[i] * x[j] * c.At(i, j)
		}
		for k := range 2 {
			s.with[k] += x[i] * c.At(i, e.num.state(state)+k)
		}
	}
	return s
}

// doubtAfterLeaf is the doubt to be expected after the leaf was tried: for
// either outcome the gap is taken as Gaussian again, with the moments of a
// Gaussian cut at the leaf.
func (r *Estimate) doubtAfterLeaf(s says, leafMM, feelMM float64) float64 {
	sd := math.Sqrt(s.variance + feelMM*feelMM)
	z := (leafMM - s.mean) / sd
	density := math.Exp(-z*z/2) / math.Sqrt(2*math.Pi)
	doubt := 0.0
	for _, side := range [2]float64{1, -1} { // the leaf goes; it does not
		p := math.Erfc(side*z/math.Sqrt2) / 2
		if p < 1e-6 {
			continue
		}
		ratio := side * density / p
		shrink := ratio * (ratio - z)
		g := r.Gap
		for i := range 2 {
			g.MeanMM[i] += s.with[i] / sd * ratio
			for j := range 2 {
				g.CovMM2[i][j] -= s.with[i] * s.with[j] / (sd * sd) * shrink
			}
		}
		in := g.Inside(r.TargetMM, r.LimitMM/2)
		doubt += p * in * (1 - in)
	}
	return doubt
}

// turn asks for both halves half a turn on, then a quarter, then three, where
// the doubt is run-out's; nil where all that was gauged.
func (m *Model) turn(e *evidence, f *fit, r *Estimate, doubt float64) *Next {
	there := e.seatings[len(e.seatings)-1].turn
	done := e.turnsOf(len(e.states) - 1)
	for _, by := range [3][2]float64{{0, -1}, {1, 0}, {-1, 0}} { // sine and cosine
		to := turned{
			there.shaftSin*by[1] + there.shaftCos*by[0], there.shaftCos*by[1] - there.shaftSin*by[0],
			there.flangeSin*by[1] + there.flangeCos*by[0], there.flangeCos*by[1] - there.flangeSin*by[0]}
		if slices.ContainsFunc(done, func(t turned) bool { return nearTurn(t, to) }) {
			continue
		}
		return &Next{What: TurnShaft, DoubtNow: doubt, DoubtAfter: r.doubtAfterTurn(e, f, to),
			ShaftTurnDeg:  degrees(to.shaftSin, to.shaftCos),
			FlangeTurnDeg: degrees(to.flangeSin, to.flangeCos)}
	}
	return nil
}

func degrees(sin, cos float64) float64 {
	return math.Round(math.Mod(math.Atan2(sin, cos)*180/math.Pi+360, 360)*10) / 10
}

// turnsOf are the turns gauged in one state.
func (e *evidence) turnsOf(state int) []turned {
	var all []turned
	for s := range e.seatings {
		if e.seatings[s].state == state && e.seatings[s].gapRows > 0 {
			all = append(all, e.seatings[s].turn)
		}
	}
	return all
}

// doubtAfterTurn supposes the whole gap at the new turn known as well as the
// present one is from its readings.
func (r *Estimate) doubtAfterTurn(e *evidence, f *fit, t turned) float64 {
	last := len(e.states) - 1
	known := math.Max(e.feel, 0.3*thouMM)
	g := r.Gap
	cov := [2][2]float64{}
	var with [2][2]float64
	for i, dir := range [2][2]float64{{1, 0}, {0, 1}} {
		x := e.num.row()
		e.num.addGap(x, last, t, true, true, dir[0], dir[1])
		s := e.predict(f, x, last)
		with[i] = s.with
		cov[i][i] = s.variance + known*known
	}
	for i := range 2 { // the two parts of the new gap are near enough apart
		for a := range 2 {
			for b := range 2 {
				g.CovMM2[a][b] -= with[i][a] * with[i][b] / cov[i][i]
			}
		}
	}
	// Where the gap may then be found to lie: averaged over five places.
	shift := [2]float64{math.Sqrt(math.Max(0, r.Gap.CovMM2[0][0]-g.CovMM2[0][0])), math.Sqrt(math.Max(0, r.Gap.CovMM2[1][1]-g.CovMM2[1][1]))}
	doubt := 0.0
	for _, to := range [5][2]float64{{0, 0}, {1, 0}, {-1, 0}, {0, 1}, {0, -1}} {
		h := g
		for i := range 2 {
			h.MeanMM[i] += 1.4 * to[i] * shift[i]
		}
		in := h.Inside(r.TargetMM, r.LimitMM/2)
		doubt += in * (1 - in) / 5
	}
	return doubt
}
