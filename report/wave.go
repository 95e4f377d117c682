package report

// This file plots the gap round the clock as it was gauged: each reading a bar
// from the leaf that went in to the leaf that did not, and the wave of two flat
// faces that the estimate puts through them.

import (
	"fmt"
	"math"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/paper"
)

// wave is gap(t) = g0 + A cos t + B sin t of one gauging, run-out included.
type wave struct{ g0MM, cosMM, sinMM float64 }

func (w wave) at(deg float64) float64 {
	sin, cos := math.Sincos(deg * math.Pi / 180)
	return w.g0MM + w.cosMM*cos + w.sinMM*sin
}

// waveOf is what the estimate puts through a gauging; ok is false where there is
// none, as of one held otherwise than the gap is told for.
func (d *drawer) waveOf(event int) (w wave, ok bool) {
	g := d.v.Events[event].Gauging
	if !d.ready() || g == nil || g.Held != string(d.e.Aim) {
		return w, false
	}
	for _, s := range d.e.Seatings {
		for _, e := range s.Events {
			if e != event || s.State >= len(d.e.States) {
				continue
			}
			st := d.e.States[s.State]
			dummy := gauge.DummyMM(g)
			w = wave{s.G0MM, st.CosMM + dummy[0], st.SinMM + dummy[1]}
			for half, turn := range [2]float64{g.ShaftTurnDeg, g.FlangeTurnDeg} {
				r := d.e.RunOut[half].MeanMM
				sin, cos := math.Sincos(turn * math.Pi / 180)
				w.cosMM += r[0]*cos - r[1]*sin
				w.sinMM += r[0]*sin + r[1]*cos
			}
			return w, true
		}
	}
	return w, false
}

// bars are the leaf readings of a gauging at the faces' rim, in mm; stops is 0
// where no leaf stopped.
type bar struct {
	deg, goesMM, stopsMM float64
	aside                bool // left out of the estimate, or doubted
}

func (d *drawer) bars(event int) []bar {
	var list []bar
	for i, r := range d.v.Events[event].Gauging.Readings {
		l, ok := r.(visit.Leaf)
		if !ok || l.RadiusMM != 0 {
			continue
		}
		b := bar{deg: l.ClockDeg, aside: d.fit(event, i) != ""}
		if l.Goes.Given() {
			b.goesMM = l.Goes.MM()
		}
		if l.Stops.Given() {
			b.stopsMM = l.Stops.MM()
		}
		list = append(list, b)
	}
	return list
}

// recordWaves plots every gauging of the gap, two beside each other, all to one scale.
func (f *flow) recordWaves() {
	var shown []int
	most := 0.0
	for i, e := range f.v.Events {
		if e.Gauging == nil || len(f.bars(i)) < 3 {
			continue
		}
		if _, ok := f.waveOf(i); !ok {
			continue
		}
		shown, most = append(shown, i), max(most, f.tallestOf(i))
	}
	if len(shown) == 0 {
		return
	}
	const tall, between = 46.0, 6.0
	x, _, w, _ := f.InsideMM()
	each := (w - between) / 2
	note := f.say(words.SheetWaveNote, words.Args{"Seen": f.seen()})
	f.need(tall + 8 + f.ParagraphMM(w, bodyType, note)) // a plot stays with what says how it is read
	f.paragraphs(note)
	for i, e := range shown {
		if i%2 == 0 {
			f.need(tall + 1)
		}
		at := x + float64(i%2)*(each+between)
		title, args := words.SheetWaveOf, words.Args{"Number": e + 1, "Unit": f.u.GapUnit()}
		if foot := f.footMM(e); foot > 0 {
			title, args["Foot"] = words.SheetWaveOver, f.u.Plain(foot, 1)+" mm"
		}
		f.Line(at, f.y, each, cellHead, f.say(title, args))
		f.drawWave(at, f.y+5, each, tall-5, e, most)
		if i%2 == 1 || i == len(shown)-1 {
			f.y += tall + 1
		}
	}
}

// footMM is the gap at the foot of a plot: nothing, or where the faces were held too far
// apart for a plot from nothing to show how they lie, a little less than the least gap.
func (d *drawer) footMM(event int) float64 {
	if d.v.Events[event].Gauging.Apart.MM() <= visit.WideMM {
		return 0
	}
	w, _ := d.waveOf(event)
	least := w.g0MM - math.Hypot(w.cosMM, w.sinMM)
	for _, b := range d.bars(event) {
		if b.goesMM > 0 {
			least = min(least, b.goesMM)
		}
	}
	const step = 0.1
	return math.Floor(least/step) * step
}

