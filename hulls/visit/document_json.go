package visit

// This file is the written form of a document, from which a history can be
// replayed: the hull, the visit and what is being tried.

import (
	"math"
	"slices"

	"aligner/hulls"
	"aligner/hulls/strictjson"
)

// FormatDocument is the value of a written document's "format" key.
const FormatDocument = "document/1"

var documentFormat = &strictjson.Format{
	Noun:     "document",
	MaxBytes: MaxFileBytes + hulls.MaxFileBytes,
	Units:    visitFormat.Units,
}

// Encode writes the document: the same bytes for the same inputs.
func (d *Document) Encode() []byte {
	e := &encoder{}
	e.Open("", '{')
	e.Text("format", FormatDocument)
	e.Text("hull_name", d.HullName)
	e.Embed("hull", hulls.Encode(d.Hull))
	e.Embed("visit", Encode(d.Visit))
	e.trial(&d.Hull, d.Trial)
	e.Close('}')
	e.EndLine()
	return e.Bytes()
}

func (e *encoder) trial(h *hulls.Hull, t Trial) {
	e.Open("trial", '{')
	e.Text("held", t.Held)
	e.OptionalBool("afloat", t.Afloat)
	e.OptionalBool("lever_on", t.LeverOn)
	e.OptionalNumber("thrust_n", t.ThrustN, 0)
	e.OptionalNumber("torque_nm", t.TorqueNM, 0)
	e.byMount("nut_steps", byName(h, t.Steps))
	e.byMount("slide_mm", byName(h, t.SlideMM))
	e.Close('}')
}

// byName leaves out what is nought.
func byName(h *hulls.Hull, values []float64) map[string]float64 {
	m := map[string]float64{}
	for i, v := range values {
		if v != 0 {
			m[h.Mounts[i].Name] = v
		}
	}
	return m
}

// ParseDocument reads what Encode wrote. The error is a *hulls.Fault.
func ParseDocument(data []byte, file string) (Document, error) {
	root, f := strictjson.Parse(data, file, documentFormat)
	if f != nil {
		return Document{}, f
	}
	d := newDecoder(file)
	d.Format = documentFormat
	o := d.Object(root, "", "format", "hull_name", "hull", "visit", "trial")
	if name := o.Text("format"); len(d.Faults) == 0 && name != FormatDocument {
		d.Refuse("format", root.Member("format").Line, strictjson.Quoted(name), strictjson.Quoted(FormatDocument), "give a document")
	}
	doc := Document{HullName: o.Text("hull_name")}
	if err := (hulls.Report{Refusals: d.Faults}).Err(); err != nil {
		return Document{}, err
	}
	h, report := hulls.CheckWithin(root.Member("hull"), file, "hull")
	if err := report.Err(); err != nil {
		return Document{}, err
	}
	doc.Hull = h
	inner := newDecoder(file)
	inner.At = "visit"
	doc.Visit = inner.visit(root.Member("visit"))
	if len(inner.Faults) == 0 {
		inner.Faults = Validate(doc.Visit, &h).Refusals
		root.Member("visit").Locate(inner.Faults, file, "visit")
	}
	doc.Trial = d.trial(root.Member("trial"), &h)
	return doc, hulls.Report{Refusals: append(inner.Faults, d.Faults...)}.Err()
}

func (d *decoder) trial(n *strictjson.Node, h *hulls.Hull) Trial {
	o := d.Object(n, "trial", "held", "afloat?", "lever_on?", "thrust_n?", "torque_nm?", "nut_steps?", "slide_mm?")
	t := drawn(h)
	t.Held = o.OneOf("held", "", HeldWays...)
	t.Afloat, t.LeverOn = o.Bool("afloat"), o.Bool("lever_on")
	t.ThrustN, t.TorqueNM = o.Number("thrust_n"), o.Number("torque_nm")
	d.onMounts(o, "nut_steps", h, t.Steps, func(i int) float64 { return h.Mounts[i].LiftPerStepMM() })
	d.onMounts(o, "slide_mm", h, t.SlideMM, func(int) float64 { return 1 })
	if t.Held == "seated" && !h.Coupling.HasPilot() || math.Abs(t.ThrustN) > mostPower || math.Abs(t.TorqueNM) > mostPower {
		d.Refuse("trial", n.Line, "what cannot be tried", "what the edits allow", "give a document this program wrote")
	}
	return t
}

// onMounts puts numbers by mount into the hull's order; perMM is the travel of
// one.
func (d *decoder) onMounts(o strictjson.Object, key string, h *hulls.Hull, out []float64, perMM func(i int) float64) {
	table := o.Of(key, strictjson.IsObject)
	if table == nil {
		return
	}
	values := d.byMount(o, key)
	for i, name := range table.Keys {
		v, read := values[name]
		at := slices.IndexFunc(h.Mounts, func(m hulls.Mount) bool { return m.Name == name })
		switch {
		case !read: // told already
		case at < 0, !(math.Abs(v*perMM(at)) < mostMM):
			d.Refuse(strictjson.Join(strictjson.Join(o.Path, key), name), table.Items[i].Line, table.Items[i].Show(), "a mount of the hull, moved by less than 100 mm", "correct the name or the number")
		default:
			out[at] = v
		}
	}
}
