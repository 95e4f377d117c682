package visit

// This file is the document and its written form.

import (
	"bytes"
	"encoding/json"
	"slices"

	"aligner/hulls"
)

// Document is everything put in.
type Document struct {
	HullName string // as it was asked for: a built-in name or a file
	Hull     hulls.Hull
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

// HeldWays are the words Held may be.
var HeldWays = []string{"hanging", "centred", "seated", "bolted"}

// New is a hull as drawn, its shaft held as it is usually gauged: seated, or
// centred where there is no pilot to seat it.
func New(name string, h hulls.Hull) Document {
	d := Document{HullName: name, Hull: h, Trial: drawn(&h)}
	d.Trial.Held = "seated"
	if !h.Coupling.HasPilot() {
		d.Trial.Held = "centred"
	}
	return d
}

// drawn is a trial with nothing done.
func drawn(h *hulls.Hull) Trial {
	return Trial{Steps: make([]float64, len(h.Mounts)), SlideMM: make([]float64, len(h.Mounts))}
}

// clone copies what edits may change.
func (d Document) clone() Document {
	d.Trial.Steps = slices.Clone(d.Trial.Steps)
	d.Trial.SlideMM = slices.Clone(d.Trial.SlideMM)
	return d
}

// LiftMM is how far mount i's seat is raised.
func (d *Document) LiftMM(i int) float64 {
	return d.Trial.Steps[i] * d.Hull.Mounts[i].LiftPerStepMM()
}

// mount finds a mount by name, or is -1.
func (d *Document) mount(name string) int {
	return slices.IndexFunc(d.Hull.Mounts, func(m hulls.Mount) bool { return m.Name == name })
}

// written is a document's JSON.
type written struct {
	HullName string          `json:"hull_name"`
	Hull     json.RawMessage `json:"hull"`
	Trial    writtenTrial    `json:"trial"`
}

type writtenTrial struct {
	Held     string             `json:"held"`
	Afloat   bool               `json:"afloat"`
	LeverOn  bool               `json:"lever_on"`
	ThrustN  float64            `json:"thrust_n"`
	TorqueNM float64            `json:"torque_nm"`
	Steps    map[string]float64 `json:"nut_steps"`
	SlideMM  map[string]float64 `json:"slide_mm"`
}

// Encode writes the document: the same bytes for the same inputs.
func (d *Document) Encode() []byte {
	w := written{HullName: d.HullName, Hull: hulls.Encode(d.Hull), Trial: writtenTrial{
		Held: d.Trial.Held, Afloat: d.Trial.Afloat, LeverOn: d.Trial.LeverOn,
		ThrustN: d.Trial.ThrustN, TorqueNM: d.Trial.TorqueNM,
		Steps: byName(&d.Hull, d.Trial.Steps), SlideMM: byName(&d.Hull, d.Trial.SlideMM),
	}}
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetIndent("", " ")
	if err := e.Encode(w); err != nil {
		panic("visit: a document that cannot be written: " + err.Error()) // edits refuse what JSON cannot hold
	}
	return b.Bytes()
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

// Outside lists the mounts whose adjuster or slide is tried beyond its range:
// allowed while trying, and to be told.
func (d *Document) Outside() []string {
	var names []string
	for i, m := range d.Hull.Mounts {
		if beyond(d.LiftMM(i), m.NutRangeMM) || beyond(d.Trial.SlideMM[i], m.SlideRangeMM) {
			names = append(names, m.Name)
		}
	}
	return names
}

// beyond allows for rounding.
func beyond(v float64, r [2]float64) bool { return v < r[0]-1e-9 || v > r[1]+1e-9 }
