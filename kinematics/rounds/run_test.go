package rounds

// This file holds whole runs.

import (
	"math"
	"reflect"
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// ruleOfThumb is a tool that lays a plane through the last gauging and moves by
// the lever. It stands in where the run itself is tested.
type ruleOfThumb struct{ hull *hulls.Hull }

func (t ruleOfThumb) Estimate(v *visit.Visit) (Estimate, error) {
	g := v.Events[len(v.Events)-1].Gauging
	clock, mids := Middles(g)
	_, cos, sin, ok := FitGap(clock, mids)
	e := Estimate{Verdict: Outside, P: 0.05, ForMoves: ok, Whole: SlopesOf(cos*mmPerThou, sin*mmPerThou, t.hull.Coupling.OuterDiameterMM)}
	switch spread := 2 * math.Hypot(cos, sin); {
	case spread < 2:
		e.Verdict, e.P = Within, 0.8
	case spread < 4:
		e.Verdict, e.P = CannotTell, 0.5
		e.Next = &Next{ClockDeg: clock[0], Leaf: visit.Thou(2)}
	}
	return e, nil
}

func (t ruleOfThumb) Plan(v *visit.Visit, e Estimate) (Move, error) {
	flats, slides := LeverPlan(t.hull, e.Whole.(Slopes), slideStepMM)
	return Move{NutFlats: flats, SlideMM: slides, None: nothing(flats, slides), Why: "rounds to nothing"}, nil
}

func thumb(h *hulls.Hull, _ bool) (Tool, error) { return ruleOfThumb{h}, nil }

func TestARunIsTheSameWhateverTheWorkers(t *testing.T) {
	p := Problem{Seed: 5, Boats: 24, Hulls: builtIn(t), Tool: thumb, Workers: 1}
	one, err := Run(p)
	if err != nil {
		t.Fatal(err)
	}
	p.Workers = 5
	five, err := Run(p)
	if err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(one.Jobs, five.Jobs) {
		t.Error("five workers came to other numbers than one")
	}
}

func TestWhatAJobCounts(t *testing.T) {
	jobs := []Job{
		{TrueThou: []float64{20, 5, 2}, MarksThou: []float64{20, 5, 4}, End: InLine, Moves: 2, Minutes: 60,
			Given: []Given{{P: 0.01, TrueThou: 20}, {P: 0.3, TrueThou: 5}, {P: 1, TrueThou: 2}}},
		{TrueThou: []float64{15, 3.5}, MarksThou: []float64{15, 2}, End: InLine, Moves: 1, Minutes: 40,
			Given: []Given{{P: 0.97, TrueThou: 3.5}}},
	}
	all := Count(jobs, func(*Job) bool { return true })
	if all.WithinAfter != [4]int{0, 0, 1, 1} || all.WithinEnd != 1 || all.MarksEnd != 1 || all.WronglyWithin != 1 {
		t.Errorf("%+v", all)
	}
	near(t, "wrong", all.WrongPercent(), 50, 1e-12)
	near(t, "minutes", all.Each(all.Minutes), 50, 1e-12)
	bins := Calibration(append(jobs[0].Given, jobs[1].Given...))
	for i, want := range []int{1, 0, 0, 1, 0, 0, 1, 1} {
		if bins[i].Verdicts != want {
			t.Errorf("%g to %g: %d verdicts, want %d", bins[i].From, bins[i].To, bins[i].Verdicts, want)
		}
	}
	if bins[7].True != 1 || bins[6].True != 0 {
		t.Errorf("%+v", bins)
	}
}

// The lever rule, run out to ten moves, does line most boats up where mounts do
// what the lever says: the moves act on the truth, with the signs the package
// says. (On soft rubber that is stiff fore and aft, the slides spring back, and
// it need not.)
func TestTheLeverRuleConvergesWhereMountsFollow(t *testing.T) {
	var follow []*hulls.Hull
	for _, h := range builtIn(t) {
		if h.Layout == hulls.VDrive || h.Mounts[0].Kind == hulls.Solid {
			follow = append(follow, h)
		}
	}
	r, err := Run(Problem{Seed: 2, Boats: 40, Hulls: follow, Tool: thumb})
	if err != nil {
		t.Fatal(err)
	}
	for m := Careful; m <= Plain; m++ {
		got := Count(r.Jobs[m], func(*Job) bool { return true })
		if got.Percent(got.WithinEnd) < 50 || got.WithinAfter[0] != 0 || got.Ends[Failed] > 0 {
			t.Errorf("%v: %+v", m, got)
		}
	}
}

// Nuts and slides stop where their ranges end, counted from how they were found.
func TestTheLeverRuleKeepsInRange(t *testing.T) {
	r, err := Run(Problem{Seed: 2, Boats: 20, Hulls: builtIn(t), Tool: thumb})
	if err != nil {
		t.Fatal(err)
	}
	if n := Count(r.Jobs[Careful], func(*Job) bool { return true }).Ends[Failed]; n > 0 {
		t.Errorf("%d jobs failed", n)
	}
	b := boats(t, 1)[0]
	y, err := newYard(b, stream(1, 0, plainStream))
	if err != nil {
		t.Fatal(err)
	}
	n := len(b.True.Mounts)
	y.liftMM[0] += 8.9 // of 9 up in this hull
	flats, slides := make([]int, n), make([]float64, n)
	flats[0], flats[1], slides[2] = 5, -50, -9
	y.keepInRange(flats, slides)
	if flats[0] != 0 || flats[1] != -21 || slides[2] != -6 {
		t.Errorf("flats %v slides %v", flats, slides)
	}
}

// The tool itself, on few boats: bounds loose enough for their number. The
// figures that count come from many more (make rounds).
func TestTheToolLinesBoatsUp(t *testing.T) {
	r, err := Run(Problem{Seed: 1, Boats: 40, Hulls: builtIn(t), Tool: NewTool})
	if err != nil {
		t.Fatal(err)
	}
	again, err := Run(Problem{Seed: 1, Boats: 8, Hulls: builtIn(t), Tool: NewTool, Workers: 1})
	if err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(again.Jobs[ToolUser], r.Jobs[ToolUser][:8]) {
		t.Error("the tool came to other numbers on the same boats")
	}
	all := func(*Job) bool { return true }
	tool, careful, plain := Count(r.Jobs[ToolUser], all), Count(r.Jobs[Careful], all), Count(r.Jobs[Plain], all)
	for moves, least := range []float64{0, 80, 92, 95} {
		if got := tool.Percent(tool.WithinAfter[moves]); got < least {
			t.Errorf("%.1f %% within after %d moves, at least %g wanted", got, moves, least)
		}
	}
	if tool.WithinAfter[0] > 0 {
		t.Errorf("%d boats within before anything was moved", tool.WithinAfter[0])
	}
	if tool.WronglyWithin > 2 || tool.Ends[Failed] > 0 {
		t.Errorf("%d wrongly within, ends %v", tool.WronglyWithin, tool.Ends)
	}
	if tool.Minutes >= min(careful.Minutes, plain.Minutes) {
		t.Errorf("%.0f minutes, by the lever rule %.0f and %.0f", tool.Minutes, careful.Minutes, plain.Minutes)
	}
}
