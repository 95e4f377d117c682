package visit

// This file holds the edits of what is settled before a leaf is taken out:
// cautions read, and how much of the rim can be reached.

func init() {
	register(
		func() Edit { return &MindCautions{} },
		func() Edit { return &SetReach{} },
	)
}

// MindCautions records that what can hurt someone was read.
type MindCautions struct {
	Minded bool `json:"minded"`
}

// Name is "mind cautions".
func (*MindCautions) Name() string { return "mind cautions" }

// Words say "cautions read".
func (*MindCautions) Words() (string, map[string]any) { return "edit_mind_cautions", nil }

// Apply records it.
func (e *MindCautions) Apply(d Document) (Document, error) {
	v := d.Visit
	v.CautionsMinded = e.Minded
	return d.withVisit(v)
}

// SetReach says which part of the rim a leaf can be got at, clockwise looking
// forward; 0 to 0, or 0 to 360, is all round.
type SetReach struct {
	FromDeg float64 `json:"from_deg"`
	ToDeg   float64 `json:"to_deg"`
}

// Name is "set reach".
func (*SetReach) Name() string { return "set reach" }

// Words say "rim within reach".
func (*SetReach) Words() (string, map[string]any) { return "edit_set_reach", nil }

// Apply says it.
func (e *SetReach) Apply(d Document) (Document, error) {
	v := d.Visit
	v.Reach = Arc{e.FromDeg, e.ToDeg}.canonical()
	return d.withVisit(v)
}
