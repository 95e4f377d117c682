package report

// This file lays out the customer's page: before and after, and a few plain
// sentences.

import (
	"aligner/assets/words"
	"aligner/report/paper"
)

// customer draws the page. Pictures take what room the words leave; where that
// is too little the words shrink.
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
	said := d.customerBlocks(before, after)
	const signed, titles = 13.0, 17.0
	k, room := 1.0, 0.0
	for ; ; k *= 0.97 {
		room = top + tall - signed - titles - y - d.blocksMM(said, k)
		if room >= leastPictures || k < 0.5 {
			break
		}
	}
	if before != nil {
		room = min(room, mostPictures)
		if y, err = d.boatPictures(y, before, after, room*0.46, room*0.54); err != nil {
			return nil, err
		}
	}
	d.drawBlocks(y+2, said, k)
	d.signatures(top+tall-signed+2, words.PaperSignYard, words.PaperSignDate)
	d.foot()
	return d, nil
}

// What both rows of pictures together may take, in mm.
const leastPictures, mostPictures = 70.0, 124.0

// block is text of one kind under a title: paragraphs, or a list.
type block struct {
	title string
	lines []string
	list  bool
}

// customerBlocks is all the words below the pictures.
func (d *drawer) customerBlocks(before, after *stood) []block {
	said := []block{{lines: d.customerSentences(before, after)}}
	if watch := d.watch(); len(watch) > 0 && before != nil {
		said = append(said, block{d.say(words.PaperWatch, nil), watch, true})
	}
	if before != nil {
		said = append(said, block{d.say(words.PaperBack, nil), d.comeBack(), true})
	}
	return said
}

// blocksMM is the height of blocks at a scale.
func (d *drawer) blocksMM(said []block, k float64) float64 {
	_, _, w, _ := d.InsideMM()
	tall := 2.0
	for _, b := range said {
		t, in, after := b.set(k)
		if b.title != "" {
			tall += blockTitle(k).LineMM() + 2*k
		}
		for _, text := range b.lines {
			tall += d.ParagraphMM(w-in, t, text) + after
		}
	}
	return tall
}

// drawBlocks sets blocks below each other.
func (d *drawer) drawBlocks(y float64, said []block, k float64) {
	x, _, w, _ := d.InsideMM()
	for _, b := range said {
		t, in, after := b.set(k)
		if b.title != "" {
			y += 1*k + d.Line(x, y+1*k, w, blockTitle(k), b.title) + 1*k
		}
		for _, text := range b.lines {
			if b.list {
				d.Line(x, y, 4, t, "•")
			}
			y += d.Paragraph(x+in, y, w-in, t, text) + after
		}
	}
}

func blockTitle(k float64) paper.Type { return paper.Type{Points: 13 * k, Bold: true} }

// set is how a block's lines are set: type, indent, and room after each.
func (b *block) set(k float64) (t paper.Type, in, after float64) {
	if b.list {
		return paper.Type{Points: 11.5 * k}, 4, 0.8 * k
	}
	return paper.Type{Points: 12.5 * k}, 0, 1.8 * k
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

// widest says how far apart the faces are at their widest.
func (d *drawer) widest(s *stood) string {
	if d.u.Leaf(2*amplitude(s.gapMM)) == 0 {
		return d.say(words.SheetNothingApart, nil)
	}
	return d.say(words.PaperWidest, words.Args{"Gap": d.plain(2 * amplitude(s.gapMM))})
}
