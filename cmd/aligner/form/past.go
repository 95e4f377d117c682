package form

// This file does edits and goes back and forth through them, the draft kept on the
// disk at each step.

import (
	"aligner/assets/words"
	"aligner/hulls/fields"
)

// edit does an edit, keeps the draft, and shows what it comes to. A refused one is
// told.
func (p *Page) edit(e fields.Edit) bool {
	if err := p.d.past.Do(e); err != nil {
		p.tell(p.desk.Speaker.Retell(err.Error()))
		return false
	}
	p.keepDraft()
	p.renew(false)
	return true
}

// keepDraft writes the draft beside the logbook.
func (p *Page) keepDraft() {
	p.tell("")
	if p.do.Book == nil || !p.do.Book.Writable() {
		return
	}
	if err := p.do.Book.KeepDraft(p.d.file, p.d.past.Now()); err != nil {
		p.tell(p.say(words.NotKept, words.Args{"Why": p.desk.Speaker.Retell(err.Error())}))
	}
}

// goBack and goOn go through the past.
func (p *Page) goBack() { p.travel((*fields.Past).Undo) }

func (p *Page) goOn() { p.travel((*fields.Past).Redo) }

func (p *Page) travel(way func(*fields.Past) fields.Edit) {
	if p.d.past == nil {
		return
	}
	e := way(p.d.past)
	if e == nil {
		p.tell(p.say(words.NothingThere, nil))
		return
	}
	p.keepDraft()
	p.renew(false)
	if pointer := pointerOf(e); pointer != "" { // show what changed
		p.d.part, p.d.field = p.partOf(pointer), pointer
	}
	p.fill()
	p.showParts()
	p.side.show()
}

// pointerOf is the field an edit was of.
func pointerOf(e fields.Edit) string {
	switch e := e.(type) {
	case fields.Enter:
		return e.Pointer
	case fields.LeaveToUsual:
		return e.Pointer
	}
	return ""
}

// Undo and Redo are the window's shortcuts while the page stands.
func (p *Page) Undo() { p.goBack() }

// Redo does again what was undone.
func (p *Page) Redo() { p.goOn() }
