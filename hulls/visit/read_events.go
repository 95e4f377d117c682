package visit

// This file reads what happened in a visit: gaugings, moves, things fastened.

import (
	"fmt"
	"slices"

	"aligner/hulls/strictjson"
)

// at is the path of a list's item.
func at(path string, i int) string { return fmt.Sprintf("%s[%d]", path, i) }

// event reads one event. Which of its three keys it has says what it is.
func (d *decoder) event(n *strictjson.Node, path string) (e Event) {
	o := d.Object(n, path, "date?", "gauging?", "move?", "fasten?")
	e.Date = o.Text("date")
	if o.Node == nil {
		return e
	}
	found := 0
	for _, key := range []string{"gauging", "move", "fasten"} {
		if o.Has(key) {
			found++
		}
	}
	if found != 1 {
		d.Refuse(path, n.Line, fmt.Sprintf("%d things done", found), "one of gauging, move, fasten",
			"give each thing done an event of its own, in the order they happened")
		return e
	}
	if g := o.Get("gauging"); g != nil {
		e.Gauging = ptr(d.gauging(g, strictjson.Join(path, "gauging")))
	}
	if m := o.Get("move"); m != nil {
		e.Move = ptr(d.move(m, strictjson.Join(path, "move")))
	}
	if f := o.Get("fasten"); f != nil {
		e.Fasten = ptr(d.fasten(f, strictjson.Join(path, "fasten")))
	}
	return e
}

func ptr[T any](v T) *T { return &v }

func (d *decoder) gauging(n *strictjson.Node, path string) (g Gauging) {
	o := d.Object(n, path, slices.Concat([]string{"held", "held_by?", "seating?", "shaft_turn_deg?", "flange_turn_deg?"},
		lengthKeys("apart"), []string{"between?", "push_n?", "lever_on?", "bolts_in?", "readings?", "note?"})...)
	g.Held, g.HeldBy = o.OneOf("held", "", GaugedWays...), o.Text("held_by")
	g.Seating = d.atLeastOne(o, "seating")
	g.ShaftTurnDeg, g.FlangeTurnDeg = o.Number("shaft_turn_deg"), o.Number("flange_turn_deg")
	g.Apart = d.length(o, "apart")
	if g.Apart.Value == 0 {
		g.Apart = Length{} // 0 apart is touching
	}
	g.Between = d.between(o.Get("between"), strictjson.Join(path, "between"))
	g.PushN = o.Number("push_n")
	g.LeverOn, g.BoltsIn = o.Bool("lever_on"), o.Bool("bolts_in")
	g.Readings = listOf(o, "readings", mostReadings, d.reading)
	g.Note = o.Text("note")
	return g
}

// atLeastOne reads a count; 0 where it is left out.
func (d *decoder) atLeastOne(o strictjson.Object, key string) int {
	n := o.Whole(key)
	if v := o.Of(key, strictjson.IsNumber); v != nil && n < 1 && v.Number == float64(n) {
		d.Refuse(strictjson.Join(o.Path, key), v.Line, v.Show(), "1 or more", "count from 1, or leave the key out")
	}
	return max(n, 0)
}

func (d *decoder) move(n *strictjson.Node, path string) Move {
	o := d.Object(n, path, "nut_flats?", "slide_mm?", "lever_on?", "note?")
	return Move{NutFlats: d.byMount(o, "nut_flats"), SlideMM: d.byMount(o, "slide_mm"),
		LeverOn: o.Bool("lever_on"), Note: o.Text("note")}
}

// byMount reads numbers by mount; nil when there are none.
func (d *decoder) byMount(o strictjson.Object, key string) map[string]float64 {
	n := o.Of(key, strictjson.IsObject)
	if n == nil || len(n.Keys) == 0 {
		return nil
	}
	path := strictjson.Join(o.Path, key)
	if len(n.Keys) > mostItems {
		d.Refuse(path, n.Line, fmt.Sprintf("%d mounts", len(n.Keys)), fmt.Sprintf("at most %d", mostItems), "give a visit file")
		return nil
	}
	m := make(map[string]float64, len(n.Keys))
	for i, name := range n.Keys {
		if item := n.Items[i]; item.Kind != strictjson.IsNumber {
			d.Refuse(strictjson.Join(path, name), item.Line, item.Show(), "a number of "+units[key], "write a number")
		} else {
			m[name] = item.Number
		}
	}
	return m
}

// units of numbers that stand under a mount's name.
var units = map[string]string{"nut_flats": "flats", "slide_mm": "millimetres", "nut_steps": "flats or shims"}

func (d *decoder) fasten(n *strictjson.Node, path string) Fasten {
	o := d.Object(n, path, "what", "kind?", "mounts?", "round?", "torque_nm?", "torque_lb_ft?", "note?")
	v, unit := d.either(o, "torque", InNM, InLbFt)
	return Fasten{What: o.Text("what"), Kind: o.OneOf("kind", "", FastenKinds...), Mounts: d.names(o, "mounts"),
		Round: d.atLeastOne(o, "round"), Torque: Torque{v, unit}, Note: o.Text("note")}
}
