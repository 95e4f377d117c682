package response

// This file lists the numbers of a hull that are not known well, and by how
// much. The hull file's own tolerances come first.

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"aligner/hulls"
	"aligner/hulls/fields"
)

// Defaults for numbers the hull file gives no tolerance for, as plus or minus:
// parts of the number itself, or mm (our own judgement of rubber, and of a tape
// measure in a bilge).
const (
	StiffnessPart = 0.30 // of each mount, in each direction
	BearingPart   = 0.50 // of a bearing's stiffness and clearance
	PositionMM    = 5.0
	MassPart      = 0.05
)

// number is one uncertain number of a hull.
type number struct {
	pointer string // into the hull file
	plus    float64
	shift   func(h *hulls.Hull, by float64)
}

// numbers lists them all.
func numbers(h *hulls.Hull) []number {
	var all []number
	add := func(part, mm float64, of func(*hulls.Hull) *float64, format string, args ...any) {
		n := number{pointer: fmt.Sprintf(format, args...), shift: func(h *hulls.Hull, by float64) { *of(h) += by }}
		n.plus = part*math.Abs(*of(h)) + mm
		if own, ok := h.Tolerance[n.pointer]; ok {
			n.plus = own
		}
		if n.plus > 0 {
			all = append(all, n)
		}
	}
	for i := range h.Mounts {
		at := fmt.Sprintf("/mounts/%d/", i)
		add(StiffnessPart, 0, func(h *hulls.Hull) *float64 { return &h.Mounts[i].StiffnessNPerMM.Along }, "%sstiffness_n_per_mm/along", at)
		add(StiffnessPart, 0, func(h *hulls.Hull) *float64 { return &h.Mounts[i].StiffnessNPerMM.ForeAft }, "%sstiffness_n_per_mm/fore_aft", at)
		add(StiffnessPart, 0, func(h *hulls.Hull) *float64 { return &h.Mounts[i].StiffnessNPerMM.Athwart }, "%sstiffness_n_per_mm/athwart", at)
		for k := range 3 {
			add(0, PositionMM, func(h *hulls.Hull) *float64 { return &h.Mounts[i].AtMM[k] }, "%sat_mm/%d", at, k)
		}
	}
	for k := range 3 {
		add(0, PositionMM, func(h *hulls.Hull) *float64 { return &h.Engine.CentreOfMassMM[k] }, "/engine/centre_of_mass_mm/%d", k)
	}
	add(MassPart, 0, func(h *hulls.Hull) *float64 { return &h.Engine.MassKg }, "/engine/mass_kg")
	for i := range h.Bearings {
		at := fmt.Sprintf("/bearings/%d/", i)
		add(BearingPart, 0, func(h *hulls.Hull) *float64 { return &h.Bearings[i].RadialStiffnessNPerMM }, "%sradial_stiffness_n_per_mm", at)
		add(BearingPart, 0, func(h *hulls.Hull) *float64 { return &h.Bearings[i].DiametralClearanceMM }, "%sdiametral_clearance_mm", at)
		add(0, PositionMM, func(h *hulls.Hull) *float64 { return &h.Bearings[i].AtMM }, "%sat_mm", at)
	}
	if h.StuffingBox != nil {
		add(BearingPart, 0, func(h *hulls.Hull) *float64 { return &h.StuffingBox.RadialStiffnessNPerMM }, "/stuffing_box/radial_stiffness_n_per_mm")
	}
	return append(all, stated(h, all)...)
}

// stated are the other numbers the hull file itself is unsure of, such as those
// of a boat nobody has measured yet. How far a nut or slide can go does not change
// what it does.
func stated(h *hulls.Hull, listed []number) (all []number) {
	if len(h.Tolerance) == 0 {
		return nil
	}
	for _, f := range fields.List(h) {
		plus := h.Tolerance[f.Pointer]
		if !(plus > 0) || f.Kind == fields.Number || strings.Contains(f.Pointer, "_range_mm/") ||
			slices.ContainsFunc(listed, func(n number) bool { return n.pointer == f.Pointer }) {
			continue
		}
		all = append(all, number{pointer: f.Pointer, plus: plus, shift: f.Shift})
	}
	return all
}

// Tolerance is the plus-or-minus a number of the hull is taken to be known to, in
// its own unit; 0 where none is: it is taken to be exact.
func Tolerance(h *hulls.Hull, pointer string) float64 {
	for _, n := range numbers(h) {
		if n.pointer == pointer {
			return n.plus
		}
	}
	return 0
}

// moved is a copy of the hull with one number moved by sds standard deviations.
func (n number) moved(h *hulls.Hull, sds float64) hulls.Hull {
	c := h.Clone()
	n.shift(&c, sds*n.plus/math.Sqrt(3))
	return c
}
