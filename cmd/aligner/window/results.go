package window

// This file copies what a visit came to, as text or as a table, and the keys
// with a modifier that do it wherever the keyboard is.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"aligner/assets/words"
	"aligner/report/copied"
)

// Keys, with Ctrl: results as text; with Shift too: as a table.
const copyKey = fyne.KeyR

// copyResults copies text, or rows for a spreadsheet. What is not worked out yet
// is worked out first: a plan that is still being thought of is left out.
func (w *Window) copyResults(table bool) {
	d := w.history.Now()
	w.mind.think(&d)
	r := copied.Results{Document: &d, Estimate: w.mind.estimate, LookingAft: w.settings.LookingAft}
	if w.stage == stageMove {
		r.Plan = w.mind.plan
	}
	text, told := copied.Text(w.speaker, w.units(), r), words.CopiedDone
	if table {
		text, told = copied.Rows(w.speaker, w.units(), r), words.CopiedRowsDone
	}
	fyne.CurrentApp().Clipboard().SetContent(text)
	w.tell(w.speaker.Say(told, nil))
}

// shortcut does what a key with a modifier asks for, and reports whether there
// was anything.
func (w *Window) shortcut(s *desktop.CustomShortcut) bool {
	if s.KeyName != copyKey || s.Modifier&fyne.KeyModifierControl == 0 || w.page != nil {
		return false
	}
	w.copyResults(s.Modifier&fyne.KeyModifierShift != 0)
	return true
}

// resultShortcuts are for when nothing is being typed into.
func (w *Window) resultShortcuts() {
	for _, modifier := range []fyne.KeyModifier{fyne.KeyModifierControl, fyne.KeyModifierControl | fyne.KeyModifierShift} {
		w.win.Canvas().AddShortcut(&desktop.CustomShortcut{KeyName: copyKey, Modifier: modifier}, func(s fyne.Shortcut) {
			if c, ok := s.(*desktop.CustomShortcut); ok {
				w.shortcut(c)
			}
		})
	}
}
