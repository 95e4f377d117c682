package window

// This file checks that what is refused is told in the language chosen.

import (
	"testing"

	"aligner/hulls/visit"
)

func TestRefusalsAreToldInGerman(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.speak("de")
	w.do(&visit.SlideMount{Mount: "fore port", MM: 250, By: 250})
	if want := "fore port: 250 mm verschoben; muss innerhalb 100 mm liegen"; w.sentence.Text != want {
		t.Errorf("told %q, want %q", w.sentence.Text, want)
	}
	if w.history.CanUndo() != nil {
		t.Error("it was recorded all the same")
	}
}
