package plan

// This file goes through the built-in visits as a reader would: event by event,
// asking for the estimate, the plan, and whether what came was what was told.

import (
	"math"
	"slices"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics/gauge"
)

const thouMM = 0.0254

// story is what a built-in visit shows, and what its readings were made from.
type story struct {
	name      string
	gaugings  int // that tell how the engine stands
	moves     int
	first     gauge.Verdict // of the first gauging
	untrue    [2]bool       // shaft half, flange, in the end
	runOut    [2][2]float64 // true [cos, sin] at the marks, thou; nought: not said
	whichHalf []int         // the gaugings, from 1, after which only that is open
	trueThou  [2]float64    // the true [A, B] in the end
}

var stories = []story{
	{name: "first-job", gaugings: 4, moves: 1, first: gauge.Outside, trueThou: [2]float64{0.45, 0.34}},
	{name: "low-to-port", gaugings: 5, moves: 1, first: gauge.Outside, trueThou: [2]float64{-0.64, -0.58}},
	{name: "v-drive", gaugings: 4, moves: 1, first: gauge.Outside, trueThou: [2]float64{0.33, -0.58}},
	{name: "crooked-flange", gaugings: 8, moves: 2, first: gauge.Outside, untrue: [2]bool{false, true},
		runOut: [2][2]float64{1: {-1.16, -3.19}}, whichHalf: []int{2}, trueThou: [2]float64{-0.19, 0.87}},
	{name: "bent-shaft", gaugings: 6, moves: 1, first: gauge.CannotTell, untrue: [2]bool{true, false},
		runOut: [2][2]float64{0: {-2.10, 3.64}}, whichHalf: []int{2, 3}, trueThou: [2]float64{0.34, -0.46}},
	{name: "burr", gaugings: 5, moves: 1, first: gauge.Outside, trueThou: [2]float64{-0.27, -0.72}},
	{name: "half-rim", gaugings: 5, moves: 1, first: gauge.Outside, trueThou: [2]float64{-0.11, -0.99}},
	{name: "hogging", gaugings: 6, moves: 1, first: gauge.CannotTell, trueThou: [2]float64{-2.15, 1.17}},
	{name: "stuck-nut", gaugings: 5, moves: 1, first: gauge.Outside, trueThou: [2]float64{-0.06, -0.53}},
	{name: "solid-feet", gaugings: 5, moves: 1, first: gauge.Outside, trueThou: [2]float64{-3.11, -0.79}},
	{name: "dummy", gaugings: 5, moves: 1, first: gauge.Outside, trueThou: [2]float64{0.10, -0.80}},
	{name: "under-power", gaugings: 5, moves: 1, first: gauge.Outside, trueThou: [2]float64{-0.49, 0.72}},
	{name: "far-apart", gaugings: 5, moves: 1, first: gauge.Outside, trueThou: [2]float64{-3.38, -1.32}},
}

// demo is a built-in visit made ready to be asked about.
type demo struct {
	story
	doc     visit.Document
	gauge   *gauge.Model
	planner *Planner
}

func openDemo(t *testing.T, name string) visit.Document {
	t.Helper()
	data, ok := assets.Visit(name)
	if !ok {
		t.Fatalf("no visit %s", name)
	}
	doc, report := visit.Open(data, name, builtin.Find)
	for _, f := range append(report.Refusals, report.Doubts...) {
		t.Errorf("%s: %v", name, f.Error())
	}
	return doc
}

func newDemo(t *testing.T, s story) *demo {
	t.Helper()
	d := &demo{story: s, doc: openDemo(t, s.name)}
	var err error
	if d.gauge, err = gauge.NewModel(&d.doc.Hull, d.doc.Visit.State.Afloat()); err != nil {
		t.Fatal(err)
	}
	if d.planner, err = NewPlanner(&d.doc.Hull, d.doc.Visit.State.Afloat()); err != nil {
		t.Fatal(err)
	}
	return d
}

// upTo is the visit as it stood after its first n events.
func (d *demo) upTo(n int) *visit.Visit {
	v := d.doc.Visit
	v.Events = v.Events[:n]
	return &v
}

func (d *demo) estimate(t *testing.T, v *visit.Visit) *gauge.Estimate {
	t.Helper()
	e, err := d.gauge.Estimate(v)
	if err != nil {
		t.Fatalf("%s after %d events: %v", d.name, len(v.Events), err)
	}
	return e
}

func (d *demo) plan(t *testing.T, v *visit.Visit, e *gauge.Estimate) *Plan {
	t.Helper()
	p, err := d.planner.Plan(v, e, Settings{})
	if err != nil {
		t.Fatalf("%s after %d events: %v", d.name, len(v.Events), err)
	}
	return p
}

