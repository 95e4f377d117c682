package report

// This file draws the mounts as seen from above, in their true places in plan,
// each with what is to be done to it.

import (
	"fmt"
	"math"
	"slices"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/report/paper"
)

// bayDrawings draws mounts and clock beside each other.
func (d *drawer) bayDrawings(y, k float64) float64 {
	x, _, w, _ := d.InsideMM()
	tall := max(72*k, leastDrawing*d.crowded())
	clockWide := min(max(63*k, leastClock*d.crowded()), 0.36*w)
	d.drawMounts(x, y, w-clockWide-3*k, tall, min(tall/72, 1))
	cx := x + w - clockWide
	face := clockFace{atDeg: d.positions(), boxes: !d.told()}
	title := words.PaperGapEmpty
	if d.told() {
		ab := d.present()
		face.gapMM, title = &ab, words.PaperGapNow
	}
	t := paper.Type{Points: d.points(10, k), Bold: true, Align: paper.Centre}
	d.Line(cx, y, clockWide, t, d.say(title, words.Args{"Unit": d.u.GapUnit()}))
	r := clockWide / 2
	d.drawClock(paper.Point{X: cx + r, Y: y + 5*k + r}, r, face)
	note := paper.Type{Points: d.points(8.5, k), Align: paper.Centre}
	d.Line(cx, y+5*k+2*r, clockWide, note, d.seen())
	if d.told() && d.untrue() { // else the sentence above and the clock seem at odds
		d.Line(cx, y+5*k+2*r+note.Points*mmPerLinePoint, clockWide, note, d.say(words.PaperRunOutIn, nil))
	}
	return y + tall
}

// mmPerLinePoint is the height of a line for each point of its type.
const mmPerLinePoint = 0.42

// leastDrawing is how tall mounts and clock stay however full the card is, and
// leastClock how wide the clock, in mm: room for type that is read by torchlight.
const leastDrawing, leastClock = 57.0, 49.0

// planMap is the map from the engine's plan to the page.
type planMap struct {
	middle    paper.Point
	scale     float64 // mm of page for a mm of boat
	up        float64 // 1: fore is up the page, -1: aft is
	centreMM  [2]float64
	hexagonMM float64
}

// at is where a place [fore, port] of the engine's frame stands on the page.
func (m planMap) at(fore, port float64) paper.Point {
	return paper.Point{X: m.middle.X - m.up*(port-m.centreMM[1])*m.scale, Y: m.middle.Y - m.up*(fore-m.centreMM[0])*m.scale}
}

// planMapIn fits the mounts and the coupling into a room.
func (d *drawer) planMapIn(x, y, w, h, labels, k float64) planMap {
	low, high := [2]float64{0, 0}, [2]float64{0, 0}
	for _, m := range d.h.Mounts {
		for i := range 2 {
			low[i], high[i] = min(low[i], m.AtMM[i]), max(high[i], m.AtMM[i])
		}
	}
	m := planMap{up: 1, hexagonMM: 7 * k, centreMM: [2]float64{(low[0] + high[0]) / 2, (low[1] + high[1]) / 2},
		middle: paper.Point{X: x + w/2, Y: y + h/2}}
	if d.o.Seen == visit.LookingAft {
		m.up = -1
	}
	edge := 2 * 11.5 * k
	m.scale = min((h-edge)/max(high[0]-low[0], 1), (w-2*labels-edge)/max(high[1]-low[1], 1))
	return m
}

// drawMounts draws the plan into a room.
func (d *drawer) drawMounts(x, y, w, h, k float64) {
	d.Rect(x, y, w, h, &paper.Pen{MM: 0.2, Grey: 120}, nil)
	bold := paper.Type{Points: d.points(9.5, k), Bold: true}
	ahead, behind, left, right := words.PaperFore, words.PaperAft, words.PaperPort, words.PaperStarboard
	if d.o.Seen == visit.LookingAft {
		ahead, behind, left, right = behind, ahead, right, left
	}
	room := y + 6*k
	at := func(align paper.Align, yMM float64, id words.ID) {
		t := bold
		t.Align = align
		d.Line(x+2, yMM, w-4, t, d.say(id, nil))
	}
	at(paper.Left, y+0.8*k, left)
	at(paper.Centre, y+0.8*k, ahead)
	at(paper.Right, y+0.8*k, right)
	at(paper.Centre, y+h-bold.LineMM()-0.6, behind)
	labels := min(34*k, 0.3*w)
	m := d.planMapIn(x, room, w, h-12*k, labels, k)
	d.drawEngine(m, room, y+h-5.5*k, k)
	for i := range d.h.Mounts {
		d.drawMount(m, i, x, w, labels, k)
	}
	note := paper.Type{Points: d.points(6.8, k)}
	d.Line(x+2, y+h-note.LineMM()-0.6, w*0.42, note, d.fromAbove())
}

