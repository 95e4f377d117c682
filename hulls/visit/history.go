package visit

// This file is the past: every document there was, and the edits between.

import "fmt"

// History holds documents from the first to the last, and where one is.
type History struct {
	steps []step
	at    int // steps[at] is shown
}

// step is a document and the edit that led to it; the first has none.
type step struct {
	document Document
	edit     Edit
}

// mostSteps is how far back one can go.
const mostSteps = 1000

// NewHistory begins with a document.
func NewHistory(d Document) *History { return &History{steps: []step{{document: d}}} }

// Now is the document shown.
func (h *History) Now() Document { return h.steps[h.at].document }

// Before is the document before the last edit, and that edit; at the beginning
// the document itself and nil.
func (h *History) Before() (Document, Edit) {
	if h.at == 0 {
		return h.Now(), nil
	}
	return h.steps[h.at-1].document, h.steps[h.at].edit
}

// Preview is what an edit would make of the document, unrecorded: a drag shows
// previews and does one edit at its end.
func (h *History) Preview(e Edit) (Document, error) { return e.Apply(h.Now()) }

// Do applies an edit and records it; what was undone is forgotten. A refused
// edit changes nothing.
func (h *History) Do(e Edit) error {
	d, err := e.Apply(h.Now())
	if err != nil {
		return err
	}
	h.steps = append(h.steps[:h.at+1], step{d, e})
	if extra := len(h.steps) - mostSteps - 1; extra > 0 {
		h.steps = append([]step(nil), h.steps[extra:]...)
		h.steps[0].edit = nil
	}
	h.at = len(h.steps) - 1
	return nil
}

// Undo goes back by one edit, which it returns, or nil.
func (h *History) Undo() Edit {
	if h.at == 0 {
		return nil
	}
	h.at--
	return h.steps[h.at+1].edit
}

// Redo goes forward by one edit, which it returns, or nil.
func (h *History) Redo() Edit {
	if h.at+1 >= len(h.steps) {
		return nil
	}
	h.at++
	return h.steps[h.at].edit
}

// CanUndo and CanRedo say which edit is next, or nil.
func (h *History) CanUndo() Edit { return h.steps[h.at].edit }

// CanRedo says which edit Redo would do, or nil.
func (h *History) CanRedo() Edit {
	if h.at+1 >= len(h.steps) {
		return nil
	}
	return h.steps[h.at+1].edit
}

// Replay applies edits as Marshal wrote them, one after the other. The error
// says which of them failed; the document is then the one before it.
func Replay(start Document, edits [][]byte) (Document, error) {
	for i, data := range edits {
		e, err := Unmarshal(data)
		if err != nil {
			return start, fmt.Errorf("edit %d: %w", i+1, err)
		}
		next, err := e.Apply(start)
		if err != nil {
			return start, fmt.Errorf("edit %d, %s: %w", i+1, e.Name(), err)
		}
		start = next
	}
	return start, nil
}
