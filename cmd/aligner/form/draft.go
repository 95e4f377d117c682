package form

// This file is what outlives the page.

import (
	"reflect"

	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/logbook"
)

// Draft is a boat being entered.
type Draft struct {
	past  *fields.Past // nil: not begun, the first questions stand
	id    logbook.HullID
	file  logbook.DraftID // what it is kept under
	old   bool            // unfinished measurements of before are in it, to be told
	base  hulls.Hull      // what she was taken over from: to compare with
	part  int             // which part, or sheet, is shown
	field string          // pointer of the field chosen
	in    fields.Inches
	asked bool // units were chosen here, and no longer follow the window's
	ask   questions
}

// NewDraft begins with the questions.
func NewDraft() *Draft { return &Draft{ask: firstQuestions(), file: logbook.NewDraftID()} }

// EditDraft is a boat there is, to be measured again: id says which of the logbook,
// 0 for one that is not in it.
func EditDraft(h hulls.Hull, id logbook.HullID) *Draft {
	d := NewDraft()
	d.begin(h, h)
	if d.id = id; id != 0 {
		d.file = logbook.DraftOf(id)
	}
	return d
}

// goOn takes up measurements of the boat that were left unfinished; undoing it goes
// back to those she has in the logbook.
func (d *Draft) goOn(book *logbook.Book) {
	if book == nil || d.past == nil || d.id == 0 || d.past.Begun() {
		return
	}
	if h, ok, err := book.Draft(d.file); ok && err == nil && !reflect.DeepEqual(h, d.past.Now()) {
		d.old = d.past.Do(fields.Replace{Hull: h}) == nil
	}
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
