package fields

// This file lists the fields of a hull, group by group.

import (
	"fmt"
	"math"

	"aligner/hulls"
)

// List is all of them, in the order of the form.
func List(h *hulls.Hull) []Field {
	l := &lister{h: h, limits: hulls.Limits(*h)}
	l.boat()
	l.engine()
	for i := range h.Mounts {
		l.mount(i)
	}
	l.coupling()
	l.shaft()
	for i := range h.Bearings {
		l.bearing(i)
	}
	l.log()
	if h.StuffingBox != nil {
		l.box()
	}
	l.propeller()
	return l.all
}

// Find is a hull's field by its pointer.
func Find(h *hulls.Hull, pointer string) (Field, bool) {
	for _, f := range List(h) {
		if f.Pointer == pointer {
			return f, true
		}
	}
	return Field{}, false
}

// lister gathers them.
type lister struct {
	h      *hulls.Hull
	limits map[string]hulls.Limit
	group  Group
	under  string // pointer of the group
	all    []Field
}

// begin begins a group.
func (l *lister) begin(g Group, under string) { l.group, l.under = g, under }

// text adds a text, or a choice where choices are given.
func (l *lister) text(key, pointer string, kind Kind, get func(*hulls.Hull) string, set func(*hulls.Hull, string), choices ...string) {
	l.all = append(l.all, Field{Pointer: l.under + pointer, Key: key, Group: l.group, Kind: kind, Choices: choices,
		get: func(h *hulls.Hull) Value { return Value{Text: get(h)} },
		set: func(h *hulls.Hull, v Value) { set(h, v.Text) }})
}

// plain adds a text that stands in the hull as such.
func (l *lister) plain(key, pointer string, kind Kind, at func(*hulls.Hull) *string, choices ...string) {
	l.text(key, pointer, kind, func(h *hulls.Hull) string { return *at(h) }, func(h *hulls.Hull, s string) { *at(h) = s }, choices...)
}

// number adds a number; tape and usual may be nil.
func (l *lister) number(key, pointer string, kind Kind, at func(*hulls.Hull) *float64, tape *Tape, usual *Usual) {
	f := Field{Pointer: l.under + pointer, Key: key, Group: l.group, Kind: kind, Tape: tape, Usual: usual,
		get: func(h *hulls.Hull) Value { return Value{Number: *at(h)} },
		set: func(h *hulls.Hull, v Value) { *at(h) = v.Number }}
	f.Limit = l.limits[f.Place()]
	f.Assumed = assumed(l.h, f.Pointer, f.guessPlus(l.h))
	l.all = append(l.all, f)
}

// knownNoBetter is how near to the usual value's plus-or-minus a number's own may
// come before it counts as measured; some room, as the usual follows the rest.
const knownNoBetter = 0.6

// guessPlus is the plus-or-minus of a number nobody measured: the usual value's, or
// that of one taken over from another boat, of the same build. 0: none is stated.
func (f *Field) guessPlus(h *hulls.Hull) float64 {
	v := math.Abs(f.Get(h).Number)
	switch {
	case f.Usual != nil:
		return f.Usual.Plus
	case f.Kind == Length:
		return max(3, 0.15*v)
	case f.Kind == Angle:
		return 3
	case f.Kind == Mass:
		return 0.3 * v
	case f.Kind == Clearance, f.Kind == Stiffness:
		return 0.5 * v
	}
	return 0
}

func assumed(h *hulls.Hull, pointer string, plus float64) bool {
	own, ok := h.Tolerance[pointer]
	return ok && plus > 0 && own >= knownNoBetter*plus
}

func (l *lister) boat() {
	l.begin(Group{Part: Boat}, "")
	l.plain("name", "/name", Text, func(h *hulls.Hull) *string { return &h.Name })
	l.plain("hin", "/hin", Text, func(h *hulls.Hull) *string { return &h.HIN })
	l.plain("owner_reference", "/owner_reference", Text, func(h *hulls.Hull) *string { return &h.OwnerReference })
	l.text("layout", "/layout", Choice, func(h *hulls.Hull) string { return string(h.Layout) },
		func(h *hulls.Hull, s string) { h.Layout = hulls.Layout(s) },
		string(hulls.InLine), string(hulls.DownAngle), string(hulls.VDrive))
	l.number("shaft_angle", "/shaft_angle_deg", Angle, func(h *hulls.Hull) *float64 { return &h.ShaftAngleDeg },
		along(S, -l.h.Shaft.LengthMM/2, -l.h.Coupling.ShaftHalfLengthMM), &Usual{10, 3})
	l.number("shaft_speed", "/shaft_speed_max_rpm", Speed, func(h *hulls.Hull) *float64 { return &h.ShaftSpeedMaxRPM }, nil, nil)
	l.plain("hull_section", "/look/hull_section", Choice, func(h *hulls.Hull) *string { return &h.Look.HullSection }, "", "round", "vee", "flat")
}

