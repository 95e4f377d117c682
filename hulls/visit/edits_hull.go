package visit

// This file holds the edit that changes measurements of the boat in the midst of a
// visit: a mount's thread found to be another than was thought.

import (
	"encoding/json"
	"fmt"

	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/strictjson"
)

func init() { register(func() Edit { return &ChangeHull{} }) }

// ChangeHull sets fields of the visit's hull, one after the other. The visit then
// holds its hull itself: what it was begun on is another.
type ChangeHull struct {
	Changes []HullChange `json:"changes"`
}

// HullChange is one field with its new value.
type HullChange struct {
	Pointer string
	Key     string // what the field is called, see fields.Field
	Number  bool   // the value is a number, not a text
	Value   fields.Value
	Plus    float64 // its plus-or-minus; below nought: the program's own
}

// hullChangeJSON is its written form: number or text, whichever it is.
type hullChangeJSON struct {
	Pointer string   `json:"pointer"`
	Field   string   `json:"field"`
	Number  *float64 `json:"number,omitempty"`
	Text    *string  `json:"text,omitempty"`
	Plus    *float64 `json:"plus,omitempty"`
}

// MarshalJSON writes the change.
func (c HullChange) MarshalJSON() ([]byte, error) {
	j := hullChangeJSON{Pointer: c.Pointer, Field: c.Key}
	if c.Number {
		j.Number = &c.Value.Number
	} else {
		j.Text = &c.Value.Text
	}
	if c.Plus >= 0 {
		j.Plus = &c.Plus
	}
	return json.Marshal(j)
}

// UnmarshalJSON reads the change: a number or a text, and nothing else.
func (c *HullChange) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) {
		o := d.Object(n, "", "pointer", "field", "number?", "text?", "plus?")
		*c = HullChange{Pointer: o.Text("pointer"), Key: o.Text("field"), Number: o.Has("number"), Plus: o.NumberOr("plus", -1)}
		if c.Number == o.Has("text") {
			d.Refuse("", n.Line, "a change to nothing, or to two things", "number or text", "give one of the two")
		}
		c.Value = fields.Value{Number: o.Number("number"), Text: o.Text("text")}
	})
}

// NewChangeHull is the edit that makes one hull into another of the same parts; nil
// where they do not differ. Mounts, bearings or a stuffing box more or less make
// another boat: of her a visit is begun anew.
func NewChangeHull(from, to *hulls.Hull) (*ChangeHull, error) {
	if len(from.Mounts) != len(to.Mounts) || len(from.Bearings) != len(to.Bearings) || (from.StuffingBox == nil) != (to.StuffingBox == nil) {
		return nil, &hulls.Fault{Place: "hull", Value: "other mounts, bearings or stuffing box than the visit was begun with", Limit: "the same parts", Mend: "begin a visit of the boat as she is now"}
	}
	e := &ChangeHull{}
	for _, f := range fields.List(to) {
		was, had := fields.Find(from, f.Pointer)
		plus, stated := to.Tolerance[f.Pointer]
		before, wasStated := from.Tolerance[f.Pointer]
		if had && was.Get(from) == f.Get(to) && stated == wasStated && plus == before {
			continue
		}
		if !stated {
			plus = -1
		}
		e.Changes = append(e.Changes, HullChange{Pointer: f.Pointer, Key: f.Key, Number: f.Kind.IsNumber(), Value: f.Get(to), Plus: plus})
	}
	if len(e.Changes) == 0 {
		return nil, nil
	}
	return e, nil
}

// Name is "change hull".
func (*ChangeHull) Name() string { return "change hull" }

// Words say "measured: thread of the stud".
func (e *ChangeHull) Words() (string, map[string]any) {
	if len(e.Changes) == 1 {
		return "edit_change_hull", map[string]any{"FieldKey": e.Changes[0].Key}
	}
	return "edit_change_hull_several", map[string]any{"Count": len(e.Changes)}
}

// Apply changes the hull; the boat it comes to must be a possible one, and the
// visit must hold on it.
func (e *ChangeHull) Apply(d Document) (Document, error) {
	if len(e.Changes) == 0 {
		return d, fmt.Errorf("nothing to change: give a field and its value")
	}
	h := d.Hull
	for _, c := range e.Changes {
		next, err := fields.Set(h, c.Pointer, c.Value)
		if err == nil && c.Number {
			next, err = fields.SetTolerance(next, c.Pointer, c.Plus)
		}
		if err != nil {
			return d, err
		}
		h = next
	}
	if err := hulls.Validate(h).Err(); err != nil {
		return d, err
	}
	next := d.clone()
	next.Hull = h
	if next.Trial.Held == "seated" && !h.Coupling.HasPilot() {
		next.Trial.Held = "centred"
	}
	v := d.Visit
	own := h.Clone()
	v.HullName, v.Embedded = "", &own
	next, err := next.withVisit(v)
	if err != nil {
		return d, err
	}
	return next, nil
}