func eachDemo(t *testing.T, do func(t *testing.T, d *demo)) {
	for _, s := range stories {
		t.Run(s.name, func(t *testing.T) { do(t, newDemo(t, s)) })
	}
}

func TestDemoVisitsAreAllTold(t *testing.T) {
	var told []string
	for _, s := range stories {
		told = append(told, s.name)
	}
	if !slices.Equal(told, assets.VisitNames()) {
		t.Errorf("stories of %v, visits %v", told, assets.VisitNames())
	}
	for _, name := range told {
		doc := openDemo(t, name)
		if data, _ := assets.Visit(name); string(visit.Encode(doc.Visit)) != string(data) {
			t.Errorf("%s is not written as the program writes it", name)
		}
		if doc.Visit.Note == "" || doc.Visit.State.Boat == "" || len(doc.Visit.LookOver) == 0 {
			t.Errorf("%s lacks its note, state or look-over", name)
		}
	}
}

// TestDemoStories: every beginning of a visit has an estimate or says why not,
// and the whole ends within, near what its readings were made from.
func TestDemoStories(t *testing.T) {
	eachDemo(t, func(t *testing.T, d *demo) {
		gaugings, moves := 0, 0
		var last *gauge.Estimate
		for n := 1; n <= len(d.doc.Visit.Events); n++ {
			e := d.estimate(t, d.upTo(n))
			if d.doc.Visit.Events[n-1].Gauging == nil {
				moved := d.doc.Visit.Events[n-1].Move != nil
				if moved && e.Status != gauge.Moved {
					t.Errorf("after event %d: %v; nothing was gauged since", n, e.Status)
				}
				// The coupling's bolts move no mount: nothing is to be gauged for them.
				if f := d.doc.Visit.Events[n-1].Fasten; f != nil && !f.OfCoupling() != e.TightenedSince {
					t.Errorf("after event %d: mounts tightened since the last gauging: %v", n, e.TightenedSince)
				}
				if d.doc.Visit.Events[n-1].Move != nil {
					moves++
				}
				continue
			}
			gaugings++
			t.Logf("gauging %d: %s, within with %.3f; A %+.2f B %+.2f thou; untold %v", gaugings, e.Verdict, e.Within,
				e.Gap.MeanMM[0]/thouMM, e.Gap.MeanMM[1]/thouMM, e.Untold)
			d.checkGauging(t, gaugings, e)
			last = e
		}
		if gaugings != d.gaugings || moves != d.moves {
			t.Errorf("%d gaugings and %d moves, told %d and %d", gaugings, moves, d.gaugings, d.moves)
		}
		d.checkEnd(t, last)
	})
}

// checkGauging holds one estimate on the way.
func (d *demo) checkGauging(t *testing.T, number int, e *gauge.Estimate) {
	t.Helper()
	if e.Status != gauge.Ready || !e.Flat {
		t.Errorf("gauging %d: %v, flat %v", number, e.Status, e.Flat)
	}
	if number == 1 && e.Verdict != d.first {
		t.Errorf("first gauging: %v, want %v", e.Verdict, d.first)
	}
	if e.Verdict == gauge.CannotTell && e.Next == nil {
		t.Errorf("gauging %d: cannot tell, and asks for nothing", number)
	}
	open := func(what gauge.Unknown) bool {
		return slices.ContainsFunc(e.Untold, func(u gauge.Untold) bool { return u.What == what })
	}
	if number == 1 && !open(gauge.EngineOrRunOut) {
		t.Errorf("one position of the shaft only, and not said: %v", e.Untold)
	}
	if got, want := open(gauge.WhichHalf), slices.Contains(d.whichHalf, number); got != want {
		t.Errorf("gauging %d: which half is open: %v, want %v", number, got, want)
	}
}

// checkEnd holds the last estimate.
func (d *demo) checkEnd(t *testing.T, e *gauge.Estimate) {
	t.Helper()
	if e.Verdict != gauge.Within || e.Next != nil || len(e.Odd) > 0 {
		t.Errorf("ends %v, next %v, odd %v", e.Verdict, e.Next, e.Odd)
	}
	truth := [2]float64{d.trueThou[0] * thouMM, d.trueThou[1] * thouMM}
	if off := math.Hypot(truth[0]-e.TargetMM[0], truth[1]-e.TargetMM[1]); off > e.LimitMM/2 {
		t.Errorf("called within; made from a gap %.2f thou off the target", 2*off/thouMM)
	}
	for k := range 2 {
		if sd := math.Sqrt(e.Gap.CovMM2[k][k]); math.Abs(e.Gap.MeanMM[k]-truth[k]) > 3*sd {
			t.Errorf("element %d: %.2f thou with error %.2f, made from %.2f", k, e.Gap.MeanMM[k]/thouMM, sd/thouMM, d.trueThou[k])
		}
	}
	for half, r := range e.RunOut {
		if r.Untrue != d.untrue[half] {
			t.Errorf("half %d untrue: %v, want %v", half, r.Untrue, d.untrue[half])
		}
		for k := range 2 {
			if want := d.runOut[half]; want != ([2]float64{}) && math.Abs(r.MeanMM[k]/thouMM-want[k]) > 0.4 {
				t.Errorf("half %d element %d: run-out %.2f thou, made from %.2f", half, k, r.MeanMM[k]/thouMM, want[k])
			}
		}
	}
}

