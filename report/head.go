package report

// This file draws what every page has: its head and its foot.

import (
	"fmt"
	"strings"

	"aligner/assets/words"
	"aligner/report/job"
	"aligner/report/paper"
)

// head draws the black band with the kind of sheet and the boat, and below it a
// line of facts. It gives where the page goes on.
func (d *drawer) head(kind, facts string) float64 {
	x, y, w, _ := d.InsideMM()
	const tall = 11.0
	d.Rect(x, y, w, tall, nil, paper.Shade(0))
	d.Mid(x+3, y+tall/2, w*0.42, paper.Type{Points: 17, Bold: true, Grey: 255}, kind)
	d.Mid(x+w*0.45, y+tall/2, w*0.55-3, paper.Type{Points: 17, Bold: true, Align: paper.Right, Grey: 255}, d.h.Name)
	y += tall + 1
	return y + d.Line(x, y, w, paper.Type{Points: 9.5}, facts)
}

// facts join what is known of boat and visit into a line.
func (d *drawer) facts(more ...string) string {
	var list []string
	if d.dateText() != "" {
		list = append(list, d.dateText())
	}
	if d.h.HIN != "" {
		list = append(list, "HIN "+d.h.HIN)
	}
	list = append(list, d.boat())
	return strings.Join(append(list, more...), "  ·  ")
}

// failed says which checks of the look-over failed: that stays in sight on every
// result.
func (d *drawer) failed() []string {
	var lines []string
	for _, f := range d.v.LookOver {
		if f.Finding == string(job.Failed) {
			lines = append(lines, d.say(words.LookOverFailed, words.Args{"Check": f.Check}))
		}
	}
	return lines
}

// foot writes the program and the page's number at the foot of every page.
func (d *drawer) foot() {
	x, y, w, h := d.InsideMM()
	t := paper.Type{Points: 7, Grey: 70}
	for page := 1; page <= d.Pages(); page++ {
		d.GoTo(page)
		d.Mid(x, y+h+4.5, w*0.75, t, d.title()+"  ·  "+d.o.Program)
		if d.Pages() > 1 {
			t := t
			t.Align = paper.Right
			d.Mid(x, y+h+4.5, w, t, d.say(words.PaperPage, words.Args{"Page": fmt.Sprint(page), "Of": fmt.Sprint(d.Pages())}))
		}
	}
}
