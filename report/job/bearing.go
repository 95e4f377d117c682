package job

// This file tells a worn bearing from a shaft lying crooked in it, by the room
// round the shaft at both ends.
//
//	c(t) = room/2 - e.u(t)       at each end, u(t) the unit radius at clock t
//
// room is the diametral clearance there and e how far the shaft's middle lies
// off the bearing's. A shaft always lies on one side of a bearing that has room;
// what matters is how the two ends go together:
//
//	e fore = e aft      same side at both ends: wear, if the room is large
//	e fore = -e aft     opposite sides: the shaft lies crooked
//
// Half the difference of the two is the crook, their mean the lean. That the
// same side means wear and opposite sides a crooked shaft is common practice, no
// source; the limits below are our own judgement.
//
// It leaves out ovality of the bore between the clock positions read, and
// bearings so short that their two ends are one.

import (
	"math"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge/interval"
)

// NewRoomMM is about the largest diametral clearance of a new rubber bearing: 8
// thou on a shaft of 1 in, more on larger ones (from memory).
func NewRoomMM(shaftDiameterMM float64) float64 { return 0.1 + 0.004*shaftDiameterMM }

// A bearing is worn from twice the room a new one has; the shaft lies crooked
// when either end is off its middle by a quarter of it more than the other end
// takes back. The bearing maker's limit comes first.
const (
	wornTimes  = 2.0
	crookTimes = 0.25
)

// stripErrorMM is how well a strip of known thickness is felt, one standard
// deviation; unreadMM what is believed of a room nobody tried.
const (
	stripErrorMM = 0.01
	unreadMM     = 5.0
)

// Wear is what the room round a shaft says of its bearing.
type Wear string

// The answers. NotTold: both ends, at opposite clock positions, are wanted.
const (
	Even        Wear = "even"
	Worn        Wear = "worn"
	Crooked     Wear = "crooked"
	WornCrooked Wear = "worn and crooked"
	NotTold     Wear = "not told"
)

// BearingRoom is one bearing's.
type BearingRoom struct {
	Bearing string
	Wear    Wear

	RoomMM, RoomSD [2]float64    // diametral, fore and aft
	OffMM          [2][2]float64 // [y, z] of the shaft off the bearing's middle, fore and aft
	CrookMM        [2]float64    // [y, z], half of fore less aft
	CrookSD        [2]float64
	LimitMM        float64 // worn from here on
	CrookLimitMM   float64
	// Untold are the directions, [athwart, up and down], in which the readings do
	// not tell whether the shaft lies crooked.
	Untold [2]bool
}

// Text says what was found.
func (b *BearingRoom) Text() Text {
	return text("bearing", string(b.Wear), Args{"Bearing": b.Bearing, "Fore": GapMM(b.RoomMM[0]), "Aft": GapMM(b.RoomMM[1]),
		"Limit": GapMM(b.LimitMM), "Crook": GapMM(2 * math.Hypot(b.CrookMM[0], b.CrookMM[1]))})
}

// TellWear reads strips tried in one bearing, fore and aft. Strips in other
// bearings are passed over.
func TellWear(h *hulls.Hull, bearing string, strips []visit.Clearance) BearingRoom {
	b := BearingRoom{Bearing: bearing, Wear: NotTold}
	b.LimitMM = wornTimes * NewRoomMM(h.Shaft.DiameterMM)
	b.CrookLimitMM = crookTimes * NewRoomMM(h.Shaft.DiameterMM)
	var ends [2]interval.Result
	for i, end := range []string{"fore", "aft"} {
		ends[i] = fitEnd(strips, bearing, end)
		if ends[i].Status != interval.Converged {
			return b
		}
		fit := &ends[i]
		b.RoomMM[i], b.RoomSD[i] = 2*fit.B[0], 2*math.Sqrt(fit.Covariance.At(0, 0))
		b.OffMM[i] = [2]float64{fit.B[1], fit.B[2]}
	}
	for k := range 2 {
		b.CrookMM[k] = (b.OffMM[0][k] - b.OffMM[1][k]) / 2
		b.CrookSD[k] = math.Sqrt(ends[0].Covariance.At(k+1, k+1)+ends[1].Covariance.At(k+1, k+1)) / 2
		b.Untold[k] = 2*b.CrookSD[k] > b.CrookLimitMM
	}
	b.decide()
	return b
}

// decide goes by two standard deviations: worn and crooked must be told, and so
// must even. A shaft surely crooked is called that although the room might still
// come out as worn: either way the strut is looked at first.
func (b *BearingRoom) decide() {
	worn, spared := false, true
	for i := range 2 {
		worn = worn || b.RoomMM[i]-2*b.RoomSD[i] > b.LimitMM
		spared = spared && b.RoomMM[i]+2*b.RoomSD[i] <= b.LimitMM
	}
	crook, sd := 0.0, 0.0
	for k := range 2 {
		if !b.Untold[k] {
			crook, sd = math.Hypot(crook, b.CrookMM[k]), math.Max(sd, b.CrookSD[k])
		}
	}
	crooked := crook-2*sd > b.CrookLimitMM
	straight := crook+2*sd <= b.CrookLimitMM && b.Untold == [2]bool{}
	switch {
	case worn && crooked:
		b.Wear = WornCrooked
	case worn:
		b.Wear = Worn
	case crooked:
		b.Wear = Crooked
	case spared && straight:
		b.Wear = Even
	}
}

// fitEnd finds c0 = room/2 and e = [y, z] of one end.
func fitEnd(strips []visit.Clearance, bearing, end string) interval.Result {
	p := interval.Problem{Unknowns: 3, Sigma: stripErrorMM}
	for k := range 3 {
		belief := interval.Row{X: make([]float64, 3), Scale: unreadMM / stripErrorMM}
		belief.X[k] = 1
		p.Rows = append(p.Rows, belief)
	}
	for _, r := range strips {
		if r.Where != bearing || r.End != end {
			continue
		}
		sin, cos := math.Sincos(r.ClockDeg * math.Pi / 180)
		// The unit radius at clock t is (-sin t, cos t) in y and z.
		row := interval.Row{X: []float64{1, sin, -cos}, Least: 0, Most: math.Inf(1)}
		if r.Goes.Given() {
			row.Least = r.Goes.MM()
		}
		if r.Stops.Given() {
			row.Most = r.Stops.MM()
		}
		p.Rows = append(p.Rows, row)
	}
	if len(p.Rows) == 3 {
		return interval.Result{Status: interval.Undetermined}
	}
	return interval.Fit(p, interval.Settings{})
}

// Wears tells of every bearing the visit has strips of, by the latest gauging
// that has some at both ends, in the hull's order.
func Wears(h *hulls.Hull, v *visit.Visit) []BearingRoom {
	var all []BearingRoom
	for _, b := range h.Bearings {
		if strips := latestStrips(v, b.Name); strips != nil {
			all = append(all, TellWear(h, b.Name, strips))
		}
	}
	return all
}

// latestStrips are a bearing's strips of the latest gauging with both ends; of
// all gaugings where none has both.
func latestStrips(v *visit.Visit, bearing string) []visit.Clearance {
	var all []visit.Clearance
	for i := len(v.Events) - 1; i >= 0; i-- {
		g := v.Events[i].Gauging
		if g == nil {
			continue
		}
		var own []visit.Clearance
		ends := map[string]bool{}
		for _, r := range g.Readings {
			if c, ok := r.(visit.Clearance); ok && c.Where == bearing {
				own = append(own, c)
				ends[c.End] = true
			}
		}
		if len(ends) == 2 {
			return own
		}
		all = append(all, own...)
	}
	return all
}
