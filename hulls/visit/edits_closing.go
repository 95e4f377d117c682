package visit

// This file holds the edits of a visit's end: the coupling's bolts, the
// hand-over.

func init() {
	register(
		func() Edit { return &SetBolts{} },
		func() Edit { return &HandOver{} },
	)
}

// SetBolts says what is known of the coupling's bolts.
type SetBolts struct {
	Bolts Bolts `json:"bolts"`
}

// Name is "set bolts".
func (*SetBolts) Name() string { return "set bolts" }

// Words say "coupling bolts".
func (e *SetBolts) Words() (string, map[string]any) { return "edit_set_bolts", nil }

// Apply says it.
func (e *SetBolts) Apply(d Document) (Document, error) {
	v := d.Visit
	v.Bolts = e.Bolts
	return d.withVisit(v)
}

// HandOver says how far the hand-over has come; with a date, that the boat was
// handed over.
type HandOver struct {
	HandedOver HandedOver `json:"handed_over"`
}

// Name is "hand over".
func (*HandOver) Name() string { return "hand over" }

// Words say "handed over 2026-05-14" or "hand-over".
func (e *HandOver) Words() (string, map[string]any) {
	if e.HandedOver.Done() {
		return "edit_handed_over", map[string]any{"Date": e.HandedOver.Date}
	}
	return "edit_hand_over", nil
}

// Apply says it.
func (e *HandOver) Apply(d Document) (Document, error) {
	v := d.Visit
	v.HandedOver = e.HandedOver
	return d.withVisit(v)
}
