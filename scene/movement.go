package scene

// This file holds one answer of the mechanics as the picture needs it: a plain
// copy, so that several can be shown over each other.

import (
	"math"
	"sort"

	"aligner/kinematics"

	"github.com/go-gl/mathgl/mgl64"
)

// Movement is how everything has moved in one state, true to size. Its slices
// are used again by Read.
type Movement struct {
	Held kinematics.Held

	TranslationMM mgl64.Vec3 // of the engine, at the face centre
	RotationRad   mgl64.Vec3
	LiftMM        []float64 // asked of each mount
	SlideMM       []float64

	// Shaft at the model's stations, aft first.
	Shaft []Section
	// AxialMM is how far along x the shaft stands from drawn.
	AxialMM float64
	// RunOutMM is what the halves' own faces add to the gap, cos t and sin t,
	// drawn as a crooked shaft half.
	RunOutMM [2]float64
	Gap      kinematics.Gap

	BearingForceN [][2]float64
	LogForceN     [2]float64
}

// Section is the shaft's travel and slope at one place.
type Section struct{ Y, DY, Z, DZ float64 }

// StationsMM are the places along the shaft at which a Movement wants it.
func (m *Model) StationsMM() []float64 { return m.stations }

// Read copies an answer: r as Solve filled it last for s. The drive line is
// asked for the shaft along its length.
func (m *Model) Read(d *kinematics.DriveLine, s *kinematics.State, r *kinematics.Result, to *Movement) {
	to.Held = r.Held
	to.TranslationMM, to.RotationRad = mgl64.Vec3(r.TranslationMM), mgl64.Vec3(r.RotationRad)
	to.LiftMM = copied(to.LiftMM, s.LiftMM, len(m.hull.Mounts))
	to.SlideMM = copied(to.SlideMM, s.SlideMM, len(m.hull.Mounts))
	if cap(to.Shaft) < len(m.stations) {
		to.Shaft = make([]Section, len(m.stations))
	}
	to.Shaft = to.Shaft[:len(m.stations)]
	for i, x := range m.stations {
		at := d.ShaftAt(x)
		to.Shaft[i] = Section{at.Y, at.DY, at.Z, at.DZ}
	}
	to.Gap = r.Gap
	to.RunOutMM = runOut(s.RunOut)
	// The faces' gap at the centre is G0, so the shaft's face stands that far
	// aft of the engine's.
	to.AxialMM = to.TranslationMM[0] - r.Gap.G0MM
	if !r.Gap.Known {
		to.AxialMM = 0
	}
	to.BearingForceN = append(to.BearingForceN[:0], r.BearingForceN...)
	to.LogForceN = r.LogForceN
}

// copied is a list copied over another's memory, zeros where there is none.
func copied(to, from []float64, n int) []float64 {
	to = to[:0]
	for i := range n {
		v := 0.0
		if i < len(from) {
			v = from[i]
		}
		to = append(to, v)
	}
	return to
}

// runOut is what both halves' faces add to the gap: cos t and sin t.
func runOut(r kinematics.RunOut) [2]float64 {
	ss, cs := math.Sincos((r.ShaftLowDeg + r.ShaftTurnDeg) * math.Pi / 180)
	sf, cf := math.Sincos((r.FlangeLowDeg + r.FlangeTurnDeg) * math.Pi / 180)
	return [2]float64{r.ShaftMM*cs + r.FlangeMM*cf, r.ShaftMM*ss + r.FlangeMM*sf}
}

// placeStations lists every x at which the shaft's mesh has points, and where
// something rides on it.
func (m *Model) placeStations() {
	seen := map[float64]bool{}
	note := func(x float64) {
		if x = min(max(x, -m.hull.Shaft.LengthMM), 0); !seen[x] {
			seen[x] = true
			m.stations = append(m.stations, x)
		}
	}
	note(0)
	note(-m.hull.Shaft.LengthMM)
	note(m.hull.Propeller.AtMM)
	if s := m.hull.StuffingBox; s != nil {
		note(s.AtMM)
	}
	for _, b := range m.hull.Bearings {
		for k := -0.5; k <= 0.5; k += 0.5 {
			note(b.AtMM + k*b.LengthMM)
		}
	}
	for k := -0.5; k <= 0.5; k++ {
		note(m.hull.Log.AtMM + k*m.hull.Log.LengthMM)
	}
	for i := range m.pieces {
		if p := &m.pieces[i]; p.body == shaftBody {
			for _, v := range p.rest {
				note(v[0])
			}
		}
	}
	sort.Float64s(m.stations)
	for i := range m.pieces {
		p := &m.pieces[i]
		if p.body != shaftBody {
			continue
		}
		for _, v := range p.rest {
			p.at = append(p.at, m.station(v[0]))
		}
	}
}

// station is the one nearest to x.
func (m *Model) station(x float64) int {
	i := sort.SearchFloat64s(m.stations, x)
	if i == len(m.stations) || i > 0 && x-m.stations[i-1] < m.stations[i]-x {
		i--
	}
	return i
}

// section is the shaft at x, the one of the nearest station.
func (v *Movement) section(m *Model, x float64) Section {
	if len(v.Shaft) == 0 {
		return Section{}
	}
	return v.Shaft[m.station(x)]
}
