package practice

// This file lets learners work who each think astray in one way, and holds that each
// is told so.

import (
	"slices"
	"testing"

	"aligner/kinematics"
	"aligner/kinematics/rounds"
)

// fool works a task to its hand-over.
type fool struct {
	t *testing.T
	*Work
}

func begin(t *testing.T, task Task) *fool {
	t.Helper()
	w, err := Begin(task)
	if err != nil {
		t.Fatal(err)
	}
	return &fool{t, w}
}

func (f *fool) do(a Act) Told {
	f.t.Helper()
	told, err := f.Do(a)
	if err != nil {
		f.t.Fatal(err)
	}
	return told
}

// gauge reads all round.
func (f *fool) gauge(held kinematics.Held, turnDeg float64) {
	f.t.Helper()
	f.do(Act{Gauge: &Gauge{held, turnDeg, turnDeg}})
	for _, deg := range f.ClockDeg() {
		f.do(Act{Read: &Place{deg}})
	}
}

func (f *fool) turn(flats map[string]int, slides map[string]float64) Told {
	f.t.Helper()
	return f.do(Act{Turn: &Turn{flats, slides}})
}

// done tightens, gauges, hands over and is judged.
func (f *fool) done() *Debrief {
	f.t.Helper()
	if !f.Tight() {
		f.do(Act{Fasten: &Fasten{}})
	}
	f.gauge("seated", 0)
	return f.handOver()
}

func (f *fool) handOver() *Debrief {
	f.t.Helper()
	f.do(Act{HandOver: &HandOver{EngineAlone}})
	d, err := Judge(f.Task, f.Acts)
	if err != nil {
		f.t.Fatal(err)
	}
	return d
}

func (d *Debrief) told(kind Kind) bool {
	return slices.ContainsFunc(d.Mistakes, func(m Mistake) bool { return m.Kind == kind })
}

// wants holds that one mistake is told, and perhaps others that follow from it, but
// none besides.
func wants(t *testing.T, d *Debrief, kind Kind, also ...Kind) {
	t.Helper()
	if !d.told(kind) {
		t.Errorf("not told %q: %+v", kind, d.Mistakes)
	}
	for _, m := range d.Mistakes {
		if m.Kind != kind && !slices.Contains(also, m.Kind) {
			t.Errorf("told %+v", m)
		}
	}
}

// A learner who believes what he reads at the marks: closes the gap there, and puts
// the engine out by what the half runs out.
func TestChasingRunOut(t *testing.T) {
	chased, left := 0, 0
	for n := 1; n <= Numbers; n++ {
		f := begin(t, Task{RunOut, n})
		before, _, _ := f.bench.Truth()
		for range 12 {
			f.gauge("seated", 0)
			if _, marks, _ := f.bench.Truth(); marks < 2.5 { // read as within
				break
			}
			if !f.moveByMarks() {
				break
			}
		}
		d := f.done()
		if d.told(ChasedRunOut) {
			chased++
		}
		if !d.Passed {
			left++
		}
		if len(f.Acts) > 0 && f.tally.Rounds > 0 && !d.told(NotTurned) {
			t.Errorf("%d: from %.1f: %+v", n, before, d.Mistakes)
		}
	}
	t.Logf("chased run-out in %d of %d, left the engine out in %d", chased, Numbers, left)
	if chased < Numbers/2 || left < Numbers/2 {
		t.Errorf("chased run-out in %d of %d, left the engine out in %d", chased, Numbers, left)
	}
}

// moveByMarks moves by the lever rule on the true gap at the marks, run-out and all,
// what can be moved. It reports whether there was anything to move.
func (f *fool) moveByMarks() bool {
	g := f.Visit().Events[len(f.Visit().Events)-1].Gauging
	clock, mids := rounds.Middles(g)
	_, cos, sin, ok := rounds.FitGap(clock, mids)
	if !ok {
		return false
	}
	flats, slides := rounds.LeverPlan(f.hull, rounds.SlopesOf(cos*mmPerThou, sin*mmPerThou, f.hull.Coupling.OuterDiameterMM), 0.25)
	t := Turn{map[string]int{}, map[string]float64{}}
	for i, m := range f.hull.Mounts {
		t.NutFlats[m.Name], t.SlideMM[m.Name] = flats[i], slides[i]
	}
	_, err := f.Do(Act{Turn: &t})
	return err == nil
}

func TestReadingsNotToBeTrusted(t *testing.T) {
	up := map[string]int{"fore port": 1, "fore starboard": 1}
	for held, kind := range map[kinematics.Held]Kind{"hanging": HangingShaft, "bolted": BoltedFaces} {
		f := begin(t, Task{TiltOnly, 2})
		f.gauge(held, 0)
		f.turn(up, nil)
		wants(t, f.done(), kind, WrongWay, LeftOutside)
	}
	f := begin(t, Task{TiltOnly, 2})
	f.turn(up, nil)
	wants(t, f.done(), NotGauged, WrongWay, LeftOutside)

	// Seated, but never read.
	f = begin(t, Task{TiltOnly, 2})
	f.do(Act{Gauge: &Gauge{Held: "seated"}})
	f.turn(up, nil)
	wants(t, f.done(), NotGauged, WrongWay, LeftOutside)
}

// A burr left where it is makes a set that cannot be two flat faces.
func TestMovingOnImpossibleReadings(t *testing.T) {
	f := begin(t, Task{Burr, 1})
	f.gauge("seated", 0)
	f.turn(map[string]int{"aft port": 1}, nil)
	wants(t, f.done(), Impossible, WrongWay, LeftOutside)
}

