package practice

// This file shows the work as it stands: the boat, the readings on the faces, what
// was done, and what came of it.

import (
	"math"
	"slices"
	"strings"
	"time"

	"fyne.io/fyne/v2/container"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/practice"
	"aligner/report/say"
	"aligner/scene"
	"aligner/scene/faces"
)

// boat puts the task's boat on the picture, and into the sheet once she is begun.
func (p *Page) boat() {
	h, err := p.s.Task.Hull()
	if w := p.s.work; w != nil {
		h, err = w.Hull(), nil
		p.picture.State.Afloat = w.Afloat()
		p.sheet.boat(w)
	}
	if err != nil {
		p.tell(p.desk.Speaker.Retell(err.Error()), true)
		return
	}
	p.picture.SetModel(scene.NewModel(*h))
	p.picture.Fit(scene.ViewWhole, false)
}

// show shows all of it.
func (p *Page) show() {
	p.grade.Put(indexOf(practice.Grades, p.s.Task.Grade))
	p.number.Put(p.s.Task.Number - 1)
	w := p.s.work
	p.showFaces()
	p.log.SetText(p.done())
	p.right.RemoveAll()
	switch {
	case w == nil:
		p.tally.SetText("")
		p.tell(p.say(words.PracticeIntro, nil)+"\n"+p.given(), false)
		p.kept.SetText(p.keptText())
		p.right.Add(container.NewBorder(nil, p.export, nil, nil, container.NewVScroll(p.kept)))
	case p.s.debrief != nil:
		p.tally.SetText(p.task(w))
		p.tell("", false)
		p.end.show(p.s.debrief)
		p.right.Add(p.end.all)
	default:
		p.tally.SetText(p.say(words.PracticeSoFar, words.Args{"Tally": say.Tally(p.desk.Speaker, p.desk.Looks.Units, w.Hull(), w.Tally())}))
		p.tell(p.task(w)+"\n"+p.given(), false)
		p.sheet.show(w)
		p.right.Add(p.sheet.all)
		p.logView.ScrollToBottom()
	}
	if p.s.trouble != nil {
		p.tell(p.say(words.PracticeNotKept, words.Args{"Why": p.s.trouble.Error()}), true)
	}
}

// tell says what the boat is, or, in bold, what was refused.
func (p *Page) tell(text string, refused bool) {
	p.told.TextStyle.Bold = refused
	p.told.SetText(text)
}

// task says which boat it is.
func (p *Page) task(w *practice.Work) string {
	lies := words.BoatTrailer
	if w.Afloat() {
		lies = words.BoatAfloat
	}
	return p.say(words.PracticeTask, words.Args{"Grade": say.Grade(p.desk.Speaker, w.Task.Grade), "Number": w.Task.Number,
		"Hull": w.Hull().Name, "Lies": p.say(lies, nil)})
}

// given says the rule and the leaves.
func (p *Page) given() string {
	var leaves []string
	unit := " " + p.desk.Looks.Units.GapUnit()
	for _, l := range practice.Leaves.SinglesMM() {
		leaves = append(leaves, strings.TrimSuffix(p.desk.Looks.Units.Thickness(l), unit))
	}
	return p.say(words.PracticeGiven, words.Args{
		"Limit":  p.desk.Looks.Units.LeafWithUnit(visit.DefaultRule.Limit.MM()),
		"Leaves": strings.Join(leaves, ", ") + unit})
}

// showFaces marks the readings of the gauging that goes on.
func (p *Page) showFaces() {
	f := &p.faces.What
	*f = faces.Faces{State: faces.Open, Now: faces.Gap{G0MM: math.NaN()}}
	style := &p.faces.Style
	style.Units, style.LookingAft, style.Dark, style.Text = faces.Units(p.desk.Looks.Units), p.desk.Looks.LookingAft, p.desk.Looks.Dark, p.desk.Looks.TextSize
	style.Words = &p.faces.Words
	// What is not known is written where the gap would be: the learner has readings.
	p.faces.Words.Hanging, p.faces.Words.NoGap = p.say(words.PracticeNoGauging, nil), ""
	w := p.s.work
	if d := p.s.debrief; d != nil { // now it may be seen
		f.DiameterMM = w.Hull().Coupling.OuterDiameterMM
		f.Now, f.AsGauged = gapOf(d.LeftMM), &faces.Gap{}
		*f.AsGauged = gapOf(d.FoundMM)
	} else if w != nil && w.Gauging() {
		f.DiameterMM = w.Hull().Coupling.OuterDiameterMM
		events := w.Visit().Events
		g := events[len(events)-1].Gauging
		p.faces.Words.Hanging = p.say(words.PracticeShaftHeld, words.Args{"Held": g.Held})
		for _, r := range g.Readings {
			if leaf, ok := r.(visit.Leaf); ok {
				least, most := visit.WithinMM(leaf.Goes, leaf.Stops)
				f.Marks = append(f.Marks, faces.Mark{ClockRad: leaf.ClockDeg * math.Pi / 180, LeastMM: least, MostMM: most, Unused: g.Held != "seated"})
			}
		}
	}
	p.faces.Refresh()
}

// gapOf is a gap of faces that just touch.
func gapOf(mm [2]float64) faces.Gap {
	return faces.Gap{G0MM: math.Hypot(mm[0], mm[1]), CosMM: mm[0], SinMM: mm[1]}
}

// done is what was done, a line each.
func (p *Page) done() string {
	w := p.s.work
	if w == nil {
		return ""
	}
	lines := make([]string, len(w.Acts))
	for i, a := range w.Acts {
		lines[i] = p.say(words.PracticeAtAct, words.Args{"Number": i + 1, "Text": say.Act(p.desk.Speaker, p.desk.Looks.Units, w.Hull(), a, w.Told[i])})
	}
	return strings.Join(lines, "\n")
}

// mostKept is how many results are shown; the verb practice lists them all.
const mostKept = 100

// keptText are the results kept, newest first.
func (p *Page) keptText() string {
	if len(p.results) == 0 {
		return p.say(words.PracticeResultsNone, nil)
	}
	lines := []string{p.say(words.PracticeResults, nil)}
	for i := range p.results[:min(mostKept, len(p.results))] {
		r := &p.results[i]
		lines = append(lines, p.say(words.PracticeLine, words.Args{"Date": r.Ended.Local().Format(time.DateOnly), "Learner": r.Learner,
			"Task":    p.say(words.PracticeTaskShort, words.Args{"Grade": say.Grade(p.desk.Speaker, r.Task.Grade), "Number": r.Task.Number}),
			"Outcome": say.Outcome(p.desk.Speaker, p.desk.Looks.Units, &r.Debrief)}))
	}
	return strings.Join(lines, "\n")
}

func indexOf[T comparable](all []T, one T) int { return max(slices.Index(all, one), 0) }
