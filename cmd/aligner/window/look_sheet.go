package window

// This file is the sheet for looking over: one check at a time with how to do
// it, three large buttons, and the list of all with what was found.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/report/job"
)

// lookSheet is the check at hand and the list.
type lookSheet struct {
	w                *Window
	box              *fyne.Container
	cautions, title  *widget.Label
	how, list, bring *widget.Label
	at               int // of the list
	fresh            bool
}

// lookKeys find a check good, failed or skipped while the picture has the
// keyboard.
var lookKeys = map[rune]string{'y': "good", 'z': "failed", 'k': "skipped"}

func newLookSheet(w *Window) *lookSheet {
	s := &lookSheet{w: w, fresh: true}
	label := func() *widget.Label {
		l := widget.NewLabel("")
		l.Wrapping = fyne.TextWrapWord
		return l
	}
	s.cautions, s.title, s.how, s.list, s.bring = label(), label(), label(), label(), label()
	s.title.TextStyle.Bold = true
	button := func(id words.ID, found string) *widget.Button {
		return widget.NewButton(w.speaker.Say(id, nil), func() { s.find(found) })
	}
	buttons := container.NewGridWithColumns(3, button(words.LookGood, "good"), button(words.LookFailed, "failed"), button(words.LookSkipped, "skipped"))
	s.box = container.NewVBox(s.title, buttons, s.how, s.list, s.cautions, s.bring)
	return s
}

// key takes a key that finds something.
func (s *lookSheet) key(r rune) bool {
	found, ok := lookKeys[r]
	if ok {
		s.find(found)
	}
	return ok
}

// find records the check at hand and goes on to the next one not looked at.
func (s *lookSheet) find(found string) {
	d := s.w.history.Now()
	checks := job.LookOver(&d.Hull, &d.Visit)
	if s.at >= len(checks) {
		return
	}
	id := checks[s.at].ID
	s.at = next(checks, s.at+1)
	s.w.do(&visit.LookOver{Finding: visit.Finding{Check: id, Finding: found}})
}

// next is the first check from i on, and round again, that nobody looked at.
func next(checks []job.Check, i int) int {
	for k := range checks {
		if j := (i + k) % len(checks); checks[j].State == job.Unseen {
			return j
		}
	}
	return i % max(1, len(checks))
}

// tellStanding keeps what the look-over found wrong in sight at every later
// stage.
func (w *Window) tellStanding(d *visit.Document) {
	var wrong []string
	if w.stage > stageLook {
		for _, c := range job.LookOver(&d.Hull, &d.Visit) {
			if c.State == job.Failed || c.State == job.Skipped && !c.Told {
				wrong = append(wrong, c.Title.Say(w.speaker, w.units()))
			}
		}
	}
	if len(wrong) == 0 {
		w.standing.Hide()
		return
	}
	w.standing.SetText(w.speaker.Say(words.LookStanding, words.Args{"Checks": strings.Join(wrong, "; ")}))
	w.standing.Show()
}

// show fills the sheet.
func (s *lookSheet) show(d *visit.Document) {
	sp, u := s.w.speaker, s.w.units()
	checks := job.LookOver(&d.Hull, &d.Visit)
	if s.fresh {
		s.at, s.fresh = next(checks, 0), false
	}
	s.at = min(s.at, len(checks)-1)
	c := &checks[s.at]
	s.title.SetText(sp.Say(words.LookCheck, words.Args{"Number": s.at + 1, "All": len(checks), "Title": c.Title.Say(sp, u)}))
	lines := []string{
		sp.Say(words.LookHow, words.Args{"Text": c.How.Say(sp, u)}),
		sp.Say(words.LookLooks, words.Args{"Text": c.Looks.Say(sp, u)}),
		sp.Say(words.LookMeans, words.Args{"Text": c.Means.Say(sp, u)}),
	}
	if len(c.Sources) > 0 {
		var from []string
		for _, source := range c.Sources {
			from = append(from, source.Name().Say(sp, u))
		}
		lines = append(lines, sp.Say(words.LookSource, words.Args{"Sources": strings.Join(from, "; ")}))
	}
	s.how.SetText(strings.Join(lines, "\n"))
	var list []string
	for i := range checks {
		mark := "   "
		if i == s.at {
			mark = "> "
		}
		line := mark + checks[i].Title.Say(sp, u)
		if state := checks[i].State.Name().Say(sp, u); state != "" {
			line += ": " + state
		}
		list = append(list, line)
	}
	s.list.SetText(strings.Join(list, "\n"))
	var cautions []string
	for _, c := range job.Cautions(job.LookingOver, d.Visit.State.Afloat()) {
		cautions = append(cautions, c.Text.Say(sp, u))
	}
	s.cautions.SetText(strings.Join(cautions, "\n"))
	bring := []string{sp.Say(words.LookBring, nil) + ":"}
	for _, item := range job.Bring(&d.Hull, &d.Visit, d.Visit.Bolts.Maker.NM()) {
		bring = append(bring, "   "+item.Text.Say(sp, u))
	}
	s.bring.SetText(strings.Join(bring, "\n"))
}
