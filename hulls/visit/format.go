package visit

// This file is what has to be known of the visit format to speak of its
// faults, and how parts of a visit become JSON by themselves.

import (
	"errors"

	"aligner/hulls"
	"aligner/hulls/strictjson"
)

// MaxFileBytes is the largest visit file read: room for a season of gaugings.
const MaxFileBytes = 4 << 20

// Bounds of lists, so that a hostile file costs no more than a large one.
const (
	mostEvents   = 1000
	mostReadings = 500
	mostItems    = 100 // leaves, mounts, findings, arcs, nuts of a move
)

var visitFormat = &strictjson.Format{
	Noun:     "visit",
	MaxBytes: MaxFileBytes,
	Units: map[string]string{
		"_thou": "thousandths of an inch", "_mm": "millimetres", "_deg": "degrees", "_n": "newtons",
		"_nm": "newton metres", "_lb_ft": "pounds-force feet", "_percent": "per cent", "_flats": "flats",
	},
	Misplaced: map[string][2]string{
		"clock":     {"clock_deg, in degrees looking forward", "write 1:30 as 45"},
		"verdict":   {"no results: a visit holds what was put in", "delete it"},
		"gap_thou":  {"no gaps: what goes and what stops", "write goes_thou and stops_thou"},
		"nut_turns": {"nut_flats, in flats", "a turn is six flats"},
	},
}

// decoder takes a visit out of a tree.
type decoder struct{ strictjson.Decoder }

func newDecoder(file string) *decoder {
	return &decoder{strictjson.Decoder{File: file, Format: visitFormat}}
}

// encoder writes a visit.
type encoder struct{ strictjson.Encoder }

// length reads a length under key_thou or key_mm; neither gives none.
func (d *decoder) length(o strictjson.Object, key string) Length {
	v, unit := d.either(o, key, InThou, InMM)
	return Length{v, unit}
}

// either reads a number under one of two keys that differ in their unit.
func (d *decoder) either(o strictjson.Object, key string, one, other Unit) (float64, Unit) {
	a, b := key+"_"+string(one), key+"_"+string(other)
	switch {
	case o.Has(a) && o.Has(b):
		d.twice(o, a, b)
	case o.Has(a):
		return o.Number(a), one
	case o.Has(b):
		return o.Number(b), other
	}
	return 0, ""
}

// twice refuses the second of two keys that say the same.
func (d *decoder) twice(o strictjson.Object, a, b string) {
	d.Refuse(strictjson.Join(o.Path, b), o.Node.Member(b).Line, a+" and "+b, "one of the two", "keep the one that was measured")
}

// lengthKeys are the keys length reads, none of them needed.
func lengthKeys(key string) []string { return []string{key + "_thou?", key + "_mm?"} }

// needLength refuses an object that has none of some lengths.
func (d *decoder) needLength(o strictjson.Object, keys ...string) {
	if o.Node == nil {
		return
	}
	for _, key := range keys {
		if o.Has(key+"_thou") || o.Has(key+"_mm") {
			return
		}
	}
	wanted := keys[0] + "_thou or " + keys[0] + "_mm"
	for _, key := range keys[1:] {
		wanted += ", or " + key + "_thou or " + key + "_mm"
	}
	d.Refuse(o.Path, o.Node.Line, "neither", wanted, "add what was measured")
}

func (e *encoder) length(key string, l Length) {
	if l.Given() {
		e.Number(key+"_"+string(l.Unit), l.Value)
	}
}

func (e *encoder) maybe(key string, m Maybe) {
	if m.Known {
		e.Number(key, m.Value)
	}
}

func maybe(o strictjson.Object, key string) Maybe {
	if !o.Has(key) {
		return Maybe{}
	}
	return Known(o.Number(key))
}

// marshalPart writes one part of a visit by itself.
func marshalPart(write func(e *encoder)) ([]byte, error) {
	e := &encoder{}
	write(e)
	return e.Bytes(), nil
}

// unmarshalPart reads what marshalPart wrote, as strictly as a file.
func unmarshalPart(data []byte, read func(d *decoder, n *strictjson.Node)) error {
	n, f := strictjson.Parse(data, "", visitFormat)
	if f != nil {
		return f
	}
	d := newDecoder("")
	read(d, n)
	return hulls.Report{Refusals: d.Faults}.Err()
}

// errNoReading is the answer to a reading that is not there.
var errNoReading = errors.New("visit: no reading to write")
