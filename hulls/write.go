package hulls

// This file writes a hull in its one canonical form: keys in the order of the
// format, one a line, lists of numbers on one line, optional keys left out
// where they hold their default. Reading it gives the same hull back, and
// writing that the same bytes.

import (
	"maps"
	"slices"
)

// Encode writes a hull file. The hull must be one that Validate does not
// refuse; a number that is not finite comes out as null, which no reader of
// this format takes.
func Encode(h Hull) []byte {
	e := &encoder{tolerance: h.Tolerance}
	e.open("", '{')
	e.text("format", FormatHull)
	e.text("name", h.Name)
	e.optionalText("hin", h.HIN)
	e.optionalText("owner_reference", h.OwnerReference)
	e.text("layout", string(h.Layout))
	e.number("shaft_angle_deg", h.ShaftAngleDeg)
	e.optionalNumber("shaft_speed_max_rpm", h.ShaftSpeedMaxRPM, 0)
	e.engine(h.Engine)
	e.open("mounts", '[')
	for i, m := range h.Mounts {
		e.mount(i, m)
	}
	e.close(']')
	e.coupling(h.Coupling)
	e.shaft(h.Shaft)
	e.open("bearings", '[')
	for i, b := range h.Bearings {
		e.bearing(i, b)
	}
	e.close(']')
	e.log(h.Log)
	if h.StuffingBox != nil {
		e.stuffingBox(*h.StuffingBox)
	}
	e.propeller(h.Propeller)
	e.toleranceTable()
	e.look(h.Look)
	e.close('}')
	e.buf.WriteByte('\n')
	return e.buf.Bytes()
}

func (e *encoder) engine(g Engine) {
	e.open("engine", '{')
	e.number("mass_kg", g.MassKg)
	e.numbers("centre_of_mass_mm", g.CentreOfMassMM[:])
	e.number("down_angle_deg", g.DownAngleDeg)
	e.close('}')
}

func (e *encoder) mount(i int, m Mount) {
	e.item(i, '{')
	e.text("name", m.Name)
	e.numbers("at_mm", m.AtMM[:])
	if m.Kind == Solid {
		e.text("kind", string(Solid))
		e.number("shim_step_mm", m.ShimStepMM)
	} else {
		e.text("thread", m.Thread)
		e.number("thread_pitch_mm", m.ThreadPitchMM)
	}
	e.open("stiffness_n_per_mm", '{')
	e.number("along", m.StiffnessNPerMM.Along)
	e.number("fore_aft", m.StiffnessNPerMM.ForeAft)
	e.number("athwart", m.StiffnessNPerMM.Athwart)
	e.close('}')
	e.numbers("nut_range_mm", m.NutRangeMM[:])
	e.numbers("slide_range_mm", m.SlideRangeMM[:])
	e.text("reach", string(m.Reach))
	e.close('}')
}

func (e *encoder) coupling(c Coupling) {
	e.open("coupling", '{')
	e.number("outer_diameter_mm", c.OuterDiameterMM)
	e.number("pilot_diameter_mm", c.PilotDiameterMM)
	e.number("shaft_half_mass_kg", c.ShaftHalfMassKg)
	e.number("shaft_half_length_mm", c.ShaftHalfLengthMM)
	e.open("bolts", '{')
	e.number("count", float64(c.Bolts.Count))
	e.text("thread", c.Bolts.Thread)
	e.text("grade", c.Bolts.Grade)
	e.close('}')
	e.close('}')
}

func (e *encoder) shaft(s Shaft) {
	e.open("shaft", '{')
	e.number("diameter_mm", s.DiameterMM)
	e.number("length_mm", s.LengthMM)
	e.text("material", s.Material)
	e.optionalText("condition", s.Condition)
	e.close('}')
}

func (e *encoder) bearing(i int, b Bearing) {
	e.item(i, '{')
	e.text("name", b.Name)
	e.number("at_mm", b.AtMM)
	e.number("length_mm", b.LengthMM)
	e.number("radial_stiffness_n_per_mm", b.RadialStiffnessNPerMM)
	e.number("diametral_clearance_mm", b.DiametralClearanceMM)
	e.offset(b.OffsetMM)
	e.close('}')
}

func (e *encoder) log(l Log) {
	e.open("log", '{')
	e.number("at_mm", l.AtMM)
	e.number("length_mm", l.LengthMM)
	e.number("bore_mm", l.BoreMM)
	e.offset(l.OffsetMM)
	e.close('}')
}

func (e *encoder) stuffingBox(b StuffingBox) {
	e.open("stuffing_box", '{')
	e.number("at_mm", b.AtMM)
	e.number("mass_kg", b.MassKg)
	e.number("radial_stiffness_n_per_mm", b.RadialStiffnessNPerMM)
	e.offset(b.OffsetMM)
	e.close('}')
}

func (e *encoder) propeller(p Propeller) {
	e.open("propeller", '{')
	e.number("mass_kg", p.MassKg)
	e.number("at_mm", p.AtMM)
	e.number("diameter_mm", p.DiameterMM)
	e.optionalNumber("density_kg_m3", p.DensityKgM3, DefaultPropellerDensityKgM3)
	e.close('}')
}

func (e *encoder) toleranceTable() {
	if len(e.tolerance) == 0 {
		return
	}
	e.open("tolerance", '{')
	for _, pointer := range slices.Sorted(maps.Keys(e.tolerance)) {
		e.number(pointer, e.tolerance[pointer])
	}
	e.close('}')
}

func (e *encoder) look(l Look) {
	if l == (Look{}) {
		return
	}
	e.open("look", '{')
	e.optionalText("engine", l.Engine)
	e.optionalText("hull_section", l.HullSection)
	e.optionalText("hose", l.Hose)
	e.close('}')
}
