package visit

// This file reads, writes and judges what a visit file says of its end.

import (
	"fmt"

	"aligner/hulls/strictjson"
)

func (d *decoder) bolts(n *strictjson.Node, path string) Bolts {
	o := d.Object(n, path, "maker_torque_nm?", "maker_torque_lb_ft?", "oiled?")
	v, unit := d.either(o, "maker_torque", InNM, InLbFt)
	return Bolts{Maker: Torque{v, unit}, Oiled: o.Bool("oiled")}
}

func (d *decoder) handedOver(n *strictjson.Node, path string) HandedOver {
	o := d.Object(n, path, "date?", "turned_by_hand?", "tight_at_deg?", "nuts_marked?", "note?")
	return HandedOver{Date: o.Text("date"), TurnedByHand: o.OneOf("turned_by_hand", "", HandTurns...),
		TightAtDeg: maybe(o, "tight_at_deg"), NutsMarked: o.Bool("nuts_marked"), Note: o.Text("note")}
}

// names reads a list of texts; nil when there are none.
func (d *decoder) names(o strictjson.Object, key string) []string {
	items, path := o.List(key, mostItems)
	var names []string
	for i, item := range items {
		if item.Kind != strictjson.IsString {
			d.WrongKind(item, at(path, i), strictjson.IsString)
		}
		names = append(names, item.Text)
	}
	return names
}

func (e *encoder) bolts(key string, b Bolts) {
	e.Open(key, '{')
	if b.Maker.Given() {
		e.Number("maker_torque_"+string(b.Maker.Unit), b.Maker.Value)
	}
	e.OptionalBool("oiled", b.Oiled)
	e.Close('}')
}

func (e *encoder) handedOver(key string, h HandedOver) {
	e.Open(key, '{')
	e.OptionalText("date", h.Date)
	e.OptionalText("turned_by_hand", h.TurnedByHand)
	e.maybe("tight_at_deg", h.TightAtDeg)
	e.OptionalBool("nuts_marked", h.NutsMarked)
	e.OptionalText("note", h.Note)
	e.Close('}')
}

// closing judges bolts and hand-over.
func (c *checker) closing() {
	if t := c.v.Bolts.Maker; t.Given() {
		c.oneOf("coupling_bolts.maker_torque", string(t.Unit), string(InNM), string(InLbFt))
		c.within("coupling_bolts.maker_torque_"+string(t.Unit), t.NM(), window{0.1, 5000, 5, 800, "N m"})
	}
	h := &c.v.HandedOver
	if h.Date != "" && !isDate(h.Date) {
		c.noDate("handed_over.date", h.Date)
	}
	if h.TurnedByHand != "" {
		c.oneOf("handed_over.turned_by_hand", h.TurnedByHand, HandTurns...)
	}
	c.maybe("handed_over.tight_at_deg", h.TightAtDeg, wholeTurn)
	c.note("handed_over.note", h.Note)
}

// fastenKind judges what kind of thing was tightened, and where.
func (c *checker) fastenKind(f Fasten, place string) {
	if f.Kind != "" {
		c.oneOf(place+".kind", f.Kind, FastenKinds...)
	}
	if len(f.Mounts) > mostItems {
		c.refuse(place+".mounts", fmt.Sprintf("a list of %d", len(f.Mounts)), fmt.Sprintf("at most %d", mostItems), "give a visit file")
	}
	for i, name := range f.Mounts {
		c.mountName(at(place+".mounts", i), name)
	}
	if f.Round != 0 {
		c.within(place+".round", float64(f.Round), window{1, mostRounds, 1, mostRounds, ""})
	}
}

// MarshalJSON writes the bolts.
func (b Bolts) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.bolts("", b) })
}

// UnmarshalJSON reads the bolts.
func (b *Bolts) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *b = d.bolts(n, "") })
}

// MarshalJSON writes the hand-over.
func (h HandedOver) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.handedOver("", h) })
}

// UnmarshalJSON reads the hand-over.
func (h *HandedOver) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *h = d.handedOver(n, "") })
}
