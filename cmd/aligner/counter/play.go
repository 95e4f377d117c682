package counter

// This file plays one turn of the bolted shaft.

import (
	"time"

	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/kinematics/turn"
	"aligner/report/say"
	"aligner/scene"
)

// player is where in a turn the shaft is.
type player struct {
	steps []turn.Step
	at    int
	quit  chan struct{} // closed to stop; nil: not playing
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
		tick := time.NewTicker(stepTime)
		defer tick.Stop()
		for range turnSteps {
			select {
			case <-quit:
				return
			case <-tick.C:
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
	if len(p.player.steps) > 0 {
		return true
	}
	t, err := turn.Play(&p.boat.Hull, p.state(), p.boat.Fault, turn.Settings{Steps: turnSteps})
	if err != nil {
		p.between.SetText(p.desk.Speaker.Retell(err.Error()))
		return false
	}
	p.player.steps, p.player.at = t.Steps, 0
	return true
}

// stepOn shows the next step.
func (p *Page) stepOn() {
	p.player.at = (p.player.at + 1) % len(p.player.steps)
	s := p.player.steps[p.player.at]
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
	p.picture.Refresh()
	looks := p.desk.Looks
	looks.TextSize *= larger
	p.faces.SetResult(&p.result, p.boat.Hull.Coupling.OuterDiameterMM, looks)
	p.between.SetText(p.say(words.CounterTurned, words.Args{"Degrees": u.Plain(s.TurnDeg, 0), "Stress": stress(u, s.FibreMPa)}))
}

// stress is written with its sign: pulled or pressed.
func stress(u say.Units, mpa float64) string {
	sign := "+"
	if mpa < 0 {
		sign, mpa = "\u2212", -mpa
	}
	return sign + u.Plain(mpa, 1) + " MPa"
}
