package practice

// This file shows the work as it stands: the boat, the readings on the faces, what
// was done, and what came of it.

import (
	"math"
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/practice"
	"aligner/report/say"
	"aligner/scene"
	"aligner/scene/faces"
)

// boat puts the task's boat on the picture and into the sheet.
func (p *Page) boat() {
	w := p.s.work
	if w == nil {
		return
	}
	p.picture.SetModel(scene.NewModel(*w.Hull()))
	p.picture.State.Afloat = w.Afloat()
	p.picture.Fit(scene.ViewWhole, false)
	p.sheet.boat(w)
}

// show shows all of it.
func (p *Page) show() {
	p.grade.Put(indexOf(practice.Grades, p.s.Task.Grade))
	p.number.Put(p.s.Task.Number - 1)
	w := p.s.work
	p.showFaces()
	p.log.Refresh()
	p.right.RemoveAll()
	switch {
	case w == nil:
		p.tally.SetText(p.say(words.PracticeResults, nil))
		p.told.SetText(p.intro(""))
	case p.s.debrief != nil:
		p.tally.SetText(p.task(w))
		p.told.SetText("")
		p.end.show(p.s.debrief)
		p.right.Add(p.end.all)
	default:
		p.tally.SetText(p.say(words.PracticeSoFar, words.Args{"Tally": say.Tally(p.desk.Speaker, p.desk.Looks.Units, w.Hull(), w.Tally())}))
		p.told.SetText(p.task(w))
		if len(w.Acts) == 0 {
			p.told.SetText(p.intro(p.task(w)))
		}
		p.sheet.show(w)
		p.right.Add(p.sheet.all)
		p.log.ScrollToBottom()
	}
	if p.s.trouble != nil {
		p.told.SetText(p.say(words.PracticeNotKept, words.Args{"Why": p.s.trouble.Error()}))
	}
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

// intro says what is to be done.
func (p *Page) intro(task string) string {
	var leaves []string
	for _, l := range practice.Leaves.SinglesMM() {
		leaves = append(leaves, p.desk.Looks.Units.Thickness(l))
	}
	return strings.TrimSpace(task + "\n" + p.say(words.PracticeIntro, words.Args{
		"Limit":  p.desk.Looks.Units.LeafWithUnit(visit.DefaultRule.Limit.MM()),
		"Leaves": strings.Join(leaves, ", ") + " " + p.desk.Looks.Units.GapUnit()}))
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
	if w != nil && w.Gauging() {
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

// lines is how many lines the list has: what was done, or results kept.
func (p *Page) lines() int {
	if p.s.work == nil {
		return max(len(p.results), 1)
	}
	return len(p.s.work.Acts)
}

// line writes one of them.
func (p *Page) line(i int, o fyne.CanvasObject) {
	o.(*widget.Label).SetText(p.lineText(i))
}

func (p *Page) lineText(i int) string {
	speaker, u := p.desk.Speaker, p.desk.Looks.Units
	if w := p.s.work; w != nil {
		return p.say(words.PracticeAtAct, words.Args{"Number": i + 1, "Text": say.Act(speaker, u, w.Hull(), w.Acts[i], w.Told[i])})
	}
	if len(p.results) == 0 {
		return p.say(words.PracticeResultsNone, nil)
	}
	r := &p.results[i]
	return p.say(words.PracticeLine, words.Args{"Date": r.Ended.Local().Format(time.DateOnly), "Learner": r.Learner,
		"Task":    p.say(words.PracticeTaskShort, words.Args{"Grade": say.Grade(speaker, r.Task.Grade), "Number": r.Task.Number}),
		"Outcome": say.Outcome(speaker, u, &r.Debrief)})
}

func indexOf[T comparable](all []T, one T) int {
	for i, v := range all {
		if v == one {
			return i
		}
	}
	return 0
}