// tallestOf is the largest gap a plot of a gauging has to show.
func (d *drawer) tallestOf(event int) float64 {
	w, _ := d.waveOf(event)
	most := w.g0MM + math.Hypot(w.cosMM, w.sinMM)
	for _, b := range d.bars(event) {
		most = max(most, b.goesMM, b.stopsMM)
	}
	return most - d.footMM(event)
}

// drawWave draws one gauging into a room, up to a gap that all plots share.
func (d *drawer) drawWave(x, y, w, h float64, event int, mostMM float64) {
	const left, below = 8.0, 5.0
	full, step := nice(mostMM / d.unitMM() * 1.04)
	base, room, wide := y+h-below, h-below-1, w-left-2
	across := func(deg float64) float64 { return x + left + deg/360*wide }
	foot := d.footMM(event)
	up := func(mm float64) float64 { return base - min((mm-foot)/d.unitMM()/full, 1.02)*room }
	small := paper.Type{Points: 7.5, Align: paper.Right}
	for v := 0.0; v <= full*1.001; v += step {
		d.Stroke(paper.Pen{MM: 0.12, Grey: 170}, paper.Point{X: across(0), Y: up(foot + v*d.unitMM())}, paper.Point{X: across(360), Y: up(foot + v*d.unitMM())})
		d.Mid(x, up(foot+v*d.unitMM()), left-1, small, d.u.Plain(v, 3))
	}
	d.hours(across, base, w)
	d.Stroke(paper.Pen{MM: 0.3}, paper.Point{X: across(0), Y: up(foot + full*d.unitMM())}, paper.Point{X: across(0), Y: base}, paper.Point{X: across(360), Y: base})
	curve, _ := d.waveOf(event)
	var points []paper.Point
	for deg := 0.0; deg <= 360; deg += 5 {
		points = append(points, paper.Point{X: across(deg), Y: up(max(curve.at(deg), 0))})
	}
	d.Stroke(paper.Pen{MM: 0.35}, points...)
	for _, b := range d.bars(event) {
		d.drawBar(b, across(b.deg), up)
		if b.deg == 0 { // 12 stands at both ends
			d.drawBar(b, across(360), up)
		}
	}
}

// hours writes the clock along the foot of a plot, with the sides of the boat.
func (d *drawer) hours(across func(float64) float64, base, w float64) {
	for hour := 0; hour <= 12; hour += 3 {
		deg := float64(hour) * 30
		text := fmt.Sprint((hour+11)%12 + 1)
		switch hour {
		case 3:
			text += " " + d.say(words.PaperStarboard, nil)
		case 9:
			text += " " + d.say(words.PaperPort, nil)
		}
		d.Stroke(paper.Pen{MM: 0.2}, paper.Point{X: across(deg), Y: base}, paper.Point{X: across(deg), Y: base + 1})
		d.Mid(across(deg)-w/8, base+3, w/4, paper.Type{Points: 7.5, Align: paper.Centre}, text)
	}
}

// drawBar draws one reading: a cap at each leaf tried, an arrow where none
// stopped, a ring round one that does not fit.
func (d *drawer) drawBar(b bar, x float64, up func(mm float64) float64) {
	pen, cap := paper.Pen{MM: 0.7}, 1.3
	low, high := up(b.goesMM), up(b.stopsMM)
	if b.stopsMM == 0 {
		high = low - 4
		d.Stroke(paper.Pen{MM: 0.35}, paper.Point{X: x - 1, Y: high + 1.2}, paper.Point{X: x, Y: high}, paper.Point{X: x + 1, Y: high + 1.2})
	} else {
		d.Stroke(pen, paper.Point{X: x - cap, Y: high}, paper.Point{X: x + cap, Y: high})
	}
	if b.goesMM > 0 {
		d.Stroke(pen, paper.Point{X: x - cap, Y: low}, paper.Point{X: x + cap, Y: low})
	}
	d.Stroke(pen, paper.Point{X: x, Y: low}, paper.Point{X: x, Y: high})
	if b.aside {
		d.Circle(paper.Point{X: x, Y: (low + high) / 2}, 2.4, &paper.Pen{MM: 0.35, Dash: []float64{0.8, 0.6}}, nil)
	}
}
