package report

// This file lays pictures of the boat before and after beside each other.

import (
	"aligner/assets/words"
	"aligner/report/paper"
)

// boatPictures are the boat as a whole and as she is, whole mm tall (0: not), and
// below it her coupling before and after, tall mm, at one exaggeration, which is
// stated.
func (d *drawer) boatPictures(y float64, before, after *stood, whole, tall float64) (float64, error) {
	var states []*stood
	var titles []words.ID
	if before != nil {
		states, titles = append(states, before), append(titles, words.PaperBefore)
	}
	if after != nil {
		title := words.PaperAfter
		if after.planned {
			title = words.PaperPlanned
		}
		states, titles = append(states, after), append(titles, title)
	}
	if len(states) == 0 {
		return y, nil
	}
	x, _, w, _ := d.InsideMM()
	const between = 4.0
	wide := (w - between) / 2
	of, err := d.drawable(states)
	if err != nil {
		return y, err
	}
	if whole > 0 {
		picture, err := d.whole(of, 0, w, whole)
		if err != nil {
			return y, err
		}
		if err := d.Picture(x, y, w, whole, picture); err != nil {
			return y, err
		}
		d.Rect(x, y, w, whole, &paper.Pen{MM: 0.25}, nil)
		y += whole + 2
	}
	for i := range states {
		at := x + float64(i)*(wide+between)
		head := paper.Type{Points: 13, Bold: true}
		title := d.say(titles[i], nil)
		in := d.WidthMM(head, title) + 3
		d.Line(at, y, wide, head, title)
		d.Line(at+in, y+0.7, wide-in, paper.Type{Points: 10.5, Align: paper.Right}, d.widest(states[i]))
		picture, err := d.picture(of, i, wide, tall)
		if err != nil {
			return y, err
		}
		if err := d.Picture(at, y+6.5, wide, tall, picture); err != nil {
			return y, err
		}
		d.Rect(at, y+6.5, wide, tall, &paper.Pen{MM: 0.25}, nil)
	}
	y += tall + 8
	note := words.SheetCouplingPictures
	if whole > 0 {
		note = words.SheetPictures
	}
	return y + d.Paragraph(x, y, w, paper.Type{Points: 9}, d.say(note, words.Args{"Times": d.u.Plain(of.times, 0)})), nil
}