// TestDemoPlans: every beginning that is outside has a plan, a sure one if
// nothing more was to be gauged first; the visit's move is one it thinks well of;
// and what came is what was told. Before a crooked half is turned nobody can tell
// it from the engine, so nothing is held against what was told then.
func TestDemoPlans(t *testing.T) {
	eachDemo(t, func(t *testing.T, d *demo) {
		events := d.doc.Visit.Events
		for n := 1; n <= len(events); n++ {
			if events[n-1].Gauging == nil {
				continue
			}
			v := d.upTo(n)
			e := d.estimate(t, v)
			if e.Verdict != gauge.Outside && !d.movedNext(n) {
				continue
			}
			p := d.plan(t, v, e)
			sure := p.Status == Found && p.Probability >= DefaultWanted
			if !sure && (p.Status != Unsure || e.Next == nil || d.movedNext(n)) {
				t.Errorf("after event %d: %v with %.3f", n, p.Status, p.Probability)
				continue
			}
			if d.movedNext(n) && !d.worthy(e, p, events[n].Move) {
				t.Errorf("event %d is no move the planner thinks well of; it would do flats %v, slides %v", n, p.NutFlats, p.SlideMM)
			}
			if e.Next == nil || d.untrue == ([2]bool{}) {
				d.checkTold(t, n, e, p)
			}
		}
	})
}

// movedNext reports whether the event after the first n is a move.
func (d *demo) movedNext(n int) bool {
	return n < len(d.doc.Visit.Events) && d.doc.Visit.Events[n].Move != nil
}

// worthy reports whether the planner thinks well of a move that a visit tells:
// the visits' moves were planned, but a planner may grow more careful.
func (d *demo) worthy(e *gauge.Estimate, p *Plan, m *visit.Move) bool {
	v := &visit.Visit{Events: []visit.Event{{Move: m}}}
	return newChance(p.Learnt, e.TargetMM, e.LimitMM/2).after(d.planner.done(v)).Inside(e.TargetMM, e.LimitMM/2) > 0.6
}

// checkTold carries the next move through what the plan knew and compares it
// with what all gaugings up to the next move or fastening say.
func (d *demo) checkTold(t *testing.T, n int, e *gauge.Estimate, p *Plan) {
	t.Helper()
	events := d.doc.Visit.Events
	move := n
	for move < len(events) && events[move].Move == nil {
		move++
	}
	if move == len(events) {
		t.Errorf("outside after event %d, and nothing moved", n)
		return
	}
	last := move + 1
	for last < len(events) && events[last].Gauging != nil {
		last++
	}
	v := d.upTo(move + 1)
	told := newChance(p.Learnt, e.TargetMM, e.LimitMM/2).after(d.planner.done(&visit.Visit{Events: v.Events[move:]}))
	found := d.estimate(t, d.upTo(last)).Gap
	for k := range 2 {
		sd := math.Sqrt(told.CovMM2[k][k] + found.CovMM2[k][k])
		if off := told.MeanMM[k] - found.MeanMM[k]; math.Abs(off) > 3*sd {
			t.Errorf("after event %d, element %d: told %.2f thou, found %.2f, with error %.2f", n, k,
				told.MeanMM[k]/thouMM, found.MeanMM[k]/thouMM, sd/thouMM)
		}
	}
}

// demoNamed is one of them.
func demoNamed(t *testing.T, name string) *demo {
	t.Helper()
	i := slices.IndexFunc(stories, func(s story) bool { return s.name == name })
	return newDemo(t, stories[i])
}

