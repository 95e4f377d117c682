package form

// This file works out how much each number matters, beside the form.

import (
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/sensitivity"
)

// weigh begins to work the hull out. What was known of her before stands until
// then: it is nearly right.
func (p *Page) weigh() {
	if len(p.report.Refusals) > 0 {
		p.noWork = p.effects == nil
		return
	}
	p.noWork = false
	if p.weighing { // one at a time; the latest is weighed after it
		p.weighAgain = true
		return
	}
	p.weighing = true
	h := p.h
	var all []sensitivity.Effect
	var err error
	p.do.Aside(func() { all, err = sensitivity.Effects(&h, heldOf(&h), false) }, func() {
		p.weighing = false
		switch {
		case p.closed:
		case p.weighAgain:
			p.weighAgain = false
			p.weigh()
		default:
			p.takeEffects(all, err)
		}
	})
}

func (p *Page) takeEffects(all []sensitivity.Effect, err error) {
	p.noWork = err != nil
	p.effects, p.ranked = map[string]sensitivity.Effect{}, sensitivity.Ranked(all)
	for _, e := range all {
		p.effects[e.Field.Pointer] = e
	}
	if p.parts[p.d.part].sheet == words.FormMatters {
		p.fill() // the others do not show it, and may be being typed into
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
