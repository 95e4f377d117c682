package counter

// This file plays one turn of the bolted shaft.

import (
	"slices"
	"time"

	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/hulls"
	"aligner/kinematics/turn"
	"aligner/report/cost"
	"aligner/scene"
)

// player is where in a turn the shaft is.
type player struct {
	turn  *turn.Turn // nil: not worked out as the handle stands
	at    int
	quit  chan struct{} // closed to stop; nil: not playing
	every func(time.Duration) (<-chan time.Time, func())
}

// ticking is a clock that ticks so often, and what stops it.
func ticking(d time.Duration) (<-chan time.Time, func()) {
	t := time.NewTicker(d)
	return t.C, t.Stop
}

// A turn is played in so many steps, so long apart: six seconds.
const (
	turnSteps = 48
	stepTime  = 125 * time.Millisecond
)

func (y *player) stop() {
	if y.quit != nil {
		close(y.quit)
		y.quit = nil
	}
}

// playOrStop begins a turn, or stops it where it is; where motion is not wanted it goes
// a step on.
func (p *Page) playOrStop() {
	if p.player.quit != nil {
		p.player.stop()
		p.play.SetText(p.say(words.CounterPlay, nil))
		return
	}
	if !p.ready() {
		return
	}
	if p.desk.Looks.NoMotion {
		p.stepOn()
		return
	}
	quit := make(chan struct{})
	p.player.quit = quit
	p.play.SetText(p.say(words.CounterStop, nil))
	go func() {
		tick, stop := p.player.every(stepTime)
		defer stop()
		for range turnSteps {
			select {
			case <-quit:
				return
			case <-tick:
				fyne.Do(func() {
					if p.player.quit == quit {
						p.stepOn()
					}
				})
			}
		}
		fyne.Do(func() {
			if p.player.quit == quit {
				p.player.quit = nil
				p.play.SetText(p.say(words.CounterPlay, nil))
			}
		})
	}()
}

// ready works the turn out as the handle stands, unless it is.
func (p *Page) ready() bool {
	if p.player.turn != nil {
		return true
	}
	t, err := turn.Play(&p.boat.Hull, p.state(), p.boat.Fault, turn.Settings{Steps: turnSteps})
	if err != nil {
		p.between.SetText(p.desk.Speaker.Retell(err.Error()))
		return false
	}
	p.player.turn, p.player.at = t, 0
	p.scroll.ScrollToTop()
	p.tell()
	return true
}

// stepOn shows the next step.
func (p *Page) stepOn() {
	steps := p.player.turn.Steps
	p.player.at = (p.player.at + 1) % len(steps)
	s := steps[p.player.at]
	// The picture reads the shaft's shape off the drive line, so it is asked once more.
	if err := p.line.Solve(&s.State, &p.result); err != nil {
		p.between.SetText(p.desk.Speaker.Retell(err.Error()))
		return
	}
	p.model.Read(p.line, &s.State, &p.result, &p.moved)
	u := p.desk.Looks.Units
	st := &p.picture.State
	st.Now = &p.moved
	st.Spot = &scene.Spot{TurnDeg: s.TurnDeg}
	st.Touches = drawn.Touches(p.desk.Speaker, u, &p.boat.Hull, &p.result)
	p.draw()
	p.between.SetText(p.turned(&s))
}

// turned says where the turn is and what the mark on the shaft feels there.
func (p *Page) turned(s *turn.Step) string {
	u, id, mpa := p.desk.Looks.Units, words.CounterPulled, s.FibreMPa
	if mpa < 0 {
		id, mpa = words.CounterPressed, -mpa
	}
	return p.say(id, words.Args{"Degrees": u.Plain(s.TurnDeg, 0), "Stress": u.Fixed(mpa, 1) + " MPa"})
}

// feltN is a load from which it is told: under it, nobody would find it.
const feltN = 1.25

// played says what a played turn shows: a bend that stands still, one that goes round,
// both or neither: in short, what it means, and the numbers.
func (p *Page) played() (short, sentence, number string) {
	t, u := p.player.turn, p.desk.Looks.Units
	most := func(list []float64) (n float64, at int) {
		for i, v := range list {
			if v > n {
				n, at = v, i
			}
		}
		return n, at
	}
	steady, still := most(t.SteadyN)
	swing, round := most(t.SwingN)
	rock, mount := most(t.MountSwingN)
	id := words.CounterPlayedQuiet
	switch shakes, stands, turns := p.shakes(), steady >= feltN, swing >= feltN; {
	case stands && shakes:
		id = words.CounterPlayedBoth
	case stands && turns:
		id = words.CounterPlayedBothFaint
	case stands:
		id = words.CounterPlayedSteady
	case shakes:
		id = words.CounterPlayedShake
	case turns:
		id = words.CounterPlayedFaint
	}
	args := words.Args{"Moment": u.Moment(t.MomentNMM), "Stress": u.Plain(t.StressMPa, 0) + " MPa", "Steady": u.Force(steady), "Still": name(p.boat.Hull.Bearings, still),
		"Swing": u.Force(swing), "Round": name(p.boat.Hull.Bearings, round), "Rock": u.Force(rock), "Mount": p.boat.Hull.Mounts[mount].Name}
	return p.say(id, args), p.say(words.Of(string(id), "means"), args), p.say(words.CounterPlayedNumber, args)
}

// shakes reports whether what turns is graded as something to be felt.
func (p *Page) shakes() bool {
	c := p.cost()
	return c != nil && slices.ContainsFunc(c.Items, func(i cost.Item) bool {
		return (i.Part == cost.Shake || i.Part == cost.Rocking) && i.Grade != cost.Nothing
	})
}

// name is a bearing's.
func name(b []hulls.Bearing, i int) string {
	if i < len(b) {
		return b[i].Name
	}
	return ""
}
