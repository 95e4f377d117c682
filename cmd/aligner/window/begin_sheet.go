package window

// This file is the sheet a visit begins with: what can hurt, read once; then the
// boat's state, leaves, rule, gap aimed at and reach, each an edit of its own.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/report/job"
)

// beginSheet is all that.
type beginSheet struct {
	w   *Window
	box *fyne.Container

	cautions *cautionBox
	state    *stateForm
	leaves   *leavesForm
	rule     *ruleForm
	own      *ownForm
	target   *targetForm
	rest     *restForm
	branch   *branchForm
}

func newBeginSheet(w *Window) *beginSheet {
	s := &beginSheet{w: w, cautions: newCautionBox(w), state: newStateForm(w), leaves: newLeavesForm(w), rule: newRuleForm(w), own: newOwnForm(w),
		target: newTargetForm(w), rest: newRestForm(w), branch: newBranchForm(w)}
	s.box = container.NewVBox(s.cautions.box, s.state.box, s.leaves.box, s.rule.box, s.own.box, s.target.box, s.rest.box, s.branch.box,
		newPress(w, w.speaker.Say(words.BeginNext, nil), func() { w.enter(stageLook) }))
	return s
}

// focus is where the keyboard goes first: the cautions, then the boat.
func (s *beginSheet) focus() fyne.Focusable {
	if s.cautions.minded.Visible() {
		return s.cautions.minded
	}
	return s.state.where
}

func (s *beginSheet) show(d *visit.Document) {
	s.cautions.show(d)
	s.state.show(d)
	s.leaves.show(d)
	s.rule.show(d)
	s.own.show(d)
	s.target.show(d)
	s.rest.show(d)
	s.branch.show(d)
}

// cautionBox is what can hurt someone: in full until it was read, then a line.
type cautionBox struct {
	w      *Window
	box    *fyne.Container
	text   *widget.Label
	minded *page.Button
	line   *widget.Label
	again  *page.Button
	asked  bool // to be shown again
}

func newCautionBox(w *Window) *cautionBox {
	c := &cautionBox{w: w, text: wrapped(""), line: widget.NewLabel(w.speaker.Say(words.BeginMindedLine, nil))}
	c.line.Truncation = fyne.TextTruncateEllipsis
	c.minded = newPress(w, w.speaker.Say(words.BeginMinded, nil), func() {
		c.asked = false
		if w.history.Now().Visit.CautionsMinded {
			w.update()
		} else {
			w.do(&visit.MindCautions{Minded: true})
		}
		if s, ok := w.sheets[stageBegin].(*container.Scroll); ok {
			s.ScrollToTop() // what was read takes one line now
		}
		w.win.Canvas().Focus(w.beginning.state.where)
	})
	c.minded.Importance = widget.HighImportance
	c.again = newPress(w, w.speaker.Say(words.BeginShowAgain, nil), func() { c.asked = true; w.update() })
	c.box = container.NewVBox(w.heading(words.BeginCautions), c.text, c.minded, container.NewBorder(nil, nil, nil, c.again, c.line))
	return c
}

func (c *cautionBox) show(d *visit.Document) {
	full := c.asked || !d.Visit.CautionsMinded
	if full {
		c.text.SetText(c.w.cautionsOf(job.LookingOver, d))
	}
	for _, o := range []fyne.CanvasObject{c.text, c.minded} {
		showIf(o, full)
	}
	showIf(c.line, !full)
	showIf(c.again, !full)
}

// showIf shows or hides.
func showIf(o fyne.CanvasObject, shown bool) {
	if shown {
		o.Show()
	} else {
		o.Hide()
	}
}

// stateForm is where the boat is and what is in her.
type stateForm struct {
	w                    *Window
	box                  *fyne.Container
	where, ballast, rig  *page.Choice
	hours, fuel          *field
	mountAge, mountHours *field
	engineHours, note    *field
	told                 *widget.Label
}

