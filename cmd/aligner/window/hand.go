package window

// This file is what the hand and the keys mean: a drag on a handle is one edit,
// and keys do the same.

import (
	"math"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/scene"
)

func (w *Window) TakeHandle(id scene.HandleID) {
	d := w.history.Now()
	w.chosen = id.Mount()
	w.taken = d.LiftMM(id.Mount())
	if id.Way() == scene.Sideways {
		w.taken = d.Trial.SlideMM[id.Mount()]
	}
	w.frames.Start()
}

func (w *Window) MoveHandle(id scene.HandleID, mm float64, free bool) {
	v := w.taken + mm
	if !free {
		v = w.boat.model.Snapped(id, v)
	}
	w.preview = w.moveTo(id.Mount(), id.Way(), v)
	w.frames.Note()
}

func (w *Window) LeaveHandle() {
	e := w.preview
	w.preview = nil
	w.frames.Drop()
	w.frames.Stop()
	switch e := e.(type) {
	case nil:
		return
	case *visit.TurnNut:
		if e.By == 0 { // carried there and back again
			w.update()
			return
		}
	case *visit.SlideMount:
		if e.By == 0 {
			w.update()
			return
		}
	}
	w.do(e)
}

// moveTo is the edit that puts a mount's lift or slide to so many mm.
func (w *Window) moveTo(mount int, way scene.Way, mm float64) visit.Edit {
	d := w.history.Now()
	m := &d.Hull.Mounts[mount]
	if way == scene.Sideways {
		return &visit.SlideMount{Mount: m.Name, MM: mm, By: mm - d.Trial.SlideMM[mount]}
	}
	steps := mm / m.LiftPerStepMM()
	if r := math.Round(steps); math.Abs(steps-r) < 1e-6 {
		steps = r // a whole flat, whatever the arithmetic
	}
	return &visit.TurnNut{Mount: m.Name, Steps: steps, By: steps - d.Trial.Steps[mount]}
}

func (w *Window) Touched() { w.win.Canvas().Focus(w.picture) }

// slideKeyMM is what one press of a sideways key slides.
const slideKeyMM = 0.25

func (w *Window) PictureKey(e *fyne.KeyEvent) {
	if w.keyEverywhere(e) || w.stage == stageLook && w.looking.arrow(e.Name) {
		return
	}
	d := w.history.Now()
	nut := func(by float64) {
		m := &d.Hull.Mounts[w.chosen]
		w.do(&visit.TurnNut{Mount: m.Name, Steps: d.Trial.Steps[w.chosen] + by, By: by})
	}
	slide := func(by float64) {
		m := &d.Hull.Mounts[w.chosen]
		w.do(&visit.SlideMount{Mount: m.Name, MM: d.Trial.SlideMM[w.chosen] + by, By: by})
	}
	switch e.Name {
	case fyne.KeyUp:
		nut(1)
	case fyne.KeyDown:
		nut(-1)
	case fyne.KeyLeft:
		slide(slideKeyMM)
	case fyne.KeyRight:
		slide(-slideKeyMM)
	case fyne.KeyPageDown:
		w.scroll(1)
	case fyne.KeyPageUp:
		w.scroll(-1)
	case fyne.KeyHome:
		w.look(scene.ViewWhole)
	}
}

func (w *Window) PictureRune(r rune) {
	d := w.history.Now()
	switch {
	case r >= '1' && int(r-'1') < len(d.Hull.Mounts):
		w.chosen = int(r - '1')
		w.sheet.show(&d)
	case r == '0':
		w.do(&visit.BackToDrawn{})
	case r == 'f':
		w.change(func(s *Settings) { s.LookingAft = !s.LookingAft })
	case r == 'u':
		w.change(func(s *Settings) { s.Metric = !s.Metric })
	case r == 'a':
		w.do(&visit.Float{Afloat: !d.Trial.Afloat})
	case r == '+':
		w.change(func(s *Settings) { s.Exaggeration = min(s.Exaggeration*1.5, MostExaggeration) })
	case r == '-':
		w.change(func(s *Settings) { s.Exaggeration = max(s.Exaggeration/1.5, LeastExaggeration) })
	case w.stage == stageLook && w.looking.key(r): // a stage's own letters go first
	case w.stage == stageMove && w.moving.key(r):
	case w.stage == stageFasten && w.fastening.key(r):
	case w.stage == stageHandOver && w.handing.key(r):
	case r == boatsKey:
		w.allBoats()
	case slices.Contains(stageKeys[:], r):
		w.enter(stage(slices.Index(stageKeys[:], r)))
	default:
		w.lookByKey(r)
	}
}

// change changes how things are looked at, which is no edit.
func (w *Window) change(how func(*Settings)) {
	how(&w.settings)
	w.useSettings()
	w.update()
	if open := w.openPage; open != nil {
		w.turnTo(open)
	}
}

// shortcuts are the keys that work wherever the keyboard is.
func (w *Window) shortcuts() {
	c := w.win.Canvas()
	c.AddShortcut(&desktop.CustomShortcut{KeyName: counterKey, Modifier: fyne.KeyModifierControl}, func(fyne.Shortcut) { w.seeCounter() })
	c.AddShortcut(&desktop.CustomShortcut{KeyName: lessonsKey, Modifier: fyne.KeyModifierControl}, func(fyne.Shortcut) { w.seeLessons() })
	c.AddShortcut(&desktop.CustomShortcut{KeyName: practiceKey, Modifier: fyne.KeyModifierControl}, func(fyne.Shortcut) { w.seePractice() })
	c.AddShortcut(&fyne.ShortcutUndo{}, func(fyne.Shortcut) {
		if p, ok := w.page.(page.WithPast); ok {
			p.Undo()
		} else {
			w.undo()
		}
	})
	c.AddShortcut(&fyne.ShortcutRedo{}, func(fyne.Shortcut) {
		if p, ok := w.page.(page.WithPast); ok {
			p.Redo()
		} else {
			w.redo()
		}
	})
}
