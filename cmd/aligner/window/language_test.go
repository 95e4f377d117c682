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

// What is asked for on the command line is for this time; what is chosen is kept.
func TestALanguageForThisTime(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.Speak("de")
	w.keepSettings()
	if got := Load(w.prefs).Language; w.speaker.Language() != "de" || got != "en" {
		t.Errorf("speaks %q, kept %q", w.speaker.Language(), got)
	}
	w.speak("en")
	w.keepSettings()
	w.speak("de") // chosen
	w.keepSettings()
	if got := Load(w.prefs).Language; got != "de" {
		t.Errorf("chosen German, kept %q", got)
	}
}
