package report

// This file lays out an exercise: a boat, her readings, an empty clock and
// questions; on the second page the answers.

import (
	"fmt"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/report/paper"
)

// class draws both pages.
func class(in Input, o Options) (*drawer, error) {
	d := begin(in, o)
	f := &flow{drawer: d}
	d.least = leastBayPoints[0]
	d.AddPage()
	x, _, w, _ := d.InsideMM()
	kind := d.say(words.Of("paper_kind", string(Class)), nil)
	f.y = d.head(kind, d.facts(d.say(words.PaperShaftHeld, words.Args{"Held": d.held()}))) + 1.5
	f.y += d.Paragraph(x, f.y, w, bodyType, d.classIntro()) + 1
	d.hide = true
	f.y = d.classDrawings(f.y) + 2
	d.hide = false
	f.y += d.Line(x, f.y, w, underType, d.say(words.PaperReadings, nil))
	f.classReadings()
	f.y += 1 + f.Line(x, f.y+1, w, underType, f.say(words.PaperAnswersTo, nil))
	if err := f.stepTable(); err != nil {
		return nil, err
	}
	f.questions()

	d.AddPage()
	f.y = d.head(d.say(words.PaperAnswers, nil), d.facts()) + 1.5
	if err := f.answers(); err != nil {
		return nil, err
	}
	d.foot()
	return d, nil
}

func (d *drawer) classIntro() string {
	return d.say(words.PaperClassIntro, words.Args{"Hull": d.h.Name, "Layout": string(d.h.Layout), "Diameter": d.u.Plain(d.h.Coupling.OuterDiameterMM, 1) + " mm",
		"Rule": d.ruleText()})
}

// classDrawings are the mounts and an empty clock.
func (d *drawer) classDrawings(y float64) float64 {
	x, _, w, _ := d.InsideMM()
	const tall, clock = 66.0, 60.0
	d.drawMounts(x, y, w-clock-3, tall, 0.82)
	r := clock / 2
	d.drawClock(paper.Point{X: x + w - r, Y: y + r}, r, clockFace{atDeg: d.positions(), boxes: true})
	d.Paragraph(x+w-clock, y+clock+1, clock, paper.Type{Points: 8, Align: paper.Centre}, d.seen())
	return y + tall
}

// classReadings is one line of goes and stops for each gauging of gaps.
func (f *flow) classReadings() {
	positions := f.positions()
	var rows []clockRow
	for _, e := range f.v.Events {
		if e.Gauging == nil || len(rows) == 4 {
			continue
		}
		texts, any := make([]string, len(positions)), false
		for i, deg := range positions {
			texts[i] = "–"
			for _, r := range e.Gauging.Readings {
				if leaf, ok := r.(visit.Leaf); ok && leaf.ClockDeg == deg {
					texts[i], any = f.bareTyped(leaf.Goes)+" / "+f.bareTyped(leaf.Stops), true
				}
			}
		}
		if any {
			rows = append(rows, clockRow{f.say(words.PaperTurnedBy, words.Args{"Shaft": f.u.Plain(e.Gauging.ShaftTurnDeg, 0)}), texts, false})
		}
	}
	x, _, w, _ := f.InsideMM()
	if len(rows) == 0 {
		f.y += f.Paragraph(x, f.y, w, bodyType, f.say(words.NoGapGauged, nil))
		return
	}
	f.y += f.Paragraph(x, f.y, w, cellType, f.say(words.PaperReadingsHow, words.Args{"Unit": f.leafUnit()})) + 0.5
	f.y = f.clockTable(x, f.y, w, 0.9, rows) + 1
}

// bareTyped is a length as typed without its unit, which the reader has above.
func (d *drawer) bareTyped(l visit.Length) string {
	if !l.Given() {
		return "–"
	}
	return d.thickness(l.MM())
}

// questions with lines to write on.
func (f *flow) questions() {
	x, top, w, tall := f.InsideMM()
	ids := []words.ID{words.PaperAsk1, words.PaperAsk2, words.PaperAsk3, words.PaperAsk4, words.PaperAsk5}
	f.y += f.Line(x, f.y+0.5, w, underType, f.say(words.PaperQuestions, nil)) + 1
	t, text := paper.Type{Points: 9.5}, 0.0
	for _, id := range ids {
		text += f.ParagraphMM(w-6, t, f.say(id, nil))
	}
	room := min((top+tall-f.y-text)/float64(len(ids)), 16)
	for i, id := range ids {
		f.Line(x, f.y, 6, paper.Type{Points: 9.5, Bold: true}, fmt.Sprint(i+1))
		f.y += f.Paragraph(x+6, f.y, w-6, t, f.say(id, nil))
		for line := 6.0; line <= room-0.5; line += 6.5 {
			f.Stroke(paper.Pen{MM: 0.15, Grey: 120}, paper.Point{X: x + 6, Y: f.y + line}, paper.Point{X: x + w, Y: f.y + line})
		}
		f.y += room
	}
}
