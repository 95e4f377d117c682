package report

// This file draws the faces as a clock: the gap round the rim, hatched, with
// its numbers, or an empty one to fill in.

import (
	"fmt"
	"math"

	"aligner/assets/words"
	"aligner/report/paper"
)

// clockFace is what one clock shows.
type clockFace struct {
	gapMM *[2]float64 // [A, B], the faces touching; nil: not known
	// atDeg are the stored positions that get a number, or an empty box.
	atDeg []float64
	boxes bool // empty boxes instead of numbers
}

// drawClock draws it into a square r about c. Numbers stand outside the rim.
func (d *drawer) drawClock(c paper.Point, r float64, f clockFace) {
	rim, k := 0.59*r, r/30
	if f.gapMM != nil {
		d.gapBand(c, rim, 0.13*r, *f.gapMM)
	}
	d.Circle(c, rim, &paper.Pen{MM: 0.5 * k}, nil)
	for hour := range 12 {
		a := float64(hour) * math.Pi / 6
		d.Stroke(paper.Pen{MM: 0.35 * k}, paper.Around(c, rim, a), paper.Around(c, rim-1.6*k, a))
		at := paper.Around(c, rim-4.6*k, a)
		d.Mid(at.X-5*k, at.Y, 10*k, paper.Type{Points: d.points(9, k), Align: paper.Centre, Grey: 60}, fmt.Sprint((hour+11)%12+1))
	}
	port := d.seenRad(270)
	bold := paper.Type{Points: d.points(8, k), Bold: true, Align: paper.Centre}
	at := paper.Around(c, 6*k, port)
	d.Mid(at.X-7*k, at.Y, 14*k, bold, d.say(words.PaperPort, nil))
	at = paper.Around(c, 6*k, port+math.Pi)
	d.Mid(at.X-7*k, at.Y, 14*k, bold, d.say(words.PaperStarboard, nil))
	for _, deg := range f.atDeg {
		at := paper.Around(c, 0.86*r, d.seenRad(deg))
		if f.boxes {
			at = paper.Around(c, 0.84*r, d.seenRad(deg))
		}
		switch {
		case f.boxes:
			w := min(9*k, 1.5*r/float64(len(f.atDeg))*2)
			d.Rect(at.X-w/2, at.Y-3*k, w, 6*k, &paper.Pen{MM: 0.3}, paper.Shade(255))
		case f.gapMM != nil:
			room := min(8.4*k, 2*math.Pi*0.86*r/float64(len(f.atDeg)))
			d.Mid(at.X-room/2, at.Y, room, paper.Type{Points: d.points(10.5, k), Bold: true, Align: paper.Centre}, d.leaf(gapAt(*f.gapMM, deg)))
		}
	}
}

// gapBand hatches the gap outside the rim, the widest as deep as depth.
func (d *drawer) gapBand(c paper.Point, rim, depth float64, ab [2]float64) {
	widest := 2 * math.Hypot(ab[0], ab[1])
	if d.u.Leaf(widest) == 0 {
		return
	}
	var outer []paper.Point
	for deg := 0.0; deg <= 360; deg += 5 {
		outer = append(outer, paper.Around(c, rim+depth*gapAt(ab, deg)/widest, d.seenRad(deg)))
	}
	d.Polygon(outer, &paper.Pen{MM: 0.3}, paper.Shade(255))
	d.Hatch(outer, 1.1, paper.Pen{MM: 0.2})
	d.Circle(c, rim, nil, paper.Shade(255))
}
