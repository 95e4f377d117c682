package visit

// This file reads the readings, each kind with keys of its own.

import (
	"slices"
	"strings"

	"aligner/hulls/strictjson"
)

// reading reads one reading; nil where it has no kind that is known.
func (d *decoder) reading(n *strictjson.Node, path string) Reading {
	if n.Kind != strictjson.IsObject {
		d.Object(n, path) // says so
		return nil
	}
	kind := n.Member("kind")
	switch {
	case kind == nil:
		d.Refuse(strictjson.Join(path, "kind"), n.Line, "nothing", "the key kind", "add it: "+strings.Join(ReadingKinds, ", "))
		return nil
	case kind.Kind == strictjson.IsString && slices.Contains(ReadingKinds, kind.Text):
		return readers[kind.Text](d, n, path)
	}
	d.Refuse(strictjson.Join(path, "kind"), kind.Line, kind.Show(), `one of "`+strings.Join(ReadingKinds, `", "`)+`"`, "choose one of these, in small letters")
	return nil
}

var readers = map[string]func(d *decoder, n *strictjson.Node, path string) Reading{
	"leaf": (*decoder).leaf, "leaf round": (*decoder).leafRound, "rim step": (*decoder).rimStep, "dial": (*decoder).dial,
	"run-out": (*decoder).runOut, "clearance": (*decoder).clearance, "pilot": (*decoder).pilot,
}

// limitKeys are the keys of what goes and what stops.
var limitKeys = slices.Concat(lengthKeys("goes"), lengthKeys("stops"))

// limits reads what goes and what stops, at least one of them.
func (d *decoder) limits(o strictjson.Object) (goes, stops Length) {
	d.needLength(o, "goes", "stops")
	return d.length(o, "goes"), d.length(o, "stops")
}

func (d *decoder) leaf(n *strictjson.Node, path string) Reading {
	o := d.Object(n, path, slices.Concat([]string{"kind", "clock_deg"}, limitKeys, []string{"radius_mm?", "note?"})...)
	r := Leaf{ClockDeg: o.Number("clock_deg"), RadiusMM: o.Number("radius_mm"), Note: o.Text("note")}
	r.Goes, r.Stops = d.limits(o)
	return r
}

func (d *decoder) leafRound(n *strictjson.Node, path string) Reading {
	o := d.Object(n, path, slices.Concat([]string{"kind"}, lengthKeys("leaf"), []string{"enters_deg?", "stops_deg?", "radius_mm?", "note?"})...)
	d.needLength(o, "leaf")
	return LeafRound{Leaf: d.length(o, "leaf"), Enters: listOf(o, "enters_deg", mostItems, d.arc), Stops: listOf(o, "stops_deg", mostItems, d.arc),
		RadiusMM: o.Number("radius_mm"), Note: o.Text("note")}
}

// arc reads [from, to].
func (d *decoder) arc(n *strictjson.Node, path string) (a Arc) {
	if n.Kind != strictjson.IsArray || len(n.Items) != 2 {
		d.Refuse(path, n.Line, n.Show(), "2 numbers of degrees: from, to", "write it as [330, 30]")
		return a
	}
	for i, item := range n.Items {
		if item.Kind != strictjson.IsNumber {
			d.WrongKind(item, at(path, i), strictjson.IsNumber)
		}
	}
	return Arc{FromDeg: n.Items[0].Number, ToDeg: n.Items[1].Number}
}

func (d *decoder) rimStep(n *strictjson.Node, path string) Reading {
	o := d.Object(n, path, slices.Concat([]string{"kind", "clock_deg", "high?"}, limitKeys, []string{"note?"})...)
	r := RimStep{ClockDeg: o.Number("clock_deg"), High: o.OneOf("high", "", EngineSide, ShaftSide), Note: o.Text("note")}
	r.Goes, r.Stops = d.limits(o)
	return r
}

func (d *decoder) dial(n *strictjson.Node, path string) Reading {
	o := d.Object(n, path, slices.Concat([]string{"kind", "on", "carried_by?", "clock_deg"}, lengthKeys("reads"),
		[]string{"zero_deg?"}, lengthKeys("sag"), []string{"radius_mm?", "note?"})...)
	d.needLength(o, "reads")
	r := Dial{On: o.OneOf("on", "", "face", "rim"), CarriedBy: o.OneOf("carried_by", ShaftSide, EngineSide, ShaftSide),
		ClockDeg: o.Number("clock_deg"), Reads: d.length(o, "reads"), ZeroDeg: o.Number("zero_deg"), Sag: d.length(o, "sag"),
		RadiusMM: o.Number("radius_mm"), Note: o.Text("note")}
	if r.Sag.Value == 0 {
		r.Sag = Length{} // none is none in either unit
	}
	return r
}

func (d *decoder) runOut(n *strictjson.Node, path string) Reading {
	o := d.Object(n, path, slices.Concat([]string{"kind", "half", "on"}, lengthKeys("tir"), []string{"low_deg?", "radius_mm?", "note?"})...)
	d.needLength(o, "tir")
	return RunOut{Half: o.OneOf("half", "", EngineSide, ShaftSide), On: o.OneOf("on", "", "face", "rim"),
		TIR: d.length(o, "tir"), LowDeg: maybe(o, "low_deg"), RadiusMM: o.Number("radius_mm"), Note: o.Text("note")}
}

func (d *decoder) clearance(n *strictjson.Node, path string) Reading {
	o := d.Object(n, path, slices.Concat([]string{"kind", "where", "end", "clock_deg"}, limitKeys, []string{"note?"})...)
	r := Clearance{Where: o.Text("where"), End: o.OneOf("end", "", "fore", "aft"), ClockDeg: o.Number("clock_deg"), Note: o.Text("note")}
	r.Goes, r.Stops = d.limits(o)
	return r
}

func (d *decoder) pilot(n *strictjson.Node, path string) Reading {
	o := d.Object(n, path, "kind", "enters", "note?")
	return Pilot{Enters: o.OneOf("enters", "", PilotEnters...), Note: o.Text("note")}
}
