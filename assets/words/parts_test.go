package words

// This file tests what mounts and bearings are called.

import "testing"

func TestUsualPartsAreCalledInEachLanguage(t *testing.T) {
	en, de := In("en"), In("de")
	for name, german := range map[string]string{"fore port": "BB vorn", "aft starboard": "STB achtern", "strut": "Wellenbock", "stern": "Heck",
		"bei der Treppe": "bei der Treppe", "": ""} {
		if got := en.Part(name); got != name {
			t.Errorf("English: %q is called %q", name, got)
		}
		if got := de.Part(name); got != german {
			t.Errorf("German: %q is called %q, wanted %q", name, got, german)
		}
	}
	if got := de.Say(TurnAt, Args{"Mount": "fore port", "What": "x"}); got != "BB vorn: x" {
		t.Errorf("in a sentence: %q", got)
	}
}
