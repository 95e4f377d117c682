package window

// This file is the line readings are typed into as a mate calls them, and what
// is asked for there: a place, in the order of the gauging before, or eight
// round the rim within reach, or where it would tell most.

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/hulls/visit/called"
	"aligner/kinematics/gauge"
)

// readingLine is an entry whose arrows go through what was read, whose page keys
// change the kind, and which takes several lines pasted at once.
type readingLine struct {
	page.Entry
	s *gaugeSheet
}

func newReadingLine(s *gaugeSheet) *readingLine {
	e := &readingLine{s: s}
	e.Before = e.before
	e.ExtendBaseWidget(e)
	return e
}

// before takes the keys that mean something else here.
func (e *readingLine) before(k *fyne.KeyEvent) bool {
	switch k.Name {
	case fyne.KeyUp:
		e.s.pick(-1)
	case fyne.KeyDown:
		e.s.pick(1)
	case fyne.KeyPageUp:
		e.s.kinds.step(-1)
	case fyne.KeyPageDown:
		e.s.kinds.step(1)
	case fyne.KeyEscape:
		if e.s.picked < 0 && e.Text == "" {
			return e.s.w.keyEverywhere(k)
		}
		e.s.leave()
	default:
		return e.s.w.keyEverywhere(k)
	}
	return true
}

// TypedShortcut takes a paste of several lines or cells as a table, and undo
// where nothing is being typed.
func (e *readingLine) TypedShortcut(s fyne.Shortcut) {
	switch s := s.(type) {
	case *fyne.ShortcutPaste:
		if text := s.Clipboard.Content(); strings.ContainsAny(strings.TrimSpace(text), "\n\r\t;") {
			e.s.paste(text)
			return
		}
	case *fyne.ShortcutUndo:
		if e.Text == "" {
			e.s.w.undo()
			return
		}
	case *fyne.ShortcutRedo:
		e.s.w.redo()
		return
	case *desktop.CustomShortcut:
		if s.KeyName == fyne.KeyDelete && s.Modifier == fyne.KeyModifierControl && e.s.picked >= 0 {
			e.s.takeOut()
			return
		}
		if e.s.w.shortcut(s) {
			return
		}
	}
	e.Entry.TypedShortcut(s)
}

// FocusGained brings the line into view.
func (e *readingLine) FocusGained() {
	e.Entry.FocusGained()
	e.s.w.bringIntoView(e)
}

// lastGauging is the event of the gauging readings go to, or -1: none since the
// last move. What was read of bearings alone, looking over, is none.
func lastGauging(v *visit.Visit) int {
	for i := len(v.Events) - 1; i >= 0; i-- {
		switch e := v.Events[i]; {
		case e.Gauging != nil && !onlyStrips(e.Gauging):
			return i
		case e.Move != nil, e.Fasten != nil:
			return -1
		}
	}
	return -1
}

// places are where leaves were tried, in order: in the gauging that goes on, and
// in the last one before it.
func places(v *visit.Visit, current int) (before, now []float64) {
	at := func(i int) (all []float64) {
		for _, r := range v.Events[i].Gauging.Readings {
			if leaf, ok := r.(visit.Leaf); ok && !slices.Contains(all, leaf.ClockDeg) {
				all = append(all, leaf.ClockDeg)
			}
		}
		return all
	}
	if current >= 0 {
		now = at(current)
	}
	for i := len(v.Events) - 1; i >= 0; i-- {
		if v.Events[i].Gauging != nil && i != current {
			if before = at(i); len(before) > 0 {
				return before, now
			}
		}
	}
	return before, now
}

// ahead are the places still to come: the order of the gauging before, where
// there is one, then eight round the clock; within reach.
func ahead(before, now []float64, reach visit.Arc) []float64 {
	var all []float64
	add := func(deg float64) {
		if !slices.Contains(now, deg) && !slices.Contains(all, deg) {
			all = append(all, deg)
		}
	}
	for _, deg := range before {
		add(deg)
	}
	if len(before) > 0 {
		return all
	}
	from := 0.0
	if !reach.AllRound() { // along the arc, from its beginning
		from = reach.FromDeg
		add(from)
	}
	for i := range 9 {
		deg := 45 * float64((int(from)/45+i)%8)
		if reach.Reaches(deg) {
			add(deg)
		}
	}
	if !reach.AllRound() {
		add(reach.ToDeg)
	}
	return all
}

// askedFor is the place asked for now, and those after it. Once round, it is
// where the estimate asks for a leaf; where it asks for none, no place is wanted
// and the round begins again.
func (s *gaugeSheet) askedFor(v *visit.Visit) (deg float64, then []float64, wanted bool) {
	event := lastGauging(v)
	before, now := places(v, event)
	if to := ahead(before, now, v.Reach); len(to) > 0 {
		return to[0], to[1:], true
	}
	if e := s.w.mind.estimate; e != nil && e.Next != nil && e.Next.What != gauge.TurnShaft && e.Next.What != gauge.GaugeOffset {
		return e.Next.ClockDeg, nil, true
	}
	if again := ahead(before, nil, v.Reach); len(again) > 0 {
		return again[0], again[1:], false
	}
	return 0, nil, false
}

// calledFault says what is wrong with a line.
func (w *Window) calledFault(err error) string {
	f, ok := err.(*called.Fault)
	if !ok {
		return err.Error()
	}
	text := w.speaker.Say(words.Of("called", string(f.Why)), words.Args{"Text": f.Text})
	if f.Line > 0 {
		return w.speaker.Say(words.CalledLine, words.Args{"Line": f.Line, "Fault": text})
	}
	return text
}
