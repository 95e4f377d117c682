package main

// This file is a prediction for people.

import (
	"fmt"
	"math"
	"strings"

	"aligner/assets/words"
	"aligner/kinematics"
	"aligner/report/say"
)

// text prints the prediction.
func (p *prediction) text(e *env, metric bool) {
	u := readerUnits(metric)
	s := speaker
	p.textTitle(e, s, u)
	p.textGap(e, s, u)
	r := &p.result
	e.say(words.PoseLine, words.Args{"Fore": u.MM(r.TranslationMM[0]), "Port": u.MM(r.TranslationMM[1]), "Up": u.MM(r.TranslationMM[2])})
	if p.state.Held == kinematics.Centred {
		e.say(words.OffsetLine, words.Args{"Port": u.MM(r.OffsetMM[0]), "Up": u.MM(r.OffsetMM[1])})
	}
	e.say(words.LoadsTitle, nil)
	for i, m := range p.hull.Mounts {
		e.say(words.LoadLine, words.Args{"Mount": m.Name, "Load": u.Force(r.MountLoadN[i])})
	}
	p.textShaft(e, u)
}

func (p *prediction) textTitle(e *env, s words.Speaker, u say.Units) {
	boat := s.Say(words.Dry, nil)
	if p.state.Afloat {
		boat = s.Say(words.Afloat, nil)
	}
	if p.state.LeverOn {
		boat += ", " + s.Say(words.LeverOn, nil)
	}
	e.say(words.PredictTitle, words.Args{"Hull": p.hull.Name, "Held": p.state.Held, "Boat": boat})
	move := say.Move(s, u, &p.hull, p.nuts, p.slidesMM)
	switch {
	case move == "":
		e.say(words.PredictDrawn, nil)
	case p.state.Held == kinematics.Seated || p.state.Held == kinematics.Centred:
		fmt.Fprintln(e.stdout, say.Effect(s, u, move, kinematics.EffectBetween(&p.drawn, &p.result)))
	default:
		e.say(words.PredictMoved, words.Args{"Move": move})
	}
}

func (p *prediction) textGap(e *env, s words.Speaker, u say.Units) {
	r := &p.result
	switch r.Held {
	case kinematics.Hanging:
		e.say(words.GapHanging, nil)
		return
	case kinematics.Bolted:
		e.say(words.GapBolted, words.Args{"Moment": u.Moment(r.CouplingMomentNMM), "Stress": u.Plain(p.stressMPa, 1)})
		return
	}
	e.say(words.GapTitle, words.Args{"Unit": u.GapUnit()})
	fmt.Fprintln(e.stdout, clockTable(u, r.Gap))
	if u.RoundGap(r.Gap.SpreadMM()) == 0 {
		e.say(words.GapParallel, nil)
	} else {
		opens := r.Gap.OpensAtDeg()
		e.say(words.GapLine, words.Args{"Spread": u.GapWithUnit(r.Gap.SpreadMM()),
			"Opens": say.Clock(opens, false), "Touches": say.Clock(opens+180, false)})
	}
	pair := func(v [2]float64) string {
		return s.Say(words.PartsPair, words.Args{"Top": u.Gap(2 * v[0]), "Starboard": u.Gap(2 * v[1])})
	}
	e.say(words.PartsLine, words.Args{"Tilt": pair(r.Parts.Tilt), "Swing": pair(r.Parts.Swing), "Sag": pair(r.Parts.Sag)})
}

// clockTable writes the gap at the twelve hours in two rows, with the sides
// of the boat under their hours.
func clockTable(u say.Units, g kinematics.Gap) string {
	var hours, gaps, sides strings.Builder
	names := map[int]string{0: speaker.Say(words.FacesTop, nil), 3: speaker.Say(words.PaperStarboard, nil),
		6: speaker.Say(words.FacesBottom, nil), 9: speaker.Say(words.PaperPort, nil)}
	for hour := range 12 {
		label := hour
		if hour == 0 {
			label = 12
		}
		fmt.Fprintf(&hours, "%8d", label)
		fmt.Fprintf(&gaps, "%8s", u.Gap(g.AtHourMM(hour)))
		fmt.Fprintf(&sides, "%8s", names[hour])
	}
	return hours.String() + "\n" + gaps.String() + "\n" + strings.TrimRight(sides.String(), " ")
}

func (p *prediction) textShaft(e *env, u say.Units) {
	r := &p.result
	for i, b := range p.hull.Bearings {
		f := math.Hypot(r.BearingForceN[i][0], r.BearingForceN[i][1])
		if room := r.BearingClearanceMM[i]; room > 0 {
			e.say(words.BearingIdle, words.Args{"Bearing": b.Name, "Room": u.MM(room)})
		} else {
			e.say(words.BearingPressed, words.Args{"Bearing": b.Name, "Force": u.Force(f), "Sink": u.MM(-room)})
		}
	}
	if r.LogClearanceMM > 0 {
		e.say(words.LogClear, words.Args{"Room": u.MM(r.LogClearanceMM)})
	} else {
		e.say(words.LogTouches, words.Args{"Force": u.Force(math.Hypot(r.LogForceN[0], r.LogForceN[1]))})
	}
	if c := p.centring; c != nil {
		p.textCentring(e, u, c)
	}
}

func (p *prediction) textCentring(e *env, u say.Units, c *kinematics.Centring) {
	e.say(words.HangLine, words.Args{"Hang": u.MM(c.HeightMM - p.result.FrontEndMM[1])})
	off := words.RuleHigh
	if c.RuleErrorMM < 0 {
		off = words.RuleLow
	}
	e.say(words.LiftLine, words.Args{"Pull": u.Force(c.HookN), "Rule": u.Force(c.RuleN), "Error": speaker.Say(off, words.Args{"Gap": u.MM(math.Abs(c.RuleErrorMM))})})
	id := words.LiftSoft
	if c.ByForce() {
		id = words.LiftSteady
	}
	e.say(id, words.Args{"Span": u.MM(c.MMPerN)})
	e.say(words.BlockLine, words.Args{"Gap": u.Gap(math.Abs(c.GapPerHeight)), "Unit": u.GapUnit()})
}
