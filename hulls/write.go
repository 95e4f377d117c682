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
	e := newEncoder(h.Tolerance)
	e.Open("", '{')
	e.Text("format", FormatHull)
	e.Text("name", h.Name)
	e.OptionalText("hin", h.HIN)
	e.OptionalText("owner_reference", h.OwnerReference)
	e.Text("layout", string(h.Layout))
	e.Number("shaft_angle_deg", h.ShaftAngleDeg)
	e.OptionalNumber("shaft_speed_max_rpm", h.ShaftSpeedMaxRPM, 0)
	e.engine(h.Engine)
	e.Open("mounts", '[')
	for i, m := range h.Mounts {
		e.mount(i, m)
	}
	e.Close(']')
	e.coupling(h.Coupling)
	e.shaft(h.Shaft)
	e.Open("bearings", '[')
	for i, b := range h.Bearings {
		e.bearing(i, b)
	}
	e.Close(']')
	e.log(h.Log)
	if h.StuffingBox != nil {
		e.stuffingBox(*h.StuffingBox)
	}
	e.propeller(h.Propeller)
	e.toleranceTable(h.Tolerance)
	e.look(h.Look)
	e.OptionalBool("one_sided", h.OneSided)
	if len(h.MeasuredResponse) > 0 {
		e.Open("measured_response", '[')
		for i, m := range h.MeasuredResponse {
			e.measured(i, m)
		}
		e.Close(']')
	}
	e.Close('}')
	e.EndLine()
	return e.Bytes()
}

func (e *encoder) engine(g Engine) {
	e.Open("engine", '{')
	e.Number("mass_kg", g.MassKg)
	e.Numbers("centre_of_mass_mm", g.CentreOfMassMM[:])
	e.Number("down_angle_deg", g.DownAngleDeg)
	e.Close('}')
}

func (e *encoder) mount(i int, m Mount) {
	e.Item(i, '{')
	e.Text("name", m.Name)
	e.Numbers("at_mm", m.AtMM[:])
	if m.Kind == Solid {
		e.Text("kind", string(Solid))
		e.Number("shim_step_mm", m.ShimStepMM)
	} else {
		e.Text("thread", m.Thread)
		e.Number("thread_pitch_mm", m.ThreadPitchMM)
	}
	e.Open("stiffness_n_per_mm", '{')
	e.Number("along", m.StiffnessNPerMM.Along)
	e.Number("fore_aft", m.StiffnessNPerMM.ForeAft)
	e.Number("athwart", m.StiffnessNPerMM.Athwart)
	e.Close('}')
	e.Numbers("nut_range_mm", m.NutRangeMM[:])
	e.Numbers("slide_range_mm", m.SlideRangeMM[:])
	e.Text("reach", string(m.Reach))
	e.Close('}')
}

func (e *encoder) coupling(c Coupling) {
	e.Open("coupling", '{')
	e.Number("outer_diameter_mm", c.OuterDiameterMM)
	e.Number("pilot_diameter_mm", c.PilotDiameterMM)
	e.Number("shaft_half_mass_kg", c.ShaftHalfMassKg)
	e.Number("shaft_half_length_mm", c.ShaftHalfLengthMM)
	e.Open("bolts", '{')
	e.Number("count", float64(c.Bolts.Count))
	e.Text("thread", c.Bolts.Thread)
	e.Text("grade", c.Bolts.Grade)
	e.Close('}')
	if c.Soft != (SoftCoupling{}) {
		e.Open("soft", '{')
		e.Number("thickness_mm", c.Soft.ThicknessMM)
		e.OptionalNumber("in_place_mm", c.Soft.InPlaceMM, 0)
		e.OptionalNumber("bending_stiffness_nm_per_deg", c.Soft.BendingStiffnessNMPerDeg, 0)
		e.Close('}')
	}
	e.Close('}')
}

func (e *encoder) shaft(s Shaft) {
	e.Open("shaft", '{')
	e.Number("diameter_mm", s.DiameterMM)
	e.Number("length_mm", s.LengthMM)
	e.Text("material", s.Material)
	e.OptionalText("condition", s.Condition)
	e.Close('}')
}

func (e *encoder) bearing(i int, b Bearing) {
	e.Item(i, '{')
	e.Text("name", b.Name)
	e.Number("at_mm", b.AtMM)
	e.Number("length_mm", b.LengthMM)
	e.Number("radial_stiffness_n_per_mm", b.RadialStiffnessNPerMM)
	e.Number("diametral_clearance_mm", b.DiametralClearanceMM)
	e.offset(b.OffsetMM)
	e.Close('}')
}

func (e *encoder) log(l Log) {
	e.Open("log", '{')
	e.Number("at_mm", l.AtMM)
	e.Number("length_mm", l.LengthMM)
	e.Number("bore_mm", l.BoreMM)
	e.offset(l.OffsetMM)
	e.Close('}')
}

func (e *encoder) stuffingBox(b StuffingBox) {
	e.Open("stuffing_box", '{')
	e.Number("at_mm", b.AtMM)
	e.Number("mass_kg", b.MassKg)
	e.Number("radial_stiffness_n_per_mm", b.RadialStiffnessNPerMM)
	e.offset(b.OffsetMM)
	e.Close('}')
}

func (e *encoder) propeller(p Propeller) {
	e.Open("propeller", '{')
	e.Number("mass_kg", p.MassKg)
	e.Number("at_mm", p.AtMM)
	e.Number("diameter_mm", p.DiameterMM)
	e.OptionalNumber("density_kg_m3", p.DensityKgM3, DefaultPropellerDensityKgM3)
	e.Close('}')
}

func (e *encoder) toleranceTable(tolerance map[string]float64) {
	if len(tolerance) == 0 {
		return
	}
	e.Open("tolerance", '{')
	for _, pointer := range slices.Sorted(maps.Keys(tolerance)) {
		e.Number(pointer, tolerance[pointer])
	}
	e.Close('}')
}

func (e *encoder) look(l Look) {
	if l == (Look{}) {
		return
	}
	e.Open("look", '{')
	e.OptionalText("engine", l.Engine)
	e.OptionalText("hull_section", l.HullSection)
	e.OptionalText("hose", l.Hose)
	e.Close('}')
}