func newStateForm(w *Window) *stateForm {
	f := &stateForm{w: w, told: small(w.defaultSaid(words.DefaultStanding))}
	f.where = f.word("boat", visit.Boats, func(s *visit.State, word string) { s.Boat = word })
	f.ballast = f.word("ballast", visit.Ballasts, func(s *visit.State, word string) { s.Ballast = word })
	f.rig = f.word("rig", visit.Rigs, func(s *visit.State, word string) { s.Rig = word })
	f.hours = f.number(func(s *visit.State, v visit.Maybe) { s.HoursSinceLaunch = v })
	f.fuel = f.number(func(s *visit.State, v visit.Maybe) { s.FuelPercent = v })
	f.mountAge = f.number(func(s *visit.State, v visit.Maybe) { s.MountAgeMonths = v })
	f.mountHours = f.number(func(s *visit.State, v visit.Maybe) { s.MountHoursStanding = v })
	f.engineHours = f.number(func(s *visit.State, v visit.Maybe) { s.EngineHours = v })
	f.note = newField(w, func(text string) { f.set(func(s *visit.State) { s.Note = text }) })
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	f.box = container.NewVBox(w.heading(words.BeginBoat),
		pair(captioned(say(words.BeginWhere), f.where), captioned(say(words.BeginHours), f.hours)),
		pair(captioned(say(words.BeginFuel), f.fuel), captioned(say(words.BeginBallast), f.ballast)),
		pair(captioned(say(words.BeginRig), f.rig), captioned(say(words.BeginMountAge), f.mountAge)),
		pair(captioned(say(words.BeginMountHours), f.mountHours), captioned(say(words.HistoryEngineHours), f.engineHours)),
		captioned(say(words.BeginStateNote), f.note),
		f.told)
	return f
}

// set is one edit of the state.
func (f *stateForm) set(change func(*visit.State)) {
	s := f.w.history.Now().Visit.State
	change(&s)
	f.w.do(&visit.SetState{State: s})
}

// word is a choice between what is not said and some words.
func (f *stateForm) word(kind string, all []string, put func(*visit.State, string)) *page.Choice {
	options := []string{f.w.speaker.Say(words.BeginUnsaid, nil)}
	for _, word := range all {
		options = append(options, f.w.speaker.Say(words.Of(kind, word), nil))
	}
	return newChoice(f.w, options, func(i int) {
		f.set(func(s *visit.State) { put(s, append([]string{""}, all...)[i]) })
	})
}

// number is a number that need not be known.
func (f *stateForm) number(put func(*visit.State, visit.Maybe)) *field {
	return newField(f.w, func(text string) {
		v, ok := number(text)
		switch {
		case text == "":
			f.set(func(s *visit.State) { put(s, visit.Maybe{}) })
		case ok:
			f.set(func(s *visit.State) { put(s, visit.Known(v)) })
		default:
			f.w.tell(f.w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
		}
	})
}

func (f *stateForm) show(d *visit.Document) {
	s := d.Visit.State
	f.where.Put(placeOf(s.Boat, visit.Boats))
	f.ballast.Put(placeOf(s.Ballast, visit.Ballasts))
	f.rig.Put(placeOf(s.Rig, visit.Rigs))
	f.hours.show(f.w.maybe(s.HoursSinceLaunch))
	f.fuel.show(f.w.maybe(s.FuelPercent))
	f.mountAge.show(f.w.maybe(s.MountAgeMonths))
	f.mountHours.show(f.w.maybe(s.MountHoursStanding))
	f.engineHours.show(f.w.maybe(s.EngineHours))
	f.note.show(s.Note)
}

// placeOf is a word's place after "not said".
func placeOf(word string, all []string) int {
	for i, w := range all {
		if w == word {
			return i + 1
		}
	}
	return 0
}

// maybe writes a number that need not be known.
func (w *Window) maybe(m visit.Maybe) string {
	if !m.Known {
		return ""
	}
	return w.units().Plain(m.Value, 2)
}