// TestDemoBurrIsNamed: before the place is read again it is named, and nothing
// is planned on it; read again, the first reading is set aside.
func TestDemoBurrIsNamed(t *testing.T) {
	d := demoNamed(t, "burr")
	v := d.upTo(1)
	g := *v.Events[0].Gauging
	readings := g.Readings
	g.Readings = readings[:len(readings)-1]
	v.Events = []visit.Event{{Gauging: &g}}
	e := d.estimate(t, v)
	if len(e.Odd) != 1 || e.Odd[0].ClockDeg != 45 || !e.Odd[0].Alone || e.Odd[0].OffMM > -3*thouMM || e.Odd[0].Causes[0] != gauge.Burr {
		t.Fatalf("odd: %+v", e.Odd)
	}
	if e.ForMoves || e.WhyNot != gauge.TakeAgain || e.Next == nil || e.Next.What != gauge.TakeItAgain || e.Next.ClockDeg != 45 {
		t.Errorf("for moves %v (%v), next %+v", e.ForMoves, e.WhyNot, e.Next)
	}
	if p := d.plan(t, v, e); p.Status != NotForMoves || p.WhyNot != gauge.TakeAgain {
		t.Errorf("planned on a burr: %v, %v", p.Status, p.WhyNot)
	}
	e = d.estimate(t, d.upTo(1))
	aside := gauge.SetAside{Event: 0, Reading: 1, Why: gauge.ReadAgain}
	if len(e.Odd) > 0 || !e.ForMoves || !slices.Contains(e.SetAside, aside) {
		t.Errorf("read again: odd %v, set aside %v", e.Odd, e.SetAside)
	}
}

// TestDemoStuckNutStays: no plan of the visit touches it; freed, it would be
// used, for less.
func TestDemoStuckNutStays(t *testing.T) {
	d := demoNamed(t, "stuck-nut")
	v := d.upTo(2)
	stuck := slices.IndexFunc(d.doc.Hull.Mounts, func(m hulls.Mount) bool { return v.Found(m.Name).Nut == visit.Stuck })
	e := d.estimate(t, v)
	round := d.plan(t, v, e)
	v.Mounts = nil
	freed := d.plan(t, v, e)
	if stuck < 0 || round.NutFlats[stuck] != 0 || freed.NutFlats[stuck] == 0 || freed.Minutes >= round.Minutes {
		t.Errorf("mount %d stuck: flats %v in %.1f min; freed %v in %.1f", stuck, round.NutFlats, round.Minutes, freed.NutFlats, freed.Minutes)
	}
}

// TestDemoHoggingAimsAtItsGap: true faces would be outside there.
func TestDemoHoggingAimsAtItsGap(t *testing.T) {
	d := demoNamed(t, "hogging")
	e := d.estimate(t, d.upTo(len(d.doc.Visit.Events)-1))
	if math.Abs(e.TargetMM[0]+2.5*thouMM) > 1e-9 || math.Abs(e.TargetMM[1]) > 1e-9 {
		t.Errorf("target %v, want 5 thou wider at 6", e.TargetMM)
	}
	if p := e.Gap.Inside([2]float64{}, e.LimitMM/2); e.Within < gauge.Sure || p > 1-gauge.Sure {
		t.Errorf("of the gap wanted %.3f, of no gap %.3f", e.Within, p)
	}
}

// TestDemoSolidFeetStayInOnePlane by the visit's own move.
func TestDemoSolidFeetStayInOnePlane(t *testing.T) {
	d := demoNamed(t, "solid-feet")
	moves := d.planner.done(&d.doc.Visit)
	for i, of := range d.planner.loads.planeOf {
		out := 0.0
		for k, m := range moves[:len(of)] {
			out += of[k] * m
		}
		if math.Abs(out) > planeMay {
			t.Errorf("%s is left %.2f shims out of the plane of all", d.doc.Hull.Mounts[i].Name, out)
		}
	}
}

// TestQuarterTurns: turned by quarters a shaft with true faces must not change
// the verdict (common practice, no source); a crooked one does.
func TestQuarterTurns(t *testing.T) {
	b := newBoat(t, "kittiwake")
	m, err := gauge.NewModel(b.h, false)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		liftMM, shaftThou float64 // fore port up; the shaft half's run-out
		want              []gauge.Verdict
	}{
		{0, 0, []gauge.Verdict{gauge.Within, gauge.Within, gauge.Within, gauge.Within}},
		{6, 0, []gauge.Verdict{gauge.Outside, gauge.Outside, gauge.Outside, gauge.Outside}},
		{2, 4, []gauge.Verdict{gauge.Outside, gauge.Outside, gauge.CannotTell, gauge.Outside}},
	} {
		b.s.LiftMM[0], b.s.RunOut.ShaftMM, b.s.RunOut.ShaftLowDeg = c.liftMM, c.shaftThou*thouMM, 180
		for i, want := range c.want {
			b.s.RunOut.ShaftTurnDeg = float64(90 * i)
			v := &visit.Visit{Rule: visit.Rule{Limits: visit.LargestGap, Limit: visit.Thou(4), Named: "common practice, 4 thou"},
				Events: []visit.Event{b.gauged(t, float64(90*i))}}
			if e, err := m.Estimate(v); err != nil || e.Verdict != want {
				t.Errorf("up %g mm, run-out %g thou, turned %d: %v with %.3f, %v; want %v", c.liftMM, c.shaftThou, 90*i, e.Verdict, e.Within, err, want)
			}
		}
	}
}
