package report

// This file lays pictures of the boat before and after beside each other.

import (
	"aligner/assets/words"
	"aligner/report/paper"
)

// view is one the scene can fit, and how tall it is drawn.
type view struct {
	name string
	tall float64
}

// beforeAfterPictures draws the boat before and after in some views, all at the
// same exaggeration, which is stated.
func (d *drawer) beforeAfterPictures(y float64, before, after *stood, views ...view) (float64, error) {
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
	for i := range states {
		at := x + float64(i)*(wide+between)
		d.Line(at, y, wide, paper.Type{Points: 13, Bold: true}, d.say(titles[i], nil))
		d.Line(at, y, wide, paper.Type{Points: 10.5, Align: paper.Right}, d.widest(states[i]))
		down := y + 6.5
		for _, view := range views {
			picture, err := d.picture(of, i, view, wide)
			if err != nil {
				return y, err
			}
			if err := d.Picture(at, down, wide, view.tall, picture); err != nil {
				return y, err
			}
			d.Rect(at, down, wide, view.tall, &paper.Pen{MM: 0.25}, nil)
			down += view.tall + 1.5
		}
	}
	y += 8
	for _, view := range views {
		y += view.tall + 1.5
	}
	return y + d.Paragraph(x, y, w, paper.Type{Points: 9}, d.say(words.PaperTimes, words.Args{"Times": d.u.Plain(of.times, 0)})), nil
}
