package visit

// This file holds the edits of what a visit begins with.

import (
	"fmt"
	"slices"
)

func init() {
	register(
		func() Edit { return &SetDate{} },
		func() Edit { return &SetState{} },
		func() Edit { return &SetLeaves{} },
		func() Edit { return &SetRule{} },
		func() Edit { return &SetTarget{} },
		func() Edit { return &FindMount{} },
		func() Edit { return &LookOver{} },
		func() Edit { return &RemoveFinding{} },
		func() Edit { return &NoteVisit{} },
	)
}

// SetDate dates the visit.
type SetDate struct {
	Date string `json:"date"`
}

// Name is "set date".
func (*SetDate) Name() string { return "set date" }

// Words say "dated 2026-05-14".
func (e *SetDate) Words() (string, map[string]any) {
	return "edit_set_date", map[string]any{"Date": e.Date}
}

// Apply dates it.
func (e *SetDate) Apply(d Document) (Document, error) {
	v := d.Visit
	v.Date = e.Date
	return d.withVisit(v)
}

// SetState says in what state the boat is. The trial floats with her.
type SetState struct {
	State State `json:"state"`
}

// Name is "set state".
func (*SetState) Name() string { return "set state" }

// Words say "boat's state".
func (e *SetState) Words() (string, map[string]any) {
	return "edit_set_state", map[string]any{"Boat": e.State.Boat}
}

// Apply says it.
func (e *SetState) Apply(d Document) (Document, error) {
	v := d.Visit
	v.State = e.State
	next, err := d.withVisit(v)
	if err == nil && e.State.Boat != "" {
		next.Trial.Afloat = e.State.Afloat()
	}
	return next, err
}

// SetLeaves says which leaves there are.
type SetLeaves struct {
	Leaves LeafSet `json:"leaves"`
}

// Name is "set leaves".
func (*SetLeaves) Name() string { return "set leaves" }

// Words say "leaves".
func (e *SetLeaves) Words() (string, map[string]any) { return "edit_set_leaves", nil }

// Apply says it.
func (e *SetLeaves) Apply(d Document) (Document, error) {
	v := d.Visit
	v.Leaves = e.Leaves
	return d.withVisit(v)
}

// SetRule chooses the acceptance rule; an empty one takes the choice back.
type SetRule struct {
	Rule Rule `json:"rule"`
}

// Name is "set rule".
func (*SetRule) Name() string { return "set rule" }

// Words say "rule: common practice, 3 thou".
func (e *SetRule) Words() (string, map[string]any) {
	if e.Rule == (Rule{}) {
		return "edit_no_rule", nil
	}
	return "edit_set_rule", map[string]any{"Named": e.Rule.Named}
}

// Apply chooses it.
func (e *SetRule) Apply(d Document) (Document, error) {
	v := d.Visit
	v.Rule = e.Rule
	return d.withVisit(v)
}

// SetTarget sets the gap aimed at; an empty one aims at none.
type SetTarget struct {
	Target Target `json:"target"`
}

// Name is "set target".
func (*SetTarget) Name() string { return "set target" }

// Words say "target gap: hogs when loaded".
func (e *SetTarget) Words() (string, map[string]any) {
	if e.Target == (Target{}) {
		return "edit_no_target", nil
	}
	return "edit_set_target", map[string]any{"Reason": e.Target.Reason}
}

// Apply sets it.
func (e *SetTarget) Apply(d Document) (Document, error) {
	v := d.Visit
	v.Target = e.Target
	return d.withVisit(v)
}

// FindMount says how a mount was found and left: stuck, forbidden, its stud's
// height. What was said of it before is replaced.
type FindMount struct {
	Found MountFound `json:"found"`
}

// Name is "find mount".
func (*FindMount) Name() string { return "find mount" }

// Words say "fore port as found".
func (e *FindMount) Words() (string, map[string]any) {
	return "edit_find_mount", map[string]any{"Mount": e.Found.Mount}
}

// Apply says it.
func (e *FindMount) Apply(d Document) (Document, error) {
	v := d.Visit
	v.Mounts = put(v.Mounts, e.Found, func(m MountFound) bool { return m.Mount == e.Found.Mount })
	return d.withVisit(v)
}

// put replaces the item that is the same, or adds it at the end. The list given
// stays as it was.
func put[T any](list []T, item T, same func(T) bool) []T {
	list = slices.Clone(list)
	if i := slices.IndexFunc(list, same); i >= 0 {
		list[i] = item
		return list
	}
	return append(list, item)
}

// LookOver records a check of the look-over, in place of what it found before.
type LookOver struct {
	Finding Finding `json:"finding"`
}

// Name is "look over".
func (*LookOver) Name() string { return "look over" }

// Words say "strut firm: good".
func (e *LookOver) Words() (string, map[string]any) {
	return "edit_look_over", map[string]any{"Check": e.Finding.Check, "Finding": e.Finding.Finding}
}

// Apply records it.
func (e *LookOver) Apply(d Document) (Document, error) {
	v := d.Visit
	v.LookOver = put(v.LookOver, e.Finding, func(f Finding) bool { return f.Check == e.Finding.Check })
	return d.withVisit(v)
}

// RemoveFinding takes a check back.
type RemoveFinding struct {
	Check string `json:"check"`
}

// Name is "remove finding".
func (*RemoveFinding) Name() string { return "remove finding" }

// Words say "strut firm: taken back".
func (e *RemoveFinding) Words() (string, map[string]any) {
	return "edit_remove_finding", map[string]any{"Check": e.Check}
}

// Apply takes it back.
func (e *RemoveFinding) Apply(d Document) (Document, error) {
	v := d.Visit
	i := slices.IndexFunc(v.LookOver, func(f Finding) bool { return f.Check == e.Check })
	if i < 0 {
		return d, fmt.Errorf("no check %q in this visit", e.Check)
	}
	v.LookOver = slices.Delete(slices.Clone(v.LookOver), i, i+1)
	return d.withVisit(v)
}

// NoteVisit writes the visit's note.
type NoteVisit struct {
	Note string `json:"note"`
}

// Name is "note visit".
func (*NoteVisit) Name() string { return "note visit" }

// Words say "note".
func (e *NoteVisit) Words() (string, map[string]any) { return "edit_note_visit", nil }

// Apply writes it.
func (e *NoteVisit) Apply(d Document) (Document, error) {
	v := d.Visit
	v.Note = e.Note
	return d.withVisit(v)
}
