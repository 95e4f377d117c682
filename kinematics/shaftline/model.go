package shaftline

// This file lays a line out as stations from aft to fore, once per hull.

import (
	"cmp"
	"errors"
	"slices"
)

// Settings of a model. The zero value is the default.
type Settings struct {
	// StationsPerBearing is the number of springs a bearing is laid out as;
	// 0 means 17, at which forces of a seated shaft have settled to about 1 %
	// of the continuous foundation's and gaps to 0.01 thou (tests measure it).
	StationsPerBearing int
}

// Model is a line made ready to be bent many times. It holds no state and may
// be shared by goroutines, each with its own State.
type Model struct {
	line     Line
	stations []station // aft to fore; the last one is the front end at x = 0
	contacts []contact // in the order of their stations
	first    int       // the aft-most station that carries anything
	aftEnd   [4]float64
	hook     int // station of the lifting hook
	groups   int // bearings, then one for all lips, then springs
}

// station is a place along the shaft with what acts there, and the length of
// shaft from it to the next station forward.
type station struct {
	xMM        float64
	massKg     float64    // of points; for whirling
	load       [2]float64 // force and moment of weights in the z plane, + up
	contactEnd int        // contacts[previous end : contactEnd] act here

	lengthMM     float64 // to the next station; 0 at the front end
	halfMM       float64
	slopePerNmm  float64 // h / EI
	travelPerN   float64 // h^3 / 12 EI
	weightNPerMM float64 // of this length
}

// samePlaceMM is how close two things are put on one station. A station costs
// time, not accuracy: see the sweep.
const samePlaceMM = 1e-9

// Prepare lays the line out. It fails on a line that Invalid refuses.
func Prepare(line Line, settings Settings) (*Model, error) {
	if why := line.Invalid(); why != "" {
		return nil, errors.New(why)
	}
	n := settings.StationsPerBearing
	if n == 0 {
		n = 17
	}
	m := &Model{line: line}
	m.placeContacts(max(n, 2))
	m.placeStations()
	m.weigh()
	m.first = len(m.stations) - 1
	for i := range m.stations {
		if m.contactsAt(i) != nil {
			m.first = i
			break
		}
	}
	m.condenseOverhang()
	return m, nil
}

// placeContacts turns bearings, lips and springs into contacts, aft to fore.
func (m *Model) placeContacts(stationsPerBearing int) {
	for g, b := range m.line.Bearings {
		n := stationsPerBearing
		for i := range n {
			weight := 1.0
			if i == 0 || i == n-1 {
				weight = 0.5
			}
			m.contacts = append(m.contacts, contact{
				xMM:     b.AtMM - b.LengthMM/2 + b.LengthMM*float64(i)/float64(n-1),
				kNPerMM: b.StiffnessNPerMM * weight / float64(n-1),
				roomMM:  b.ClearanceMM / 2, axisMM: b.OffsetMM, group: g})
		}
	}
	g := len(m.line.Bearings)
	for _, l := range m.line.Lips {
		m.contacts = append(m.contacts, contact{xMM: l.AtMM, kNPerMM: l.StiffnessNPerMM,
			roomMM: l.ClearanceMM / 2, axisMM: l.OffsetMM, group: g, lip: true})
	}
	for i, s := range m.line.Springs {
		m.contacts = append(m.contacts, contact{xMM: s.AtMM, kNPerMM: s.StiffnessNPerMM,
			axisMM: s.OffsetMM, group: g + 1 + i})
	}
	m.groups = g + 1 + len(m.line.Springs)
	slices.SortStableFunc(m.contacts, func(a, b contact) int { return cmp.Compare(a.xMM, b.xMM) })
}

// placeStations puts a station wherever something happens.
func (m *Model) placeStations() {
	xs := []float64{-m.line.LengthMM, 0, m.line.HookAtMM}
	if x := m.line.AftFromMM; m.line.holds(x) {
		xs = append(xs, x)
	}
	for _, p := range m.line.Points {
		xs = append(xs, p.AtMM)
	}
	for _, c := range m.contacts {
		xs = append(xs, c.xMM)
	}
	slices.Sort(xs)
	end := 0
	for _, x := range xs {
		if n := len(m.stations); n > 0 && x-m.stations[n-1].xMM < samePlaceMM {
			continue
		}
		m.stations = append(m.stations, station{xMM: x})
	}
	for i := range m.stations {
		s := &m.stations[i]
		for end < len(m.contacts) && m.contacts[end].xMM-s.xMM < samePlaceMM {
			end++
		}
		s.contactEnd = end
		if i+1 < len(m.stations) {
			h := m.stations[i+1].xMM - s.xMM
			s.lengthMM, s.halfMM = h, h/2
			s.slopePerNmm = h / m.line.BendingStiffnessNMM2
			s.travelPerN = h * h * h / (12 * m.line.BendingStiffnessNMM2)
		}
	}
	m.hook = m.stationAt(m.line.HookAtMM)
}

// weigh hangs the weights on the stations. A uniform load goes to a length's
// two ends as its clamped-end forces and moments, which gives exact travel and
// slope at the stations.
func (m *Model) weigh() {
	for i := range len(m.stations) - 1 {
		a, b := &m.stations[i], &m.stations[i+1]
		a.weightNPerMM = m.line.WeightNPerMM
		if b.xMM <= m.line.AftFromMM+samePlaceMM {
			a.weightNPerMM = m.line.AftWeightNPerMM
		}
		h, w := a.lengthMM, a.weightNPerMM
		a.load[0] -= w * h / 2
		b.load[0] -= w * h / 2
		a.load[1] -= w * h * h / 12
		b.load[1] += w * h * h / 12
	}
	for _, p := range m.line.Points {
		s := &m.stations[m.stationAt(p.AtMM)]
		s.load[0] -= p.WeightN
		s.massKg += p.MassKg
	}
}

// condenseOverhang works out what the free length aft of the first contact
// asks of it: no stiffness, only its weight and moment.
func (m *Model) condenseOverhang() {
	for i := range m.first {
		s := &m.stations[i]
		m.aftEnd[2] -= s.load[0]
		m.aftEnd[3] -= s.load[1]
		m.aftEnd[3] -= s.lengthMM * m.aftEnd[2]
	}
}

// stationAt is the station at x, which must be one of those placed.
func (m *Model) stationAt(xMM float64) int {
	for i := range m.stations {
		if d := m.stations[i].xMM - xMM; d < samePlaceMM && d > -samePlaceMM {
			return i
		}
	}
	panic("shaftline: no station at a place that has one")
}

// contactsAt are the contacts on station i.
func (m *Model) contactsAt(i int) []contact {
	start := 0
	if i > 0 {
		start = m.stations[i-1].contactEnd
	}
	if start == m.stations[i].contactEnd {
		return nil
	}
	return m.contacts[start:m.stations[i].contactEnd]
}

// Line is the line the model was made of.
func (m *Model) Line() *Line { return &m.line }