// fromAbove says how the plan is seen, and how the nuts' arrows are meant where
// there are nuts.
func (d *drawer) fromAbove() string {
	if slices.ContainsFunc(d.h.Mounts, func(m hulls.Mount) bool { return m.Kind == hulls.Rubber }) {
		return d.say(words.PaperFromAbove, nil)
	}
	return d.say(words.SheetFromAbove, nil)
}

// drawEngine draws where engine, coupling and shaft are, to find one's way.
func (d *drawer) drawEngine(m planMap, top, bottom, k float64) {
	low, high := d.h.Mounts[0].AtMM, d.h.Mounts[0].AtMM
	for _, mount := range d.h.Mounts {
		for i := range 2 {
			low[i], high[i] = min(low[i], mount.AtMM[i]), max(high[i], mount.AtMM[i])
		}
	}
	a, b := m.at(low[0], low[1]*0.62), m.at(high[0], high[1]*0.62)
	pen := paper.Pen{MM: 0.2, Grey: 140, Dash: []float64{1.2, 1.2}}
	d.Rect(min(a.X, b.X), min(a.Y, b.Y), math.Abs(a.X-b.X), math.Abs(a.Y-b.Y), &pen, nil)
	middle := m.at((low[0]+high[0])/2, 0)
	// The shaft runs aft from the face, under the engine in a V-drive.
	face, end := m.at(0, 0), bottom-1
	if m.up < 0 {
		end = top + 1
	}
	for _, side := range []float64{-1, 1} {
		d.Stroke(paper.Pen{MM: 0.25, Grey: 90}, paper.Point{X: face.X + side*k, Y: face.Y}, paper.Point{X: face.X + side*k, Y: end})
	}
	half := max(d.h.Coupling.OuterDiameterMM/2*m.scale, 3*k)
	d.Rect(face.X-half, face.Y-1.3*k, 2*half, 1.1*k, nil, paper.Shade(40))
	d.Rect(face.X-half, face.Y+0.2*k, 2*half, 1.1*k, nil, paper.Shade(40))
	d.plate(middle, k, d.say(words.PaperEngine, nil))
	d.plate(paper.Point{X: face.X, Y: face.Y + m.up*6.5*k}, k, d.say(words.PaperCoupling, nil)) // aft of it, clear of the nuts
}

// plate writes a small word over whatever lines there are.
func (d *drawer) plate(c paper.Point, k float64, text string) {
	t := paper.Type{Points: d.points(7.5, k), Align: paper.Centre, Grey: 60}
	w := d.WidthMM(t, text) + 1
	tall := t.LineMM() * 0.95
	d.Rect(c.X-w/2, c.Y-tall/2, w, tall, nil, paper.Shade(255))
	d.Mid(c.X-w/2, c.Y, w, t, text)
}

