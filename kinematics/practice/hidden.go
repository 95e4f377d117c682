package practice

// This file draws what is hidden in a boat.

import (
	"cmp"
	"math"
	"math/rand/v2"
	"slices"

	"aligner/kinematics"
	"aligner/kinematics/rounds"
)

const mmPerThou = 0.0254 // an inch is 25.4 mm by definition

// hidden is what is wrong with a task's boat.
type hidden struct {
	rounds.Fault
	stuck int // the mount whose nut does not turn; -1: none
	cause Cause
}

// Cause is what the learner says was wrong, beside the engine's place.
type Cause string

// The causes.
const (
	EngineAlone Cause = "engine alone"
	ShaftHalf   Cause = "shaft half"
	Flange      Cause = "flange"
	ABurr       Cause = "burr"
	AStuckNut   Cause = "stuck nut"
	ASoftFoot   Cause = "soft foot"
)

// Causes are all of them.
var Causes = []Cause{EngineAlone, ShaftHalf, Flange, ABurr, AStuckNut, ASoftFoot}

// span is a range drawn from, even all over.
type span struct{ least, most float64 }

func (s span) draw(r *rand.Rand) float64 { return s.least + (s.most-s.least)*r.Float64() }

// What is drawn, in thou of largest less smallest.
var (
	tiltThou   = span{12, 24}
	gapThou    = span{12, 30}
	smallThou  = span{8, 20} // over a half that runs out
	trueThou   = span{0, 1}  // of a good face
	untrueThou = span{4, 7}
	burrThou   = span{4, 8}
	softThou   = span{4, 7} // what the drawn-down mount does to the gap
	anywhere   = span{0, 360}
	upright    = span{-30, 30} // degrees off top or bottom
)

// hide draws what is wrong with the boat. A fault is put where it matters: a burr
// where the faces stand open, a soft foot where the gap answers, a stuck nut where
// nuts are wanted; elsewhere nobody would meet it.
func (t Task) hide(b *rounds.Boat) (hidden, error) {
	r := rand.New(rand.NewPCG(seed, uint64(t.stream())))
	h := hidden{stuck: -1, cause: EngineAlone}
	spread, opens := gapThou.draw(r), anywhere.draw(r)
	h.RunOut = kinematics.RunOut{
		ShaftMM: half(trueThou.draw(r)), ShaftLowDeg: anywhere.draw(r),
		FlangeMM: half(trueThou.draw(r)), FlangeLowDeg: anywhere.draw(r),
	}
	fault := t.Grade
	if fault == AnyFault {
		fault = Grades[r.IntN(len(Grades)-1)]
	}
	switch fault {
	case TiltOnly:
		spread, opens = tiltThou.draw(r), 180*float64(r.IntN(2))
		h.RunOut = kinematics.RunOut{}
		for hour := range 12 {
			h.ClockDeg = append(h.ClockDeg, float64(30*hour))
		}
	case RunOut:
		spread, h.cause = smallThou.draw(r), ShaftHalf
		untrue := &h.RunOut.ShaftMM
		if r.IntN(2) == 1 {
			untrue, h.cause = &h.RunOut.FlangeMM, Flange
		}
		*untrue = half(untrueThou.draw(r))
	case Burr:
		h.cause = ABurr
		h.BurrAtDeg, h.BurrThou = widest(b.ClockDeg, opens), burrThou.draw(r)
	case StuckNut:
		h.cause = AStuckNut
		opens = 180*float64(r.IntN(2)) + upright.draw(r)
	case SoftFoot:
		h.cause = ASoftFoot
		per, err := b.PerStepThou()
		if err != nil {
			return h, err
		}
		h.SoftMount = strongest(per, r.IntN(2))
		h.SoftMM = softThou.draw(r) / per[h.SoftMount] * b.Nominal.Mounts[h.SoftMount].LiftPerStepMM()
	}
	sin, cos := math.Sincos(opens * math.Pi / 180)
	h.CosMM, h.SinMM = half(spread)*cos, half(spread)*sin
	if fault == StuckNut {
		return h, t.stickNut(&h)
	}
	return h, nil
}

// stickNut sticks the nut that the tool turns most where none is stuck.
func (t Task) stickNut(h *hidden) error {
	w, err := t.begin(*h)
	if err != nil {
		return err
	}
	if err := w.byPlan(); err != nil {
		return err
	}
	h.stuck = 0
	for i, mm := range w.nutsMM {
		if math.Abs(mm) > math.Abs(w.nutsMM[h.stuck]) {
			h.stuck = i
		}
	}
	return nil
}

// half is the amplitude in mm of a largest less smallest in thou.
func half(thou float64) float64 { return thou / 2 * mmPerThou }

// widest is the position in reach nearest to where the gap opens.
func widest(clockDeg []float64, opensDeg float64) float64 {
	return slices.MinFunc(clockDeg, func(a, b float64) int {
		return cmp.Compare(math.Abs(math.Remainder(a-opensDeg, 360)), math.Abs(math.Remainder(b-opensDeg, 360)))
	})
}

// strongest is the mount that moves the gap most, or so many places after it.
func strongest(perStepThou []float64, after int) int {
	order := make([]int, len(perStepThou))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(perStepThou[b], perStepThou[a]) })
	return order[after]
}
