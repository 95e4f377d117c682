package window

// This file is the sheets for fastening and for handing over: the order, what
// tightening did and which mount pulled; what keeps the result provisional and
// when to look again.

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/job"
	"aligner/report/say"
)

// fastenSheet is the order of fastening.
type fastenSheet struct {
	w            *Window
	box          *fyne.Container
	pulled, text *widget.Label
	what         *widget.Select
}

func newFastenSheet(w *Window) *fastenSheet {
	s := &fastenSheet{w: w, pulled: widget.NewLabel(""), text: widget.NewLabel("")}
	s.pulled.Wrapping, s.text.Wrapping = fyne.TextWrapWord, fyne.TextWrapWord
	s.what = widget.NewSelect(nil, nil)
	s.what.PlaceHolder = w.speaker.Say(words.FastenWhat, nil)
	record := widget.NewButton(w.speaker.Say(words.FastenTightened, nil), func() {
		if s.what.Selected != "" {
			what := s.what.Selected
			if i := s.what.SelectedIndex(); i == len(s.what.Options)-1 {
				what = couplingBolts // files speak one language
			}
			w.do(&visit.RecordFastening{Fasten: visit.Fasten{What: what}})
		}
	})
	s.box = container.NewVBox(s.pulled, container.NewBorder(nil, nil, nil, record, s.what), s.text)
	return s
}

// couplingBolts is what a visit file calls them.
const couplingBolts = "coupling bolts"

// show fills the sheet.
func (s *fastenSheet) show(d *visit.Document) {
	sp, u := s.w.speaker, s.w.units()
	names := []string{}
	for _, m := range d.Hull.Mounts {
		names = append(names, m.Name)
	}
	s.what.Options = append(names, sp.Say(words.FastenCoupling, nil))
	steps, _ := job.FastenOrder(&d.Hull, false, 0)
	var lines []string
	for _, c := range job.Cautions(job.Fastening, d.Visit.State.Afloat()) {
		lines = append(lines, c.Text.Say(sp, u))
	}
	for i, step := range steps {
		lines = append(lines, strconv.Itoa(i+1)+". "+step.Text.Say(sp, u))
	}
	if f, ok := job.ThreeThenFourth(&d.Hull); ok {
		for _, t := range f.Steps {
			lines = append(lines, t.Say(sp, u))
		}
	}
	s.text.SetText(strings.Join(lines, "\n"))
	s.pulled.SetText(strings.Join(s.w.pulledBy(d), "\n"))
}

// pulledBy says what the last tightening did, where it was gauged before and
// after.
func (w *Window) pulledBy(d *visit.Document) []string {
	e := w.mind.estimate
	if e == nil || e.Status != gauge.Ready || len(e.States) < 2 || !e.States[len(e.States)-1].Fastened {
		return nil
	}
	r, err := w.mind.planner.Response()
	if err != nil {
		return nil
	}
	k := len(e.States) - 2
	was := gauge.Gaussian{MeanMM: [2]float64{e.States[k].CosMM, e.States[k].SinMM}}
	for a := range 2 {
		for b := range 2 {
			was.CovMM2[a][b] = e.StateCovMM2.At(2*k+a, 2*k+b)
		}
	}
	p := job.PulledBy(&d.Hull, r, was, e.Gap, nil)
	var lines []string
	for _, t := range p.Text(&d.Hull) {
		lines = append(lines, t.Say(w.speaker, w.units()))
	}
	return lines
}

// handOverSheet is the end of the job.
type handOverSheet struct {
	w    *Window
	box  *fyne.Container
	text *widget.Label
}

func newHandOverSheet(w *Window) *handOverSheet {
	s := &handOverSheet{w: w, text: widget.NewLabel("")}
	s.text.Wrapping = fyne.TextWrapWord
	s.box = container.NewVBox(s.text)
	return s
}

// show fills the sheet.
func (s *handOverSheet) show(d *visit.Document) {
	sp, u := s.w.speaker, s.w.units()
	var lines []string
	if e := s.w.mind.estimate; e != nil {
		lines = append(lines, say.Estimate(sp, u, &d.Visit, e)...)
	}
	lines = append(lines, "", sp.Say(words.HandOverDone, nil))
	for _, event := range d.Visit.Events {
		if event.Move != nil {
			steps, slides := make([]float64, len(d.Hull.Mounts)), make([]float64, len(d.Hull.Mounts))
			for i, m := range d.Hull.Mounts {
				steps[i], slides[i] = event.Move.NutFlats[m.Name], event.Move.SlideMM[m.Name]
			}
			lines = append(lines, "   "+say.Move(sp, u, &d.Hull, steps, slides))
		}
	}
	if reasons := job.Provisional(&d.Hull, &d.Visit); len(reasons) > 0 {
		lines = append(lines, "", sp.Say(words.HandOverProvisional, nil))
		for _, r := range reasons {
			lines = append(lines, "   "+r.Text.Say(sp, u))
		}
	} else {
		lines = append(lines, "", sp.Say(words.HandOverFinal, nil))
	}
	lines = append(lines, "", sp.Say(words.HandOverDue, nil))
	for _, c := range job.Due(&d.Hull, &d.Visit) {
		lines = append(lines, "   "+c.Text.Say(sp, u))
	}
	s.text.SetText(strings.Join(lines, "\n"))
}
