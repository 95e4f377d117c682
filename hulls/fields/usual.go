package fields

// This file is what to take for what is not measured. All of it is common
// practice or our own judgement, no source, unless one is named; each with a
// plus-or-minus wide enough to be honest.

import (
	"math"

	"aligner/hulls"
)

// StudThreads and BoltThreads are threads commonly met, by ASME B1.1 and ISO 261.
var (
	StudThreads = []string{"M12x1.75", "M14x2", "M16x2", "M16x1.5", "M18x2.5", "M20x2.5", "M20x1.5", "M24x3", "M24x2",
		"1/2-13 UNC", "1/2-20 UNF", "5/8-11 UNC", "5/8-18 UNF", "3/4-10 UNC", "3/4-16 UNF", "7/8-9 UNC", "1-8 UNC"}
	BoltThreads = []string{"M8x1.25", "M10x1.5", "M10x1.25", "M12x1.75", "M14x2", "M16x2",
		"5/16-24 UNF", "3/8-16 UNC", "3/8-24 UNF", "7/16-14 UNC", "7/16-20 UNF", "1/2-13 UNC", "1/2-20 UNF", "5/8-18 UNF"}
)

// usualPressedMM is how far an engine presses its rubber together. Mounts are chosen
// for 2 to 6 mm (natural frequencies of 11 to 6 Hz), which is its stiffness and half
// as much more or less.
const usualPressedMM = 3

// usualStiffness of rubber along its adjuster (way 0), fore and aft (1) and
// athwart (2). Fore and aft 1 to 4 times, athwart 0.4 to 1.5 times the first are
// met; solid feet have none.
func usualStiffness(h *hulls.Hull, i, way int) *Usual {
	if h.Mounts[i].Kind == hulls.Solid {
		return nil
	}
	along := h.Engine.MassKg * 9.80665 / float64(len(h.Mounts)) / usualPressedMM
	if way > 0 {
		along = h.Mounts[i].StiffnessNPerMM.Along
	}
	v := math.Round(along * [...]float64{1, 1.6, 0.7}[way])
	return &Usual{v, math.Round(v * [...]float64{0.5, 0.6, 0.6}[way])}
}

// usualCentre of mass: over the middle of the mounts along the bed, a little to
// the heavy end of a V-drive; amidships; a hand's breadth over the mounts.
func usualCentre(h *hulls.Hull, k int) *Usual {
	low, high, height := math.Inf(1), math.Inf(-1), 0.0
	for _, m := range h.Mounts {
		low, high = min(low, m.AtMM[0]), max(high, m.AtMM[0])
		height += m.AtMM[2] / float64(len(h.Mounts))
	}
	switch k {
	case 0:
		return &Usual{math.Round((low + high) / 2), math.Round(max(40, (high-low)/8))}
	case 1:
		return &Usual{0, 15}
	}
	return &Usual{math.Round(height + 35*math.Cbrt(h.Engine.MassKg/10)), 60}
}

func usualDownAngle(h *hulls.Hull) *Usual {
	switch h.Layout {
	case hulls.InLine:
		return &Usual{0, 0.5}
	case hulls.DownAngle:
		return &Usual{8, 1}
	}
	return &Usual{10, 3}
}

// usualHalfMass is half of a steel drum of the half's size: flange and hub.
func usualHalfMass(h *hulls.Hull) *Usual {
	d, l := h.Coupling.OuterDiameterMM, h.Coupling.ShaftHalfLengthMM
	kg := 0.55 * 7850e-9 * math.Pi / 4 * d * d * l
	return &Usual{round(kg, 0.1), round(0.3*kg, 0.1)}
}

// usualClearance of a bearing in water, 0.08 to 0.25 mm new by size; worn out at
// three times that.
func usualClearance(diameterMM float64) *Usual {
	v := round(0.1+0.004*diameterMM, 0.01)
	return &Usual{v, round(v/2, 0.01)}
}

// usualBearing is a rubber-lined bearing's stiffness, which grows with the area
// that is pressed: 2.4 N/mm for each square millimetre of length times diameter, as
// our own built-in boats have it.
func usualBearing(lengthMM, diameterMM float64) *Usual {
	v := round(2*lengthMM*diameterMM, 100)
	return &Usual{v, round(v/2, 100)}
}

func usualBoxMass(diameterMM float64) *Usual {
	v := round(2*math.Pow(diameterMM/30, 2), 0.1)
	return &Usual{v, round(0.4*v, 0.1)}
}

// usualPropellerMass: a bronze propeller weighs 60 to 250 kg a cubic metre of its
// diameter cubed.
func usualPropellerMass(diameterMM float64) *Usual {
	kg := 110 * math.Pow(diameterMM/1000, 3)
	return &Usual{round(kg, 0.1), round(0.4*kg, 0.1)}
}

// round rounds to whole steps, at least one, and to what is written so.
func round(v, step float64) float64 {
	n := max(1, math.Round(v/step))
	if step < 1 {
		return n / math.Round(1/step)
	}
	return n * step
}

// GuessPlus is the plus-or-minus of the field's number where nobody measured it: as
// the usual value has it, or one taken over from another boat; 0 where none is
// stated.
func (f *Field) GuessPlus(h *hulls.Hull) float64 { return f.guessPlus(h) }

// CarePlus is the plus-or-minus of the field's number measured as its words say
// (our own judgement): by tape in a bilge, by calliper, by dial.
func (f *Field) CarePlus(h *hulls.Hull) float64 {
	v := math.Abs(f.get(h).Number)
	switch f.Key {
	case "face_diameter", "pilot_diameter", "shaft_diameter", "log_bore":
		return 0.5
	case "half_length", "bearing_length":
		return 2
	case "bearing_stiffness", "box_stiffness":
		return 0.5 * v
	}
	switch f.Kind {
	case Length:
		return 5
	case Clearance:
		return max(0.03, 0.1*v)
	case Mass:
		return 0.03 * v
	case Stiffness:
		return 0.2 * v
	case Angle:
		return 0.5
	case Density:
		return 200
	}
	return 0
}
