package window

// This file tests that every view has its key and its line in the menu, and
// that nothing turns for someone who wants no motion.

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"aligner/assets"
	"aligner/scene"
)

func TestEveryViewHasAKeyAndALineInTheMenu(t *testing.T) {
	for _, name := range assets.HullNames() {
		w := opened(t, name)
		w.change(func(s *Settings) { s.NoMotion = true })
		reached := map[string]bool{}
		press := func(keys string) {
			for _, k := range keys {
				w.picture.TypedRune(k)
			}
			reached[w.picture.Fitted()] = true
		}
		for _, v := range namedViews {
			press(string(v.key))
		}
		for i := range w.boat.hull.Mounts {
			press(string(rune('1'+i)) + "m")
		}
		for range w.boat.hull.Bearings {
			press("s")
		}
		lines := map[string]bool{}
		for _, item := range w.viewMenu().Items {
			if !item.IsSeparator && item.Label != "No motion between views (x)" {
				item.Action()
				lines[w.picture.Fitted()] = true
			}
		}
		for _, view := range w.boat.model.ViewNames() {
			if isAftmost(w, view) {
				view = scene.ViewStrut // the same view under another name
			}
			if !reached[view] {
				t.Errorf("%s: no key leads to %q", name, view)
			}
			if !lines[view] {
				t.Errorf("%s: no line of the menu leads to %q", name, view)
			}
		}
	}
}

// isAftmost tells the bearing that the view strut shows.
func isAftmost(w *Window, view string) bool {
	aft := w.boat.hull.Bearings[0]
	for _, b := range w.boat.hull.Bearings {
		if b.AtMM < aft.AtMM {
			aft = b
		}
	}
	return view == aft.Name
}

func TestNoMotionJumps(t *testing.T) {
	w := opened(t, "Eider")
	at := w.picture.State.View
	w.picture.TypedRune('c')
	if !w.picture.Turning() && fyne.CurrentApp().Settings().ShowAnimations() {
		t.Error("with motion the view does not turn")
	}
	w.picture.StopTurn()
	w.picture.State.View = at
	w.picture.TypedRune('x')
	w.picture.TypedRune('c')
	to, _ := w.picture.Model().FitView(scene.ViewCoupling, 800.0/640)
	if w.picture.Turning() || w.picture.State.View != to {
		t.Errorf("without motion: turning %v, at %+v, not %+v", w.picture.Turning(), w.picture.State.View, to)
	}
	w.settings.Save(w.prefs)
	if !Load(w.prefs).NoMotion {
		t.Error("the wish is not kept")
	}
	if menu := w.viewMenu(); !menu.Items[len(menu.Items)-1].Checked {
		t.Error("the menu does not show the wish")
	}
}

// A press ends a turn: the hand has the view.
func TestAPressEndsATurn(t *testing.T) {
	w := opened(t, "Eider")
	w.picture.TypedRune('c')
	w.picture.MouseDown(&desktop.MouseEvent{Button: desktop.MouseButtonPrimary})
	if w.picture.Turning() {
		t.Error("the view goes on turning under the hand")
	}
}

func TestTouchesAreMarkedWithTheirForce(t *testing.T) {
	w := opened(t, "Eider")
	w.picture.Paint(800, 640)
	texts := ""
	for _, l := range w.picture.Labels() {
		texts += l.Text + "\n"
	}
	if !strings.Contains(texts, "strut carries ") || !strings.Contains(texts, " lb") {
		t.Errorf("the picture says %q", texts)
	}
}
