package window

// The language of somebody new is the system's; what is chosen stays.

import (
	"testing"

	"fyne.io/fyne/v2/test"
)

func TestBeginInTheSystemsLanguage(t *testing.T) {
	p := test.NewTempApp(t).Preferences()
	BeginIn(p, "de")
	if got := Load(p).Language; got != "de" {
		t.Errorf("begins in %q", got)
	}
	s := Load(p)
	s.Language = "en"
	s.Save(p)
	BeginIn(p, "de")
	if got := Load(p).Language; got != "en" {
		t.Errorf("chosen English, it speaks %q", got)
	}
}
