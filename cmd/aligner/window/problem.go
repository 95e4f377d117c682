package window

// This file is the report of a problem: what goes into it, and where it is
// saved. Nothing is sent.

import (
	"fmt"
	"net/url"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"

	"aligner/assets/words"
	"aligner/cmd/aligner/faults"
	"aligner/cmd/aligner/outfile"
	"aligner/hulls"
	"aligner/hulls/visit"
)

// fault writes down what went wrong, where there is a log.
func (w *Window) fault(where string, err error) {
	if w.Faults != nil {
		w.Faults.Note(where, err)
	}
}

// show hands a link to the system.
func (w *Window) show(link *url.URL) {
	if w.showLink != nil {
		w.showLink(link)
		return
	}
	if err := fyne.CurrentApp().OpenURL(link); err != nil {
		w.fault("show "+link.Path, err)
	}
}

// askProblem says what a report would hold and asks where to save it.
func (w *Window) askProblem() {
	text := wrapped(w.insideProblem())
	form := newSaveForm(w, ".zip")
	box := container.NewVBox(text, form.box)
	window := dialog.NewCustomWithoutButtons(w.speaker.Say(words.ProblemTitle, nil), box, w.win)
	form.leave = window.Hide
	size := w.win.Canvas().Size()
	window.Resize(fyne.NewSize(min(size.Width*0.85, 720), min(size.Height*0.85, 420)))
	window.Show()
	d := w.history.Now()
	form.ask(w.speaker.Say(words.ProblemSaveTo, nil), fileName("problem", d.Hull.Name, time.Now().Format(time.DateOnly))+".zip", func(path string) {
		err := outfile.Write(path, w.problem(d).Pack)
		if err != nil {
			w.fault("problem report", err)
			w.tell(w.told(err))
			return
		}
		w.tell(w.speaker.Say(words.ProblemSaved, words.Args{"File": path}))
	})
}

// insideProblem says what a report holds.
func (w *Window) insideProblem() string {
	return w.speaker.Say(words.ProblemInside, nil) + "\n\n" + w.speaker.Say(words.ProblemInsideWhat, nil) + "\n\n" + w.speaker.Say(words.ProblemInsideNot, nil)
}

// problem is the report of a problem with a document on the screen.
func (w *Window) problem(d visit.Document) *faults.Report {
	s := &w.settings
	r := &faults.Report{When: time.Now(), Program: w.Program, ReadMe: w.insideProblem() + "\n",
		Screen: fmt.Sprintf("%s, scale %.2f, %.0f x %.0f, text x %.1f, dark %v, mm %v", s.Language, w.win.Canvas().Scale(),
			w.win.Canvas().Size().Width, w.win.Canvas().Size().Height, s.TextSize, s.Dark, s.Metric),
		Visit: visit.Encode(d.Visit), Hull: hulls.Encode(d.Hull)}
	if w.Faults != nil {
		r.Faults = w.Faults.LastRun()
	}
	return r
}
