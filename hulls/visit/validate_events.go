package visit

// This file judges what happened in a visit: gaugings, moves, things fastened.

import (
	"fmt"
	"maps"
	"math"
	"slices"

	"aligner/hulls/strictjson"
)

func (c *checker) event(e Event, place string) {
	switch {
	case e.Gauging != nil && e.Move == nil && e.Fasten == nil:
		c.gauging(*e.Gauging, place+".gauging")
	case e.Move != nil && e.Gauging == nil && e.Fasten == nil:
		c.move(*e.Move, place+".move")
	case e.Fasten != nil && e.Gauging == nil && e.Move == nil:
		c.fasten(*e.Fasten, place+".fasten")
	default:
		c.refuse(place, "none or several", "one of gauging, move, fasten", "give each thing done an event of its own")
	}
}

func (c *checker) gauging(g Gauging, place string) {
	c.oneOf(place+".held", g.Held, GaugedWays...)
	if g.Held == "seated" && c.h != nil && !c.h.Coupling.HasPilot() {
		c.refuse(place+".held", `"seated"`, c.h.Name+" has no pilot to seat the shaft on", "centre it instead")
	}
	c.note(place+".held_by", g.HeldBy)
	if g.Seating != 0 {
		c.within(place+".seating", float64(g.Seating), window{1, 1e6, 1, 1e6, ""})
	}
	c.within(place+".shaft_turn_deg", g.ShaftTurnDeg, window{-360, 360, -360, 360, "degrees"})
	c.within(place+".flange_turn_deg", g.FlangeTurnDeg, window{-360, 360, -360, 360, "degrees"})
	c.length(place+".apart", g.Apart, window{0, 4000, 0, 1500, ""})
	c.between(place+".between", g.Between)
	c.within(place+".push_n", g.PushN, window{0, 5000, 0, 200, "N"})
	if g.BoltsIn && (g.Held == "hanging" || g.Held == "centred" || g.Held == "seated") {
		c.doubt(place+".bolts_in", "bolts in, held "+g.Held, "no bolts with a shaft that is "+g.Held, `say held "snug", or take the bolts out`)
	}
	if len(g.Readings) > mostReadings {
		c.refuse(place+".readings", fmt.Sprintf("a list of %d", len(g.Readings)), fmt.Sprintf("at most %d", mostReadings), "begin another gauging")
	}
	c.wide = g.Apart.MM() > WideMM
	for i, r := range g.Readings {
		if r == nil {
			c.refuse(at(place+".readings", i), "nothing", "a reading", "delete it")
			continue
		}
		r.check(c, at(place+".readings", i))
	}
	c.note(place+".note", g.Note)
}

func (c *checker) move(m Move, place string) {
	if len(m.NutFlats) == 0 && len(m.SlideMM) == 0 {
		c.doubt(place, "nothing moved", "nut_flats or slide_mm", "add what was moved, or delete the move")
	}
	for _, name := range slices.Sorted(maps.Keys(m.NutFlats)) {
		at, flats := strictjson.Join(place+".nut_flats", name), m.NutFlats[name]
		c.mountName(at, name)
		c.within(at, flats, window{-1000, 1000, -72, 72, "flats"})
		if c.h != nil && c.hasMount(name) {
			lift := flats * c.h.Mounts[mountOf(c.h, name)].LiftPerStepMM()
			if !(math.Abs(lift) < mostMM) {
				c.refuse(at, fmt.Sprintf("%s, which is %s mm", strictjson.Plain(flats), strictjson.Plain(lift)), fmt.Sprintf("less than %d mm", mostMM), "correct the number")
			}
		}
	}
	for _, name := range slices.Sorted(maps.Keys(m.SlideMM)) {
		at := strictjson.Join(place+".slide_mm", name)
		c.mountName(at, name)
		c.within(at, m.SlideMM[name], window{-mostMM, mostMM, -20, 20, "mm"})
	}
	c.note(place+".note", m.Note)
}

func (c *checker) fasten(f Fasten, place string) {
	c.text(place+".what", f.What)
	c.fastenKind(f, place)
	if f.Torque.Given() {
		c.oneOf(place+".torque", string(f.Torque.Unit), string(InNM), string(InLbFt))
		c.within(place+".torque_"+string(f.Torque.Unit), f.Torque.NM(), window{0, 5000, 5, 800, "N m"})
	}
	c.note(place+".note", f.Note)
}
