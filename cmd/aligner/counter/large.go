package counter

// This file is the size of things: type that grows with the window, for people who
// stand back from it, and how much larger than life the boat moves.

import (
	"math"

	"aligner/assets/words"
)

// Type is so many times its usual size in a window so wide, within these bounds. In
// 1920 pixels a sentence is then 34 high and a headline 50: on a screen of 24 in those
// capitals stand under 11 and 17 minutes of arc at two metres. ISO 9241-303 asks for
// 16 at least and 20 to 22 for comfort (from memory); 5 is what a good eye tells apart.
const (
	timesPerWidth = 1.4 / 1280
	leastLarger   = 1.1
	mostLarger    = 2.4
	headline      = 1.2
)

// sizeType shows picture and faces in the type's size.
func (p *Page) sizeType() {
	p.picture.SetTextSize(float64(p.grow.Times()) * p.desk.Looks.TextSize)
	if p.err == nil {
		p.draw()
	}
}

// The boat moves so much larger than life that what moves most is drawn to move by
// about drawnMM, and never more than mostTimes.
const (
	drawnMM   = 130.0
	mostTimes = 150.0
)

// timesOf is that of the whole way from before to after, so that before and after are
// drawn alike.
func (p *Page) timesOf() float64 {
	most := 0.0
	for i := range p.boat.Hull.Mounts {
		for _, pair := range [][2][]float64{{p.boat.Before.LiftMM, p.boat.After.LiftMM}, {p.boat.Before.SlideMM, p.boat.After.SlideMM}} {
			most = max(most, math.Abs(at(pair[0], i)), math.Abs(at(pair[1], i)))
		}
	}
	times := mostTimes
	for _, nice := range []float64{100, 75, 50, 30, 20, 10, 5, 2, 1} {
		if most*times > drawnMM {
			times = nice
		}
	}
	return times
}

// sizeOrTrue shows the boat at her true size, or larger again.
func (p *Page) sizeOrTrue() {
	p.truly = !p.truly
	if p.err == nil {
		p.draw()
	}
}

// tellSize says how much larger than life it is drawn, and offers the other.
func (p *Page) tellSize() {
	text, other := p.say(words.CounterTimes, words.Args{"Times": p.desk.Looks.Units.Plain(p.times, 0)}), words.CounterTrue
	if p.truly {
		text, other = p.say(words.CounterTruly, nil), words.CounterAgain
	}
	if p.caption.Text != text {
		p.caption.SetText(text)
	}
	if name := p.say(other, nil); p.size.Text != name {
		p.size.SetText(name)
	}
}
