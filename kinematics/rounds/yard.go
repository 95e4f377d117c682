package rounds

// This file is one boat in the yard with a mechanic at it: gaugings, readings
// and moves, made on the truth and written into a visit.

import (
	"math"
	"math/rand/v2"

	"aligner/hulls/visit"
	"aligner/kinematics"
)

// yard is a boat being worked on. Only its visit is shown to the tool.
type yard struct {
	boat  *Boat
	r     *rand.Rand
	visit visit.Visit
	faces faces // as they stand in the gauging under way
	// thou are the thicknesses his leaves make, thinnest first.
	thou []float64
	// burr is one that stays until it is filed; nil: now and then a new one.
	burr *burr

	liftMM, slideMM []float64 // error and moves together
	turnDeg         float64   // how far shaft and flange stand from their marks

	job Job
}

func newYard(b *Boat, r *rand.Rand) (*yard, error) {
	y := &yard{boat: b, r: r, thou: wholeThou()}
	y.visit = visit.Visit{Embedded: b.Nominal, State: visit.State{Boat: "trailer"}, Leaves: leafSet(), Rule: visit.DefaultRule}
	if b.Afloat {
		y.visit.State.Boat = "afloat"
	}
	y.liftMM = append([]float64(nil), b.LiftMM...)
	y.slideMM = append([]float64(nil), b.SlideMM...)
	y.job = Job{Boat: b.Number, Hull: b.Nominal.Name, Layout: b.Nominal.Layout, Together: b.Together}
	return y, y.judge()
}

// judge notes the true gap, and the gap at the marks, of where the engine
// stands now.
func (y *yard) judge() error {
	engine, marks, err := y.truth()
	if err != nil {
		return err
	}
	y.job.TrueThou = append(y.job.TrueThou, engine)
	y.job.MarksThou = append(y.job.MarksThou, marks)
	return nil
}

// truth is the true spread that the engine's place gives, and the one at the
// marks, run-out and all.
func (y *yard) truth() (engineThou, marksThou float64, err error) {
	cos, sin, err := y.boat.engineGap(y.liftMM, y.slideMM)
	if err != nil {
		return 0, 0, err
	}
	allCos, allSin := y.gapAt(cos, sin, 0, 0)
	return 2 * math.Hypot(cos, sin) / mmPerThou, 2 * math.Hypot(allCos, allSin) / mmPerThou, nil
}

// gapAt adds the run-out of the halves, turned so far, to the engine's part.
func (y *yard) gapAt(cosMM, sinMM, shaftTurnDeg, flangeTurnDeg float64) (cos, sin float64) {
	o := &y.boat.RunOut
	for _, half := range []struct{ mm, lowDeg float64 }{
		{o.ShaftMM, o.ShaftLowDeg + shaftTurnDeg}, {o.FlangeMM, o.FlangeLowDeg + flangeTurnDeg},
	} {
		s, c := math.Sincos(half.lowDeg * math.Pi / 180)
		cosMM += half.mm * c
		sinMM += half.mm * s
	}
	return cosMM, sinMM
}

// seat begins a gauging: the shaft seated anew, pushed until the faces first
// touch.
func (y *yard) seat(shaftTurnDeg, flangeTurnDeg float64) error {
	return y.hold(kinematics.Seated, shaftTurnDeg, flangeTurnDeg)
}

