package rounds

// This file lets somebody else do the work: a boat with a fault chosen for it, on
// which a learner gauges, turns and tightens as the simulated mechanics do.

import (
	"math"
	"slices"

	"aligner/hulls/visit"
	"aligner/kinematics"
)

// Fault is what is hidden in a boat for a Bench.
type Fault struct {
	CosMM, SinMM float64 // the seated gap that the engine's place gives
	RunOut       kinematics.RunOut
	ClockDeg     []float64 // the positions in reach; nil (default): as drawn for the boat
	BurrThou     float64   // 0 (default): none
	BurrAtDeg    float64
	SoftMount    int     // whose foot is drawn down when it is tightened,
	SoftMM       float64 // and by how much; 0 (default): none
}

// burr is one that every gauging meets until it is filed.
type burr struct{ atDeg, thou float64 }

// Bench is one boat being worked on from outside of this package. Its minutes are
// priced as everybody's are.
type Bench struct {
	y         *yard
	fault     Fault
	drawn     bool // the soft foot is down
	flangeDeg float64
}

// NewBench puts a fault into a boat in place of the one drawn for it, and a set of
// leaves into the learner's hand. The same seed gives the same readings to the same
// work.
func NewBench(seed uint64, b *Boat, leaves visit.LeafSet, f Fault) (*Bench, error) {
	if err := b.standAt(f.CosMM, f.SinMM, stream(seed, b.Number, plainStream)); err != nil {
		return nil, err
	}
	b.RunOut = f.RunOut
	if f.ClockDeg != nil {
		b.ClockDeg = f.ClockDeg
	}
	y, err := newYard(b, stream(seed, b.Number, carefulStream))
	if err != nil {
		return nil, err
	}
	y.visit.Leaves, y.thou = leaves, nil
	for _, mm := range leaves.ThicknessesMM() {
		y.thou = append(y.thou, mm/mmPerThou)
	}
	y.burr = &burr{f.BurrAtDeg, f.BurrThou}
	return &Bench{y: y, fault: f}, nil
}

// Visit is what was done and read so far. It is not to be changed.
func (b *Bench) Visit() *visit.Visit { return &b.y.visit }

// Minutes is the work counted so far.
func (b *Bench) Minutes() float64 { return b.y.job.Minutes }

// Reaches reports whether a leaf can be got in at a position.
func (b *Bench) Reaches(clockDeg float64) bool { return b.y.reaches(clockDeg) }

// ClockDeg are the positions in reach.
func (b *Bench) ClockDeg() []float64 { return b.y.boat.ClockDeg }

// Hold begins a gauging, the shaft held in a way, shaft and flange turned so far.
func (b *Bench) Hold(held kinematics.Held, shaftTurnDeg, flangeTurnDeg float64) error {
	if flangeTurnDeg != b.flangeDeg && shaftTurnDeg == b.y.turnDeg {
		b.y.job.Minutes += turnMin // the flange by itself; with the shaft it costs nothing more
	}
	b.flangeDeg = flangeTurnDeg
	return b.y.hold(held, shaftTurnDeg, flangeTurnDeg)
}

// Read reads one position in the gauging under way, and writes it down.
func (b *Bench) Read(clockDeg float64) visit.Leaf {
	reading := b.y.faces.read(b.y.r, b.y.thou, clockDeg)
	b.y.note(reading)
	b.y.took(readingMin)
	return reading
}

// Try tries one leaf at one position, and writes it down.
func (b *Bench) Try(clockDeg float64, leaf visit.Length) visit.Leaf {
	reading := b.y.faces.trial(b.y.r, clockDeg, leaf)
	b.y.note(reading)
	b.y.took(trialMin)
	return reading
}

// Clean wipes and files a position in the gauging under way. What was read there
// is struck out; a burr there is gone for good. It reports whether there was one.
func (b *Bench) Clean(clockDeg float64) (burr bool) {
	b.y.faces.clean(clockDeg)
	if sameClock(clockDeg, b.y.burr.atDeg) && b.y.burr.thou > 0 {
		burr, b.y.burr.thou = true, 0
	}
	b.y.job.Minutes += cleanMin
	g := b.y.visit.Events[b.y.last()].Gauging
	g.Readings = slices.DeleteFunc(g.Readings, func(r visit.Reading) bool {
		leaf, ok := r.(visit.Leaf)
		return ok && sameClock(leaf.ClockDeg, clockDeg)
	})
	return burr
}

// Move turns nuts and shifts slides, by mount.
func (b *Bench) Move(nutFlats []int, slideMM []float64) error { return b.y.move(nutFlats, slideMM) }

// StuckNut writes down that a mount's nut does not turn; finding out took time.
func (b *Bench) StuckNut(mount string) {
	b.y.job.Minutes += cleanMin
	found := b.y.visit.Found(mount)
	found.Nut = visit.Stuck
	b.y.visit.Mounts = append(b.y.visit.Mounts, found)
}

// Fasten tightens every mount. A soft foot is drawn down the first time, and stays
// down.
func (b *Bench) Fasten() {
	for _, m := range b.y.boat.Nominal.Mounts {
		b.y.job.Minutes += fastenMin(m.Reach)
	}
	b.y.visit.Events = append(b.y.visit.Events, visit.Event{Fasten: &visit.Fasten{What: "jam nuts, all mounts", Kind: visit.FastenedJamNuts}})
	if b.fault.SoftMM > 0 && !b.drawn {
		b.drawn = true
		b.y.liftMM[b.fault.SoftMount] -= b.fault.SoftMM
	}
}

// Truth is the true spread that the engine's place gives, and the one at the marks,
// run-out and all, as the boat stands.
func (b *Bench) Truth() (engineThou, marksThou float64, err error) { return b.y.truth() }

// EngineGapMM is [cos, sin] of the true seated gap that the engine's place gives.
func (b *Bench) EngineGapMM() (gapMM [2]float64, err error) {
	gapMM[0], gapMM[1], err = b.y.boat.engineGap(b.y.liftMM, b.y.slideMM)
	return gapMM, err
}

// PerStepThou is how far one flat of each mount's nut, or one shim, moves the true
// gap as the boat stands.
func (b *Bench) PerStepThou() ([]float64, error) {
	return b.y.boat.perStepThou(b.y.liftMM, b.y.slideMM)
}

// PerStepThou is the same of a boat as found.
func (b *Boat) PerStepThou() ([]float64, error) { return b.perStepThou(b.LiftMM, b.SlideMM) }

func (b *Boat) perStepThou(liftMM, slideMM []float64) ([]float64, error) {
	lift := slices.Clone(liftMM)
	cos0, sin0, err := b.engineGap(lift, slideMM)
	if err != nil {
		return nil, err
	}
	all := make([]float64, len(lift))
	for i, stood := range lift {
		lift[i] = stood + b.True.Mounts[i].LiftPerStepMM()
		cos, sin, err := b.engineGap(lift, slideMM)
		if err != nil {
			return nil, err
		}
		lift[i] = stood
		all[i] = 2 * math.Hypot(cos-cos0, sin-sin0) / mmPerThou
	}
	return all, nil
}
