package visit

// This file holds what makes a job other than the usual: something between the
// halves when they are gauged, a gap that changes under power, two jobs that hang
// together. It is read, written and judged here too.

import (
	"aligner/hulls/strictjson"
)

// Between is what stood between the halves.
type Between struct {
	What string // one of BetweenKinds; "" (default): nothing
	// Uneven is thickest less thinnest of a dummy; left out (default): even.
	// ThinAtDeg is where it is thinnest, with the shaft at its mark.
	Uneven    Length
	ThinAtDeg float64
}

// A rigid dummy stands in for a soft coupling, or that itself is left in.
const (
	Dummy        = "dummy"
	SoftCoupling = "soft coupling"
)

// BetweenKinds are the words Between.What may be.
var BetweenKinds = []string{Dummy, SoftCoupling}

// UnderPower is how the gap changes under power.
type UnderPower struct {
	ThrustN, TorqueNM float64 // on the face; 0 (default): none
	// Shift is the change as measured, between opposite sides, open at
	// ShiftOpensAtDeg; left out (default): it is worked out from thrust and torque.
	Shift           Length
	ShiftOpensAtDeg float64
}

// Linked is one of two jobs that hang together.
type Linked struct {
	Job        string // one of LinkedJobs; "" (default): a job of its own
	Other      string // the other one: a boat, a visit or a file
	OtherMoved bool   // something was moved there after this one was gauged
}

// The jobs of a V-drive whose box stands apart from the engine.
const (
	BoxToShaft  = "box to shaft"
	EngineToBox = "engine to box"
)

// LinkedJobs are the words Linked.Job may be.
var LinkedJobs = []string{BoxToShaft, EngineToBox}

func (d *decoder) between(n *strictjson.Node, path string) (b Between) {
	if n == nil {
		return b
	}
	o := d.Object(n, path, "what", "uneven_thou?", "uneven_mm?", "thin_at_deg?")
	return Between{What: o.OneOf("what", "", BetweenKinds...), Uneven: d.length(o, "uneven"), ThinAtDeg: o.Number("thin_at_deg")}
}

func (d *decoder) underPower(n *strictjson.Node, path string) UnderPower {
	o := d.Object(n, path, "thrust_n?", "torque_nm?", "shift_thou?", "shift_mm?", "shift_opens_at_deg?")
	return UnderPower{ThrustN: o.Number("thrust_n"), TorqueNM: o.Number("torque_nm"), Shift: d.length(o, "shift"),
		ShiftOpensAtDeg: o.Number("shift_opens_at_deg")}
}

func (d *decoder) linked(n *strictjson.Node, path string) (l Linked) {
	if n == nil {
		return l
	}
	o := d.Object(n, path, "job", "other?", "other_moved?")
	return Linked{Job: o.OneOf("job", "", LinkedJobs...), Other: o.Text("other"), OtherMoved: o.Bool("other_moved")}
}

func (e *encoder) between(key string, b Between) {
	e.Open(key, '{')
	e.Text("what", b.What)
	e.length("uneven", b.Uneven)
	e.OptionalNumber("thin_at_deg", b.ThinAtDeg, 0)
	e.Close('}')
}

func (e *encoder) underPower(key string, p UnderPower) {
	e.Open(key, '{')
	e.OptionalNumber("thrust_n", p.ThrustN, 0)
	e.OptionalNumber("torque_nm", p.TorqueNM, 0)
	e.length("shift", p.Shift)
	e.OptionalNumber("shift_opens_at_deg", p.ShiftOpensAtDeg, 0)
	e.Close('}')
}

func (e *encoder) linked(key string, l Linked) {
	e.Open(key, '{')
	e.Text("job", l.Job)
	e.OptionalText("other", l.Other)
	e.OptionalBool("other_moved", l.OtherMoved)
	e.Close('}')
}

// branches judges under power and linked.
func (c *checker) branches() {
	p := &c.v.UnderPower
	c.within("under_power.thrust_n", p.ThrustN, window{-1e5, 1e5, -2e4, 2e4, "N"})
	c.within("under_power.torque_nm", p.TorqueNM, window{-1e5, 1e5, -5000, 5000, "N m"})
	c.length("under_power.shift", p.Shift, gaps)
	c.clock("under_power.shift_opens_at_deg", p.ShiftOpensAtDeg)
	if l := &c.v.Linked; *l != (Linked{}) {
		c.oneOf("linked.job", l.Job, LinkedJobs...)
		c.note("linked.other", l.Other)
	}
}

// between judges what stood between the halves.
func (c *checker) between(place string, b Between) {
	if b == (Between{}) {
		return
	}
	c.oneOf(place+".what", b.What, BetweenKinds...)
	c.length(place+".uneven", b.Uneven, gaps)
	c.clock(place+".thin_at_deg", b.ThinAtDeg)
	if b.What == SoftCoupling && b.Uneven.Given() {
		c.refuse(place+".uneven", "an uneven soft coupling", "a dummy's unevenness", "put a rigid dummy in to gauge, or take it out")
	}
}

// MarshalJSON writes it.
func (p UnderPower) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.underPower("", p) })
}

// UnmarshalJSON reads it.
func (p *UnderPower) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *p = d.underPower(n, "") })
}

// linkedJSON is Linked for edits, which may say that there is no other job.
type linkedJSON struct {
	Job        string `json:"job"`
	Other      string `json:"other"`
	OtherMoved bool   `json:"other_moved"`
}

func init() {
	register(
		func() Edit { return &SetUnderPower{} },
		func() Edit { return &SetLinked{} },
	)
}

// SetUnderPower says how the gap changes under power.
type SetUnderPower struct {
	UnderPower UnderPower `json:"under_power"`
}

// Name is "set under power".
func (*SetUnderPower) Name() string { return "set under power" }

// Words say "under power".
func (e *SetUnderPower) Words() (string, map[string]any) { return "edit_set_under_power", nil }

// Apply says it.
func (e *SetUnderPower) Apply(d Document) (Document, error) {
	v := d.Visit
	v.UnderPower = e.UnderPower
	return d.withVisit(v)
}

// SetLinked says which of two jobs this is; with no job, that it is one of its
// own.
type SetLinked struct {
	Linked linkedJSON `json:"linked"`
}

// NewSetLinked is the edit.
func NewSetLinked(l Linked) *SetLinked { return &SetLinked{linkedJSON(l)} }

// Name is "set linked".
func (*SetLinked) Name() string { return "set linked" }

// Words say "linked job".
func (e *SetLinked) Words() (string, map[string]any) { return "edit_set_linked", nil }

// Apply says it.
func (e *SetLinked) Apply(d Document) (Document, error) {
	v := d.Visit
	v.Linked = Linked(e.Linked)
	return d.withVisit(v)
}
