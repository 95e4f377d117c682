package fields

// This file lists the fields of coupling, shaft and what stands along it.

import (
	"fmt"

	"aligner/hulls"
)

func (l *lister) coupling() {
	c := &l.h.Coupling
	l.begin(Group{Part: Coupling}, "/coupling")
	l.number("face_diameter", "/outer_diameter_mm", Length, func(h *hulls.Hull) *float64 { return &h.Coupling.OuterDiameterMM }, across(0, c.OuterDiameterMM), nil)
	l.number("pilot_diameter", "/pilot_diameter_mm", Length, func(h *hulls.Hull) *float64 { return &h.Coupling.PilotDiameterMM }, across(0, c.PilotDiameterMM), nil)
	l.number("half_mass", "/shaft_half_mass_kg", Mass, func(h *hulls.Hull) *float64 { return &h.Coupling.ShaftHalfMassKg }, nil, usualHalfMass(l.h))
	l.number("half_length", "/shaft_half_length_mm", Length, func(h *hulls.Hull) *float64 { return &h.Coupling.ShaftHalfLengthMM }, along(S, 0, -c.ShaftHalfLengthMM), nil)
	l.all = append(l.all, Field{Pointer: "/coupling/bolts/count", Key: "bolt_count", Group: l.group, Kind: Number, Limit: l.limits["coupling.bolts.count"],
		get: func(h *hulls.Hull) Value { return Value{Number: float64(h.Coupling.Bolts.Count)} },
		set: func(h *hulls.Hull, v Value) { h.Coupling.Bolts.Count = int(v.Number) }})
	l.plain("bolt_thread", "/bolts/thread", Thread, func(h *hulls.Hull) *string { return &h.Coupling.Bolts.Thread }, BoltThreads...)
	l.plain("bolt_grade", "/bolts/grade", Choice, func(h *hulls.Hull) *string { return &h.Coupling.Bolts.Grade }, hulls.BoltGrades()...)
}

func (l *lister) shaft() {
	s := &l.h.Shaft
	l.begin(Group{Part: Shaft}, "/shaft")
	l.number("shaft_diameter", "/diameter_mm", Length, func(h *hulls.Hull) *float64 { return &h.Shaft.DiameterMM }, across(clearShaft(l.h), s.DiameterMM), nil)
	l.number("shaft_length", "/length_mm", Length, func(h *hulls.Hull) *float64 { return &h.Shaft.LengthMM }, along(S, 0, -s.LengthMM), nil)
	l.text("shaft_material", "/material", Choice, func(h *hulls.Hull) string { return h.Shaft.Material }, changeMaterial, hulls.MaterialNumbers()...)
	conditions := append([]string{""}, hulls.Conditions(s.Material)...)
	l.plain("shaft_condition", "/condition", Choice, func(h *hulls.Hull) *string { return &h.Shaft.Condition }, conditions...)
}

func (l *lister) bearing(i int) {
	b, d := &l.h.Bearings[i], l.h.Shaft.DiameterMM
	l.begin(Group{Bearing, i, b.Name}, fmt.Sprintf("/bearings/%d", i))
	l.plain("bearing_name", "/name", Text, func(h *hulls.Hull) *string { return &h.Bearings[i].Name })
	l.number("bearing_at", "/at_mm", Length, func(h *hulls.Hull) *float64 { return &h.Bearings[i].AtMM }, along(S, 0, b.AtMM), nil)
	l.number("bearing_length", "/length_mm", Length, func(h *hulls.Hull) *float64 { return &h.Bearings[i].LengthMM },
		along(S, b.AtMM+b.LengthMM/2, b.AtMM-b.LengthMM/2), &Usual{4 * d, 1.5 * d})
	l.number("bearing_clearance", "/diametral_clearance_mm", Clearance, func(h *hulls.Hull) *float64 { return &h.Bearings[i].DiametralClearanceMM },
		over(b.AtMM-b.LengthMM/2, d/2, d/2+b.DiametralClearanceMM), usualClearance(d))
	l.number("bearing_stiffness", "/radial_stiffness_n_per_mm", Stiffness, func(h *hulls.Hull) *float64 { return &h.Bearings[i].RadialStiffnessNPerMM }, nil, usualBearing(b.LengthMM, d))
	l.offset("bearing_offset", b.AtMM, b.OffsetMM, func(h *hulls.Hull) *[2]float64 { return &h.Bearings[i].OffsetMM })
}

