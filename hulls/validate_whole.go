package hulls

// This file doubts a possible hull for its proportions: where the weight
// falls, whether words and positions agree, how far the bearings stand apart.

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"aligner/hulls/strictjson"
)

// footprint asks whether the engine's weight falls inside its mounts, and how
// far it presses rubber together.
func (c *checker) footprint() {
	h := c.h
	bedRad := (h.ShaftAngleDeg - h.Engine.DownAngleDeg) * math.Pi / 180
	var meanZ, along float64
	solid := true
	for _, m := range h.Mounts {
		meanZ += m.AtMM[2] / float64(len(h.Mounts))
		along += m.StiffnessNPerMM.Along
		solid = solid && m.Kind == Solid
	}
	// The weight goes straight down, the bed slopes.
	com := h.Engine.CentreOfMassMM
	x, y := com[0]-(com[2]-meanZ)*math.Tan(bedRad), com[1]
	if out := outsideMM(h.Mounts, x, y); out > 0 {
		value := fmt.Sprintf("the weight %.3g mm outside the mounts", out)
		if solid {
			c.refuse("engine.centre_of_mass_mm", value, "inside the mounts: solid feet hold nothing down", "measure the centre of mass and the mounts again")
		} else {
			c.doubt("engine.centre_of_mass_mm", value, "inside the mounts as a rule", "measure the centre of mass and the mounts again")
		}
	}
	sagMM := h.Engine.MassKg * gravityMS2 * math.Cos(bedRad) / along
	if anyRubber(h.Mounts) && (sagMM < 1 || sagMM > 8) {
		c.doubt("engine.mass_kg", fmt.Sprintf("%s kg, which presses the mounts together by %.3g mm on average", strictjson.Plain(h.Engine.MassKg), sagMM),
			"1 to 8 mm as a rule", "check the mass and the stiffness of the mounts")
	}
}

func anyRubber(mounts []Mount) bool {
	return slices.ContainsFunc(mounts, func(m Mount) bool { return m.Kind == Rubber })
}

// outsideMM is how far a point in plan lies outside the mounts' hull; 0 inside.
func outsideMM(mounts []Mount, x, y float64) float64 {
	worst := 0.0
	for i, a := range mounts {
		for j, b := range mounts {
			if i == j {
				continue
			}
			edge := true // all mounts to the left of a -> b, or on it
			for _, m := range mounts {
				edge = edge && offLineMM(a, b, m.AtMM[0], m.AtMM[1]) >= -1e-9
			}
			if edge {
				worst = math.Max(worst, -offLineMM(a, b, x, y))
			}
		}
	}
	return worst
}

// layout asks whether words and positions agree. A mount called port that
// stands to starboard would turn every sentence round.
func (c *checker) layout() {
	h := c.h
	foreMost, aftMost := math.Inf(1), math.Inf(-1) // the aftmost "fore", the foremost "aft"
	for i, m := range h.Mounts {
		place := fmt.Sprintf("mounts[%d].at_mm", i)
		words := strings.Fields(strings.ToLower(m.Name))
		port, starboard := slices.Contains(words, "port"), slices.Contains(words, "starboard")
		if port && !starboard && m.AtMM[1] < 0 || starboard && !port && m.AtMM[1] > 0 {
			c.doubt(place+"[1]", fmt.Sprintf("y = %s on %s", strictjson.Plain(m.AtMM[1]), strictjson.Quoted(m.Name)), "y above 0 to port, below 0 to starboard", "exchange the sign or the name")
		}
		if slices.Contains(words, "fore") {
			foreMost = math.Min(foreMost, m.AtMM[0])
		}
		if slices.Contains(words, "aft") {
			aftMost = math.Max(aftMost, m.AtMM[0])
		}
	}
	if foreMost < aftMost {
		c.doubt("mounts", "a mount named fore that stands aft of one named aft", "x larger for the fore mounts (x is forward)", "exchange the names or the numbers")
	}
	c.layoutAngles()
}

func (c *checker) layoutAngles() {
	h := c.h
	d, x := h.Engine.DownAngleDeg, h.Engine.CentreOfMassMM[0]
	switch {
	case h.Layout == InLine && math.Abs(d) > 2:
		c.doubt("engine.down_angle_deg", with(d, "degrees"), "about 0 in-line", `correct it, or name the layout "down-angle"`)
	case h.Layout == DownAngle && d < 3:
		c.doubt("engine.down_angle_deg", with(d, "degrees"), "7 to 15 with a down-angle gearbox", `correct it, or name the layout "in-line"`)
	}
	if h.Layout == VDrive && x > 0 || h.Layout != VDrive && x < 0 {
		want := "forward of the face (x above 0)"
		if h.Layout == VDrive {
			want = "aft of the face in a V-drive (x below 0)"
		}
		c.doubt("engine.centre_of_mass_mm[0]", with(x, "mm"), want, "check the sign and the layout")
	}
	if bed := h.ShaftAngleDeg - d; math.Abs(bed) > 17 {
		c.doubt("engine.down_angle_deg", fmt.Sprintf("an engine bed that slopes by %s degrees", strictjson.Plain(bed)), "at most 17 as a rule", "check shaft angle and down angle")
	}
}

// Spans of 20 to 40 diameters are the rule of thumb for bearing spacing; slow
// shafts are met up to 55 (both common practice).
const leastSpanDiameters, mostSpanDiameters = 20, 55

func (c *checker) spans() {
	for _, s := range c.h.Spans() {
		from := "the face"
		if s.From != "" {
			from = strictjson.Quoted(s.From)
		}
		if n := s.ClearMM / c.h.Shaft.DiameterMM; n < leastSpanDiameters || n > mostSpanDiameters {
			c.doubt(fmt.Sprintf("bearings[%d].at_mm", s.bearing), fmt.Sprintf("%.3g shaft diameters clear from %s to %s", n, from, strictjson.Quoted(s.To)),
				fmt.Sprintf("%d to %d as a rule", leastSpanDiameters, mostSpanDiameters), "check the bearing's place and the shaft's diameter")
		}
	}
}

// Span is a piece of shaft nothing carries: from the face (From is "") or a bearing's
// aft end to the next bearing's fore end.
type Span struct {
	From, To string
	ClearMM  float64
	bearing  int // index of To
}

// Spans are those of the shaft, from fore.
func (h *Hull) Spans() []Span {
	var spans []Span
	at, from := 0.0, ""
	for _, b := range h.bearingsFromFore() {
		spans = append(spans, Span{from, b.Name, at - (b.AtMM + b.LengthMM/2), b.index})
		at, from = b.AtMM-b.LengthMM/2, b.Name
	}
	return spans
}

type indexedBearing struct {
	Bearing
	index int
}

func (h *Hull) bearingsFromFore() []indexedBearing {
	list := make([]indexedBearing, len(h.Bearings))
	for i, b := range h.Bearings {
		list[i] = indexedBearing{b, i}
	}
	slices.SortStableFunc(list, func(a, b indexedBearing) int {
		switch {
		case a.AtMM > b.AtMM:
			return -1
		case a.AtMM < b.AtMM:
			return 1
		}
		return 0
	})
	return list
}
