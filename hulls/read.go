package hulls

// This file reads a hull file: the keys of format hull/1, which of them may be
// left out, and what stands for them then.

import "fmt"

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
	h, root, faults := readStructure(data, file)
	if len(faults) > 0 {
		return Hull{}, Report{Refusals: faults}
	}
	report := Validate(h)
	root.locate(file, report.Refusals)
	root.locate(file, report.Doubts)
	return h, report
}

// Locate gives faults found in a hull the file it came from, and their lines.
func Locate(faults []Fault, data []byte, file string) {
	if root, f := parseTree(data, file); f == nil {
		root.locate(file, faults)
	}
}

func (n *node) locate(file string, faults []Fault) {
	for i := range faults {
		faults[i].File = file
		faults[i].Line = n.lineOf(faults[i].Place)
	}
}

// readStructure reads the keys and kinds of values and nothing of physics.
func readStructure(data []byte, file string) (Hull, *node, []Fault) {
	root, f := parseTree(data, file)
	if f != nil {
		return Hull{}, nil, []Fault{*f}
	}
	d := &decoder{file: file}
	h := d.hull(root)
	d.tolerancePointers(root, h.Tolerance)
	return h, root, d.faults
}

func (d *decoder) hull(n *node) Hull {
	// The format first: of a file of another kind nothing else is worth saying.
	if n.kind == isObject {
		f := n.member("format")
		if f != nil && (f.kind != isString || f.text != FormatHull) {
			d.refuse("format", f.line, f.show(), quoted(FormatHull), "give a hull file")
			return Hull{}
		}
	}
	o := d.object(n, "", "format", "name", "hin?", "owner_reference?", "layout", "shaft_angle_deg",
		"shaft_speed_max_rpm?", "engine", "mounts", "coupling", "shaft", "bearings", "log",
		"stuffing_box?", "propeller", "tolerance?", "look?")
	h := Hull{
		Name:             o.text("name"),
		HIN:              o.text("hin"),
		OwnerReference:   o.text("owner_reference"),
		Layout:           Layout(o.oneOf("layout", "", string(InLine), string(DownAngle), string(VDrive))),
		ShaftAngleDeg:    o.number("shaft_angle_deg"),
		ShaftSpeedMaxRPM: o.number("shaft_speed_max_rpm"),
		Engine:           d.engine(o.get("engine")),
		Coupling:         d.coupling(o.get("coupling")),
		Shaft:            d.shaft(o.get("shaft")),
		Log:              d.log(o.get("log")),
		Propeller:        d.propeller(o.get("propeller")),
		Tolerance:        d.tolerance(o.get("tolerance")),
		Look:             d.look(o.get("look")),
	}
	if b := o.get("stuffing_box"); b != nil {
		h.StuffingBox = d.stuffingBox(b)
	}
	items, path := o.list("mounts")
	for i, item := range items {
		h.Mounts = append(h.Mounts, d.mount(item, fmt.Sprintf("%s[%d]", path, i)))
	}
	items, path = o.list("bearings")
	for i, item := range items {
		h.Bearings = append(h.Bearings, d.bearing(item, fmt.Sprintf("%s[%d]", path, i)))
	}
	return h
}

func (d *decoder) engine(n *node) (e Engine) {
	o := d.object(n, "engine", "mass_kg", "centre_of_mass_mm", "down_angle_deg")
	e.MassKg = o.number("mass_kg")
	o.numbers("centre_of_mass_mm", "x, y, z", e.CentreOfMassMM[:])
	e.DownAngleDeg = o.number("down_angle_deg")
	return e
}

// mount reads one mount. Its kind decides which keys the adjuster has.
func (d *decoder) mount(n *node, path string) (m Mount) {
	keys := []string{"name", "at_mm", "kind?", "stiffness_n_per_mm", "nut_range_mm", "slide_range_mm", "reach"}
	if n.kind == isObject && isSolid(n) {
		keys = append(keys, "shim_step_mm")
	} else {
		keys = append(keys, "thread", "thread_pitch_mm")
	}
	o := d.object(n, path, keys...)
	m.Name = o.text("name")
	o.numbers("at_mm", "x, y, z", m.AtMM[:])
	m.Kind = MountKind(o.oneOf("kind", string(Rubber), string(Rubber), string(Solid)))
	if m.Kind == Solid {
		m.ShimStepMM = o.number("shim_step_mm")
	} else {
		m.Thread = o.text("thread")
		m.ThreadPitchMM = o.number("thread_pitch_mm")
	}
	s := d.object(o.get("stiffness_n_per_mm"), join(path, "stiffness_n_per_mm"), "along", "fore_aft", "athwart")
	m.StiffnessNPerMM = Stiffness{Along: s.number("along"), ForeAft: s.number("fore_aft"), Athwart: s.number("athwart")}
	o.numbers("nut_range_mm", "down (0 or negative), up", m.NutRangeMM[:])
	o.numbers("slide_range_mm", "to starboard (0 or negative), to port", m.SlideRangeMM[:])
	m.Reach = Reach(o.oneOf("reach", "", string(Open), string(Awkward), string(Blind)))
	return m
}

