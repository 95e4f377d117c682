package gauge

// This file turns each kind of reading into rows.

import (
	"math"

	"aligner/hulls/visit"
	"aligner/kinematics/gauge/interval"
)

// layer lays out one gauging's readings.
type layer struct {
	e              *evidence
	g              *visit.Gauging
	event, reading int
	seating        int
	turn           turned
	centred        bool
}

func (l *layer) state() int { return l.e.seatings[l.seating].state }

// lay adds the rows of one reading.
func (l *layer) lay(r visit.Reading) {
	switch r := r.(type) {
	case visit.Leaf:
		least, most := visit.WithinMM(r.Goes, r.Stops)
		l.gap(r.ClockDeg, r.RadiusMM, least, most, l.e.feel)
	case visit.LeafRound:
		l.round(r)
	case visit.Dial:
		l.dial(r)
	case visit.RimStep:
		l.step(r)
	case visit.RunOut:
		l.runOut(r)
	case visit.Clearance:
		l.clearance(r)
	case visit.Pilot:
		l.pilot(r)
	}
}

func (l *layer) add(x []float64, least, most, sd, clockDeg float64) {
	l.e.rows = append(l.e.rows, interval.Row{X: x, Least: least, Most: most, Scale: sd})
	l.e.refs = append(l.e.refs, Ref{l.event, l.reading, clockDeg})
}

func (l *layer) aside(why Reason) {
	l.e.setAside = append(l.e.setAside, SetAside{l.event, l.reading, why})
}

// gapRow is a gap at a clock position, less what is constant.
func (l *layer) gapRow(clockDeg, radiusMM float64, seesShaft, seesFlange bool) (x []float64, constMM float64) {
	x = l.e.num.row()
	sin, cos := math.Sincos(clockDeg * math.Pi / 180)
	m, far := l.e.model, 1.0
	if radiusMM > 0 {
		far = radiusMM / m.radiusMM
	}
	c, s := far*cos, far*sin
	l.e.num.addGap(x, l.state(), l.turn, seesShaft, seesFlange, c, s)
	if l.centred && m.aim != "centred" {
		i := l.e.num.state(l.state())
		for k := range 2 {
			x[i+2+k] -= c*m.swing[0][k] + s*m.swing[1][k]
		}
		constMM = c*m.centredMM[0] + s*m.centredMM[1]
	}
	return x, constMM
}

// gap is one interval at one place.
func (l *layer) gap(clockDeg, radiusMM, least, most, sd float64) {
	x, c := l.gapRow(clockDeg, radiusMM, true, true)
	x[l.e.num.seating(l.seating)] = 1
	far := 1.0
	if radiusMM != 0 {
		far = radiusMM / l.e.model.radiusMM
	}
	seat := &l.e.seatings[l.seating]
	c += seat.apartMM + far*seat.dummy(clockDeg)
	l.add(x, least-c, most-c, sd, clockDeg)
	l.e.seatings[l.seating].gapRows++
}

// DummyMM is what a dummy's own unevenness adds to the gap of a gauging, [cos,
// sin]: it turns with the shaft half it is bolted to.
func DummyMM(g *visit.Gauging) [2]float64 {
	b := g.Between
	if b.What != visit.Dummy {
		return [2]float64{}
	}
	sin, cos := math.Sincos((b.ThinAtDeg + g.ShaftTurnDeg) * math.Pi / 180)
	return [2]float64{b.Uneven.MM() / 2 * cos, b.Uneven.MM() / 2 * sin}
}

// dummy is the same at one place of the face's outer edge.
func (s *seating) dummy(clockDeg float64) float64 {
	sin, cos := math.Sincos(clockDeg * math.Pi / 180)
	return s.dummyMM[0]*cos + s.dummyMM[1]*sin
}

// arcStepDeg is how far apart an arc is believed to tell something new.
const arcStepDeg = 30

// round is one leaf carried round: bounds along each arc, and where an arc of
// one kind meets one of the other, the gap itself.
func (l *layer) round(r visit.LeafRound) {
	leaf := r.Leaf.MM()
	inner := func(arcs []visit.Arc, least, most float64) {
		for _, a := range arcs {
			n := max(1, math.Floor(a.SpanDeg()/arcStepDeg))
			for i := range int(n) {
				l.gap(math.Mod(a.FromDeg+a.SpanDeg()*(float64(i)+0.5)/n, 360), r.RadiusMM, least, most, l.e.feel)
			}
		}
	}
	inner(r.Enters, leaf, math.Inf(1))
	inner(r.Stops, math.Inf(-1), leaf)
	at := math.Hypot(l.e.feel, arcEndMM)
	for _, in := range r.Enters {
		for _, out := range r.Stops {
			for _, ends := range [2][2]float64{{in.ToDeg, out.FromDeg}, {out.ToDeg, in.FromDeg}} {
				if meet, deg := nearEnds(ends[0], ends[1]); meet {
					l.gap(deg, r.RadiusMM, leaf, leaf, at)
				}
			}
		}
	}
}

// nearEnds reports whether one arc's end is another's beginning, and the place
// between.
func nearEnds(endDeg, beginDeg float64) (bool, float64) {
	apart := math.Mod(beginDeg-endDeg+540, 360) - 180
	return math.Abs(apart) <= arcStepDeg/2, math.Mod(endDeg+apart/2+360, 360)
}

