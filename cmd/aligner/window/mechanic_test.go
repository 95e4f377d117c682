package window

// This file changes who is at work, by keys, and looks at what is kept for whom.

import (
	"path/filepath"
	"reflect"
	"testing"

	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
)

func bookFor(t *testing.T) *oneBook {
	t.Helper()
	b, err := logbook.Open(filepath.Join(t.TempDir(), "logbook.db"), logbook.Write)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { b.Close() })
	return &oneBook{book: b}
}

// enterName asks who is at work, types a name into the line for another and
// presses Enter.
func enterName(w *Window, name string) {
	w.askMechanic()
	c := w.win.Canvas()
	c.FocusNext()
	for _, r := range name {
		c.Focused().TypedRune(r)
	}
	c.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
}

func TestEscapeLeavesTheForm(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.Keep(bookFor(t), nil)
	w.askMechanic()
	c := w.win.Canvas()
	if c.Overlays().Top() == nil {
		t.Fatal("no form stands")
	}
	c.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if c.Overlays().Top() != nil || w.over != nil {
		t.Error("Escape did not close it")
	}
	if w.keyEverywhere(&fyne.KeyEvent{Name: fyne.KeyF9}); w.page == nil {
		t.Error("keys are dead after it")
	}
}

func TestEachMechanicHasSettingsOfHisOwn(t *testing.T) {
	w := opened(t, "Kittiwake")
	keep := bookFor(t)
	w.Keep(keep, nil)
	w.change(func(s *Settings) { s.TextSize = 1.2 })
	enterName(w, "First")
	if w.who.name != "First" || w.settings.TextSize != 1.2 {
		t.Fatalf("at work %q, text %g", w.who.name, w.settings.TextSize)
	}
	w.change(func(s *Settings) { s.Metric, s.LookingAft = true, true })
	w.speak("de")
	enterName(w, "Second") // begins with what is on the screen
	w.change(func(s *Settings) { s.Metric, s.TextSize = false, 1 })
	w.speak("en")
	for _, c := range []struct {
		name            string
		metric          bool
		size            float64
		language, named string
	}{{"First", true, 1.2, "de", "First"}, {"Second", false, 1, "en", "Second"}, {"", false, 1.2, "en", "nobody in particular"}} {
		w.useMechanic(c.name)
		s := w.settings
		if s.Metric != c.metric || s.TextSize != c.size || s.Language != c.language || w.mechanicName() != c.named {
			t.Errorf("%q: %+v, named %q", c.name, s, w.mechanicName())
		}
	}
	if names := w.mechanics(); !reflect.DeepEqual(names, []string{"First", "Second"}) {
		t.Errorf("known: %v", names)
	}
	// At the next start the last one is at work.
	w.useMechanic("Second")
	w.keepSettings()
	again, err := New(w.win, w.prefs, "Kittiwake", w.boat.hull, openHull)
	if err != nil {
		t.Fatal(err)
	}
	again.Keep(keep, nil)
	if again.who.name != "Second" || again.settings.TextSize != 1 {
		t.Errorf("at the next start %q with %+v", again.who.name, again.settings)
	}
}

func TestEveryVisitBeginsWithTheMechanicsLeavesAndRule(t *testing.T) {
	w := opened(t, "Kittiwake")
	keep := bookFor(t)
	w.Keep(keep, nil)
	enterName(w, "First")
	leaves := visit.LeafSet{Leaves: []float64{0.05, 0.1, 0.2}, Unit: visit.InMM}
	rule := visit.Rule{Limits: visit.DifferenceAcross, Limit: visit.Thou(4), Named: "ours"}
	w.do(&visit.SetLeaves{Leaves: leaves})
	w.do(&visit.SetRule{Rule: rule})
	w.enter(stageBegin)
	if !w.beginning.own.take.Visible() {
		t.Fatal("nothing to press")
	}
	w.win.Canvas().Focus(w.beginning.own.take)
	w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if w.beginning.own.take.Visible() || w.beginning.own.told.Text != w.speaker.Say(words.MechanicTaken, words.Args{"Name": "First"}) {
		t.Errorf("told %q", w.beginning.own.told.Text)
	}
	has := func(v *visit.Visit) bool { return reflect.DeepEqual(v.Leaves, leaves) && v.Rule == rule }
	w.openBoat("Wren")
	w.do(&visit.Float{Afloat: true}) // the first edit begins her visit
	if d := w.history.Now(); !has(&d.Visit) || !d.Trial.Afloat {
		t.Errorf("begun with %+v, %+v", d.Visit.Leaves, d.Visit.Rule)
	}
	w.useMechanic("")
	w.openBoat("Eider")
	w.do(&visit.Float{Afloat: true})
	if d := w.history.Now(); has(&d.Visit) {
		t.Error("nobody's visit has the mechanic's leaves")
	}
	// What is nobody's is kept too.
	w.do(&visit.SetRule{Rule: rule})
	w.takeAsOwn()
	w.lastMechanic()
	if w.who.rule != rule {
		t.Errorf("nobody's rule %+v", w.who.rule)
	}
}

func TestTextsOfSettingsReadBack(t *testing.T) {
	o := own{settings: DefaultSettings(), leaves: visit.LeafSet{Leaves: []float64{1, 2}, Unit: visit.InThou, MostStacked: 3}, rule: visit.DefaultRule}
	o.settings.Language, o.settings.Dark, o.settings.TextSize = "de", true, 1.4
	back := own{settings: DefaultSettings()}
	back.read(o.texts())
	if !reflect.DeepEqual(back, o) {
		t.Errorf("%+v, read back %+v", o, back)
	}
	// What cannot be read changes nothing.
	back.read(map[string]string{"language": "xx", "text_size": "9", "exaggeration": "NaN", "dark": "maybe", "leaves": "{", "rule": "7"})
	if !reflect.DeepEqual(back, o) {
		t.Errorf("nonsense gave %+v", back)
	}
}
