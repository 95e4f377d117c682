package form

// This file works out how much each number matters, beside the form.

import (
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/sensitivity"
)

// weigh begins to work the hull out. What was known of her before stands until
// then: it is nearly right.
func (p *Page) weigh() {
	p.turn++
	if len(p.report.Refusals) > 0 {
		p.noWork = p.effects == nil
		return
	}
	p.noWork = false
	turn, h := p.turn, p.h
	var all []sensitivity.Effect
	var err error
	p.do.Aside(func() { all, err = sensitivity.Effects(&h, heldOf(&h), false) }, func() {
		if turn != p.turn || p.closed {
			return // another edit has been made since
		}
		p.takeEffects(all, err)
	})
}

func (p *Page) takeEffects(all []sensitivity.Effect, err error) {
	p.noWork = err != nil
	p.effects, p.ranked = map[string]sensitivity.Effect{}, sensitivity.Ranked(all)
	for _, e := range all {
		p.effects[e.Field.Pointer] = e
	}
	if p.sheet().fill != nil {
		p.fill()
	}
	p.side.show()
}

// heldOf is how the shaft is taken to be held.
func heldOf(h *hulls.Hull) kinematics.Held {
	if h.Coupling.HasPilot() {
		return kinematics.Seated
	}
	return kinematics.Centred
}
