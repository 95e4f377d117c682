package hulls

// This file reads a hull file: the keys of format hull/1, which of them may be
// left out, and what stands for them then.

import (
	"fmt"

	"aligner/hulls/strictjson"
)

// DefaultPropellerDensityKgM3 stands for a propeller whose density is not
// stated: nickel aluminium bronze.
const DefaultPropellerDensityKgM3 = 7600

// Parse reads a hull file. The error is the first refusal, a *Fault. Doubts
// are left to Check. The name of the file is used in faults only.
func Parse(data []byte, file string) (Hull, error) {
	h, report := Check(data, file)
	if err := report.Err(); err != nil {
		return Hull{}, err
	}
	return h, nil
}

// Check reads a hull file and reports all that is wrong or doubtful with it,
// faults of structure first. Physics is looked at only when the structure
// holds.
func Check(data []byte, file string) (Hull, Report) {
	root, f := strictjson.Parse(data, file, hullFormat)
	if f != nil {
		return Hull{}, Report{Refusals: []Fault{*f}}
	}
	return CheckWithin(root, file, "")
}

// CheckWithin checks a hull that stands in a larger file, at a place of it.
func CheckWithin(n *strictjson.Node, file, place string) (Hull, Report) {
	h, faults := readStructure(n, file, place)
	if len(faults) > 0 {
		return Hull{}, Report{Refusals: faults}
	}
	report := Validate(h)
	n.Locate(report.Refusals, file, place)
	n.Locate(report.Doubts, file, place)
	return h, report
}

// ReadWithin reads the structure of a hull that stands in a larger file, and
// leaves its numbers unjudged.
func ReadWithin(n *strictjson.Node, file, place string) (Hull, []Fault) {
	return readStructure(n, file, place)
}

// Locate gives faults found in a hull the file it came from, and their lines.
func Locate(faults []Fault, data []byte, file string) {
	if root, f := strictjson.Parse(data, file, hullFormat); f == nil {
		root.Locate(faults, file, "")
	}
}

// readStructure reads the keys and kinds of values and nothing of physics.
func readStructure(n *strictjson.Node, file, place string) (Hull, []Fault) {
	d := newDecoder(file, place)
	h := d.hull(n)
	d.tolerancePointers(n, h.Tolerance)
	return h, d.Faults
}

func (d *decoder) hull(n *strictjson.Node) Hull {
	// The format first: of a file of another kind nothing else is worth saying.
	if n.Kind == strictjson.IsObject {
		f := n.Member("format")
		if f != nil && (f.Kind != strictjson.IsString || f.Text != FormatHull) {
			d.Refuse("format", f.Line, f.Show(), strictjson.Quoted(FormatHull), "give a hull file")
			return Hull{}
		}
	}
	o := d.Object(n, "", "format", "name", "hin?", "owner_reference?", "layout", "shaft_angle_deg",
		"shaft_speed_max_rpm?", "engine", "mounts", "coupling", "shaft", "bearings", "log",
		"stuffing_box?", "propeller", "tolerance?", "look?", "one_sided?", "measured_response?")
	h := Hull{
		Name:             o.Text("name"),
		HIN:              o.Text("hin"),
		OwnerReference:   o.Text("owner_reference"),
		Layout:           Layout(o.OneOf("layout", "", string(InLine), string(DownAngle), string(VDrive))),
		ShaftAngleDeg:    o.Number("shaft_angle_deg"),
		ShaftSpeedMaxRPM: o.Number("shaft_speed_max_rpm"),
		Engine:           d.engine(o.Get("engine")),
		Coupling:         d.coupling(o.Get("coupling")),
		Shaft:            d.shaft(o.Get("shaft")),
		Log:              d.log(o.Get("log")),
		Propeller:        d.propeller(o.Get("propeller")),
		Tolerance:        d.tolerance(o.Get("tolerance")),
		Look:             d.look(o.Get("look")),
		OneSided:         o.Bool("one_sided"),
	}
	if b := o.Get("stuffing_box"); b != nil {
		h.StuffingBox = d.stuffingBox(b)
	}
	items, path := o.List("mounts", mostItems)
	for i, item := range items {
		h.Mounts = append(h.Mounts, d.mount(item, fmt.Sprintf("%s[%d]", path, i)))
	}
	items, path = o.List("bearings", mostItems)
	for i, item := range items {
		h.Bearings = append(h.Bearings, d.bearing(item, fmt.Sprintf("%s[%d]", path, i)))
	}
	if o.Has("measured_response") {
		items, path = o.List("measured_response", MostMeasured)
		for i, item := range items {
			h.MeasuredResponse = append(h.MeasuredResponse, d.measured(item, fmt.Sprintf("%s[%d]", path, i)))
		}
	}
	return h
}

