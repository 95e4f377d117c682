package hulls

// This file is what has to be known of the hull format to speak of its faults,
// and the report they come in.

import (
	"strings"

	"aligner/hulls/strictjson"
)

// MaxFileBytes is the largest hull file read. The built-in hulls take about
// 3 kB; the room is for long tolerance tables.
const MaxFileBytes = 1 << 20

// mostItems bounds lists of objects.
const mostItems = 100

// Fault is one thing wrong, or doubtful, with a file.
type Fault = strictjson.Fault

// Report is what looking a hull over found. A hull with refusals is not a
// possible boat, or not one this program can work with; doubts are odd
// numbers that a real boat may have all the same.
type Report struct {
	Refusals []Fault
	Doubts   []Fault
}

// Err is the first refusal, or nil.
func (r Report) Err() error {
	if len(r.Refusals) == 0 {
		return nil
	}
	f := r.Refusals[0]
	return &f
}

var hullFormat = &strictjson.Format{
	Noun:     "hull",
	MaxBytes: MaxFileBytes,
	Units: map[string]string{
		"_n_per_mm": "newtons per millimetre", "_kg_m3": "kilograms per cubic metre",
		"_mm": "millimetres", "_kg": "kilograms", "_deg": "degrees", "_rpm": "turns a minute",
	},
	SameAs: map[string]string{"along": "stiffness_n_per_mm", "fore_aft": "stiffness_n_per_mm", "athwart": "stiffness_n_per_mm"},
	Misplaced: map[string][2]string{
		"thread":          {"no thread on a solid foot", "give shim_step_mm instead, or make the mount rubber"},
		"thread_pitch_mm": {"no thread on a solid foot", "give shim_step_mm instead, or make the mount rubber"},
		"shim_step_mm":    {"shims under solid feet only", `add "kind": "solid", or delete the key`},
		"density_kg_m3":   {"no density: it follows from the alloy", "delete it and name the alloy by its UNS number"},
		"density_g_cm3":   {"no density: it follows from the alloy", "delete it and name the alloy by its UNS number"},
	},
}

// decoder takes a hull out of a tree.
type decoder struct{ strictjson.Decoder }

func newDecoder(file, at string) *decoder {
	return &decoder{strictjson.Decoder{File: file, Format: hullFormat, At: at}}
}

// encoder writes a hull. A default that the tolerance table points at, or into,
// has to be written out.
type encoder struct{ strictjson.Encoder }

func newEncoder(tolerance map[string]float64) *encoder {
	e := &encoder{}
	e.Kept = func(at string) bool {
		for pointer := range tolerance {
			if pointer == at || strings.HasPrefix(pointer, at+"/") {
				return true
			}
		}
		return false
	}
	return e
}

func (e *encoder) offset(v [2]float64) {
	if v != [2]float64{} || e.KeptAt("offset_mm") {
		e.Numbers("offset_mm", v[:])
	}
}
