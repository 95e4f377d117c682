package report

// This file lays out the customer's page: before and after, and a few plain
// sentences.

import (
	"aligner/assets/words"
	"aligner/report/paper"
	"aligner/scene"
)

// customer draws the page.
func customer(in Input, o Options) (*drawer, error) {
	d := begin(in, o)
	d.AddPage()
	before, after, err := d.beforeAfter()
	if err != nil {
		return nil, err
	}
	x, top, w, tall := d.InsideMM()
	y := d.head(d.say(words.Of("paper_kind", string(Customer)), nil), d.facts())
	y += 3
	y += d.Paragraph(x, y, w, paper.Type{Points: 17, Bold: true}, d.customerHeadline(before, after)) + 2
	if y, err = d.customerPictures(y, before, after); err != nil {
		return nil, err
	}
	y = d.sentences(y+2, d.customerSentences(before, after), paper.Type{Points: 12.5})
	if watch := d.watch(); len(watch) > 0 {
		y += d.Line(x, y+1, w, paper.Type{Points: 13, Bold: true}, d.say(words.PaperWatch, nil)) + 2
		y = d.bullets(y, watch, paper.Type{Points: 11.5}, top+tall-30)
	}
	y += d.Line(x, y+1, w, paper.Type{Points: 13, Bold: true}, d.say(words.PaperBack, nil)) + 2
	y = d.bullets(y, d.comeBack(), paper.Type{Points: 11.5}, top+tall-12)
	d.signatures(max(y+8, top+tall-9), words.PaperSignYard, words.PaperSignDate)
	d.foot()
	return d, nil
}

// sentences sets paragraphs with room between them.
func (d *drawer) sentences(y float64, list []string, t paper.Type) float64 {
	x, _, w, _ := d.InsideMM()
	for _, text := range list {
		y += d.Paragraph(x, y, w, t, text) + 1.8
	}
	return y
}

// bullets sets a list, smaller where it would not fit above a limit.
func (d *drawer) bullets(y float64, list []string, t paper.Type, limit float64) float64 {
	x, _, w, _ := d.InsideMM()
	for ; t.Points > 6; t.Points *= 0.94 {
		tall := 0.0
		for _, text := range list {
			tall += d.ParagraphMM(w-4, t, text) + 0.8
		}
		if y+tall <= limit {
			break
		}
	}
	for _, text := range list {
		d.Line(x, y, 4, t, "•")
		y += d.Paragraph(x+4, y, w-4, t, text) + 0.8
	}
	return y
}

// signatures draws lines to sign on, side by side.
func (d *drawer) signatures(y float64, labels ...words.ID) {
	x, _, w, _ := d.InsideMM()
	each := w / float64(len(labels))
	for i, id := range labels {
		at := x + float64(i)*each
		d.Stroke(paper.Pen{MM: 0.25}, paper.Point{X: at, Y: y + 4}, paper.Point{X: at + each - 6, Y: y + 4})
		d.Line(at, y+4.5, each-6, paper.Type{Points: 8}, d.say(id, nil))
	}
}

// customerPictures draws the boat before and after, whole and at the coupling,
// all at the same exaggeration, which is stated.
func (d *drawer) customerPictures(y float64, before, after *stood) (float64, error) {
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
	views := []struct {
		name string
		tall float64
	}{{scene.ViewWhole, 48}, {scene.ViewCoupling, 52}}
	for i := range states {
		at := x + float64(i)*(wide+between)
		d.Line(at, y, wide, paper.Type{Points: 13, Bold: true}, d.say(titles[i], nil))
		d.Line(at, y, wide, paper.Type{Points: 10.5, Align: paper.Right}, d.widest(states[i]))
		down := y + 6.5
		for _, view := range views {
			picture, err := d.picture(of, i, view.name, wide, view.tall)
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
	y += 6.5 + views[0].tall + views[1].tall + 3
	return y + d.Paragraph(x, y, w, paper.Type{Points: 9}, d.say(words.PaperTimes, words.Args{"Times": d.u.Plain(of.times, 0)})), nil
}

// widest says how far apart the faces are at their widest.
func (d *drawer) widest(s *stood) string {
	return d.say(words.PaperWidest, words.Args{"Gap": d.u.LeafWithUnit(2 * amplitude(s.gapMM))})
}