func (d *decoder) engine(n *strictjson.Node) (e Engine) {
	o := d.Object(n, "engine", "mass_kg", "centre_of_mass_mm", "down_angle_deg")
	e.MassKg = o.Number("mass_kg")
	o.Numbers("centre_of_mass_mm", "x, y, z", e.CentreOfMassMM[:])
	e.DownAngleDeg = o.Number("down_angle_deg")
	return e
}

// mount reads one mount. Its kind decides which keys the adjuster has.
func (d *decoder) mount(n *strictjson.Node, path string) (m Mount) {
	keys := []string{"name", "at_mm", "kind?", "stiffness_n_per_mm", "nut_range_mm", "slide_range_mm", "reach"}
	if n.Kind == strictjson.IsObject && isSolid(n) {
		keys = append(keys, "shim_step_mm")
	} else {
		keys = append(keys, "thread", "thread_pitch_mm")
	}
	o := d.Object(n, path, keys...)
	m.Name = o.Text("name")
	o.Numbers("at_mm", "x, y, z", m.AtMM[:])
	m.Kind = MountKind(o.OneOf("kind", string(Rubber), string(Rubber), string(Solid)))
	if m.Kind == Solid {
		m.ShimStepMM = o.Number("shim_step_mm")
	} else {
		m.Thread = o.Text("thread")
		m.ThreadPitchMM = o.Number("thread_pitch_mm")
	}
	s := d.Object(o.Get("stiffness_n_per_mm"), strictjson.Join(path, "stiffness_n_per_mm"), "along", "fore_aft", "athwart")
	m.StiffnessNPerMM = Stiffness{Along: s.Number("along"), ForeAft: s.Number("fore_aft"), Athwart: s.Number("athwart")}
	o.Numbers("nut_range_mm", "down (0 or negative), up", m.NutRangeMM[:])
	o.Numbers("slide_range_mm", "to starboard (0 or negative), to port", m.SlideRangeMM[:])
	m.Reach = Reach(o.OneOf("reach", "", string(Open), string(Awkward), string(Blind)))
	return m
}

func isSolid(n *strictjson.Node) bool {
	k := n.Member("kind")
	return k != nil && k.Kind == strictjson.IsString && k.Text == string(Solid)
}

func (d *decoder) coupling(n *strictjson.Node) (c Coupling) {
	o := d.Object(n, "coupling", "outer_diameter_mm", "pilot_diameter_mm", "shaft_half_mass_kg", "shaft_half_length_mm", "bolts", "soft?")
	c.OuterDiameterMM = o.Number("outer_diameter_mm")
	c.PilotDiameterMM = o.Number("pilot_diameter_mm")
	c.ShaftHalfMassKg = o.Number("shaft_half_mass_kg")
	c.ShaftHalfLengthMM = o.Number("shaft_half_length_mm")
	b := d.Object(o.Get("bolts"), "coupling.bolts", "count", "thread", "grade")
	c.Bolts = Bolts{Count: b.Whole("count"), Thread: b.Text("thread"), Grade: b.Text("grade")}
	if n := o.Get("soft"); n != nil {
		s := d.Object(n, "coupling.soft", "thickness_mm", "in_place_mm?", "bending_stiffness_nm_per_deg?")
		c.Soft = SoftCoupling{ThicknessMM: s.Number("thickness_mm"), InPlaceMM: s.Number("in_place_mm"), BendingStiffnessNMPerDeg: s.Number("bending_stiffness_nm_per_deg")}
		if s.Has("thickness_mm") && c.Soft.ThicknessMM == 0 {
			d.Refuse("coupling.soft.thickness_mm", n.Line, "0", "more than 0", "leave soft out where there is none")
		}
	}
	return c
}

