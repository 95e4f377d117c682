package visit

// This file holds what seals the shaft where it leaves the boat: a seal that
// pushes on the coupling spoils what is gauged, and one left clamped is torn when
// the shaft is moved.

import "aligner/hulls/strictjson"

// Seal is what is known of it.
type Seal struct {
	Kind      string // one of SealKinds; "" (default): not said
	PressedMM Maybe  // how far a bellows was found pressed together; default: not measured
	Freed     bool   // turned free of the shaft before it is moved
	SetBack   bool   // pressed together, or nipped up, as it was
}

// Kinds of seal.
const (
	SealPacking = "packing" // in a stuffing box
	SealFace    = "face"    // pressed on by a bellows
	SealLip     = "lip"
)

// SealKinds are all of them.
var SealKinds = []string{SealPacking, SealFace, SealLip}

func init() {
	register(func() Edit { return &SetSeal{} })
}

// SetSeal says what is known of the seal.
type SetSeal struct {
	Seal Seal `json:"seal"`
}

// Name is "set seal".
func (*SetSeal) Name() string { return "set seal" }

// Words say "shaft seal".
func (e *SetSeal) Words() (string, map[string]any) { return "edit_set_seal", nil }

// Apply says it.
func (e *SetSeal) Apply(d Document) (Document, error) {
	v := d.Visit
	v.Seal = e.Seal
	return d.withVisit(v)
}

func (d *decoder) seal(n *strictjson.Node, path string) Seal {
	o := d.Object(n, path, "kind?", "pressed_mm?", "freed?", "set_back?")
	return Seal{Kind: o.OneOf("kind", "", SealKinds...), PressedMM: maybe(o, "pressed_mm"), Freed: o.Bool("freed"), SetBack: o.Bool("set_back")}
}

func (e *encoder) seal(key string, s Seal) {
	e.Open(key, '{')
	e.OptionalText("kind", s.Kind)
	e.maybe("pressed_mm", s.PressedMM)
	e.OptionalBool("freed", s.Freed)
	e.OptionalBool("set_back", s.SetBack)
	e.Close('}')
}

// seal judges it. A bellows is pressed together by some millimetres to some
// centimetres (common practice, no source).
func (c *checker) seal() {
	s := &c.v.Seal
	c.oneOf("seal.kind", s.Kind, append([]string{""}, SealKinds...)...)
	c.maybe("seal.pressed_mm", s.PressedMM, window{0, 200, 2, 60, "mm"})
	if s.SetBack && !s.Freed {
		c.doubt("seal.set_back", "true", "a seal that was freed", "say that it was freed, or delete it")
	}
}

// MarshalJSON writes the seal.
func (s Seal) MarshalJSON() ([]byte, error) {
	return marshalPart(func(e *encoder) { e.seal("", s) })
}

// UnmarshalJSON reads the seal.
func (s *Seal) UnmarshalJSON(data []byte) error {
	return unmarshalPart(data, func(d *decoder, n *strictjson.Node) { *s = d.seal(n, "") })
}
