package report

// This file lays text and tables over as many pages as they take.

import (
	"strconv"

	"aligner/assets/words"
	"aligner/report/paper"
)

// flow fills pages from the top; y is where the page goes on.
type flow struct {
	*drawer
	y        float64
	sections []section
}

// section is an entry of the table of contents.
type section struct {
	title        string
	page, target int
}

// Type of running text, tables and headings.
var (
	bodyType    = paper.Type{Points: 9.5}
	cellType    = paper.Type{Points: 8.5}
	cellHead    = paper.Type{Points: 8.5, Bold: true}
	sectionType = paper.Type{Points: 13, Bold: true}
	underType   = paper.Type{Points: 10, Bold: true}
)

// need begins a new page if there is less room than so many mm.
func (f *flow) need(mm float64) bool {
	x, top, w, tall := f.InsideMM()
	if f.y+mm <= top+tall {
		return false
	}
	f.AddPage()
	f.Line(x, top-2, w, paper.Type{Points: 9, Bold: true}, f.h.Name)
	f.Stroke(paper.Pen{MM: 0.3}, paper.Point{X: x, Y: top + 3}, paper.Point{X: x + w, Y: top + 3})
	f.y = top + 6
	return true
}

// section begins one, with a mark in the reader's side bar.
func (f *flow) section(id words.ID) { f.sectionWith(id, 28) }

// sectionWith begins one that stays on a page with so many mm below its top.
func (f *flow) sectionWith(id words.ID, mm float64) {
	f.y += 5
	f.need(mm)
	x, _, w, _ := f.InsideMM()
	title := strconv.Itoa(len(f.sections)+1) + "  " + f.say(id, nil)
	f.Bookmark(title, f.y)
	f.sections = append(f.sections, section{title, f.Pages(), f.Target(f.y)})
	f.y += f.Line(x, f.y, w, sectionType, title)
	f.Stroke(paper.Pen{MM: 0.4}, paper.Point{X: x, Y: f.y}, paper.Point{X: x + w, Y: f.y})
	f.y += 1.5
}

// under is a heading within a section; some mm below it stay on its page.
func (f *flow) under(text string, with float64) {
	f.need(with)
	x, _, w, _ := f.InsideMM()
	f.y += 1.2
	f.y += f.Paragraph(x, f.y, w, underType, text)
}

// paragraphs set text, a paragraph each, and split none over two pages.
func (f *flow) paragraphs(lines ...string) {
	x, _, w, _ := f.InsideMM()
	for _, text := range lines {
		if text == "" {
			continue
		}
		f.need(f.ParagraphMM(w, bodyType, text))
		f.y += f.Paragraph(x, f.y, w, bodyType, text) + 0.8
	}
}

// list sets paragraphs with a mark before each.
func (f *flow) list(lines ...string) {
	x, _, w, _ := f.InsideMM()
	for _, text := range lines {
		f.need(f.ParagraphMM(w-4, bodyType, text))
		f.Line(x, f.y, 4, bodyType, "•")
		f.y += f.Paragraph(x+4, f.y, w-4, bodyType, text) + 0.6
	}
}

// column is one of a table: its part of the width, and how it is set.
type column struct {
	title string
	part  float64
	align paper.Align
}

// table sets rows; its head is said again on every page it goes on to.
func (f *flow) table(columns []column, rows [][]string) {
	x, _, w, _ := f.InsideMM()
	sum := 0.0
	for _, c := range columns {
		sum += c.part
	}
	const pad = 0.8
	tallest := func(texts []string, t paper.Type) float64 {
		tall := t.LineMM()
		for i, text := range texts {
			tall = max(tall, f.ParagraphMM(columns[i].part/sum*w-2*pad, t, text))
		}
		return tall
	}
	set := func(texts []string, t paper.Type, tall float64) {
		at := x
		for i, text := range texts {
			wide := columns[i].part / sum * w
			t.Align = columns[i].align
			f.Paragraph(at+pad, f.y+pad/2, wide-2*pad, t, text)
			at += wide
		}
		f.y += tall + pad
		f.Stroke(paper.Pen{MM: 0.12, Grey: 130}, paper.Point{X: x, Y: f.y}, paper.Point{X: x + w, Y: f.y})
	}
	titles, titled := make([]string, len(columns)), false
	for i, c := range columns {
		titles[i] = c.title
		titled = titled || c.title != ""
	}
	head := func() {
		if titled {
			tall := tallest(titles, cellHead)
			f.Rect(x, f.y, w, tall+pad, nil, paper.Shade(228))
			set(titles, cellHead, tall)
		}
	}
	f.need(16)
	head()
	for _, row := range rows {
		tall := tallest(row, cellType)
		if f.need(tall + pad) {
			head()
		}
		set(row, cellType, tall)
	}
	f.y += 1.5
}

// pairs is a table of names and what they are; those with nothing are left out.
func (f *flow) pairs(rows ...[2]string) {
	var said [][]string
	for _, r := range rows {
		if r[1] != "" {
			said = append(said, []string{r[0], r[1]})
		}
	}
	f.table([]column{{"", 0.28, paper.Left}, {"", 0.72, paper.Left}}, said)
}

// contents fills the table of contents on the first page, each line a link.
func (f *flow) contents(y float64) {
	x, _, w, _ := f.InsideMM()
	f.GoTo(1)
	for _, s := range f.sections {
		t := paper.Type{Points: 10}
		tall := t.LineMM() + 0.4
		f.Line(x+2, y, w-20, t, s.title)
		t.Align = paper.Right
		f.Line(x, y, w-2, t, f.u.Plain(float64(s.page), 0))
		f.Stroke(paper.Pen{MM: 0.12, Grey: 150, Dash: []float64{0.3, 1}}, paper.Point{X: x + 2, Y: y + tall - 0.3}, paper.Point{X: x + w - 2, Y: y + tall - 0.3})
		f.LinkTo(s.target, x, y, w, tall)
		y += tall
	}
}
