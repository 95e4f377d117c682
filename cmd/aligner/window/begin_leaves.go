package window

// This file is the part of the beginning for the mechanic's own leaves.

import (
	"reflect"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/report/job"
)

// leavesForm is the mechanic's own leaves.
type leavesForm struct {
	w                   *Window
	box                 *fyne.Container
	set, unit           *page.Choice
	list, stacked, feel *field
	told                *widget.Label
}

// leafUnits in the order of their choice.
var leafUnits = []visit.Unit{visit.InThou, visit.InMM}

func newLeavesForm(w *Window) *leavesForm {
	f := &leavesForm{w: w, told: small("")}
	var names []string
	for _, s := range job.LeafSets() {
		names = append(names, s.Name.Say(w.speaker, w.units()))
	}
	f.set = newChoice(w, append(names, w.speaker.Say(words.BeginOwnSet, nil)), func(i int) {
		if sets := job.LeafSets(); i < len(sets) {
			f.change(func(s *visit.LeafSet) { s.Leaves, s.Unit = sets[i].Leaves, sets[i].Unit })
		} else {
			w.win.Canvas().Focus(f.list)
		}
	})
	f.unit = newChoice(w, []string{string(visit.InThou), string(visit.InMM)}, func(i int) { f.useUnit(leafUnits[i]) })
	f.list = newField(w, func(text string) { f.takeList(text, leafUnits[max(0, f.unit.SelectedIndex())]) })
	f.stacked = newField(w, func(text string) {
		v, ok := number(text)
		if !ok || v != float64(int(v)) {
			w.tell(w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
			return
		}
		f.change(func(s *visit.LeafSet) { s.MostStacked = int(v) })
	})
	f.feel = newField(w, func(text string) {
		l, ok := w.parseLength(text)
		if !ok {
			w.tell(w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
			return
		}
		f.change(func(s *visit.LeafSet) { s.FeelError = l })
	})
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	f.box = container.NewVBox(w.heading(words.BeginLeaves),
		container.New(shares{0.7, 0.3}, captioned(say(words.BeginSet), f.set), captioned(" ", f.unit)),
		captioned(say(words.BeginLeafList), f.list),
		pair(captioned(say(words.BeginStacked), f.stacked), captioned(say(words.BeginFeel), f.feel)), f.told)
	return f
}

func (f *leavesForm) change(how func(*visit.LeafSet)) {
	s := f.w.history.Now().Visit.Leaves
	how(&s)
	f.w.do(&visit.SetLeaves{Leaves: s})
}

// useUnit says the list's unit: of one's own list it is put right, in place of a
// set as it is sold comes the usual one in that unit.
func (f *leavesForm) useUnit(unit visit.Unit) {
	sets := job.LeafSets()
	if f.set.SelectedIndex() >= len(sets) {
		f.takeList(f.list.Text, unit)
		return
	}
	for _, s := range sets {
		if s.Unit == unit {
			f.change(func(own *visit.LeafSet) { own.Leaves, own.Unit = s.Leaves, s.Unit })
			return
		}
	}
}

// takeList reads the list in a unit.
func (f *leavesForm) takeList(text string, unit visit.Unit) {
	var leaves []float64
	for _, word := range strings.FieldsFunc(text, func(r rune) bool { return r == ' ' || r == ';' || r == '\t' }) {
		v, ok := number(strings.TrimSuffix(word, ","))
		if !ok {
			f.w.tell(f.w.speaker.Say(words.BeginBadLeaves, words.Args{"Text": text}))
			return
		}
		leaves = append(leaves, v)
	}
	if len(leaves) == 0 { // nothing: the usual ones
		unit = ""
	}
	f.change(func(s *visit.LeafSet) { s.Leaves, s.Unit = leaves, unit })
}

func (f *leavesForm) show(d *visit.Document) {
	s, u := d.Visit.Leaves, f.w.units()
	leaves, unit := s.Leaves, s.Unit
	if len(leaves) == 0 {
		leaves, unit = visit.DefaultLeavesThou, visit.InThou
	}
	sets := job.LeafSets()
	at := len(sets)
	for i := range sets {
		if reflect.DeepEqual(sets[i].Leaves, leaves) && sets[i].Unit == unit {
			at = i
			break
		}
	}
	f.set.Put(at)
	f.unit.Put(map[visit.Unit]int{visit.InMM: 1}[unit])
	var list []string
	for _, l := range leaves {
		list = append(list, u.Plain(l, 4))
	}
	f.list.show(strings.Join(list, " "))
	stacked := s.MostStacked
	if stacked == 0 {
		stacked = visit.DefaultStacked
	}
	f.stacked.show(u.Plain(float64(stacked), 0))
	feel := s.FeelError
	if !feel.Given() {
		feel = visit.Thou(visit.DefaultFeelErrorThou)
	}
	f.feel.show(f.w.writeLength(feel))
	var told []string
	if len(s.Leaves) == 0 {
		told = append(told, f.w.defaultSaid(words.DefaultLeaves))
	}
	if s.MostStacked == 0 {
		told = append(told, f.w.defaultSaid(words.DefaultStacked))
	}
	if !s.FeelError.Given() {
		told = append(told, f.w.defaultSaid(words.DefaultFeel))
	}
	f.told.SetText(strings.Join(told, " "))
	showIf(f.told, len(told) > 0)
}
