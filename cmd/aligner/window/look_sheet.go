package window

// This file is the sheet for looking over: one check at a time with how to do
// it, what was found in a word and in a note, and the list of all, each of which
// can be opened again.

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

// lookSheet is the check at hand and the list.
type lookSheet struct {
	w              *Window
	box            *fyne.Container
	title, how     *widget.Label
	bites, unread  *widget.Label
	note           *field
	strips         *stripForm
	tight          *tightForm
	seal           *sealForm
	list           *fyne.Container
	lines          []*page.Button
	found          [3]*page.Button
	at             int // of the list
	fresh          bool
	pending        string // a note typed before anything was found
	readFirst      *page.Button
	before, beyond *page.Button
}

// lookKeys find a check good, failed or skipped while the picture has the
// keyboard.
var lookKeys = map[rune]string{'y': "good", 'z': "failed", 'k': "skipped"}

func newLookSheet(w *Window) *lookSheet {
	s := &lookSheet{w: w, fresh: true, title: wrapped(""), how: wrapped(""), bites: wrapped(""),
		unread: wrapped(w.speaker.Say(words.LookUnread, nil)), list: container.NewVBox()}
	s.title.TextStyle.Bold, s.bites.TextStyle.Bold = true, true
	s.readFirst = newPress(w, w.speaker.Say(words.LookReadFirst, nil), func() { w.enter(stageBegin) })
	for i, b := range []struct {
		id    words.ID
		found string
	}{{words.LookGood, "good"}, {words.LookFailed, "failed"}, {words.LookSkipped, "skipped"}} {
		s.found[i] = newPress(w, w.speaker.Say(b.id, nil), func() { s.find(b.found) })
	}
	s.before = newPress(w, "\u2039", func() { s.step(-1) })
	s.beyond = newPress(w, "\u203a", func() { s.step(1) })
	s.note = newField(w, s.noted)
	s.note.OnSubmitted = func(string) { // what was found comes next, by its letter
		s.note.commit()
		w.win.Canvas().Focus(w.picture)
	}
	s.note.SetPlaceHolder(w.speaker.Say(words.LookNoteHint, nil))
	s.strips, s.seal = newStripForm(w), newSealForm(w)
	s.tight = newTightForm(w, s.tightAt)
	bring := newPress(w, w.speaker.Say(words.LookBringPage, nil), w.showBring)
	s.box = container.NewVBox(s.unread, s.readFirst, s.title,
		container.New(shares{0.09, 0.22, 0.27, 0.33, 0.09}, s.before, s.found[0], s.found[1], s.found[2], s.beyond),
		s.note, s.bites, s.tight.box, s.strips.box, s.seal.box, s.how, w.heading(words.LookAll), s.list, bring)
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

// arrow takes a key that steps through the list.
func (s *lookSheet) arrow(k fyne.KeyName) bool {
	switch k {
	case fyne.KeyUp, fyne.KeyLeft:
		s.step(-1)
	case fyne.KeyDown, fyne.KeyRight:
		s.step(1)
	case fyne.KeyReturn, fyne.KeyEnter:
		s.w.win.Canvas().Focus(s.note)
	default:
		return false
	}
	return true
}

// step opens the check before or after.
func (s *lookSheet) step(by int) {
	n := len(s.lines)
	if n > 0 {
		s.open((s.at + by + n) % n)
	}
}

// open opens a check of the list.
func (s *lookSheet) open(i int) {
	s.at, s.pending = i, ""
	d := s.w.document()
	s.show(&d)
	if sheet, ok := s.w.sheets[stageLook].(*container.Scroll); ok {
		sheet.ScrollToTop()
	}
}

// checks are those of the boat, with what was found.
func (s *lookSheet) checks() []job.Check {
	d := s.w.history.Now()
	return job.LookOver(&d.Hull, &d.Visit)
}

// find records the check at hand and goes on to the next one not looked at.
func (s *lookSheet) find(found string) {
	checks := s.checks()
	if s.at >= len(checks) {
		return
	}
	c := checks[s.at]
	note := s.pending
	if note == "" {
		note = c.Note
	}
	if s.note.here { // typed, and not taken yet
		note = s.note.Text
	}
	s.note.show(note)
	s.at, s.pending = next(checks, s.at+1), ""
	f := visit.Finding{Check: c.ID, Finding: found, Note: strings.TrimSpace(note)}
	if found == "failed" { // found good, it is heavy nowhere any more
		f.TightAtDeg = c.TightAtDeg
	}
	s.w.do(&visit.LookOver{Finding: f})
	s.w.win.Canvas().Focus(s.w.picture)
}

// noted takes a note; before anything was found it waits for that.
func (s *lookSheet) noted(text string) {
	checks := s.checks()
	if s.at >= len(checks) {
		return
	}
	c := checks[s.at]
	if c.State == job.Unseen || c.Told {
		s.pending = text
		s.note.was = text
		s.w.sentence.SetText(s.w.speaker.Say(words.LookNoteWaits, nil))
		return
	}
	s.w.do(&visit.LookOver{Finding: visit.Finding{Check: c.ID, Finding: string(c.State), TightAtDeg: c.TightAtDeg, Note: strings.TrimSpace(text)}})
}

// tightAt takes where the shaft goes heavily: then it does not turn freely.
func (s *lookSheet) tightAt(at visit.Maybe) {
	checks := s.checks()
	if s.at >= len(checks) || checks[s.at].ID != job.ShaftFree {
		return
	}
	f := visit.Finding{Check: job.ShaftFree, Finding: "failed", TightAtDeg: at, Note: checks[s.at].Note}
	if s.pending != "" {
		f.Note, s.pending = strings.TrimSpace(s.pending), ""
	}
	s.w.do(&visit.LookOver{Finding: f})
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
	var failed, skipped []string
	if w.stage > stageLook {
		for _, c := range job.LookOver(&d.Hull, &d.Visit) {
			switch title := c.Title.Say(w.speaker, w.units()); {
			case c.State == job.Failed:
				failed = append(failed, title)
			case c.State == job.Skipped && !c.Told:
				skipped = append(skipped, title)
			}
		}
	}
	if len(failed)+len(skipped) == 0 {
		w.standing.Hide()
		return
	}
	w.standing.SetText(w.speaker.Say(words.LookStanding, words.Args{"Failed": strings.Join(failed, "; "), "Skipped": strings.Join(skipped, "; ")}))
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
	showIf(s.unread, !d.Visit.CautionsMinded)
	showIf(s.readFirst, !d.Visit.CautionsMinded)
	title := sp.Say(words.LookCheck, words.Args{"Number": s.at + 1, "All": len(checks), "Title": c.Title.Say(sp, u)})
	s.title.SetText(title + ": " + c.State.Name().Say(sp, u))
	for i, state := range []job.State{job.Good, job.Failed, job.Skipped} {
		s.mark(s.found[i], c.State == state && !c.Told)
	}
	note := c.Note
	if s.pending != "" {
		note = s.pending
	}
	s.note.show(note)
	s.how.SetText(strings.Join(s.told(c), "\n"))
	var bites []string
	for _, b := range job.CautionsAt(c.ID, d.Visit.State.Afloat()) {
		bites = append(bites, b.Text.Say(sp, u))
	}
	s.bites.SetText(strings.Join(bites, " "))
	showIf(s.bites, len(bites) > 0)
	showIf(s.strips.box, c.ID == job.BearingEven)
	showIf(s.tight.box, c.ID == job.ShaftFree)
	s.tight.show(c.TightAtDeg, nil)
	showIf(s.seal.box, c.ID == job.BoxSound)
	s.seal.show(&d.Visit)
	if c.ID == job.BearingEven {
		s.strips.show(d)
	}
	s.fillList(checks)
}

// mark shows which finding it is.
func (s *lookSheet) mark(b *page.Button, on bool) {
	want := widget.MediumImportance
	if on {
		want = widget.HighImportance
	}
	if b.Importance != want {
		b.Importance = want
		b.Refresh()
	}
}

// told is how a check is done, what good looks like, what a failure means and
// stops, and where that is from.
func (s *lookSheet) told(c *job.Check) []string {
	sp, u := s.w.speaker, s.w.units()
	lines := []string{
		sp.Say(words.LookHow, words.Args{"Text": c.How.Say(sp, u)}),
		sp.Say(words.LookLooks, words.Args{"Text": c.Looks.Say(sp, u)}),
		sp.Say(words.LookMeans, words.Args{"Text": c.Means.Say(sp, u)}),
	}
	if c.Stops != "" {
		lines = append(lines, sp.Say(words.LookStops, words.Args{"Stage": c.Stops.Name().Say(sp, u)}))
	} else {
		lines = append(lines, sp.Say(words.LookProvisional, nil))
	}
	if len(c.Sources) > 0 {
		lines = append(lines, s.w.from(c.Sources))
	}
	return lines
}

// fillList writes a line a check, which opens it.
func (s *lookSheet) fillList(checks []job.Check) {
	for i := len(s.lines); i < len(checks); i++ {
		b := newPress(s.w, "", func() { s.open(i) })
		b.Alignment = widget.ButtonAlignLeading
		s.lines = append(s.lines, b)
		s.list.Add(container.New(shares{1}, b))
	}
	for i := len(checks); i < len(s.lines); i++ {
		s.list.Remove(s.list.Objects[len(checks)])
	}
	s.lines = s.lines[:len(checks)]
	sp, u := s.w.speaker, s.w.units()
	for i := range checks {
		text := checks[i].Title.Say(sp, u)
		if checks[i].State != job.Unseen { // the state first: a long title is cut off at its end
			text = sp.Say(words.LookLine, words.Args{"Title": text, "State": checks[i].State.Name().Say(sp, u)})
		}
		importance := widget.LowImportance
		if i == s.at {
			importance = widget.MediumImportance
		}
		if b := s.lines[i]; b.Text != text || b.Importance != importance {
			b.Importance = importance
			b.SetText(text)
		}
	}
}