// hold begins a gauging with the shaft held in a way. Bolted faces show nothing:
// they are pulled shut.
func (y *yard) hold(held kinematics.Held, shaftTurnDeg, flangeTurnDeg float64) error {
	y.faces = faces{}
	if held != kinematics.Bolted {
		cos, sin, err := y.boat.heldGap(held, y.liftMM, y.slideMM)
		if err != nil {
			return err
		}
		cos, sin = y.gapAt(cos, sin, shaftTurnDeg, flangeTurnDeg)
		y.faces = faces{g0: math.Hypot(cos, sin) / mmPerThou, cos: cos / mmPerThou, sin: sin / mmPerThou}
	}
	if y.burr != nil {
		y.faces.burrAtDeg, y.faces.burrThou = y.burr.atDeg, y.burr.thou
	} else {
		y.faces.drawBurr(y.r, y.boat.ClockDeg)
	}
	if y.faces.burrThou > 0 {
		y.job.Burrs++
	}
	if shaftTurnDeg != y.turnDeg {
		y.turnDeg = shaftTurnDeg
		y.job.Minutes += turnMin
	}
	y.visit.Events = append(y.visit.Events, visit.Event{Gauging: &visit.Gauging{
		Held: string(held), ShaftTurnDeg: shaftTurnDeg, FlangeTurnDeg: flangeTurnDeg}})
	y.job.Gaugings++
	y.job.Minutes += setUpMin
	return nil
}

// gaugeAll reads every position in reach, with shaft and flange turned so far.
// A turn from where they stand takes its time.
func (y *yard) gaugeAll(shaftTurnDeg, flangeTurnDeg float64) error {
	if err := y.seat(shaftTurnDeg, flangeTurnDeg); err != nil {
		return err
	}
	for _, deg := range y.boat.ClockDeg {
		y.note(y.faces.read(y.r, y.thou, deg))
		y.took(readingMin)
	}
	return nil
}

// last is the event of the gauging under way.
func (y *yard) last() int { return len(y.visit.Events) - 1 }

// note writes a reading down.
func (y *yard) note(r visit.Reading) {
	g := y.visit.Events[y.last()].Gauging
	g.Readings = append(g.Readings, r)
}

func (y *yard) took(minutes float64) {
	y.job.Readings++
	y.job.Minutes += minutes
}

// tryLeaf tries one leaf more in the gauging under way.
func (y *yard) tryLeaf(clockDeg float64, leaf visit.Length) {
	y.note(y.faces.trial(y.r, clockDeg, leaf))
	y.took(trialMin)
}

// readAgain wipes and files a place and reads it anew: in the gauging under way,
// or in a new one with shaft and flange turned as in the gauging told.
func (y *yard) readAgain(event int, clockDeg float64) error {
	if event != y.last() {
		g := y.visit.Events[event].Gauging
		if err := y.seat(g.ShaftTurnDeg, g.FlangeTurnDeg); err != nil {
			return err
		}
	}
	y.faces.clean(clockDeg)
	y.note(y.faces.read(y.r, y.thou, clockDeg))
	y.took(readingMin + cleanMin)
	y.job.Again++
	return nil
}

// reaches reports whether a leaf can be got in at a position.
func (y *yard) reaches(clockDeg float64) bool {
	for _, deg := range y.boat.ClockDeg {
		if sameClock(deg, clockDeg) {
			return true
		}
	}
	return false
}

// move turns nuts and shifts slides by mount, and notes it.
func (y *yard) move(nutFlats []int, slideMM []float64) error {
	m := visit.Move{NutFlats: map[string]float64{}, SlideMM: map[string]float64{}}
	for i := range y.boat.True.Mounts {
		mount := &y.boat.True.Mounts[i]
		if nutFlats[i] != 0 {
			m.NutFlats[mount.Name] = float64(nutFlats[i])
			y.liftMM[i] += float64(nutFlats[i]) * mount.LiftPerStepMM()
			y.job.Flats += max(nutFlats[i], -nutFlats[i])
		}
		if slideMM[i] != 0 {
			m.SlideMM[mount.Name] = slideMM[i]
			y.slideMM[i] += slideMM[i]
			y.job.Slides++
		}
	}
	y.visit.Events = append(y.visit.Events, visit.Event{Move: &m})
	y.job.Moves++
	y.job.Minutes += moveMinutes(y.boat.Nominal, nutFlats, slideMM)
	return y.judge()
}
