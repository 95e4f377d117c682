package page

// This file checks that keys which mean the same everywhere pass through a line
// being typed into, and no others.

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
)

func TestEntryLetsKeysThrough(t *testing.T) {
	test.NewTempApp(t)
	var taken []fyne.KeyName
	e := NewEntry(func(k *fyne.KeyEvent) bool {
		if k.Name == fyne.KeyEscape || k.Name == fyne.KeyF1 {
			taken = append(taken, k.Name)
			return true
		}
		return false
	})
	w := test.NewTempWindow(t, e)
	w.Canvas().Focus(e)
	test.Type(e, "12 3/4")
	for _, k := range []fyne.KeyName{fyne.KeyBackspace, fyne.KeyEscape, fyne.KeyF1} {
		w.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: k})
	}
	if e.Text != "12 3/" {
		t.Errorf("typed %q", e.Text)
	}
	if len(taken) != 2 || taken[0] != fyne.KeyEscape || taken[1] != fyne.KeyF1 {
		t.Errorf("let through %v", taken)
	}
}