// dial is a mark against the place where the dial was set to nought. Its tip is
// pushed in where the gap is less, or the other half's rim further out.
func (l *layer) dial(r visit.Dial) {
	sd := math.Hypot(dialMM, dialMM) // of two marks
	onShaft := r.CarriedBy != visit.EngineSide
	if r.On == "face" {
		// The half that carries it turns under its own dial unseen.
		x, c := l.gapRow(r.ClockDeg, r.RadiusMM, !onShaft, onShaft)
		zero, c0 := l.gapRow(r.ZeroDeg, r.RadiusMM, !onShaft, onShaft)
		for i := range x {
			x[i] = zero[i] - x[i]
		}
		l.add(x, r.Reads.MM()-c0+c, r.Reads.MM()-c0+c, sd, r.ClockDeg)
		l.e.seatings[l.seating].gapRows++
		return
	}
	if !l.centred {
		l.aside(PilotIn)
		return
	}
	at, zero := direction(r.ClockDeg), direction(r.ZeroDeg)
	// The bracket's sag at a mark is that at 6 by the height fallen from nought.
	reads := r.Reads.MM() - r.Sag.MM()*(zero[1]-at[1])/2
	sign := 1.0
	if !onShaft {
		sign = -1
	}
	d := [2]float64{sign * (at[0] - zero[0]), sign * (at[1] - zero[1])}
	l.offset(d, reads, reads, sd, r.ClockDeg)
}

// direction is the unit radius [y, z] at a clock position.
func direction(clockDeg float64) [2]float64 {
	sin, cos := math.Sincos(clockDeg * math.Pi / 180)
	return [2]float64{-sin, cos}
}

// offset bounds the engine's face centre off the centred shaft's end, along d.
func (l *layer) offset(d [2]float64, least, most, sd, clockDeg float64) {
	x := l.e.num.row()
	i, middle := l.e.num.state(l.state()), l.e.model.middleMM
	x[i+2], x[i+3] = d[0], d[1]
	c := -d[0]*middle[0] - d[1]*middle[1]
	l.add(x, least-c, most-c, sd, clockDeg)
}

// step is a straightedge along both rims.
func (l *layer) step(r visit.RimStep) {
	if !l.centred {
		l.aside(PilotIn)
		return
	}
	least, most := visit.WithinMM(r.Goes, r.Stops)
	d := direction(r.ClockDeg)
	switch r.High {
	case visit.ShaftSide:
		least, most = -most, -least
	case "":
		least = -most
	}
	l.offset(d, least, most, l.e.feel, r.ClockDeg)
}

// runOut is a half turned once under a dial. Without its low spot it says how
// much, not where to; that is left to the beliefs (see beliefs).
func (l *layer) runOut(r visit.RunOut) {
	if r.On != "face" || !r.LowDeg.Known {
		l.aside(OnlyNoted)
		return
	}
	i := l.e.num.shaft()
	half := 0
	if r.Half == visit.EngineSide {
		i, half = l.e.num.flange(), 1
	}
	amount := r.TIR.MM() / 2
	if r.RadiusMM > 0 {
		amount *= l.e.model.radiusMM / r.RadiusMM
	}
	sin, cos := math.Sincos(r.LowDeg.Value * math.Pi / 180)
	for k, v := range [2]float64{amount * cos, amount * sin} {
		l.add(l.e.num.unit(i+k), v, v, dialMM, r.LowDeg.Value)
	}
	l.e.runOut[half].measured = true
}

// clearance is a strip between the seated shaft and what it runs in.
func (l *layer) clearance(r visit.Clearance) {
	if l.centred {
		l.aside(OnlyNoted)
		return
	}
	for _, room := range l.e.model.rooms {
		if room.where != r.Where || room.end != r.End {
			continue
		}
		d := direction(r.ClockDeg)
		x := l.e.num.row()
		i, c := l.e.num.state(l.state()), room.halfMM
		for k := range 2 {
			x[i+2+k] = -d[k] * room.follows[k]
			c += d[k] * (room.boreMM[k] - room.atMM[k])
		}
		least, most := visit.WithinMM(r.Goes, r.Stops)
		l.add(x, least-c, most-c, math.Hypot(l.e.feel, roomModelMM), r.ClockDeg)
		return
	}
	l.aside(NoSuchRoom)
}

// pilot bounds the offset of a centred shaft by how its pilot enters.
func (l *layer) pilot(r visit.Pilot) {
	within := pilotMM
	switch {
	case !l.centred:
		l.aside(PilotIn)
		return
	case r.Enters == "with force":
		within = 3 * pilotMM
	case r.Enters == "not":
		l.aside(OnlyNoted)
		return
	}
	for k := range 2 {
		d := [2]float64{}
		d[k] = 1
		l.offset(d, -within, within, within/3, 0)
	}
}

// readAgain reports whether leaf j was tried again later at the same place of
// the same gauging with limits that do not meet its own: the later one holds.
func readAgain(all []visit.Reading, j int, feel float64) bool {
	one, ok := all[j].(visit.Leaf)
	if !ok {
		return false
	}
	least, most := visit.WithinMM(one.Goes, one.Stops)
	for _, later := range all[j+1:] {
		again, ok := later.(visit.Leaf)
		if !ok || math.Abs(again.ClockDeg-one.ClockDeg) > 1 || again.RadiusMM != one.RadiusMM {
			continue
		}
		from, to := visit.WithinMM(again.Goes, again.Stops)
		if from > most+feel || to < least-feel {
			return true
		}
	}
	return false
}
