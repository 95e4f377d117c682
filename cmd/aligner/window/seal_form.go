package window

// This file is where the shaft's seal and a heavy place of the shaft's turn are
// entered.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/report/job"
)

// sealForm is what seals the shaft and whether it was turned free.
type sealForm struct {
	w       *Window
	box     *fyne.Container
	kind    *page.Choice
	pressed *field
	bellows fyne.CanvasObject
	freed   *tickBox
	told    *widget.Label
	quiet   bool // being filled, not touched
}

func newSealForm(w *Window) *sealForm {
	f := &sealForm{w: w, told: wrapped("")}
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	options := []string{say(words.BeginUnsaid)}
	for _, kind := range visit.SealKinds {
		options = append(options, say(words.Of("seal", kind)))
	}
	f.kind = newChoice(w, options, func(i int) {
		f.change(func(s *visit.Seal) { s.Kind = append([]string{""}, visit.SealKinds...)[i] })
	})
	f.pressed = w.maybeField(func(m visit.Maybe) { f.change(func(s *visit.Seal) { s.PressedMM = m }) })
	f.bellows = captioned(say(words.SealPressed), f.pressed)
	f.freed = newTickBox(w, say(words.SealFreed), func(on bool) {
		if !f.quiet {
			f.change(func(s *visit.Seal) { s.Freed, s.SetBack = on, false })
		}
	})
	f.box = container.NewVBox(w.heading(words.SealTitle), f.kind, f.bellows, f.freed, f.told)
	return f
}

func (f *sealForm) change(how func(*visit.Seal)) {
	s := f.w.history.Now().Visit.Seal
	how(&s)
	f.w.do(&visit.SetSeal{Seal: s})
}

func (f *sealForm) show(v *visit.Visit) {
	f.kind.Put(placeOf(v.Seal.Kind, visit.SealKinds))
	f.pressed.show(f.w.writeMaybe(v.Seal.PressedMM))
	showIf(f.bellows, v.Seal.Kind == visit.SealFace)
	f.quiet = true
	f.freed.SetChecked(v.Seal.Freed)
	f.quiet = false
	f.told.SetText(job.SealText(&v.Seal).Say(f.w.speaker, f.w.units()))
}

// tightForm is where in its turn the shaft goes heavily.
type tightForm struct {
	w    *Window
	box  *fyne.Container
	at   *field
	told *widget.Label
}

func newTightForm(w *Window, take func(visit.Maybe)) *tightForm {
	f := &tightForm{w: w, told: wrapped("")}
	f.at = w.maybeField(take)
	f.at.SetPlaceHolder(w.speaker.Say(words.LookTightHint, nil))
	f.box = container.NewVBox(captioned(w.speaker.Say(words.LookTightAt, nil), f.at), f.told)
	return f
}

func (f *tightForm) show(at visit.Maybe, told []job.Text) {
	f.at.show(f.w.writeMaybe(at))
	f.told.SetText(strings.Join(f.w.texts(told), "\n"))
	showIf(f.told, len(told) > 0)
}

// texts says each.
func (w *Window) texts(list []job.Text) []string {
	var lines []string
	for _, t := range list {
		lines = append(lines, t.Say(w.speaker, w.units()))
	}
	return lines
}

// maybeField is a number that need not be known.
func (w *Window) maybeField(take func(visit.Maybe)) *field {
	return newField(w, func(text string) {
		if strings.TrimSpace(text) == "" {
			take(visit.Maybe{})
			return
		}
		v, ok := number(text)
		if !ok {
			w.tell(w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
			return
		}
		take(visit.Known(v))
	})
}

// writeMaybe writes such a number.
func (w *Window) writeMaybe(m visit.Maybe) string {
	if !m.Known {
		return ""
	}
	return w.units().Plain(m.Value, 1)
}
