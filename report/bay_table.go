package report

// This file draws the tables of a card: a column for each clock position, what to
// expect there, which leaves tell, and boxes for what is found.

import (
	"aligner/assets/words"
	"aligner/kinematics/plan"
	"aligner/report/paper"
)

// expectTable draws the gap to expect at each position, the leaves that should
// and should not go, and empty boxes.
func (d *drawer) expectTable(x, y, w, k float64, step *plan.Step) float64 {
	positions := d.positions()
	expect, leaves, found := make([]string, len(positions)), make([]string, len(positions)), make([]string, len(positions))
	goesOnly, stopsOnly := make([]string, len(positions)), make([]string, len(positions))
	for i, deg := range positions {
		gap := step.GapAtMM(deg)
		expect[i] = d.leaf(gap)
		goes, stops := d.leavesFor(gap)
		goesOnly[i], stopsOnly[i] = d.orDash(goes), d.orDash(stops)
		leaves[i] = goesOnly[i] + " / " + stopsOnly[i]
	}
	rows := []clockRow{{d.say(words.PaperExpect, words.Args{"Unit": d.u.GapUnit()}), expect, true}}
	if d.widestMM(leaves, k) > d.columnMM(w, k, len(positions))-0.8 { // one above the other
		rows = append(rows, clockRow{d.leafLabel(words.PaperGoesOnly), goesOnly, false}, clockRow{d.leafLabel(words.PaperStops), stopsOnly, false})
	} else {
		rows = append(rows, clockRow{d.leafLabel(words.PaperLeaves), leaves, false})
	}
	return d.clockTable(x, y, w, k, append(rows, clockRow{d.say(words.PaperFound, nil), found, false}))
}

// leafLabel is a label of leaves, with their unit where gaps are told in another.
func (d *drawer) leafLabel(id words.ID) string {
	if unit := d.leafUnit(); unit != d.u.GapUnit() {
		return d.say(id, nil) + ", " + unit
	}
	return d.say(id, nil)
}

// clockRow is one line of a table with a column for each position. Empty texts
// make boxes to write in.
type clockRow struct {
	label string
	texts []string
	bold  bool
}

// labelMM is the width of a table's first column, at a scale of 1.
const labelMM = 22.0

// labelRoomMM is that width at another scale: room for the longest label in type
// that can be read.
func (d *drawer) labelRoomMM(k float64) float64 {
	widest := labelMM * k
	labels := []string{d.leafLabel(words.PaperLeaves), d.leafLabel(words.PaperGoesOnly), d.leafLabel(words.PaperStops)}
	for _, id := range []words.ID{words.PaperExpect, words.PaperFound, words.PaperBeforeTight, words.PaperAfterTight} {
		labels = append(labels, d.say(id, words.Args{"Unit": d.u.GapUnit()}))
	}
	for _, label := range labels {
		widest = max(widest, d.WidthMM(paper.Type{Points: d.points(8.5, k)}, label)+2.2)
	}
	return widest
}

// columnMM is the width left for each position.
func (d *drawer) columnMM(w, k float64, positions int) float64 {
	return (w - d.labelRoomMM(k)) / float64(positions)
}

// widestMM is the width of the widest text of a row.
func (d *drawer) widestMM(texts []string, k float64) float64 {
	widest := 0.0
	for _, text := range texts {
		widest = max(widest, d.WidthMM(paper.Type{Points: d.points(9, k)}, text))
	}
	return widest
}

// clockTable draws rows under the positions.
func (d *drawer) clockTable(x, y, w, k float64, rows []clockRow) float64 {
	positions := d.positions()
	label := d.labelRoomMM(k)
	for _, row := range rows {
		label = max(label, d.WidthMM(paper.Type{Points: d.points(8.5, k)}, row.label)+2.2)
	}
	column := (w - label) / float64(len(positions))
	line := max(5.2*k, paper.Type{Points: d.points(9, k)}.LineMM()*0.94)
	d.Rect(x, y, w, line, nil, paper.Shade(225))
	d.Mid(x+1, y+line/2, label-2, paper.Type{Points: d.points(8.5, k)}, d.say(words.PaperClock, nil))
	hours := make([]string, len(positions))
	for i, deg := range positions {
		hours[i] = d.clock(deg)
	}
	head := d.oneSize(paper.Type{Points: d.points(10, k), Align: paper.Centre}, column-0.6, hours)
	for i, text := range hours {
		d.Mid(x+label+float64(i)*column, y+line/2, column, head, text)
	}
	y += line
	for _, row := range rows {
		tall := line
		if row.texts[0] == "" {
			tall = max(7.5*k, 5)
		}
		d.Mid(x+1, y+tall/2, label-2, paper.Type{Points: d.points(8.5, k)}, row.label)
		t := paper.Type{Points: d.points(9, k), Align: paper.Centre}
		if row.bold {
			t = paper.Type{Points: d.points(12.5, k), Bold: true, Align: paper.Centre}
		}
		t = d.oneSize(t, column-0.8, row.texts)
		for i, text := range row.texts {
			at := x + label + float64(i)*column
			if text == "" {
				d.Rect(at, y, column, tall, &paper.Pen{MM: 0.35}, nil)
				continue
			}
			d.Mid(at+0.4, y+tall/2, column-0.8, t, text)
		}
		y += tall
	}
	return y
}

// oneSize is the type in which the widest of some texts fits a room, but no less than
// can be read: a number smaller than its neighbours looks as if it mattered less.
func (d *drawer) oneSize(t paper.Type, wMM float64, texts []string) paper.Type {
	widest := 0.0
	for _, text := range texts {
		widest = max(widest, d.WidthMM(t, text))
	}
	if widest > wMM {
		t.Points = max(d.least, t.Points*wMM/widest)
	}
	return t
}

// leavesFor is the thickest leaf or stack that should go into a gap and the
// thinnest that should not; 0 where the set has none.
func (d *drawer) leavesFor(gapMM float64) (goesMM, stopsMM float64) {
	for _, t := range d.v.Leaves.ThicknessesMM() {
		if t > gapMM {
			return goesMM, t
		}
		goesMM = t
	}
	return goesMM, 0
}

// orDash writes a leaf, or that there is none.
func (d *drawer) orDash(mm float64) string {
	if mm == 0 {
		return "–"
	}
	return d.thickness(mm)
}
