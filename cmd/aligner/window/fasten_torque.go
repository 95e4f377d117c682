package window

// This file is the coupling bolts' torque: the maker's figure first, else from
// thread and grade, for threads dry or oiled, with what it is worth.

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

// torqueSheet is two fields and what they come to.
type torqueSheet struct {
	w       *Window
	box     *fyne.Container
	maker   *field
	threads *page.Choice
	text    *widget.Label
}

func newTorqueSheet(w *Window) *torqueSheet {
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	s := &torqueSheet{w: w, text: running()}
	s.maker = newField(w, s.take)
	s.maker.SetPlaceHolder(say(words.FastenMakerHint))
	s.threads = newChoice(w, []string{say(words.Of("job_torque", "dry")), say(words.Of("job_torque", "oiled"))}, func(i int) {
		b := w.history.Now().Visit.Bolts
		b.Oiled = i == 1
		w.do(&visit.SetBolts{Bolts: b})
	})
	s.box = container.NewVBox(heading(say(words.FastenTorqueTitle)),
		pair(captioned(say(words.FastenMaker), s.maker), captioned(say(words.FastenThreads), s.threads)),
		s.text, small(w.from([]job.Source{job.BoltStandards, job.FromMemory})))
	return s
}

// The units a torque may be typed in, longest first.
var torqueUnits = []struct {
	text string
	unit visit.Unit
}{{"newton metres", visit.InNM}, {"lb-ft", visit.InLbFt}, {"lb ft", visit.InLbFt}, {"lbft", visit.InLbFt}, {"ft-lb", visit.InLbFt}, {"N m", visit.InNM}, {"Nm", visit.InNM}}

// take makes an edit of a torque as typed: in the unit it names, or that on the
// screen; nothing takes it back.
func (s *torqueSheet) take(text string) {
	b := s.w.history.Now().Visit.Bolts
	text = strings.TrimSpace(text)
	if text == "" {
		b.Maker = visit.Torque{}
		s.w.do(&visit.SetBolts{Bolts: b})
		return
	}
	bare, unit := text, visit.InLbFt
	if s.w.settings.Metric {
		unit = visit.InNM
	}
	for _, u := range torqueUnits {
		if n := len(text) - len(u.text); n > 0 && strings.EqualFold(text[n:], u.text) {
			bare, unit = text[:n], u.unit
			break
		}
	}
	v, ok := number(bare)
	if !ok {
		s.w.tell(s.w.speaker.Say(words.NotANumber, words.Args{"Text": text}))
		return
	}
	b.Maker = visit.Torque{Value: v, Unit: unit}
	s.w.do(&visit.SetBolts{Bolts: b})
}

// show fills the fields.
func (s *torqueSheet) show(d *visit.Document) {
	sp, u := s.w.speaker, s.w.units()
	text := ""
	if t := d.Visit.Bolts.Maker; t.Given() {
		text = u.Plain(t.Value, 2) + map[visit.Unit]string{visit.InNM: " N m", visit.InLbFt: " lb-ft"}[t.Unit]
	}
	s.maker.show(text)
	which := 0
	if d.Visit.Bolts.Oiled {
		which = 1
	}
	s.threads.Put(which)
	oiled, makerNM := job.CouplingBolts(&d.Visit)
	var lines []string
	for _, t := range job.Torque(&d.Hull, oiled, makerNM) {
		lines = append(lines, t.Say(sp, u))
	}
	write(s.text, lines...)
}
