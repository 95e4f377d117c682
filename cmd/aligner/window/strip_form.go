package window

// This file is where the room round a shaft in its bearing is entered: strips
// tried at top, bottom, port and starboard of both ends, one line a place, and
// what they say of the bearing.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/hulls/visit/called"
	"aligner/report/job"
)

// stripForm is that.
type stripForm struct {
	w       *Window
	box     *fyne.Container
	bearing *page.Choice
	end     *page.Choice
	asked   *widget.Label
	line    *field
	read    *widget.Label
	verdict *widget.Label
	names   []string
}

// shaftEnds in the order of their choice, and the places of each end.
var (
	shaftEnds   = []string{"fore", "aft"}
	stripPlaces = []float64{0, 90, 180, 270}
)

func newStripForm(w *Window) *stripForm {
	f := &stripForm{w: w, asked: widget.NewLabel(""), read: wrapped(""), verdict: wrapped("")}
	f.verdict.TextStyle.Bold = true
	again := func(int) {
		d := w.document()
		f.show(&d)
	}
	f.bearing = newChoice(w, nil, again)
	f.end = newChoice(w, []string{w.speaker.Say(words.EndFore, nil), w.speaker.Say(words.EndAft, nil)}, again)
	f.line = newField(w, nil)
	f.line.take = f.typed
	f.line.OnSubmitted = func(text string) { f.typed(text) }
	f.line.SetPlaceHolder(w.speaker.Say(words.StripHint, nil))
	f.box = container.NewVBox(w.heading(words.StripTitle), pair(f.bearing, f.end),
		container.NewBorder(nil, nil, f.asked, nil, f.line), f.read, f.verdict)
	return f
}

// strips are those read of the bearing chosen.
func (f *stripForm) strips(v *visit.Visit) (all []visit.Clearance) {
	for _, e := range v.Events {
		if e.Gauging == nil {
			continue
		}
		for _, r := range e.Gauging.Readings {
			if c, ok := r.(visit.Clearance); ok && c.Where == f.where() {
				all = append(all, c)
			}
		}
	}
	return all
}

func (f *stripForm) where() string { return f.names[max(0, f.bearing.SelectedIndex())] }

// wanted is the first place of the end chosen that has no strip yet, or of the
// other end; false: all have.
func (f *stripForm) wanted(all []visit.Clearance) (end int, deg float64, ok bool) {
	from := max(0, f.end.SelectedIndex())
	for k := range shaftEnds {
		end := (from + k) % 2
		for _, deg := range stripPlaces {
			has := false
			for _, c := range all {
				has = has || c.End == shaftEnds[end] && c.ClockDeg == deg
			}
			if !has {
				return end, deg, true
			}
		}
	}
	return from, 0, false
}

// typed takes one line.
func (f *stripForm) typed(text string) {
	if strings.TrimSpace(text) == "" {
		return
	}
	d := f.w.history.Now()
	end, deg, _ := f.wanted(f.strips(&d.Visit))
	r, err := called.Line(text, called.Setting{Kind: "clearance", Seen: f.w.seen(), AskedDeg: deg, Unit: f.w.unitShown(),
		Where: f.where(), End: shaftEnds[end]})
	if err != nil {
		f.w.sentence.SetText(f.w.calledFault(err))
		return
	}
	f.line.was = ""
	f.line.SetText("")
	f.end.Put(end)
	if i := stripGauging(&d.Visit); i >= 0 {
		f.w.do(&visit.AddReading{Event: i, Reading: visit.OneReading{Reading: r}})
		return
	}
	f.w.do(&visit.BeginGauging{Gauging: visit.Gauging{Held: "hanging", Note: f.w.speaker.Say(words.StripNote, nil), Readings: []visit.Reading{r}}})
}

// stripGauging is the last event if it holds nothing but strips, or -1: they say
// nothing of how the engine stands, so they are kept apart from gaps.
func stripGauging(v *visit.Visit) int {
	i := len(v.Events) - 1
	if i < 0 || !onlyStrips(v.Events[i].Gauging) {
		return -1
	}
	return i
}

// onlyStrips reports whether a gauging is of the look-over alone.
func onlyStrips(g *visit.Gauging) bool {
	if g == nil || g.Held != "hanging" || len(g.Readings) == 0 {
		return false
	}
	for _, r := range g.Readings {
		if _, ok := r.(visit.Clearance); !ok {
			return false
		}
	}
	return true
}

func (f *stripForm) show(d *visit.Document) {
	f.names = f.names[:0]
	for _, b := range d.Hull.Bearings {
		f.names = append(f.names, b.Name)
	}
	f.bearing.Options = f.w.speaker.Parts(f.names)
	if i := f.bearing.SelectedIndex(); i < 0 || i >= len(f.names) {
		f.bearing.Put(len(f.names) - 1) // the strut's, as a rule
	}
	if f.end.SelectedIndex() < 0 {
		f.end.Put(0)
	}
	all := f.strips(&d.Visit)
	sp, u := f.w.speaker, f.w.units()
	end, deg, more := f.wanted(all)
	if more {
		f.asked.SetText(sp.Say(words.StripAsked, words.Args{"End": f.end.Options[end], "Clock": f.w.writePlace(deg)}))
	} else {
		f.asked.SetText(sp.Say(words.StripAll, nil))
	}
	var read []string
	for i, name := range shaftEnds {
		var own []string
		for _, c := range all {
			if c.End == name {
				own = append(own, f.w.readingText(c))
			}
		}
		if len(own) > 0 {
			read = append(read, f.end.Options[i]+"   "+strings.Join(own, "   "))
		}
	}
	f.read.SetText(strings.Join(read, "\n"))
	showIf(f.read, len(read) > 0)
	b := job.TellWear(&d.Hull, f.where(), all)
	f.verdict.SetText(b.Text().Say(sp, u))
}