// drawMount draws one mount's nut as seen from above and says beside it what to
// do.
func (d *drawer) drawMount(m planMap, i int, x, w, labels, k float64) {
	mount := &d.h.Mounts[i]
	c := m.at(mount.AtMM[0], mount.AtMM[1])
	flats, slideMM := 0, 0.0
	if d.planned() {
		flats, slideMM = d.p.NutFlats[i], d.p.SlideMM[i]
	}
	corners := 6
	if mount.Kind == hulls.Solid {
		corners = 4
	}
	width := paper.Pen{MM: 0.35 * k}
	if flats != 0 {
		width.MM = 0.9 * k
	}
	d.Polygon(paper.Regular(c, m.hexagonMM*0.78, corners, math.Pi/float64(corners)), &width, paper.Shade(255))
	text := "–"
	if d.hide {
		text = ""
	}
	if flats != 0 {
		text = fmt.Sprintf("%+d", flats)
		if mount.Kind == hulls.Rubber {
			d.TurnArrow(c, m.hexagonMM*1.12, 1.1*k, flats < 0)
		}
	}
	room := 1.25 * m.hexagonMM
	if corners == 4 {
		room = m.hexagonMM
	}
	d.Mid(c.X-room/2, c.Y, room, paper.Type{Points: d.points(13, k), Bold: true, Align: paper.Centre}, text)
	if slideMM != 0 {
		side := math.Copysign(1, -slideMM*m.up)
		y := c.Y + m.hexagonMM*1.5
		if c.Y < m.middle.Y-m.hexagonMM { // outside, clear of what stands between the ends
			y = c.Y - m.hexagonMM*1.5
		}
		d.Arrow(paper.Point{X: c.X - side*5*k, Y: y}, paper.Point{X: c.X + side*6*k, Y: y}, 1.1*k)
	}
	d.mountLabel(m, i, c, flats, slideMM, x, w, labels, k)
}

// mountLabel writes on the outer side of the mount.
func (d *drawer) mountLabel(m planMap, i int, c paper.Point, flats int, slideMM, x, w, labels, k float64) {
	mount := &d.h.Mounts[i]
	big, small := paper.Type{Points: d.points(12.5, k), Bold: true}, paper.Type{Points: d.points(9, k)}
	left := c.X < m.middle.X
	gap := m.hexagonMM*1.12 + 2.6*k
	from, room := c.X+gap, x+w-1-(c.X+gap)
	if left {
		from, room = x+1, c.X-gap-(x+1)
	}
	room = max(room, 12*k)
	var lines []struct {
		t    paper.Type
		text string
	}
	add := func(t paper.Type, text string) {
		lines = append(lines, struct {
			t    paper.Type
			text string
		}{t, text})
	}
	name := paper.Type{Points: d.points(9.5, k), Bold: true}
	for _, text := range d.Wrap(room, name, d.s.Part(mount.Name)) {
		add(name, text)
	}
	if flats != 0 {
		add(big, d.turnText(mount, flats))
		if mount.Kind == hulls.Rubber {
			add(small, d.turns(flats))
		}
	}
	if slideMM != 0 {
		add(big, d.slideText(slideMM))
	}
	found := d.v.Found(mount.Name)
	if flats == 0 && slideMM == 0 && !d.hide {
		add(small, d.say(words.PaperLeave, nil))
	}
	if found.Nut != visit.Free {
		add(small, d.say(words.Of("paper_nut", string(found.Nut)), nil))
	}
	tall := 0.0
	for _, l := range lines {
		tall += l.t.LineMM()
	}
	y := c.Y - tall/2
	for _, l := range lines {
		if left {
			l.t.Align = paper.Right
		}
		y += d.Line(from, y, room, l.t, l.text)
	}
}

// turnText says one nut's turn, large: "UP 9 flats".
func (d *drawer) turnText(m *hulls.Mount, flats int) string {
	kind := "flats"
	if m.Kind == hulls.Solid {
		kind = "shims"
	}
	way := "up"
	if flats < 0 {
		flats, way = -flats, "down"
	}
	return d.say(words.Of("paper_"+way, kind), words.Args{"Count": flats})
}

// turns says flats as turns of the nut, and which way.
func (d *drawer) turns(flats int) string {
	way := words.PaperAnticlockwise
	if flats < 0 {
		flats, way = -flats, words.PaperClockwise
	}
	count := 2
	if flats%6 == 1 {
		count = 1
	}
	args := words.Args{"Way": d.say(way, nil), "Count": flats / 6,
		"Flats": d.say(words.Flats, words.Args{"Count": count, "Number": flats % 6})}
	switch {
	case flats < 6:
		return d.say(words.PaperNoTurn, args)
	case flats%6 == 0:
		return d.say(words.PaperTurns, args)
	}
	return d.say(words.PaperTurnsFlats, args)
}

// slideText says a slide.
func (d *drawer) slideText(mm float64) string {
	id := words.PaperSlidePort
	if mm < 0 {
		id = words.PaperSlideStarboard
	}
	return d.say(id, words.Args{"Length": d.u.Plain(math.Abs(mm), 2) + " mm"})
}
