package visit

// This file gives each part of a visit the JSON it has in a file, so that edits
// hold parts in the same words and read them as strictly.

import (
	"bytes"

	"aligner/hulls/strictjson"
)

// MarshalJSON writes the visit as in its file.
func (v Visit) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.visit(v) })
}

// UnmarshalJSON reads what a file holds. What the hull alone can tell is not
// judged.
func (v *Visit) UnmarshalJSON(data []byte) (err error) {
	*v, err = Parse(data, "")
	return err
}

// MarshalJSON writes the state.
func (s State) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.state("", s) })
}

// UnmarshalJSON reads the state.
func (s *State) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *s = d.state(n, "") })
}

// MarshalJSON writes the leaves under the keys they have in a visit.
func (s LeafSet) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.object(func() { e.leaves(s) }) })
}

// UnmarshalJSON reads the leaves.
func (s *LeafSet) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *s = d.leaves(d.Object(n, "", leafKeys...)) })
}

// none is the JSON of a rule or target that is not there.
var none = []byte("null")

// MarshalJSON writes the rule; none is null.
func (r Rule) MarshalJSON() ([]byte, error) {
	if r == (Rule{}) {
		return none, nil
	}
	return marshalPart(func(e *encoder) { e.rule("", r) })
}

// UnmarshalJSON reads the rule.
func (r *Rule) UnmarshalJSON(data []byte) error {
	if *r = (Rule{}); bytes.Equal(data, none) {
		return nil
	}
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *r = d.rule(n, "") })
}

// MarshalJSON writes the target; none is null.
func (t Target) MarshalJSON() ([]byte, error) {
	if t == (Target{}) {
		return none, nil
	}
	return marshalPart(func(e *encoder) { e.target("", t) })
}

// UnmarshalJSON reads the target.
func (t *Target) UnmarshalJSON(data []byte) error {
	if *t = (Target{}); bytes.Equal(data, none) {
		return nil
	}
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *t = d.target(n, "") })
}

// MarshalJSON writes how a mount was found.
func (m MountFound) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.object(func() { e.mountFound(m) }) })
}

// UnmarshalJSON reads how a mount was found.
func (m *MountFound) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *m = d.mountFound(n, "") })
}

// MarshalJSON writes the finding.
func (f Finding) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.object(func() { e.finding(f) }) })
}

// UnmarshalJSON reads the finding.
func (f *Finding) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *f = d.finding(n, "") })
}

// MarshalJSON writes the gauging with its readings.
func (g Gauging) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.gauging("", g) })
}

// UnmarshalJSON reads the gauging.
func (g *Gauging) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *g = d.gauging(n, "") })
}

// MarshalJSON writes the move.
func (m Move) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.move("", m) })
}

// UnmarshalJSON reads the move.
func (m *Move) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *m = d.move(n, "") })
}

// MarshalJSON writes what was fastened.
func (f Fasten) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.fasten("", f) })
}

// UnmarshalJSON reads what was fastened.
func (f *Fasten) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *f = d.fasten(n, "") })
}

// OneReading is a reading of any kind in JSON.
type OneReading struct{ Reading }

// MarshalJSON writes the reading with its kind.
func (r OneReading) MarshalJSON() ([]byte, error) {
	if r.Reading == nil {
		return nil, errNoReading
	}
	return marshalPart(func(e *encoder) { e.object(func() { e.reading(r.Reading) }) })
}

// UnmarshalJSON reads a reading by its kind.
func (r *OneReading) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { r.Reading = d.reading(n, "") })
}

// object writes keys as an object of their own.
func (e *encoder) object(fill func()) {
	e.Open("", '{')
	fill()
	e.Close('}')
}
