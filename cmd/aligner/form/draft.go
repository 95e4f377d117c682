package form

// This file is what outlives the page.

import (
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/logbook"
)

// Draft is a boat being entered.
type Draft struct {
	past  *fields.Past // nil: not begun, the first questions stand
	id    logbook.HullID
	base  hulls.Hull // what she was taken over from: to compare with
	part  int        // which part, or sheet, is shown
	field string     // pointer of the field chosen
	in    fields.Inches
	asked bool // units were chosen here, and no longer follow the window's
	ask   questions
}

// NewDraft begins with the questions.
func NewDraft() *Draft { return &Draft{ask: firstQuestions()} }

// EditDraft is a boat there is, to be measured again: id says which of the logbook,
// 0 for one that is not in it.
func EditDraft(h hulls.Hull, id logbook.HullID) *Draft {
	d := NewDraft()
	d.begin(h, h)
	d.id = id
	return d
}

// begin puts a boat into the form.
func (d *Draft) begin(h, base hulls.Hull) {
	d.past, d.base, d.part, d.field = fields.NewPast(h), base, 0, ""
}

// Hull is the boat as she is entered so far, which need not be a possible one yet.
func (d *Draft) Hull() (hulls.Hull, bool) {
	if d.past == nil {
		return hulls.Hull{}, false
	}
	return d.past.Now(), true
}
