package hulls

// This file judges the engine and its mounts.

import (
	"fmt"
	"math"
	"strings"

	"aligner/hulls/strictjson"
)

// gravityMS2 is standard gravity (CGPM 1901).
const gravityMS2 = 9.80665

// mostMounts bounds the mounts of a hull; six is the most commonly met.
const mostMounts = 12

// Limits of the number of mounts' distance from one line in plan.
const (
	leastWidthMM = 20  // below it the engine can rock
	lowWidthMM   = 150 // below it something was likely measured wrong
)

func (c *checker) engine() {
	e := c.h.Engine
	c.within("engine.mass_kg", e.MassKg, window{5, 20000, 20, 4000, "kg"})
	for i, w := range []window{
		{-6000, 6000, -2500, 2500, "mm"},
		{-1000, 1000, -100, 100, "mm"},
		{-3000, 3000, -300, 1000, "mm"},
	} {
		c.within(fmt.Sprintf("engine.centre_of_mass_mm[%d]", i), e.CentreOfMassMM[i], w)
	}
	c.within("engine.down_angle_deg", e.DownAngleDeg, window{-20, 30, 0, 18, "degrees"})
}

func (c *checker) mounts() {
	if n := len(c.h.Mounts); n < 3 || n > mostMounts {
		c.refuse("mounts", fmt.Sprintf("%d mounts", n), fmt.Sprintf("3 to %d", mostMounts), "an engine stands on at least three mounts not in one line")
		return
	}
	taken := map[string]string{}
	for i, m := range c.h.Mounts {
		place := fmt.Sprintf("mounts[%d]", i)
		if c.name(place+".name", m.Name) {
			if strings.Contains(m.Name, "=") {
				c.refuse(place+".name", strictjson.Quoted(m.Name), `a name without "="`, "rename the mount: the command line splits at =")
			}
			c.distinct(place+".name", m.Name, taken)
		}
		c.mount(place, m)
		for j, other := range c.h.Mounts[:i] {
			if math.Hypot(m.AtMM[0]-other.AtMM[0], m.AtMM[1]-other.AtMM[1]) < leastWidthMM {
				c.refuse(place+".at_mm", fmt.Sprintf("the place of mounts[%d]", j), fmt.Sprintf("mounts at least %d mm apart in plan", leastWidthMM), "measure both mounts again")
			}
		}
	}
	c.notInLine()
}

func (c *checker) mount(place string, m Mount) {
	for i, axis := range []window{
		{-6000, 6000, -3000, 3000, "mm"},
		{-2000, 2000, -700, 700, "mm"},
		{-2000, 2000, -400, 600, "mm"},
	} {
		c.within(fmt.Sprintf("%s.at_mm[%d]", place, i), m.AtMM[i], axis)
	}
	switch m.Kind {
	case Rubber:
		c.adjuster(place, m)
		c.within(place+".stiffness_n_per_mm.along", m.StiffnessNPerMM.Along, window{1, 1e5, 20, 5000, "N/mm"})
	case Solid:
		c.within(place+".shim_step_mm", m.ShimStepMM, window{0.001, 10, 0.02, 2, "mm"})
		c.within(place+".stiffness_n_per_mm.along", m.StiffnessNPerMM.Along, window{100, 1e7, 5000, 1e6, "N/mm"})
	default:
		c.refuse(place+".kind", strictjson.Quoted(string(m.Kind)), `"rubber" or "solid"`, "choose one of these")
		return
	}
	c.crossStiffness(place+".stiffness_n_per_mm", m)
	c.travel(place+".nut_range_mm", m.NutRangeMM, "down", "up")
	c.travel(place+".slide_range_mm", m.SlideRangeMM, "to starboard", "to port")
	switch m.Reach {
	case Open, Awkward, Blind:
	default:
		c.refuse(place+".reach", strictjson.Quoted(string(m.Reach)), `one of "open", "awkward", "blind"`, "choose one of these")
	}
}

// pitchTolerance is how far a stated pitch may stand from its thread's. The
// nearest two pitches in use, 20 threads an inch and 1.25 mm, are 1.6 % apart.
const pitchTolerance = 0.005

