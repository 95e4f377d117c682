package kinematics

// This file prepares a hull once and answers states many times.

import (
	"errors"
	"fmt"

	"aligner/hulls"
	"aligner/kinematics/shaftline"

	"github.com/go-gl/mathgl/mgl64"
)

// DriveLine is a hull made ready to be asked about. It starts each answer from
// the last one, so it is not for two goroutines at once; Clone it.
type DriveLine struct {
	hull   *hulls.Hull
	engine engine
	face   face
	shafts [2][2]bent // [afloat][hanging]
	last   *bent      // of the last answer
	middle [2]float64
}

// bent is one shaft model with its state.
type bent struct {
	model    *shaftline.Model
	state    *shaftline.State
	sag      [2]float64      // dy/dx, dz/dx at the front end on the true line
	drawn    shaftline.Start // the shaft with its front end there
	supports []shaftline.Support
}

// Prepare makes a hull ready to be dragged about. It fails, with a reason, on
// one that cannot stand or cannot be worked out.
func Prepare(h hulls.Hull) (*DriveLine, error) {
	return prepareWith(h, [2]int{stationsCoarse, stationsFine})
}

// PrepareFine makes a hull ready for single answers, several times as dear
// and within a ten-thousandth of a millimetre even where a shaft leans on the
// edge of its bearing.
func PrepareFine(h hulls.Hull) (*DriveLine, error) {
	return prepareWith(h, [2]int{stationsFinest, stationsFinest})
}

// prepareWith lays bearings out as so many stations: held lightly, and leaning.
func prepareWith(h hulls.Hull, stations [2]int) (*DriveLine, error) {
	d := &DriveLine{hull: &h}
	var err error
	if d.engine, err = newEngine(&h); err != nil {
		return nil, err
	}
	for afloat := range d.shafts {
		line, err := Line(&h, afloat == 1)
		if err != nil {
			return nil, err
		}
		for fine, n := range stations {
			if d.shafts[afloat][fine], err = newBent(line, n); err != nil {
				return nil, fmt.Errorf("%s: %w", h.Name, err)
			}
		}
	}
	if d.middle, err = middle(d.shafts[0][0].model); err != nil {
		return nil, fmt.Errorf("%s: middle of the shaft's free travel: %w", h.Name, err)
	}
	d.last = &d.shafts[0][0]
	d.face = face{engine: &d.engine, radius: h.Coupling.OuterDiameterMM / 2, softRadPerNMM: softRadPerNMM(&h),
		seats: make([]seat, len(h.Mounts)), pose: drawnPose()}
	return d, nil
}

// newBent prepares one shaft and finds the slope its own weight gives it.
func newBent(line shaftline.Line, stations int) (bent, error) {
	m, err := shaftline.Prepare(line, shaftline.Settings{StationsPerBearing: stations})
	if err != nil {
		return bent{}, err
	}
	b := bent{model: m, state: m.NewState(), supports: make([]shaftline.Support, m.Supports())}
	if err := m.Bend(b.state, shaftline.Pinned{}, shaftline.Limits{}).Err(); err != nil {
		return bent{}, fmt.Errorf("the shaft's sag: %w", err)
	}
	q := m.Front(b.state)
	b.sag = [2]float64{q[1], q[3]}
	b.drawn = b.state.Shape()
	return b, nil
}

// Hull is the hull prepared.
func (d *DriveLine) Hull() *hulls.Hull { return d.hull }

// Clone is a drive line of the same hull for another goroutine.
func (d *DriveLine) Clone() *DriveLine {
	c := *d
	c.face.engine = &c.engine
	c.face.seats = make([]seat, len(d.face.seats))
	for i := range c.shafts {
		for j := range c.shafts[i] {
			b := &c.shafts[i][j]
			b.state = b.model.NewState()
			b.supports = make([]shaftline.Support, len(b.supports))
		}
	}
	c.last = &c.shafts[0][0]
	c.Forget()
	return &c
}

// Forget makes the next answer start from the drawn engine and shaft.
func (d *DriveLine) Forget() {
	d.face.pose = drawnPose()
	for i := range d.shafts {
		for j := range d.shafts[i] {
			b := &d.shafts[i][j]
			b.state.Begin(b.drawn)
		}
	}
}

// MiddleMM is [y, z] of the front end in the middle of its free travel.
func (d *DriveLine) MiddleMM() [2]float64 { return d.middle }

// Solve answers a state into r, whose slices are used again. An error says why
// there is no answer; r then holds its status alone.
func (d *DriveLine) Solve(s *State, r *Result) error {
	if why := s.Invalid(d.hull); why != "" {
		d.blank(r, s.Held)
		return errors.New(why)
	}
	b := d.set(s)
	status := d.bend(b)
	if s.LeverOn {
		status = d.lever(b, s.SlideMM)
	}
	if err := status.Err(); err != nil {
		d.face.pose = drawnPose()
		b.state.Forget()
		d.blank(r, s.Held)
		r.Status = status
		return fmt.Errorf("%s, shaft %s: %w", d.hull.Name, s.Held, err)
	}
	d.last = b
	d.report(s, b, status, r)
	return nil
}

// careful limits an iteration that starts from nothing and may be slow.
var careful = shaftline.Limits{Iterations: 2000}

// bend finds the state, from the last answer or else carefully from nothing.
func (d *DriveLine) bend(b *bent) shaftline.Result {
	status := b.model.Bend(b.state, &d.face, shaftline.Limits{Iterations: 60})
	if status.Status != shaftline.Converged {
		d.face.pose = drawnPose()
		b.state.Forget()
		d.face.careful = true
		status = b.model.Bend(b.state, &d.face, careful)
		d.face.careful = false
	}
	return status
}

// set puts the state's inputs where the iteration reads them.
func (d *DriveLine) set(s *State) *bent {
	f := &d.face
	for i := range f.seats {
		f.seats[i] = seat{liftMM: at(s.LiftMM, i), slideMM: at(s.SlideMM, i)}
	}
	if s.LeverOn {
		d.setLevers(s.SlideMM)
	}
	f.outside = wrench{forceN: mgl64.Vec3{s.ThrustN, 0, 0}, momentNMM: mgl64.Vec3{s.TorqueNMM, 0, 0}}
	f.block, f.skew = false, [2]float64{}
	fine, pull := 0, 0.0
	switch s.Held {
	case Hanging:
		f.joint, fine = apart, 1
	case Centred:
		f.joint = apart
		if s.PullN > 0 {
			pull, fine = s.PullN, 1
		} else {
			f.block = true
			f.blockAtMM = [2]float64{d.middle[0] + s.BlockMM[0], d.middle[1] + s.BlockMM[1]}
		}
	case Seated:
		f.joint = onPilot
	case Bolted:
		f.joint, fine = drawnFlat, 1
		out := s.RunOut.cosSin()
		f.skew = [2]float64{out[1] / f.radius, -out[0] / f.radius}
	}
	afloat := 0
	if s.Afloat {
		afloat = 1
	}
	b := &d.shafts[afloat][fine]
	b.state.HookN = pull
	f.q = b.model.Front(b.state)
	return b
}
