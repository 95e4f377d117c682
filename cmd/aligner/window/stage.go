package window

// This file is the stage the visit is in, and the sheet that goes with it: try,
// look over, gauge, move, fasten, hand over.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
)

// stage is what the column at the right is for.
type stage int

const (
	stageTry stage = iota
	stageLook
	stageGauge
	stageMove
	stageFasten
	stageHandOver
	stages
)

var stageNames = [stages]words.ID{words.StageTry, words.StageLook, words.StageGauge, words.StageMove, words.StageFasten, words.StageHandOver}

// stageKeys choose a stage while the picture has the keyboard.
var stageKeys = [stages]rune{'r', 'l', 'g', 'n', 'j', 'o'}

// stageStrip shows which stage it is.
type stageStrip struct {
	box     *fyne.Container
	buttons [stages]*widget.Button
}

func newStageStrip(w *Window) *stageStrip {
	s := &stageStrip{box: container.NewGridWithColumns(3)}
	for i := range stages {
		s.buttons[i] = widget.NewButton(w.speaker.Say(stageNames[i], nil), func() { w.enter(i) })
		s.box.Add(s.buttons[i])
	}
	return s
}

// show marks the stage.
func (s *stageStrip) show(now stage) {
	for i, b := range s.buttons {
		want := widget.MediumImportance
		if stage(i) == now {
			want = widget.HighImportance
		}
		b.Importance = want
		b.Refresh()
	}
}

// enter goes to a stage.
func (w *Window) enter(to stage) {
	w.stage = to
	for i, o := range w.sheets {
		if stage(i) == to {
			o.Show()
		} else {
			o.Hide()
		}
	}
	w.stageStrip.show(to)
	w.shareOut()
	w.rethink()
	w.update()
	switch to {
	case stageGauge:
		w.win.Canvas().Focus(w.gauging.entry)
	default:
		w.win.Canvas().Focus(w.picture)
	}
}

// rethink works the readings out anew after an edit, where they are shown.
func (w *Window) rethink() {
	d := w.history.Now()
	if w.stage == stageTry || w.stage == stageLook {
		w.mind.liftMM, w.mind.slideMM, w.mind.plan = nil, nil, nil
		return
	}
	w.mind.think(&d)
	if w.stage == stageMove {
		w.mind.planAhead(d, w.update)
	}
}
