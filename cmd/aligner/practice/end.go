package practice

// This file is what came of a piece of work, and what to do next.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/kinematics/practice"
	"aligner/report/say"
)

type end struct {
	p           *Page
	verdict     *widget.Label
	rest        *widget.Label
	again, next *page.Button
	all         fyne.CanvasObject
}

func newEnd(p *Page) *end {
	e := &end{p: p, verdict: running(), rest: running()}
	e.verdict.TextStyle.Bold = true
	e.verdict.SizeName = theme.SizeNameSubHeadingText
	e.again = page.NewButton(p.keys, p.say(words.PracticeAgain, nil), func() { p.ask(p.s.work.Task) })
	e.next = page.NewButton(p.keys, p.say(words.PracticeNext, nil), func() { p.ask(p.s.next()) })
	e.next.Importance = widget.HighImportance
	export := page.NewButton(p.keys, p.say(words.PracticeExport, nil), p.askExport)
	e.all = container.NewBorder(nil, container.NewVBox(export, container.NewGridWithColumns(2, e.again, e.next)), nil, nil,
		container.NewVScroll(container.NewVBox(e.verdict, e.rest)))
	return e
}

func (e *end) show(d *practice.Debrief) {
	lines := say.Debrief(e.p.desk.Speaker, e.p.desk.Looks.Units, e.p.s.work.Hull(), d)
	e.verdict.SetText(lines[0])
	lines = append(lines, e.p.say(words.PracticeTrueFaces, nil))
	e.rest.SetText(strings.Join(lines[1:], "\n"))
}