func (d *decoder) shaft(n *strictjson.Node) Shaft {
	o := d.Object(n, "shaft", "diameter_mm", "length_mm", "material", "condition?")
	return Shaft{DiameterMM: o.Number("diameter_mm"), LengthMM: o.Number("length_mm"),
		Material: o.Text("material"), Condition: o.Text("condition")}
}

func (d *decoder) bearing(n *strictjson.Node, path string) (b Bearing) {
	o := d.Object(n, path, "name", "at_mm", "length_mm", "radial_stiffness_n_per_mm", "diametral_clearance_mm", "offset_mm?")
	b.Name = o.Text("name")
	b.AtMM = o.Number("at_mm")
	b.LengthMM = o.Number("length_mm")
	b.RadialStiffnessNPerMM = o.Number("radial_stiffness_n_per_mm")
	b.DiametralClearanceMM = o.Number("diametral_clearance_mm")
	o.Numbers("offset_mm", "to port, up", b.OffsetMM[:])
	return b
}

func (d *decoder) log(n *strictjson.Node) (l Log) {
	o := d.Object(n, "log", "at_mm", "length_mm", "bore_mm", "offset_mm?")
	l.AtMM, l.LengthMM, l.BoreMM = o.Number("at_mm"), o.Number("length_mm"), o.Number("bore_mm")
	o.Numbers("offset_mm", "to port, up", l.OffsetMM[:])
	return l
}

func (d *decoder) stuffingBox(n *strictjson.Node) *StuffingBox {
	o := d.Object(n, "stuffing_box", "at_mm", "mass_kg", "radial_stiffness_n_per_mm", "offset_mm?")
	b := StuffingBox{AtMM: o.Number("at_mm"), MassKg: o.Number("mass_kg"), RadialStiffnessNPerMM: o.Number("radial_stiffness_n_per_mm")}
	o.Numbers("offset_mm", "to port, up", b.OffsetMM[:])
	return &b
}

func (d *decoder) propeller(n *strictjson.Node) Propeller {
	o := d.Object(n, "propeller", "mass_kg", "at_mm", "diameter_mm", "density_kg_m3?")
	return Propeller{MassKg: o.Number("mass_kg"), AtMM: o.Number("at_mm"), DiameterMM: o.Number("diameter_mm"),
		DensityKgM3: o.NumberOr("density_kg_m3", DefaultPropellerDensityKgM3)}
}

func (d *decoder) look(n *strictjson.Node) Look {
	o := d.Object(n, "look", "engine?", "hull_section?", "hose?")
	return Look{Engine: o.OneOf("engine", "", lookEngines...),
		HullSection: o.OneOf("hull_section", "", lookSections...),
		Hose:        o.OneOf("hose", "", lookHoses...)}
}

var (
	lookEngines  = []string{"petrol-v", "in-line-diesel", "small-auxiliary"}
	lookSections = []string{"round", "vee", "flat"}
	lookHoses    = []string{"plain", "bellows"}
)

// ParseDraft reads a hull file that need not be a possible boat yet: its keys and
// kinds are held to the format, its numbers are not judged.
func ParseDraft(data []byte, file string) (Hull, error) {
	root, f := strictjson.Parse(data, file, hullFormat)
	if f != nil {
		return Hull{}, f
	}
	h, faults := readStructure(root, file, "")
	return h, Report{Refusals: faults}.Err()
}
