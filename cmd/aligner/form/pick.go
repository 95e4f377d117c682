package form

// This file is a field chosen from a list.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"aligner/hulls/fields"
	"aligner/report/say"
)

// pick is a field chosen from a list.
type pick struct {
	widget.Select
	r     *row
	own   []string // the choices as the hull file has them
	quiet bool
}

func newPick(r *row, f *fields.Field) *pick {
	c := &pick{r: r, own: f.Choices}
	c.ExtendBaseWidget(c)
	c.OnChanged = func(string) {
		if i := c.SelectedIndex(); !c.quiet && i >= 0 {
			r.p.edit(fields.Enter{Pointer: r.pointer, Value: fields.Value{Text: c.own[i]}})
		}
	}
	return c
}

// write shows which is chosen; one that is on no list is shown all the same.
func (c *pick) write(f *fields.Field, now string) {
	c.quiet = true
	defer func() { c.quiet = false }()
	c.own = f.Choices
	at := -1
	options := make([]string, len(c.own))
	for i, choice := range c.own {
		options[i] = c.r.p.units().Value(c.r.p.desk.Speaker, f, fields.Value{Text: choice}, c.r.p.d.in)
		if choice == now {
			at = i
		}
	}
	if at < 0 {
		c.own, options, at = append(c.own, now), append(options, say.Choice(c.r.p.desk.Speaker, now)), len(options)
	}
	c.Options = options
	c.SetSelectedIndex(at)
}

// FocusGained chooses the field.
func (c *pick) FocusGained() {
	c.Select.FocusGained()
	c.r.p.choose(c.r.pointer)
}

// TypedKey goes on with Enter, and from field to field with up and down; left and
// right choose, as in every list of the library's.
func (c *pick) TypedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeyDown:
		c.r.p.next(c.r.pointer)
	case fyne.KeyUp:
		c.r.p.step(c.r.pointer, -1)
	default:
		if !c.r.p.keys(k) {
			c.Select.TypedKey(k)
		}
	}
}
