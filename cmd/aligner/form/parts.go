package form

// This file is the list of parts at the left: the groups of fields, then what can
// be done with them all.

import (
	"strings"

	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/fields"
	"aligner/report/say"
)

// part is one line at the left.
type part struct {
	group    fields.Group
	pointers []string // of its fields; none: a sheet of its own
	sheet    words.ID
}

// sheets follow the groups.
var sheets = []words.ID{words.FormLookOver, words.FormMatters, words.FormCompare, words.FormAnswers, words.FormKeep}

// listParts gathers the fields into their parts.
func (p *Page) listParts() (all []part) {
	for _, f := range p.list {
		g := f.Group
		g.Name = "" // a name being changed makes no other part
		if n := len(all); n == 0 || all[n-1].group != g {
			all = append(all, part{group: g})
		}
		last := &all[len(all)-1]
		last.pointers = append(last.pointers, f.Pointer)
	}
	for _, id := range sheets {
		all = append(all, part{sheet: id})
	}
	return all
}

// partOf is the part a field is in.
func (p *Page) partOf(pointer string) int {
	for i, part := range p.parts {
		for _, own := range part.pointers {
			if own == pointer {
				return i
			}
		}
	}
	return p.d.part
}

// field is a field as it is now.
func (p *Page) field(pointer string) *fields.Field {
	for i := range p.list {
		if p.list[i].Pointer == pointer {
			return &p.list[i]
		}
	}
	return nil
}

// title is what a part is called.
func (p *Page) title(i int) string {
	part := &p.parts[i]
	if part.sheet != "" {
		return p.say(part.sheet, nil)
	}
	g := p.field(part.pointers[0]).Group
	if g.Part == fields.Mount { // its name says enough, and is long
		return g.Name
	}
	return say.Group(p.desk.Speaker, g)
}

// marks are what stands behind a part: something does not fit, something is not
// measured.
func (p *Page) marks(i int) string {
	var marks []string
	odd, assumed := false, false
	for _, pointer := range p.parts[i].pointers {
		f := p.field(pointer)
		odd = odd || len(f.Faults(p.report.Refusals)) > 0
		assumed = assumed || f.Assumed
	}
	if p.parts[i].sheet == words.FormLookOver && len(p.report.Refusals) > 0 {
		odd = true
	}
	if assumed {
		marks = append(marks, markAssumed)
	}
	if odd {
		marks = append(marks, markFault)
	}
	return strings.Join(marks, " ")
}

// The marks, told in the legend at the top.
const (
	markAssumed = "?"
	markFault   = "!"
)

// showParts fills the left.
func (p *Page) showParts() {
	if len(p.left.Objects) != len(p.parts) {
		p.left.RemoveAll()
		for i := range p.parts {
			b := page.NewButton(p.keys, "", func() { p.turnTo(i) })
			b.Alignment = widget.ButtonAlignLeading
			p.left.Add(b)
		}
	}
	for i := range p.parts {
		b := p.left.Objects[i].(*page.Button)
		text := strings.TrimSpace(p.title(i) + "  " + p.marks(i))
		importance := widget.LowImportance
		if i == p.d.part {
			importance = widget.HighImportance
		}
		if b.Text != text || b.Importance != importance {
			b.Text, b.Importance = text, importance
			b.Refresh()
		}
	}
	if p.d.part < len(p.left.Objects) {
		keepInSight(p.leftScroll, p.left.Objects[p.d.part])
	}
}

// turnTo shows a part, its first field chosen.
func (p *Page) turnTo(i int) {
	i = min(max(i, 0), len(p.parts)-1)
	p.tell("")
	p.d.part, p.d.field = i, ""
	if own := p.parts[i].pointers; len(own) > 0 {
		p.d.field = own[0]
	}
	p.fill()
	p.showParts()
	p.side.show()
	p.focus()
}
