package fields

// This file is what is done in the form: edits as values, and the past of a draft.

import (
	"slices"

	"aligner/hulls"
)

// Edit is one change of a draft.
type Edit interface {
	// Apply gives the changed hull, or one fault. The hull given is not touched.
	Apply(hulls.Hull) (hulls.Hull, error)
}

// The edits.
type (
	// Enter sets a field to what was measured; Plus is its plus-or-minus where that
	// was told too, nil where not.
	Enter struct {
		Pointer string
		Value   Value
		Plus    *float64
	}
	// LeaveToUsual takes the usual value for a field.
	LeaveToUsual struct{ Pointer string }
	// Mounts puts the engine on four or six mounts.
	Mounts struct{ Number int }
	// MoreBearings adds one; LessBearings takes one away.
	MoreBearings struct{}
	LessBearings struct{ Index int }
	// Box has a stuffing box riding on the shaft, or none.
	Box struct{ On bool }
	// Lopsided says that the boat is not symmetric, and that this is so.
	Lopsided struct{ On bool }
	// Answered adds what the boat answered; Forget takes one such answer away.
	Answered struct{ Measured hulls.Measured }
	Forget   struct{ Index int }
	// Replace puts another boat in the form.
	Replace struct{ Hull hulls.Hull }
)

// Apply sets the field.
func (e Enter) Apply(h hulls.Hull) (hulls.Hull, error) {
	next, err := Set(h, e.Pointer, e.Value)
	if err == nil && e.Plus != nil {
		next, err = SetTolerance(next, e.Pointer, *e.Plus)
	}
	if err != nil {
		return h, err
	}
	return next, nil
}

// Apply takes the usual value.
func (e LeaveToUsual) Apply(h hulls.Hull) (hulls.Hull, error) { return TakeUsual(h, e.Pointer) }

// Apply changes the number of mounts.
func (e Mounts) Apply(h hulls.Hull) (hulls.Hull, error) { return SetMounts(h, e.Number) }

// Apply adds a bearing.
func (MoreBearings) Apply(h hulls.Hull) (hulls.Hull, error) { return AddBearing(h) }

// Apply takes a bearing away.
func (e LessBearings) Apply(h hulls.Hull) (hulls.Hull, error) { return RemoveBearing(h, e.Index) }

// Apply adds the box or takes it away.
func (e Box) Apply(h hulls.Hull) (hulls.Hull, error) { return SetBox(h, e.On), nil }

// Apply says it.
func (e Lopsided) Apply(h hulls.Hull) (hulls.Hull, error) {
	next := h.Clone()
	next.OneSided = e.On
	return next, nil
}

// Apply adds the answer, if the hull takes it.
func (e Answered) Apply(h hulls.Hull) (hulls.Hull, error) {
	next := h.Clone()
	next.MeasuredResponse = append(next.MeasuredResponse, e.Measured)
	if err := newRefusal(h, next, "measured_response"); err != nil {
		return h, err
	}
	return next, nil
}

// Apply forgets the answer.
func (e Forget) Apply(h hulls.Hull) (hulls.Hull, error) {
	next := h.Clone()
	if e.Index < 0 || e.Index >= len(next.MeasuredResponse) {
		return h, &hulls.Fault{Place: "measured_response", Value: "nothing there", Limit: "an answer of this hull", Mend: "choose one that is listed"}
	}
	if next.MeasuredResponse = slices.Delete(next.MeasuredResponse, e.Index, e.Index+1); len(next.MeasuredResponse) == 0 {
		next.MeasuredResponse = nil
	}
	return next, nil
}

// Apply puts it there.
func (e Replace) Apply(hulls.Hull) (hulls.Hull, error) { return e.Hull.Clone(), nil }

// Past is every draft there was, from the first to the last, and where one is.
type Past struct {
	drafts []hulls.Hull
	edits  []Edit // edits[i] led to drafts[i]; the first is nil
	at     int
}

// NewPast begins with a hull.
func NewPast(h hulls.Hull) *Past {
	return &Past{drafts: []hulls.Hull{h.Clone()}, edits: []Edit{nil}}
}

// Begun reports whether anything was ever done.
func (p *Past) Begun() bool { return len(p.drafts) > 1 }

// Now is the draft shown.
func (p *Past) Now() hulls.Hull { return p.drafts[p.at].Clone() }

// Do applies an edit; a refused one changes nothing. What was undone is forgotten.
func (p *Past) Do(e Edit) error {
	next, err := e.Apply(p.Now())
	if err != nil {
		return err
	}
	p.drafts, p.edits = append(p.drafts[:p.at+1], next), append(p.edits[:p.at+1], e)
	p.at++
	return nil
}

// Undo goes back by one edit, which it returns, or nil at the beginning.
func (p *Past) Undo() Edit {
	if p.at == 0 {
		return nil
	}
	p.at--
	return p.edits[p.at+1]
}

// Redo goes forward by one edit, which it returns, or nil at the end.
func (p *Past) Redo() Edit {
	if p.at+1 == len(p.drafts) {
		return nil
	}
	p.at++
	return p.edits[p.at]
}
