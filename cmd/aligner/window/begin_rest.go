package window

// This file is the rest of the beginning: the rim within reach, date and note;
// and how sources, defaults and cautions are said.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/hulls/visit/called"
	"aligner/report/job"
)

// restForm is the rim within reach, the date and the visit's note.
type restForm struct {
	w                 *Window
	box               *fyne.Container
	reach, date, note *field
}

func newRestForm(w *Window) *restForm {
	f := &restForm{w: w}
	f.reach = newField(w, func(text string) {
		a, ok := called.ParseArc(text, w.seen())
		if strings.TrimSpace(text) == "" {
			a, ok = visit.Arc{}, true
		}
		if !ok {
			w.tell(w.speaker.Say(words.BeginBadArc, words.Args{"Text": text}))
			return
		}
		w.do(&visit.SetReach{FromDeg: a.FromDeg, ToDeg: a.ToDeg})
	})
	f.reach.SetPlaceHolder(w.speaker.Say(words.BeginReachHint, nil))
	f.date = newField(w, func(text string) { w.do(&visit.SetDate{Date: strings.TrimSpace(text)}) })
	f.note = newField(w, func(text string) { w.do(&visit.NoteVisit{Note: text}) })
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	f.box = container.NewVBox(w.heading(words.BeginVisit),
		pair(captioned(say(words.BeginReachArc), f.reach), captioned(say(words.BeginDate), f.date)),
		captioned(say(words.BeginStateNote), f.note))
	return f
}

func (f *restForm) show(d *visit.Document) {
	f.reach.show(f.w.writeArc(d.Visit.Reach))
	f.date.show(d.Visit.Date)
	f.note.show(d.Visit.Note)
}

// writeArc writes an arc as it is seen; "" for all round.
func (w *Window) writeArc(a visit.Arc) string {
	if a.AllRound() {
		return ""
	}
	if w.settings.LookingAft {
		a.FromDeg, a.ToDeg = a.ToDeg, a.FromDeg
	}
	return w.writePlace(a.FromDeg) + "-" + w.writePlace(a.ToDeg)
}

// from says where something is from.
func (w *Window) from(sources []job.Source) string {
	var list []string
	for _, s := range sources {
		list = append(list, s.Name().Say(w.speaker, w.units()))
	}
	return w.speaker.Say(words.BeginFrom, words.Args{"Sources": strings.Join(list, "; ")})
}

// defaultSaid says a default and where it is from.
func (w *Window) defaultSaid(id words.ID) string {
	for _, d := range job.Defaults() {
		if d.Text.ID == id {
			return d.Text.Say(w.speaker, w.units()) + " " + w.from(d.Sources)
		}
	}
	return ""
}

// anyGauged reports whether the visit has a gauging with readings of the faces.
func anyGauged(v *visit.Visit) bool {
	for _, e := range v.Events {
		if g := e.Gauging; g != nil && len(g.Readings) > 0 && !onlyStrips(g) {
			return true
		}
	}
	return false
}

// cautionLine is a stage's cautions in short, where they bite; F1 says where they
// are from.
func (w *Window) cautionLine(stage job.Stage, d *visit.Document) string {
	var all []string
	for _, c := range job.Cautions(stage, d.Visit.State.Afloat()) {
		all = append(all, c.Text.Say(w.speaker, w.units()))
	}
	return strings.Join(all, " ")
}

// cautionsOf are a stage's cautions, each with where it is from.
func (w *Window) cautionsOf(stage job.Stage, d *visit.Document) string {
	var lines []string
	for _, c := range job.Cautions(stage, d.Visit.State.Afloat()) {
		var from []string
		for _, s := range c.Sources {
			from = append(from, s.Name().Say(w.speaker, w.units()))
		}
		lines = append(lines, "\u2022 "+c.Text.Say(w.speaker, w.units())+" ("+strings.Join(from, "; ")+")")
	}
	return strings.Join(lines, "\n")
}