func isSolid(n *node) bool {
	k := n.member("kind")
	return k != nil && k.kind == isString && k.text == string(Solid)
}

func (d *decoder) coupling(n *node) (c Coupling) {
	o := d.object(n, "coupling", "outer_diameter_mm", "pilot_diameter_mm", "shaft_half_mass_kg", "shaft_half_length_mm", "bolts")
	c.OuterDiameterMM = o.number("outer_diameter_mm")
	c.PilotDiameterMM = o.number("pilot_diameter_mm")
	c.ShaftHalfMassKg = o.number("shaft_half_mass_kg")
	c.ShaftHalfLengthMM = o.number("shaft_half_length_mm")
	b := d.object(o.get("bolts"), "coupling.bolts", "count", "thread", "grade")
	c.Bolts = Bolts{Count: b.whole("count"), Thread: b.text("thread"), Grade: b.text("grade")}
	return c
}

func (d *decoder) shaft(n *node) Shaft {
	o := d.object(n, "shaft", "diameter_mm", "length_mm", "material", "condition?")
	return Shaft{DiameterMM: o.number("diameter_mm"), LengthMM: o.number("length_mm"),
		Material: o.text("material"), Condition: o.text("condition")}
}

func (d *decoder) bearing(n *node, path string) (b Bearing) {
	o := d.object(n, path, "name", "at_mm", "length_mm", "radial_stiffness_n_per_mm", "diametral_clearance_mm", "offset_mm?")
	b.Name = o.text("name")
	b.AtMM = o.number("at_mm")
	b.LengthMM = o.number("length_mm")
	b.RadialStiffnessNPerMM = o.number("radial_stiffness_n_per_mm")
	b.DiametralClearanceMM = o.number("diametral_clearance_mm")
	o.numbers("offset_mm", "to port, up", b.OffsetMM[:])
	return b
}

func (d *decoder) log(n *node) (l Log) {
	o := d.object(n, "log", "at_mm", "length_mm", "bore_mm", "offset_mm?")
	l.AtMM, l.LengthMM, l.BoreMM = o.number("at_mm"), o.number("length_mm"), o.number("bore_mm")
	o.numbers("offset_mm", "to port, up", l.OffsetMM[:])
	return l
}

func (d *decoder) stuffingBox(n *node) *StuffingBox {
	o := d.object(n, "stuffing_box", "at_mm", "mass_kg", "radial_stiffness_n_per_mm", "offset_mm?")
	b := StuffingBox{AtMM: o.number("at_mm"), MassKg: o.number("mass_kg"), RadialStiffnessNPerMM: o.number("radial_stiffness_n_per_mm")}
	o.numbers("offset_mm", "to port, up", b.OffsetMM[:])
	return &b
}

func (d *decoder) propeller(n *node) Propeller {
	o := d.object(n, "propeller", "mass_kg", "at_mm", "diameter_mm", "density_kg_m3?")
	return Propeller{MassKg: o.number("mass_kg"), AtMM: o.number("at_mm"), DiameterMM: o.number("diameter_mm"),
		DensityKgM3: o.numberOr("density_kg_m3", DefaultPropellerDensityKgM3)}
}

func (d *decoder) look(n *node) Look {
	o := d.object(n, "look", "engine?", "hull_section?", "hose?")
	return Look{Engine: o.oneOf("engine", "", lookEngines...),
		HullSection: o.oneOf("hull_section", "", lookSections...),
		Hose:        o.oneOf("hose", "", lookHoses...)}
}

var (
	lookEngines  = []string{"petrol-v", "in-line-diesel", "small-auxiliary"}
	lookSections = []string{"round", "vee", "flat"}
	lookHoses    = []string{"plain", "bellows"}
)
