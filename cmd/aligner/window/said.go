package window

// This file is the sentence under the faces: what the last edit, or the drag in
// progress, did and why.

import (
	"reflect"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics"
	"aligner/report/job"
	"aligner/report/say"
)

// told is an error in the language chosen.
func (w *Window) told(err error) string { return w.speaker.Retell(err.Error()) }

// arrivals say what a stage is for, till something is done there.
var arrivals = [stages]words.ID{stageBegin: words.ArrivedBegin, stageLook: words.ArrivedLook, stageGauge: words.ArrivedGauge,
	stageMove: words.ArrivedMove, stageFasten: words.ArrivedFasten, stageHandOver: words.ArrivedHandOver}

// effect says what the last edit, or the drag in progress, did and why.
func (w *Window) effect(d *visit.Document) string {
	if w.now.err != nil {
		return w.told(w.now.err)
	}
	was, edit := w.history.Before()
	if edit == nil {
		edit = w.opened
	}
	if w.preview != nil {
		was, edit = w.history.Now(), w.preview
	}
	if w.stage != stageTry && w.arrived && w.preview == nil {
		return w.speaker.Say(arrivals[w.stage], nil) // what was done at the stage before says nothing of this one
	}
	if _, opened := edit.(*visit.OpenVisit); opened {
		return w.describe(edit)
	}
	if w.stage != stageTry && edit != nil && w.preview == nil && reflect.DeepEqual(was.Trial, d.Trial) {
		return w.describe(edit)
	}
	if w.stage != stageTry && edit == nil {
		return ""
	}
	if w.preview == nil && edit != nil && reflect.DeepEqual(was.Trial, d.Trial) { // nothing was tried: it says nothing of the gap
		return w.speaker.Say(words.HowToBegin, nil)
	}
	if edit == nil || was.Hull.Name != d.Hull.Name || !w.now.result.Gap.Known || was.Trial.Held != d.Trial.Held ||
		d.Trial.Held == "bolted" {
		return w.speaker.Say(words.HowToBegin, nil)
	}
	w.boat.workBefore(&was, w.mind.liftMM, w.mind.slideMM, &w.before)
	move := w.moved(&was, d)
	if move == "" { // not a nut or a slide
		move = w.describe(edit)
	}
	if w.before.err != nil {
		return w.speaker.Say(words.HowToBegin, nil)
	}
	text := say.Effect(w.speaker, w.units(), move, kinematics.EffectBetween(&w.before.result, &w.now.result))
	for _, name := range d.Outside() {
		text += " " + w.speaker.Say(words.BeyondRange, words.Args{"Mount": name})
	}
	return text
}

// moved says what changed between two documents of one hull.
func (w *Window) moved(was, is *visit.Document) string {
	n := len(is.Hull.Mounts)
	steps, slides := make([]float64, n), make([]float64, n)
	for i := range n {
		steps[i] = is.Trial.Steps[i] - was.Trial.Steps[i]
		slides[i] = is.Trial.SlideMM[i] - was.Trial.SlideMM[i]
	}
	return say.Move(w.speaker, w.units(), &is.Hull, steps, slides)
}

// describe says an edit in words.
func (w *Window) describe(e visit.Edit) string {
	h := &w.boat.hull
	steps, slides := make([]float64, len(h.Mounts)), make([]float64, len(h.Mounts))
	for i, m := range h.Mounts {
		switch e := e.(type) {
		case *visit.TurnNut:
			if m.Name == e.Mount {
				steps[i] = e.By
			}
		case *visit.TurnPair:
			if m.Name == e.First || m.Name == e.Second {
				steps[i] = e.By
			}
		case *visit.SlideMount:
			if m.Name == e.Mount {
				slides[i] = e.By
			}
		}
	}
	if move := say.Move(w.speaker, w.units(), h, steps, slides); move != "" {
		return move
	}
	id, args := e.Words()
	if f, ok := e.(*visit.RecordFastening); ok { // the file's own words are no one's language
		what := job.Fastened(w.speaker, w.units(), &f.Fasten)
		if f.Fasten.Kind == visit.Slackened {
			return what
		}
		args = map[string]any{"What": what}
	}
	return w.speaker.Say(words.ID(id), args)
}
