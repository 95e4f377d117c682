package visit

// This file is the document.

import (
	"fmt"
	"slices"

	"aligner/hulls"
)

// Document is everything put in.
type Document struct {
	HullName string // as it was asked for: a built-in name or a file
	Hull     hulls.Hull
	Visit    Visit // on that hull; Validate refuses nothing of it
	Trial    Trial
}

// Trial is what is being tried on the screen, from the drawn state.
type Trial struct {
	Steps   []float64 // of each mount's adjuster, + raises; whole when snapped
	SlideMM []float64 // of each mount, + to port
	LeverOn bool      // the mounts being slid are slack, their feet on a lever

	Held   string // "hanging", "centred", "seated" or "bolted"
	Afloat bool

	ThrustN, TorqueNM float64 // under power, on the face
}

// HeldWays are the words Trial.Held may be.
var HeldWays = []string{"hanging", "centred", "seated", "bolted"}

// New is a hull as drawn, its shaft held as it is usually gauged: seated, or
// centred where there is no pilot to seat it. Its visit says nothing yet.
func New(name string, h hulls.Hull) Document {
	d := Document{HullName: name, Hull: h, Visit: Visit{HullName: name}, Trial: drawn(&h)}
	if name == "" {
		d.Visit.HullName = h.Name
	}
	d.Trial.Held = "seated"
	if !h.Coupling.HasPilot() {
		d.Trial.Held = "centred"
	}
	return d
}

// Open is a visit with the hull it is on. find gives a hull by what the visit
// calls it, unless the visit holds it itself. The report is the visit's; its
// refusals leave no document.
func Open(data []byte, file string, find func(name string) (hulls.Hull, error)) (Document, hulls.Report) {
	v, report := Check(data, file)
	if len(report.Refusals) > 0 {
		return Document{}, report
	}
	if v.Embedded != nil {
		return onHull(v, v.Embedded.Name, *v.Embedded), report
	}
	h, err := find(v.HullName)
	if err != nil {
		return Document{}, hulls.Report{Refusals: []hulls.Fault{asFault(err, v.HullName)}}
	}
	report = Validate(v, &h)
	Locate(report.Refusals, data, file)
	Locate(report.Doubts, data, file)
	if len(report.Refusals) > 0 {
		return Document{}, report
	}
	return onHull(v, v.HullName, h), report
}

// onHull is a visit on its hull, nothing being tried.
func onHull(v Visit, name string, h hulls.Hull) Document {
	d := New(name, h)
	d.Visit = v
	d.Trial.Afloat = v.State.Afloat()
	return d
}

// asFault keeps a fault as it is and tells any other error as one.
func asFault(err error, hull string) hulls.Fault {
	if f, ok := err.(*hulls.Fault); ok {
		return *f
	}
	return hulls.Fault{Place: "hull", Value: fmt.Sprintf("%q: %v", hull, err), Limit: "a hull", Mend: "correct the name, or embed the hull"}
}

// drawn is a trial with nothing done.
func drawn(h *hulls.Hull) Trial {
	return Trial{Steps: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
}

// clone copies what edits of the trial change in place.
func (d Document) clone() Document {
	d.Trial.Steps = slices.Clone(d.Trial.Steps)
	d.Trial.SlideMM = slices.Clone(d.Trial.SlideMM)
	return d
}

// withVisit is the document with another visit on the same hull, or the reason
// why not. The visit is taken as a file would give it, so that a document never
// holds what cannot be written and read again.
func (d Document) withVisit(v Visit) (Document, error) {
	report := Validate(v, &d.Hull)
	var read Visit
	if len(report.Refusals) == 0 {
		read, report = Check(Encode(v), "")
	}
	if len(report.Refusals) > 0 {
		f := report.Refusals[0]
		f.Line = 0 // of no file the user knows
		return d, &f
	}
	d.Visit = read
	return d, nil
}

// LiftMM is how far mount i's seat is raised.
func (d *Document) LiftMM(i int) float64 {
	return d.Trial.Steps[i] * d.Hull.Mounts[i].LiftPerStepMM()
}

// mount finds a mount by name, or is -1.
func (d *Document) mount(name string) int { return mountOf(&d.Hull, name) }

func mountOf(h *hulls.Hull, name string) int {
	return slices.IndexFunc(h.Mounts, func(m hulls.Mount) bool { return m.Name == name })
}
