package form

// This file is a field typed into, with the keys that go from field to field.

import (
	"errors"

	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/fields"
)

// line is a field typed into.
type line struct {
	page.Entry
	r       *row
	written string // what the hull says, as it was put there
}

func newLine(r *row) *line {
	l := &line{r: r}
	l.Before = l.keys
	l.ExtendBaseWidget(l)
	l.OnChanged = func(string) { l.look() }
	l.OnSubmitted = func(string) {
		if l.take() {
			r.p.next(r.pointer)
		}
	}
	return l
}

// write puts there what the hull says.
func (l *line) write(text string) {
	if l.written = text; l.Text != text {
		l.SetText(text)
	}
}

// keys go from field to field; what was typed is taken on the way.
func (l *line) keys(k *fyne.KeyEvent) bool {
	by := 0
	switch k.Name {
	case fyne.KeyUp:
		by = -1
	case fyne.KeyDown:
		by = 1
	default:
		return l.r.p.keys(k)
	}
	if l.Text == l.written || l.take() {
		l.r.p.step(l.r.pointer, by)
	}
	return true
}

// look tells at once what a number being typed can never be, or seldom is. What is no
// number yet may become one.
func (l *line) look() {
	r, p := l.r, l.r.p
	f := p.field(r.pointer)
	if f == nil || l.Text == l.written || !f.Kind.IsNumber() {
		return
	}
	r.wrong = ""
	v, ok := fields.Parse(l.Text, f.Kind, p.d.in)
	tell := ""
	if _, err := fields.Set(p.h, r.pointer, v); ok && err != nil {
		tell = p.why(f, v, err)
	} else if ok && (v.Number < f.Limit.Low || v.Number > f.Limit.High) {
		tell = p.say(words.FormOdd, words.Args{"Fault": p.limits(f)})
	}
	if tell != r.faults.Text {
		put(r.faults, tell)
		r.under.Show()
		p.middle.Refresh()
	}
}

// take enters what was typed; a field left as it stood counts as measured too.
func (l *line) take() bool {
	r, p := l.r, l.r.p
	f := p.field(r.pointer)
	if f == nil {
		return false
	}
	v, plus := f.Get(&p.h), (*float64)(nil)
	if l.Text != l.written { // as it stood it has more decimals than are written
		var ok bool
		if v, plus, ok = fields.ParseKnown(l.Text, f.Kind, p.d.in); !ok {
			return r.refuse(p.say(words.FormBadNumber, words.Args{"Text": l.Text, "Example": p.say(p.example(f), nil)}))
		}
	}
	if v == f.Get(&p.h) && !f.Assumed && plus == nil {
		r.wrong = ""
		l.write(l.written)
		r.show(f)
		return true
	}
	if _, err := fields.Set(p.h, r.pointer, v); err != nil {
		return r.refuse(p.why(f, v, err))
	}
	r.wrong = ""
	return p.edit(fields.Enter{Pointer: r.pointer, Value: v, Plus: plus})
}

// why is the reason a value is refused, a number with its limits in the unit it was
// typed in.
func (p *Page) why(f *fields.Field, v fields.Value, err error) string {
	ever := f.Limit.Ever
	var fault *hulls.Fault
	switch {
	case f.Kind.IsNumber() && (v.Number < ever[0] || v.Number > ever[1]):
		return p.say(words.FormOutside, words.Args{"Value": p.value(f, v.Number), "Least": p.value(f, ever[0]), "Most": p.value(f, ever[1])})
	case errors.As(err, &fault):
		return p.fault(fault)
	}
	return p.desk.Speaker.Retell(err.Error())
}

// refuse tells why what was typed is no value, and leaves it standing.
func (r *row) refuse(why string) bool {
	r.wrong = why
	r.show(r.p.field(r.pointer))
	r.p.middle.Refresh()
	r.p.bringInSight(r.pointer)
	return false
}

// example is how a field may be written.
func (p *Page) example(f *fields.Field) words.ID {
	switch {
	case f.Kind == fields.Length && bool(p.d.in):
		return words.FormExampleInches
	case f.Kind == fields.Length:
		return words.FormExampleMm
	}
	return words.FormExample
}

// FocusGained chooses the field and marks all of it, to be typed over.
func (l *line) FocusGained() {
	l.Entry.FocusGained()
	l.r.p.choose(l.r.pointer)
	l.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// FocusLost takes what was typed.
func (l *line) FocusLost() {
	l.Entry.FocusLost()
	if l.Text != l.written && !l.r.p.closed {
		l.take()
	}
}

// TypedShortcut goes through the form's past, not the line's: first back to what
// the hull says, where something was typed.
func (l *line) TypedShortcut(s fyne.Shortcut) {
	switch s.(type) {
	case *fyne.ShortcutUndo:
		if l.Text != l.written {
			l.r.wrong = ""
			l.SetText(l.written)
			l.r.show(l.r.p.field(l.r.pointer))
			return
		}
		l.r.p.goBack()
		l.r.p.focus()
	case *fyne.ShortcutRedo:
		l.r.p.goOn()
		l.r.p.focus()
	default:
		l.Entry.TypedShortcut(s)
	}
}