// In a V-drive the fore pair's tilt and lift cancel: it hardly moves the gap.
func TestTheWrongEndAndTheWrongWay(t *testing.T) {
	for n := 1; n <= Numbers; n++ {
		f := begin(t, Task{TiltOnly, n})
		if f.hull.Name != "Avocet" {
			continue
		}
		f.gauge("seated", 0)
		f.turn(map[string]int{"fore port": 6, "fore starboard": 6}, nil)
		wants(t, f.done(), WrongEnd, WrongWay, LeftOutside)
	}
	way := 1
	f := begin(t, Task{TiltOnly, 2})
	if f.hidden.CosMM > 0 {
		way = -1 // raising the fore pair closes the top
	}
	f.gauge("seated", 0)
	f.turn(map[string]int{"fore port": 2 * way, "fore starboard": 2 * way}, nil)
	wants(t, f.done(), WrongWay, LeftOutside)
}

func TestTwistingTheEngine(t *testing.T) {
	f := begin(t, Task{TiltOnly, 2})
	f.gauge("seated", 0)
	f.turn(map[string]int{"fore port": 3, "aft starboard": 3}, nil)
	wants(t, f.done(), Twisted, WrongWay, LeftOutside)
}

func TestForcingTheStuckNut(t *testing.T) {
	f := begin(t, Task{StuckNut, 2})
	f.gauge("seated", 0)
	name := f.hull.Mounts[f.hidden.stuck].Name
	for range 2 {
		if told := f.turn(map[string]int{name: 1}, nil); told.Stuck != name {
			t.Fatalf("told %+v", told)
		}
	}
	wants(t, f.done(), ForcedNut, LeftOutside)
	if f.tally.Rounds != 0 || f.tally.Steps != 0 {
		t.Errorf("a nut that does not turn counted: %+v", f.tally)
	}
}

func TestTheEndOfTheWork(t *testing.T) {
	w, err := ByPlan(Task{SoftFoot, 1})
	if err != nil {
		t.Fatal(err)
	}
	tightenings := 0
	for i, a := range w.Acts {
		if a.Fasten == nil {
			continue
		}
		tightenings++
		if tightenings > 1 {
			break
		}
		loose, err := Replay(w.Task, w.Acts[:i])
		if err != nil {
			t.Fatal(err)
		}
		wants(t, (&fool{t, loose}).handOver(), LeftLoose)
		tight, err := Replay(w.Task, w.Acts[:i+1])
		if err != nil {
			t.Fatal(err)
		}
		d := (&fool{t, tight}).handOver()
		wants(t, d, NotGaugedTight, LeftOutside)
		if d.Passed || d.LeftThou < limitThou {
			t.Errorf("the soft foot left %.2f thou", d.LeftThou)
		}
	}
	if tightenings != 2 {
		t.Errorf("tightened %d times", tightenings)
	}
}

const limitThou = 3 // of the rule taken where none is chosen

// Handed over as she was found, she is neither tight nor in line.
func TestHandingOverAtOnce(t *testing.T) {
	d := begin(t, Task{BothPlanes, 2}).handOver()
	if !d.told(LeftLoose) || !d.told(LeftOutside) || d.Passed {
		t.Errorf("told %+v", d.Mistakes)
	}
}

// Three places close together tell little of the rest of the rim.
func TestPlacesCloseTogether(t *testing.T) {
	f := begin(t, Task{TiltOnly, 2})
	f.do(Act{Gauge: &Gauge{Held: "seated"}})
	for _, deg := range []float64{0, 30} {
		f.do(Act{Read: &Place{deg}})
	}
	f.turn(map[string]int{"fore port": 1, "fore starboard": 1}, nil)
	wants(t, f.done(), NotGauged, WrongWay, LeftOutside)

	f = begin(t, Task{TiltOnly, 2})
	f.do(Act{Gauge: &Gauge{Held: "seated"}})
	for _, deg := range []float64{0, 0, 30} {
		f.do(Act{Read: &Place{deg}})
	}
	f.turn(map[string]int{"fore port": 1, "fore starboard": 1}, nil)
	wants(t, f.done(), TooFew, WrongWay, LeftOutside)
}

// A shaft held turned and not read there, or a whole turn round, was not turned.
func TestTurnedAndNotRead(t *testing.T) {
	f := begin(t, Task{RunOut, 2})
	f.do(Act{Gauge: &Gauge{"seated", 180, 180}})
	f.gauge("hanging", 90)
	f.gauge("seated", 360)
	f.turn(map[string]int{"aft port": 1}, nil)
	if d := f.done(); !d.told(NotTurned) {
		t.Errorf("told %+v", d.Mistakes)
	}
}

// After the soft foot is drawn down a move the wrong way is told like any other.
func TestTheWrongWayAfterTightening(t *testing.T) {
	w, err := ByPlan(Task{SoftFoot, 1})
	if err != nil {
		t.Fatal(err)
	}
	for i, a := range w.Acts {
		if a.Fasten == nil {
			continue
		}
		again, err := Replay(w.Task, w.Acts[:i+1])
		if err != nil {
			t.Fatal(err)
		}
		f := &fool{t, again}
		f.gauge("seated", 0)
		soft := f.hull.Mounts[f.hidden.SoftMount].Name
		f.turn(map[string]int{soft: -6}, nil) // down where it was drawn down already
		if d := f.done(); !d.told(WrongWay) {
			t.Errorf("told %+v", d.Mistakes)
		}
		return
	}
}
