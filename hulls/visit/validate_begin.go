package visit

// This file judges what a visit begins with: state, leaves, rule, target,
// mounts as found, look-over.

import (
	"fmt"
	"strings"

	"aligner/hulls/strictjson"
)

func (c *checker) state() {
	s := c.v.State
	c.oneOf("state.boat", s.Boat, append([]string{""}, Boats...)...)
	c.oneOf("state.ballast", s.Ballast, append([]string{""}, Ballasts...)...)
	c.oneOf("state.rig", s.Rig, append([]string{""}, Rigs...)...)
	c.maybe("state.hours_since_launch", s.HoursSinceLaunch, window{0, 1e6, 0, 1e5, "hours"})
	c.maybe("state.fuel_percent", s.FuelPercent, window{0, 100, 0, 100, "per cent"})
	c.maybe("state.mount_age_months", s.MountAgeMonths, window{0, 1200, 0, 480, "months"})
	c.maybe("state.mount_hours_standing", s.MountHoursStanding, window{0, 1e6, 0, 1e6, "hours"})
	c.maybe("state.engine_hours", s.EngineHours, window{0, 1e6, 0, 50000, "hours"})
	c.note("state.note", s.Note)
	if s.HoursSinceLaunch.Known && s.Boat != "afloat" && s.Boat != "" {
		c.doubt("state.hours_since_launch", strictjson.Plain(s.HoursSinceLaunch.Value)+" hours on "+s.Boat, "hours of a boat afloat", "delete it, or say that she is afloat")
	}
}

func (c *checker) leaves() {
	s := c.v.Leaves
	key := "leaves_" + string(s.Unit)
	if len(s.Leaves) > 0 {
		c.oneOf("leaves", string(s.Unit), string(InThou), string(InMM))
	}
	for i, l := range s.Leaves {
		thou := Length{l, s.Unit}.Thou()
		if !(thou >= 0.1 && thou <= 500) {
			c.refuse(at(key, i), strictjson.Plain(thou)+" thou", "leaves of 0.1 to 500 thou (0.0025 to 12.7 mm)", "correct the number or its unit")
		}
	}
	if n := len(s.Leaves); n > 0 && s.thickest().Thou() < 2 {
		c.doubt(key, fmt.Sprintf("%d leaves, none of 2 thou", n), "leaves as thick as a gap allowed", "check the unit of the leaves")
	}
	if s.MostStacked != 0 {
		c.within("leaves_stacked", float64(s.MostStacked), window{1, 10, 1, 4, "leaves"})
	}
	c.length("feel_error", s.FeelError, window{0, 10, 0.1, 2, ""})
}

func (c *checker) rule() {
	r := c.v.Rule
	if r == (Rule{}) {
		c.doubt("rule", "none", "an acceptance rule", fmt.Sprintf("choose one; till then %s of %s is taken", strictjson.Plain(DefaultRule.Limit.Value)+" thou", DefaultRule.Limits))
		return
	}
	c.oneOf("rule.limits", r.Limits, RuleLimits...)
	c.text("rule.named", r.Named)
	if !r.Limit.Given() {
		c.refuse("rule", "no limit", "limit_thou or limit_mm", "add the limit")
	}
	c.length("rule.limit", r.Limit, window{0.1, 100, 0.5, 12, ""})
}

func (c *checker) target() {
	t := c.v.Target
	if t == (Target{}) {
		return
	}
	if !t.Spread.Given() || t.Spread.Value == 0 {
		c.refuse("target", "no spread", "spread_thou or spread_mm above 0", "delete the target to aim at no gap")
	}
	c.length("target.spread", t.Spread, window{0, 100, 0, 12, ""})
	c.clock("target.opens_at_deg", t.OpensAtDeg)
	c.text("target.reason", t.Reason)
}

func (c *checker) mounts() {
	free := []string{"", string(Free), string(Stuck), string(Forbidden)}
	taken := map[string]int{}
	for i, m := range c.v.Mounts {
		place := at("mounts", i)
		c.mountName(place+".mount", m.Mount)
		if first, twice := taken[m.Mount]; twice {
			c.refuse(place+".mount", strictjson.Quoted(m.Mount), "each mount once", fmt.Sprintf("put it together with %s", at("mounts", first)))
		}
		taken[m.Mount] = i
		c.oneOf(place+".nut", string(m.Nut), free...)
		c.oneOf(place+".slide", string(m.Slide), free...)
		c.maybe(place+".stud_found_mm", m.StudFoundMM, window{-100, 500, 0, 150, "mm"})
		c.maybe(place+".stud_left_mm", m.StudLeftMM, window{-100, 500, 0, 150, "mm"})
		c.oneOf(place+".mark", m.Mark, append([]string{""}, Marks...)...)
		c.note(place+".note", m.Note)
	}
}

// mountName holds a name against the hull's mounts.
func (c *checker) mountName(place, name string) {
	c.text(place, name)
	if c.h == nil || c.hasMount(name) {
		return
	}
	var known []string
	for _, m := range c.h.Mounts {
		known = append(known, m.Name)
	}
	c.refuse(place, strictjson.Quoted(name), "a mount of "+c.h.Name+": "+strings.Join(known, ", "), "write one of these")
}

func (c *checker) hasMount(name string) bool { return mountOf(c.h, name) >= 0 }

// wholeTurn is how far a shaft is turned from its mark.
var wholeTurn = window{-360, 360, -360, 360, "degrees"}

func (c *checker) lookOver() {
	taken := map[string]int{}
	for i, f := range c.v.LookOver {
		place := at("look_over", i)
		c.text(place+".check", f.Check)
		if first, twice := taken[f.Check]; twice {
			c.refuse(place+".check", strictjson.Quoted(f.Check), "each check once", fmt.Sprintf("put it together with %s", at("look_over", first)))
		}
		taken[f.Check] = i
		c.oneOf(place+".finding", f.Finding, Findings...)
		c.maybe(place+".tight_at_deg", f.TightAtDeg, wholeTurn)
		c.note(place+".note", f.Note)
	}
}