// adjuster holds the nut's thread and its stated pitch against each other.
func (c *checker) adjuster(place string, m Mount) {
	t, err := ThreadOf(m.Thread)
	if err != nil {
		c.refuse(place+".thread", strictjson.Quoted(m.Thread), err.Error(), "read the thread off the stud with a pitch gauge")
		return
	}
	if !(math.Abs(m.ThreadPitchMM-t.PitchMM) <= pitchTolerance*t.PitchMM) {
		c.refuse(place+".thread_pitch_mm", with(m.ThreadPitchMM, "mm"),
			fmt.Sprintf("%.6g mm, the pitch of %s by %s", t.PitchMM, t.Designation, t.Standard),
			"correct the pitch, or name the thread that is fitted")
	}
	if t.MajorMM < 7.5 || t.MajorMM > 40 {
		c.doubt(place+".thread", t.Designation, "a stud of 8 to 40 mm as a rule", "measure the stud; keep it if it is so")
	}
}

// crossStiffness: rubber is as a rule 1 to 4 times as stiff fore and aft and
// 0.4 to 1.5 times athwart as along its adjuster.
func (c *checker) crossStiffness(place string, m Mount) {
	s := m.StiffnessNPerMM
	hard := window{1, 1e5, 1, 1e5, "N/mm"}
	if m.Kind == Solid {
		hard = window{100, 1e7, 100, 1e7, "N/mm"}
	}
	fine := c.within(place+".fore_aft", s.ForeAft, hard)
	fine = c.within(place+".athwart", s.Athwart, hard) && fine
	if !fine || m.Kind == Solid || !(s.Along > 0) {
		return
	}
	if r := s.ForeAft / s.Along; r < 0.8 || r > 4.5 {
		c.doubt(place+".fore_aft", fmt.Sprintf("%.3g times the stiffness along", r), "1 to 4 times as a rule", "check the three figures are not exchanged")
	}
	if r := s.Athwart / s.Along; r < 0.35 || r > 1.7 {
		c.doubt(place+".athwart", fmt.Sprintf("%.3g times the stiffness along", r), "0.4 to 1.5 times as a rule", "check the three figures are not exchanged")
	}
}

// travel is a range [0 or less, 0 or more] about the drawn position.
func (c *checker) travel(place string, r [2]float64, low, high string) {
	c.bound(place+"[0]", window{-150, 0, -30, 0, "mm"})
	c.bound(place+"[1]", window{0, 150, 0, 30, "mm"})
	switch {
	case r[0] > r[1]:
		c.refuse(place, fmt.Sprintf("[%s, %s]", strictjson.Plain(r[0]), strictjson.Plain(r[1])), "the smaller number first", "exchange the two numbers")
	case !(r[0] <= 0 && r[1] >= 0):
		c.refuse(place, fmt.Sprintf("[%s, %s]", strictjson.Plain(r[0]), strictjson.Plain(r[1])),
			fmt.Sprintf("[0 or less (%s), 0 or more (%s)]", low, high), "count both from where the mount stands now")
	default:
		for i := range r {
			c.within(fmt.Sprintf("%s[%d]", place, i), r[i], window{-150, 150, -30, 30, "mm"})
		}
	}
}

// notInLine refuses mounts that stand in one line in plan: the engine could
// turn about that line.
func (c *checker) notInLine() {
	for _, m := range c.h.Mounts {
		if !(math.Abs(m.AtMM[0])+math.Abs(m.AtMM[1]) < 1e6) {
			return // refused already
		}
	}
	w := planWidthMM(c.h.Mounts)
	switch {
	case w < leastWidthMM:
		c.refuse("mounts", fmt.Sprintf("all within %.3g mm of one line in plan", w), fmt.Sprintf("at least three not in one line, %d mm or more off it", leastWidthMM), "measure x and y of each mount again")
	case w < lowWidthMM:
		c.doubt("mounts", fmt.Sprintf("all within %.3g mm of one line in plan", w), fmt.Sprintf("%d mm or more as a rule", lowWidthMM), "measure x and y of each mount again")
	}
}

// planWidthMM is the least, over all lines through two mounts, of the largest
// distance of a mount from that line, in the plan of E.
func planWidthMM(mounts []Mount) float64 {
	least := math.Inf(1)
	for i, a := range mounts {
		for _, b := range mounts[:i] {
			far := 0.0
			for _, m := range mounts {
				far = math.Max(far, math.Abs(offLineMM(a, b, m.AtMM[0], m.AtMM[1])))
			}
			least = math.Min(least, far)
		}
	}
	return least
}

// offLineMM is the signed distance in plan of (x, y) from the line a to b.
func offLineMM(a, b Mount, x, y float64) float64 {
	dx, dy := b.AtMM[0]-a.AtMM[0], b.AtMM[1]-a.AtMM[1]
	n := math.Hypot(dx, dy)
	if n == 0 {
		return math.Hypot(x-a.AtMM[0], y-a.AtMM[1])
	}
	return (dx*(y-a.AtMM[1]) - dy*(x-a.AtMM[0])) / n
}
