package window

// This file is the stage the visit is in, and the sheet that goes with it: try,
// look over, gauge, move, fasten, hand over.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/scene"
)

// stage is what the column at the right is for.
type stage int

const (
	stageTry stage = iota
	stageBegin
	stageLook
	stageGauge
	stageMove
	stageFasten
	stageHandOver
	stages
)

var stageNames = [stages]words.ID{words.StageTry, words.StageBegin, words.StageLook, words.StageGauge, words.StageMove, words.StageFasten, words.StageHandOver}

// stageKeys choose a stage while the picture has the keyboard.
var stageKeys = [stages]rune{'r', 'i', 'l', 'g', 'n', 'j', 'o'}

// stageFunctionKeys choose a stage wherever the keyboard is: the job's from F2
// on, trying last.
var stageFunctionKeys = map[fyne.KeyName]stage{fyne.KeyF2: stageBegin, fyne.KeyF3: stageLook, fyne.KeyF4: stageGauge,
	fyne.KeyF5: stageMove, fyne.KeyF6: stageFasten, fyne.KeyF7: stageHandOver, fyne.KeyF8: stageTry}

// stageOrder is the job's, and trying after it.
var stageOrder = [stages]stage{stageBegin, stageLook, stageGauge, stageMove, stageFasten, stageHandOver, stageTry}

// stageStrip shows which stage it is.
type stageStrip struct {
	box     *fyne.Container
	buttons [stages]*page.Button
}

func newStageStrip(w *Window) *stageStrip {
	s := &stageStrip{}
	row := make(shares, stages)
	var buttons []fyne.CanvasObject
	for i, at := range stageOrder {
		row[i] = 1 / float32(stages)
		s.buttons[at] = newPress(w, w.speaker.Say(stageNames[at], nil), func() { w.enter(at) })
		buttons = append(buttons, s.buttons[at])
	}
	s.box = container.New(row, buttons...)
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
	w.keepSettings()
	w.arrived = w.arrived || to != w.stage
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
	if to == stageMove && w.picture.Fitted() == scene.ViewWhole {
		w.look(scene.ViewEngine) // the nuts are to be seen
	}
	w.takeKeyboard()
}

// takeKeyboard gives the keyboard to what the stage is worked by.
func (w *Window) takeKeyboard() {
	switch w.stage {
	case stageBegin:
		w.win.Canvas().Focus(w.beginning.focus())
	case stageGauge:
		w.win.Canvas().Focus(w.gauging.entry)
	default:
		w.win.Canvas().Focus(w.picture)
	}
}

// scroll moves the sheet by so many of its heights.
func (w *Window) scroll(by float32) {
	if s, ok := w.sheets[w.stage].(*container.Scroll); ok {
		s.Scrolled(&fyne.ScrollEvent{Scrolled: fyne.NewDelta(0, -by*0.8*s.Size().Height)})
	}
}

// rethink works the readings out anew after an edit, where they are shown.
func (w *Window) rethink() {
	d := w.history.Now()
	if w.stage < stageGauge && !anyGauged(&d.Visit) { // as drawn until something was gauged
		w.mind.forget()
		return
	}
	w.mind.think(&d)
	if w.mind.err != nil {
		w.fault("readings", w.mind.err)
	}
	if w.stage == stageMove {
		w.mind.planAhead(w.update)
	}
}
