package window

// This file is what the sheets are put together from: titles, running text,
// steps that are ticked, and columns of figures.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/report/job"
)

// running is text that wraps.
func running() *widget.Label {
	l := widget.NewLabel("")
	l.Wrapping = fyne.TextWrapWord
	return l
}

// heading is text that stands over a part of a sheet.
func heading(text string) *widget.Label {
	l := running()
	l.SetText(text)
	l.TextStyle.Bold = true
	return l
}

// write puts text on a label, which is hidden while it has none. What stands
// already is left alone: every SetText paints anew.
func write(l *widget.Label, lines ...string) {
	text := strings.Join(lines, "\n")
	if l.Text != text {
		l.SetText(text)
	}
	seen(l, text != "")
}

// seen shows or hides.
func seen(o fyne.CanvasObject, want bool) {
	switch {
	case want && !o.Visible():
		o.Show()
	case !want && o.Visible():
		o.Hide()
	}
}

// openPart lays a sheet out anew with a part that has just been opened, and brings
// that part into view.
func (w *Window) openPart(part fyne.CanvasObject) {
	w.sheets[w.stage].Refresh()
	if s, ok := w.sheets[w.stage].(*container.Scroll); ok {
		s.Content.Refresh()
	}
	w.bringIntoView(part)
}

// row is one step of a list.
type row struct {
	text     string
	progress job.Progress
}

// rows are steps one under another: what is next stands in bold, what is done
// says so.
type rows struct {
	box    *fyne.Container
	labels []*widget.Label
}

func newRows() *rows { return &rows{box: container.NewVBox()} }

// show fills the list.
func (r *rows) show(list []row) {
	for len(r.labels) < len(list) {
		l := running()
		r.labels = append(r.labels, l)
		r.box.Add(l)
	}
	for i, l := range r.labels {
		if i >= len(list) {
			seen(l, false)
			continue
		}
		item := list[i]
		if bold := item.progress == job.Next; l.Text != item.text || l.TextStyle.Bold != bold {
			l.TextStyle.Bold = bold
			l.SetText(item.text)
		}
		seen(l, true)
	}
}

// figures are columns of short texts, line by line beside one another. Texts do
// not wrap, so the lines stay level.
type figures struct {
	box     *fyne.Container
	heads   []*widget.Label
	columns []*widget.Label
}

func newFigures(widths shares, heads ...string) *figures {
	f := &figures{}
	top, body := container.New(widths), container.New(widths)
	for i, text := range heads {
		head, column := widget.NewLabel(text), widget.NewLabel("")
		head.TextStyle.Bold = true
		head.Truncation, column.Truncation = fyne.TextTruncateEllipsis, fyne.TextTruncateEllipsis
		if i > 0 {
			head.Alignment, column.Alignment = fyne.TextAlignTrailing, fyne.TextAlignTrailing
		}
		top.Add(head)
		body.Add(column)
		f.heads, f.columns = append(f.heads, head), append(f.columns, column)
	}
	f.box = container.NewVBox(top, body)
	return f
}

// show fills the columns; each line has a text for every one.
func (f *figures) show(lines [][]string) {
	for i, c := range f.columns {
		var texts []string
		for _, line := range lines {
			texts = append(texts, line[i])
		}
		if text := strings.Join(texts, "\n"); c.Text != text {
			c.SetText(text)
		}
	}
}

// tickBox is a box that passes on the keys that mean the same everywhere.
type tickBox struct {
	widget.Check
	w *Window
}

func newTickBox(w *Window, text string, ticked func(on bool)) *tickBox {
	b := &tickBox{w: w}
	b.Text, b.OnChanged = text, ticked
	b.ExtendBaseWidget(b)
	return b
}

// TypedKey passes keys on; Enter ticks as Space does.
func (b *tickBox) TypedKey(k *fyne.KeyEvent) {
	switch {
	case b.w.keyEverywhere(k):
	case k.Name == fyne.KeyReturn || k.Name == fyne.KeyEnter:
		b.SetChecked(!b.Checked)
	default:
		b.Check.TypedKey(k)
	}
}

// FocusGained brings the box into view.
func (b *tickBox) FocusGained() {
	b.Check.FocusGained()
	b.w.bringIntoView(b)
}
