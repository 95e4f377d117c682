package gauge

// This file sorts a visit into states of the engine and seatings of the shaft,
// and lays its readings out as rows.

import (
	"aligner/hulls/visit"
	"aligner/kinematics/gauge/interval"
)

// evidence is everything the readings of a visit say, as rows.
type evidence struct {
	model *Model
	num   numbering
	rows  []interval.Row
	refs  []Ref // of each row
	feel  float64
	reach visit.Arc // what of the rim a leaf can be got at

	states   []State
	seatings []seating
	setAside []SetAside
	runOut   [2]struct{ measured bool }

	dummyMM [2]float64 // of the last gauging, the shaft at its mark
	ahead   bool       // something was moved after the last gauging
	tighter bool       // a mount was tightened after it
}

// Ref points at a reading: an event of the visit and a place in its list.
type Ref struct {
	Event, Reading int
	ClockDeg       float64
}

// SetAside is a gauging, or a reading of it (else -1), that says nothing about
// how the engine stands, and why.
type SetAside struct {
	Event, Reading int
	Why            Reason
}

// Reason says why something was set aside.
type Reason string

// The reasons; each is a sentence of the project's by its name.
const (
	NotHeld     Reason = "not held"     // the shaft hung: its droop is not the engine's
	BoltsIn     Reason = "bolts in"     // bolts draw the faces together
	LeverOn     Reason = "lever on"     // the engine springs back when it is let go
	PilotIn     Reason = "pilot in"     // an engaged pilot hides the step
	NoSuchRoom  Reason = "no such room" // a place where the model knows no clearance
	OnlyNoted   Reason = "only noted"   // a reading that bounds nothing
	ReadAgain   Reason = "read again"   // taken again at the same place
	SoftIn      Reason = "soft in"      // a soft coupling between the halves gives
	NotSeatable Reason = "not seatable" // no pilot to seat the shaft on
)

// seating is one seating of the shaft in one state.
type seating struct {
	number, state int
	turn          turned
	touching      bool
	apartMM       float64    // stated
	dummyMM       [2]float64 // [cos, sin] a dummy's own unevenness adds to the gap
	events        []int
	gapRows       int
}

// State is the engine from one move to the next, where it was gauged.
type State struct {
	FirstEvent, LastEvent int
	// What was turned and slid on the way here from the state before, by mount;
	// nothing for the first. Fastened: something was tightened on that way.
	NutFlats, SlideMM map[string]float64
	Fastened          bool

	CosMM, SinMM float64
}

// gather sorts the visit.
func (m *Model) gather(v *visit.Visit) *evidence {
	e := &evidence{model: m, reach: v.Reach, feel: max(v.Leaves.FeelErrorMM(), leastFeelMM)}
	on := State{}
	tightened := false
	moved := true // the first state begins like one after a move
	for i, event := range v.Events {
		switch {
		case event.Move != nil:
			moved, e.ahead = true, true
			on.add(event.Move)
		case event.Fasten != nil:
			moved, on.Fastened = true, true
			tightened = tightened || !event.Fasten.OfCoupling()
		case event.Gauging != nil:
			if why := m.unusable(event.Gauging); why != "" {
				e.setAside = append(e.setAside, SetAside{i, -1, why})
				continue
			}
			if len(event.Gauging.Readings) == 0 {
				continue
			}
			if moved {
				on.FirstEvent = i
				e.states = append(e.states, on)
				on, moved = State{}, false
			}
			e.ahead, tightened = false, false
			e.states[len(e.states)-1].LastEvent = i
			e.place(v, i)
			g := *event.Gauging
			g.ShaftTurnDeg = 0
			e.dummyMM = DummyMM(&g)
		}
	}
	e.tighter = tightened
	e.num = numbering{len(e.states), len(e.seatings)}
	e.lay(v)
	return e
}

func (s *State) add(m *visit.Move) {
	plus := func(sum *map[string]float64, by map[string]float64) {
		for name, v := range by {
			if *sum == nil {
				*sum = map[string]float64{}
			}
			(*sum)[name] += v
		}
	}
	plus(&s.NutFlats, m.NutFlats)
	plus(&s.SlideMM, m.SlideMM)
}

// unusable says why a gauging tells nothing of how the engine stands, or "".
func (m *Model) unusable(g *visit.Gauging) Reason {
	switch {
	case g.LeverOn:
		return LeverOn
	case g.BoltsIn, g.Held == "snug", g.Held == "bolted":
		return BoltsIn
	case g.Held == "hanging":
		return NotHeld
	case g.Between.What == visit.SoftCoupling && m.hull.Coupling.Soft.InPlaceMM == 0:
		return SoftIn
	case g.Held == "seated" && !m.hull.Coupling.HasPilot():
		return NotSeatable
	}
	return ""
}

// place finds or makes the seating of gauging i in the last state.
func (e *evidence) place(v *visit.Visit, i int) {
	g, k := v.Events[i].Gauging, len(e.states)-1
	number := v.SeatingOf(i)
	for s := range e.seatings {
		if e.seatings[s].number == number && e.seatings[s].state == k {
			e.seatings[s].events = append(e.seatings[s].events, i)
			return
		}
	}
	e.seatings = append(e.seatings, seating{number: number, state: k,
		turn:     turnedBy(g.ShaftTurnDeg, g.FlangeTurnDeg),
		touching: g.Held == "seated", apartMM: g.Apart.MM(), dummyMM: DummyMM(g), events: []int{i}})
}

// lay lays out the rows of every seating.
func (e *evidence) lay(v *visit.Visit) {
	for s := range e.seatings {
		for _, i := range e.seatings[s].events {
			g := v.Events[i].Gauging
			l := layer{e: e, g: g, event: i, seating: s,
				turn: turnedBy(g.ShaftTurnDeg, g.FlangeTurnDeg), centred: g.Held == "centred"}
			for j, r := range g.Readings {
				l.reading = j
				if readAgain(g.Readings, j, e.feel) {
					e.setAside = append(e.setAside, SetAside{i, j, ReadAgain})
					continue
				}
				l.lay(r)
			}
		}
	}
}
