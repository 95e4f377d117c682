package troubles

// This file asks what is known of the boat beforehand, aside: her visits have to
// be worked out.

import (
	"aligner/assets/words"
	"aligner/report/history"
	"aligner/report/trouble"
)

// know puts it into the ranking once it is there. What cannot be worked out of a
// past leaves the ranking as it is on any boat.
func (p *Page) know() {
	d := p.do.Now()
	var boat trouble.Boat
	var err error
	work := func() {
		var past *history.Past
		var number int64
		if p.do.Past != nil {
			if past, number, err = p.do.Past(); err != nil {
				past = nil
			}
		}
		if b, fault := trouble.BoatOf(&d.Hull, past, number); fault == nil {
			boat = b
		}
	}
	rest := func() {
		if !p.closed {
			p.boat = boat
			p.show()
		}
	}
	if p.desk.Aside == nil {
		work()
		rest()
		return
	}
	p.desk.Aside(work, rest)
}

// knownLines are what of it counts for a symptom.
func (p *Page) knownLines(s trouble.Symptom) []string {
	lines := p.boat.Text(p.desk.Speaker, s)
	if len(lines) == 0 {
		return nil
	}
	return append([]string{p.say(words.TroubleBoatTitle, nil) + ":"}, lines...)
}