func (l *lister) engine() {
	h := l.h
	l.begin(Group{Part: Engine}, "/engine")
	l.number("engine_mass", "/mass_kg", Mass, func(h *hulls.Hull) *float64 { return &h.Engine.MassKg }, nil, nil)
	for k, key := range [...]string{"engine_x", "engine_y", "engine_z"} {
		l.number(key, fmt.Sprintf("/centre_of_mass_mm/%d", k), Length, func(h *hulls.Hull) *float64 { return &h.Engine.CentreOfMassMM[k] },
			axis(h.Engine.CentreOfMassMM, k), usualCentre(h, k))
	}
	l.number("down_angle", "/down_angle_deg", Angle, func(h *hulls.Hull) *float64 { return &h.Engine.DownAngleDeg }, nil, usualDownAngle(h))
	l.under = ""
	l.plain("engine_look", "/look/engine", Choice, func(h *hulls.Hull) *string { return &h.Look.Engine }, "", "petrol-v", "in-line-diesel", "small-auxiliary")
}

func (l *lister) mount(i int) {
	m := &l.h.Mounts[i]
	l.begin(Group{Mount, i, m.Name}, fmt.Sprintf("/mounts/%d", i))
	l.text("mount_name", "/name", Text, func(h *hulls.Hull) string { return h.Mounts[i].Name }, func(h *hulls.Hull, s string) { renameMount(h, i, s) })
	for k, key := range [...]string{"mount_x", "mount_y", "mount_z"} {
		l.number(key, fmt.Sprintf("/at_mm/%d", k), Length, func(h *hulls.Hull) *float64 { return &h.Mounts[i].AtMM[k] }, axis(m.AtMM, k), nil)
	}
	l.text("mount_kind", "/kind", Choice, func(h *hulls.Hull) string { return string(h.Mounts[i].Kind) },
		func(h *hulls.Hull, s string) { changeKind(h, i, hulls.MountKind(s)) }, string(hulls.Rubber), string(hulls.Solid))
	if m.Kind == hulls.Solid {
		l.number("mount_shim", "/shim_step_mm", Clearance, func(h *hulls.Hull) *float64 { return &h.Mounts[i].ShimStepMM }, nil, nil)
	} else {
		l.text("mount_thread", "/thread", Thread, func(h *hulls.Hull) string { return h.Mounts[i].Thread },
			func(h *hulls.Hull, s string) { changeThread(h, i, s) }, StudThreads...)
	}
	for _, s := range []struct {
		key, pointer string
		at           func(*hulls.Hull) *float64
		way          int
	}{
		{"stiffness_along", "/along", func(h *hulls.Hull) *float64 { return &h.Mounts[i].StiffnessNPerMM.Along }, 0},
		{"stiffness_fore_aft", "/fore_aft", func(h *hulls.Hull) *float64 { return &h.Mounts[i].StiffnessNPerMM.ForeAft }, 1},
		{"stiffness_athwart", "/athwart", func(h *hulls.Hull) *float64 { return &h.Mounts[i].StiffnessNPerMM.Athwart }, 2},
	} {
		l.number(s.key, "/stiffness_n_per_mm"+s.pointer, Stiffness, s.at, nil, usualStiffness(l.h, i, s.way))
	}
	down, up := "nut_down", "nut_up"
	if m.Kind == hulls.Solid {
		down, up = "shims_down", "shims_up"
	}
	for k, key := range [...]string{down, up} {
		l.number(key, fmt.Sprintf("/nut_range_mm/%d", k), Length, func(h *hulls.Hull) *float64 { return &h.Mounts[i].NutRangeMM[k] }, reach(m.AtMM, 2, m.NutRangeMM[k]), nil)
	}
	for k, key := range [...]string{"slide_starboard", "slide_port"} {
		l.number(key, fmt.Sprintf("/slide_range_mm/%d", k), Length, func(h *hulls.Hull) *float64 { return &h.Mounts[i].SlideRangeMM[k] }, reach(m.AtMM, 1, m.SlideRangeMM[k]), nil)
	}
	l.text("mount_reach", "/reach", Choice, func(h *hulls.Hull) string { return string(h.Mounts[i].Reach) },
		func(h *hulls.Hull, s string) { h.Mounts[i].Reach = hulls.Reach(s) }, string(hulls.Open), string(hulls.Awkward), string(hulls.Blind))
}
