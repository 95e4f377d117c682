package window

// This file is what sheets are filled in with: a line to type into, a choice, a
// button. All three pass on the keys that mean the same everywhere, and come
// into view when the keyboard reaches them. A line is taken when it is left or
// Enter is pressed, so nothing typed is lost.

import (
	"math"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
)

// field is a line to type into.
type field struct {
	page.Entry
	w    *Window
	was  string            // as the document has it
	take func(text string) // makes an edit of it
	here bool              // it has the keyboard
}

func newField(w *Window, take func(text string)) *field {
	f := &field{w: w, take: take}
	f.Before = w.keyEverywhere
	f.OnSubmitted = func(string) {
		f.commit()
		w.win.Canvas().FocusNext()
	}
	f.ExtendBaseWidget(f)
	return f
}

// show puts the document's text in, unless something else is just being typed.
func (f *field) show(text string) {
	typing := f.here && f.Text != f.was
	f.was = text
	if !typing && f.Text != text {
		f.SetText(text)
	}
}

func (f *field) commit() {
	if f.Text != f.was {
		f.take(f.Text)
	}
}

// TypedShortcut undoes the last edit where nothing is being typed, and copies
// results.
func (f *field) TypedShortcut(s fyne.Shortcut) {
	switch s := s.(type) {
	case *fyne.ShortcutUndo:
		if f.Text == f.was {
			f.w.undo()
			return
		}
	case *fyne.ShortcutRedo:
		if f.Text == f.was {
			f.w.redo()
			return
		}
	case *desktop.CustomShortcut:
		if f.w.shortcut(s) {
			return
		}
	}
	f.Entry.TypedShortcut(s)
}

// FocusGained brings the line into view.
func (f *field) FocusGained() {
	f.here = true
	f.Entry.FocusGained()
	f.w.bringIntoView(f)
}

// FocusLost takes what was typed; what is refused is put back.
func (f *field) FocusLost() {
	f.Entry.FocusLost()
	f.commit()
	f.here = false
	if f.Text != f.was {
		f.SetText(f.was)
	}
}

// newChoice is one of a few words.
func newChoice(w *Window, options []string, picked func(i int)) *page.Choice {
	c := page.NewChoice(w.keyEverywhere, options, picked)
	c.Focused = w.bringIntoView
	return c
}

// newPress is a button on a sheet.
func newPress(w *Window, text string, do func()) *page.Button {
	b := page.NewButton(w.keyEverywhere, text, do)
	b.Focused = w.bringIntoView
	return b
}

// bringIntoView scrolls the stage's sheet to what has the keyboard.
func (w *Window) bringIntoView(o fyne.CanvasObject) {
	s, ok := w.sheets[w.stage].(*container.Scroll)
	if !ok || !s.Visible() {
		return
	}
	page.IntoView(s, o)
}

// captioned is a field with its small words above.
func captioned(text string, o fyne.CanvasObject) fyne.CanvasObject {
	return container.NewBorder(smallCaption(text), nil, nil, nil, o)
}

// smallCaption is those words.
func smallCaption(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.SizeName = theme.SizeNameCaptionText
	l.Truncation = fyne.TextTruncateEllipsis
	return l
}

// pair is two fields beside each other.
func pair(a, b fyne.CanvasObject) fyne.CanvasObject { return container.New(shares{0.5, 0.5}, a, b) }

// heading begins a part of a sheet.
func (w *Window) heading(id words.ID) fyne.CanvasObject {
	l := widget.NewLabel(w.speaker.Say(id, nil))
	l.TextStyle.Bold = true
	return l
}

// wrapped is text over as many lines as it needs.
func wrapped(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.Wrapping = fyne.TextWrapWord
	return l
}

// small is wrapped in the small size: where something is from.
func small(text string) *widget.Label {
	l := wrapped(text)
	l.SizeName = theme.SizeNameCaptionText
	return l
}

// toldLine is a sentence that takes no room while there is none.
type toldLine struct{ widget.Label }

func newToldLine() *toldLine {
	l := &toldLine{}
	l.Wrapping = fyne.TextWrapWord
	l.ExtendBaseWidget(l)
	l.Hide()
	return l
}

// SetText shows the line, or hides it where there is nothing to say.
func (l *toldLine) SetText(text string) {
	l.Label.SetText(text)
	showIf(l, text != "")
}

// tell says something under the faces after showing things afresh.
func (w *Window) tell(text string) {
	w.update()
	w.sentence.SetText(text)
}

// number reads a number; a decimal comma is as good as a point.
func number(text string) (float64, bool) {
	v, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(text), ",", ".", 1), 64)
	return v, err == nil && !math.IsNaN(v) && !math.IsInf(v, 0)
}

// unitShown is the unit of small lengths on the screen.
func (w *Window) unitShown() visit.Unit {
	if w.settings.Metric {
		return visit.InMM
	}
	return visit.InThou
}

// parseLength reads a small length, in the unit on the screen unless it names
// one; nothing is none.
func (w *Window) parseLength(text string) (visit.Length, bool) {
	text, unit := strings.TrimSpace(text), w.unitShown()
	if text == "" {
		return visit.Length{}, true
	}
	for _, u := range []visit.Unit{visit.InMM, visit.InThou} {
		if rest, ok := strings.CutSuffix(text, string(u)); ok {
			text, unit = rest, u
		}
	}
	v, ok := number(text)
	return visit.Length{Value: v, Unit: unit}, ok
}

// writeLength writes a length as it was typed, its unit named.
func (w *Window) writeLength(l visit.Length) string {
	if !l.Given() {
		return ""
	}
	return w.units().Plain(l.Value, 4) + " " + string(l.Unit)
}

// seen is which way the clock is seen.
func (w *Window) seen() visit.Direction { return visit.Direction(w.settings.LookingAft) }

// writePlace writes a clock position as it is seen.
func (w *Window) writePlace(deg float64) string {
	return strings.TrimSuffix(visit.ClockText(deg, w.seen()), ":00")
}
