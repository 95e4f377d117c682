package plan

// This file puts a move in order: small steps, slides before nuts, that keep
// the faces as near parallel as they can be on the way.

import (
	"math"
	"slices"

	"aligner/kinematics/gauge"
	"aligner/kinematics/response"
)

// Step is one thing done, and what is to be found after it.
type Step struct {
	Moves    []int // by item
	NutFlats []int // by mount
	SlideMM  []float64
	// After is the gap expected once the step is done and the lever off; OnLever
	// the [A, B] while a slide is still levered.
	After   gauge.Gaussian
	OnLever *[2]float64
	// RunOutMM is what the halves' own faces, and a dummy between them, add with
	// both halves at their marks.
	RunOutMM [2]float64
	// Stop: the step has gone wrong if the gap at this position, the faces
	// touching, is found outside these.
	StopClockDeg             float64
	StopBelowMM, StopAboveMM float64
	ExpectedThereMM          float64
}

// GapAtMM is the gap to expect after the step at a clock position: the faces
// touching, run-out as the halves stand.
func (s *Step) GapAtMM(clockDeg float64) float64 {
	sin, cos := math.Sincos(clockDeg * math.Pi / 180)
	g := [2]float64{s.After.MeanMM[0] + s.RunOutMM[0], s.After.MeanMM[1] + s.RunOutMM[1]}
	return math.Hypot(g[0], g[1]) + g[0]*cos + g[1]*sin
}

// mostFlats is how far one nut is turned before the others of its station are
// brought along.
const mostFlats = 6

// least and sds are how far off a reading must be to mean stop.
const (
	stopSDs     = 3
	stopLeastMM = 2 * 0.0254
)

// steps cuts the move into chunks and orders them, always the one next that
// leaves the faces nearest parallel; slides come first, because a levered
// engine may take the nuts with it.
func (j *job) steps(out *Plan, moves []float64) {
	left := j.chunks(moves)
	sofar := make([]float64, len(moves))
	largest := gapSize(out.Present.MeanMM)
	for len(left) > 0 {
		best := 0
		for i := range left {
			if j.before(left[i], left[best], sofar) {
				best = i
			}
		}
		chunk := left[best]
		left = slices.Delete(left, best, best+1)
		for k, m := range chunk {
			sofar[k] += m
		}
		step := j.step(out, chunk, sofar)
		largest = math.Max(largest, gapSize(step.After.MeanMM))
		if step.OnLever != nil {
			largest = math.Max(largest, gapSize(*step.OnLever))
		}
		out.Steps = append(out.Steps, step)
	}
	if len(out.Steps) > 0 {
		// Nothing may touch on the way: the widest gap met, and half as much again.
		out.DrawBackMM = math.Max(1, math.Ceil(largest*1.5*2)/2)
	}
}

// gapSize is the largest gap of touching faces.
func gapSize(ab [2]float64) float64 { return 2 * math.Hypot(ab[0], ab[1]) }

// chunks are one station's slide each, and one station's nuts by at most
// mostFlats each at a time.
func (j *job) chunks(moves []float64) [][]float64 {
	var all [][]float64
	items := j.model.Items
	for k, it := range items {
		if it.Slide && moves[k] != 0 {
			c := make([]float64, len(moves))
			c[k] = moves[k]
			all = append(all, c)
		}
	}
	for _, station := range response.Stations(j.hull) {
		most := 0.0
		for _, i := range station {
			most = math.Max(most, math.Abs(moves[i]))
		}
		parts := int(math.Ceil(most / mostFlats))
		if j.loads.solid {
			parts = min(parts, 1) // a foot's pack of shims is changed once
		}
		given := make([]float64, len(moves))
		for part := 1; part <= parts; part++ {
			c := make([]float64, len(moves))
			for _, i := range station {
				to := math.Round(moves[i] * float64(part) / float64(parts))
				c[i], given[i] = to-given[i], to
			}
			all = append(all, c)
		}
	}
	return all
}

// before orders two chunks.
func (j *job) before(a, b, sofar []float64) bool {
	if sa, sb := j.slides(a), j.slides(b); sa != sb {
		return sa
	}
	return j.sizeAfter(a, sofar) < j.sizeAfter(b, sofar)-1e-12
}

func (j *job) slides(chunk []float64) bool {
	for k, it := range j.model.Items {
		if it.Slide && chunk[k] != 0 {
			return true
		}
	}
	return false
}

func (j *job) sizeAfter(chunk, sofar []float64) float64 {
	c := j.chance.r.Change(chunk)
	s := j.chance.r.Change(sofar)
	return math.Hypot(j.chance.v[0]+c[0]+s[0]-j.chance.target[0], j.chance.v[1]+c[1]+s[1]-j.chance.target[1])
}

// step describes one chunk, done after all before it.
func (j *job) step(out *Plan, chunk, sofar []float64) Step {
	s := Step{Moves: make([]int, len(chunk)), NutFlats: make([]int, len(j.hull.Mounts)), SlideMM: make([]float64, len(j.hull.Mounts)), After: j.chance.after(sofar)}
	s.RunOutMM = j.e.DummyMM
	for half := range j.e.RunOut {
		for k := range 2 {
			s.RunOutMM[k] += j.e.RunOut[half].MeanMM[k]
		}
	}
	for k, m := range chunk {
		s.Moves[k] = int(m)
		it := j.model.Items[k]
		for _, i := range it.Mounts {
			if it.Slide {
				s.SlideMM[i] += m * it.MM
			} else {
				s.NutFlats[i] += int(m)
			}
		}
		if it.Slide && m != 0 {
			if more, err := j.leverGap(k, chunk); err == nil {
				s.OnLever = &[2]float64{s.After.MeanMM[0] + more[0], s.After.MeanMM[1] + more[1]}
			}
		}
	}
	j.stop(&s, chunk)
	return s
}

// stop finds the gauged position at which the step changes the touching gap
// most, and what there would mean that it has gone wrong.
func (j *job) stop(s *Step, chunk []float64) {
	before := *s
	change := j.chance.r.Change(chunk)
	for a := range 2 {
		before.After.MeanMM[a] -= change[a]
	}
	most := -1.0
	for _, deg := range j.e.ClockDeg {
		if c := math.Abs(s.GapAtMM(deg) - before.GapAtMM(deg)); c > most {
			most, s.StopClockDeg = c, deg
		}
	}
	sin, cos := math.Sincos(s.StopClockDeg * math.Pi / 180)
	g := s.After
	there := s.GapAtMM(s.StopClockDeg)
	// Touching, the level goes with the amplitude: its error along the gap's own
	// direction comes on top of that at the position.
	sd := math.Sqrt(cos*cos*g.CovMM2[0][0] + 2*sin*cos*g.CovMM2[0][1] + sin*sin*g.CovMM2[1][1])
	large, _, _ := g.Axes()
	room := math.Max(stopLeastMM, stopSDs*math.Hypot(sd, large))
	s.ExpectedThereMM = there
	s.StopAboveMM, s.StopBelowMM = there+room, math.Max(0, there-room)
}