// offset adds both numbers of how far something stands off the shaft's line.
func (l *lister) offset(key string, atMM float64, now [2]float64, at func(*hulls.Hull) *[2]float64) {
	for k, end := range [...]string{"_y", "_z"} {
		tape := &Tape{From: Point{S, [3]float64{atMM}}, To: Point{S, [3]float64{atMM}}}
		tape.To.AtMM[k+1] = now[k]
		l.number(key+end, fmt.Sprintf("/offset_mm/%d", k), Clearance, func(h *hulls.Hull) *float64 { return &at(h)[k] }, tape, &Usual{0, 1})
	}
}

func (l *lister) log() {
	t, d := &l.h.Log, l.h.Shaft.DiameterMM
	l.begin(Group{Part: LogTube}, "/log")
	l.number("log_at", "/at_mm", Length, func(h *hulls.Hull) *float64 { return &h.Log.AtMM }, along(S, 0, t.AtMM), nil)
	l.number("log_length", "/length_mm", Length, func(h *hulls.Hull) *float64 { return &h.Log.LengthMM }, along(S, t.AtMM+t.LengthMM/2, t.AtMM-t.LengthMM/2), nil)
	l.number("log_bore", "/bore_mm", Length, func(h *hulls.Hull) *float64 { return &h.Log.BoreMM }, across(t.AtMM+t.LengthMM/2, t.BoreMM), &Usual{1.5 * d, 0.2 * d})
	l.offset("log_offset", t.AtMM, t.OffsetMM, func(h *hulls.Hull) *[2]float64 { return &h.Log.OffsetMM })
}

func (l *lister) box() {
	b := l.h.StuffingBox
	l.begin(Group{Part: StuffingBox}, "/stuffing_box")
	l.number("box_at", "/at_mm", Length, func(h *hulls.Hull) *float64 { return &h.StuffingBox.AtMM }, along(S, 0, b.AtMM), nil)
	l.number("box_mass", "/mass_kg", Mass, func(h *hulls.Hull) *float64 { return &h.StuffingBox.MassKg }, nil, usualBoxMass(l.h.Shaft.DiameterMM))
	l.number("box_stiffness", "/radial_stiffness_n_per_mm", Stiffness, func(h *hulls.Hull) *float64 { return &h.StuffingBox.RadialStiffnessNPerMM }, nil, &Usual{15, 10})
	l.offset("box_offset", b.AtMM, b.OffsetMM, func(h *hulls.Hull) *[2]float64 { return &h.StuffingBox.OffsetMM })
	l.under = ""
	l.plain("hose_look", "/look/hose", Choice, func(h *hulls.Hull) *string { return &h.Look.Hose }, "", "plain", "bellows")
}

func (l *lister) propeller() {
	p := &l.h.Propeller
	l.begin(Group{Part: Propeller}, "/propeller")
	l.number("propeller_at", "/at_mm", Length, func(h *hulls.Hull) *float64 { return &h.Propeller.AtMM }, along(S, 0, p.AtMM), nil)
	l.number("propeller_diameter", "/diameter_mm", Length, func(h *hulls.Hull) *float64 { return &h.Propeller.DiameterMM }, across(p.AtMM, p.DiameterMM), nil)
	l.number("propeller_mass", "/mass_kg", Mass, func(h *hulls.Hull) *float64 { return &h.Propeller.MassKg }, nil, usualPropellerMass(p.DiameterMM))
	l.number("propeller_density", "/density_kg_m3", Density, func(h *hulls.Hull) *float64 { return &h.Propeller.DensityKgM3 }, nil, &Usual{hulls.DefaultPropellerDensityKgM3, 300})
}
