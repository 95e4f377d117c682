package fields

// This file changes one field: a new hull, or one clear fault.

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"aligner/hulls"
	"aligner/hulls/strictjson"
)

// Set is the hull with a field at a measured value. The hull given is not touched.
// What the value can never be is refused, an error of type *hulls.Fault; what only
// does not go with other fields makes a draft (see Package comment).
func Set(h hulls.Hull, pointer string, v Value) (hulls.Hull, error) {
	f, ok := Find(&h, pointer)
	if !ok {
		return h, &hulls.Fault{Place: placeOf(pointer), Value: "a pointer to nothing", Limit: "a field of this hull", Mend: "correct the pointer; lists count from 0"}
	}
	if fault := f.never(v); fault != nil {
		return h, fault
	}
	next := h.Clone()
	f.set(&next, v)
	if fault := f.refusedText(&next); fault != nil {
		return h, fault
	}
	if f.Assumed {
		delete(next.Tolerance, pointer) // it is measured now
		tidy(&next)
	}
	return next, nil
}

// never is why a number is refused whatever the rest of the hull is.
func (f *Field) never(v Value) *hulls.Fault {
	if !f.Kind.IsNumber() {
		return nil
	}
	ever := f.Limit.Ever
	if f.Key == "shaft_speed" && v.Number == 0 { // not stated
		return nil
	}
	if !(v.Number >= ever[0] && v.Number <= ever[1]) || math.IsInf(v.Number, 0) {
		return &hulls.Fault{Place: f.Place(), Value: with(v.Number, f.Limit.Unit),
			Limit: fmt.Sprintf("%s to %s", strictjson.Plain(ever[0]), with(ever[1], f.Limit.Unit)), Mend: "correct the number or its unit"}
	}
	if f.Kind == Number && v.Number != math.Trunc(v.Number) {
		return &hulls.Fault{Place: f.Place(), Value: strictjson.Plain(v.Number), Limit: "a whole number", Mend: "count again"}
	}
	return nil
}

// refusedText is what the hull's own judgement says of a text just set.
func (f *Field) refusedText(h *hulls.Hull) *hulls.Fault {
	if f.Kind.IsNumber() {
		return nil
	}
	for _, fault := range hulls.Validate(*h).Refusals {
		if fault.Place == f.Place() {
			return &fault
		}
	}
	return nil
}

func with(v float64, unit string) string {
	return strings.TrimSpace(strictjson.Plain(v) + " " + unit)
}

// TakeUsual is the hull with a field not measured: the usual value, with its
// plus-or-minus in the tolerance table.
func TakeUsual(h hulls.Hull, pointer string) (hulls.Hull, error) {
	f, ok := Find(&h, pointer)
	if !ok || f.Usual == nil {
		return h, &hulls.Fault{Place: placeOf(pointer), Value: "no usual value", Limit: "a field that has one", Mend: "measure it"}
	}
	next, err := Set(h, pointer, Value{Number: f.Usual.Value})
	if err != nil {
		return h, err
	}
	if next.Tolerance == nil {
		next.Tolerance = map[string]float64{}
	}
	next.Tolerance[pointer] = f.Usual.Plus
	return next, nil
}

// SetTolerance is the hull with a number's plus-or-minus; below nought takes it
// away.
func SetTolerance(h hulls.Hull, pointer string, plus float64) (hulls.Hull, error) {
	f, ok := Find(&h, pointer)
	if !ok || !f.Kind.IsNumber() || math.IsNaN(plus) || math.IsInf(plus, 0) {
		return h, &hulls.Fault{Place: strictjson.Join("tolerance", pointer), Value: strictjson.Plain(plus), Limit: "0 or more", Mend: "give the plus-or-minus without its sign"}
	}
	next := h.Clone()
	if next.Tolerance == nil {
		next.Tolerance = map[string]float64{}
	}
	if next.Tolerance[pointer] = plus; plus < 0 {
		delete(next.Tolerance, pointer)
	}
	tidy(&next)
	return next, nil
}

// tidy keeps an empty table out of the hull, as its reader does.
func tidy(h *hulls.Hull) {
	if len(h.Tolerance) == 0 {
		h.Tolerance = nil
	}
}

// renameMount renames a mount everywhere in the hull.
func renameMount(h *hulls.Hull, i int, name string) {
	old := h.Mounts[i].Name
	h.Mounts[i].Name = name
	for _, m := range h.MeasuredResponse {
		for _, by := range []map[string]float64{m.NutFlats, m.SlideMM} {
			if v, ok := by[old]; ok {
				delete(by, old)
				by[name] = v
			}
		}
	}
}

// changeThread changes the adjuster's thread, and its pitch, which follows.
func changeThread(h *hulls.Hull, i int, designation string) {
	m := &h.Mounts[i]
	m.Thread = designation
	if t, err := hulls.ThreadOf(designation); err == nil {
		m.ThreadPitchMM = t.PitchMM
	}
}

// Usual figures of what a mount's other kind has.
const (
	usualShimMM      = 0.5
	usualSolidNPerMM = 200000
	usualStud        = "M16x2"
)

// changeKind makes a mount rubber or solid, with the usual figures of what the
// other kind has not.
func changeKind(h *hulls.Hull, i int, kind hulls.MountKind) {
	m := &h.Mounts[i]
	if m.Kind == kind || kind != hulls.Rubber && kind != hulls.Solid {
		m.Kind = kind
		return
	}
	m.Kind = kind
	under := fmt.Sprintf("/mounts/%d/", i)
	if kind == hulls.Solid {
		m.Thread, m.ThreadPitchMM, m.ShimStepMM = "", 0, usualShimMM
		m.StiffnessNPerMM = hulls.Stiffness{Along: usualSolidNPerMM, ForeAft: usualSolidNPerMM, Athwart: usualSolidNPerMM}
		for _, key := range []string{"thread_pitch_mm", "stiffness_n_per_mm/along", "stiffness_n_per_mm/fore_aft", "stiffness_n_per_mm/athwart"} {
			delete(h.Tolerance, under+key)
		}
	} else {
		m.ShimStepMM = 0
		changeThread(h, i, usualStud)
		m.StiffnessNPerMM.Along = usualStiffness(h, i, 0).Value
		m.StiffnessNPerMM.ForeAft, m.StiffnessNPerMM.Athwart = usualStiffness(h, i, 1).Value, usualStiffness(h, i, 2).Value
		delete(h.Tolerance, under+"shim_step_mm")
	}
	tidy(h)
}

// changeMaterial changes the alloy; a condition it is not made in goes.
func changeMaterial(h *hulls.Hull, uns string) {
	h.Shaft.Material = uns
	if !slices.Contains(hulls.Conditions(uns), h.Shaft.Condition) {
		h.Shaft.Condition = ""
	}
}
