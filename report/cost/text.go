package cost

// This file puts the costs in order and into words.

import (
	"slices"

	"aligner/assets/words"
	"aligner/report/say"
)

// grades from the mildest.
var grades = []Grade{Nothing, Little, Wears, Harms}

// order puts the gravest first, else as they were.
func (c *Costs) order() {
	slices.SortStableFunc(c.Items, func(a, b Item) int { return slices.Index(grades, b.Grade) - slices.Index(grades, a.Grade) })
}

// Worst is the gravest grade there is.
func (c *Costs) Worst() Grade {
	if len(c.Items) == 0 {
		return Nothing
	}
	return c.Items[0].Grade
}

// Line is one cost in words: a sentence for anybody, and the number behind it for who
// wants it.
type Line struct{ Sentence, Number string }

// Text says one cost.
func (i *Item) Text(s words.Speaker, u say.Units) Line {
	mpa := func(v float64) string { return u.Plain(v, 0) + " MPa" }
	rpm := func(v float64) string { return u.Plain(v, 0) }
	args := words.Args{"Bearing": i.Bearing,
		"Stress": mpa(i.StressMPa), "Yield": mpa(i.YieldMPa), "From": mpa(i.FatigueMPa[0]), "To": mpa(i.FatigueMPa[1]),
		"Moment": u.Moment(i.MomentNMM), "Load": u.Force(i.LoadN), "Carried": u.Force(i.CarriedN),
		"Bolt": u.Force(i.BoltN), "Clamp": u.Force(i.ClampN), "Speed": rpm(i.SpeedRPM), "Low": rpm(i.WhirlRPM[0]), "High": rpm(i.WhirlRPM[1]),
		"Mount": i.Mount, "Now": signed(u, i.LoadN), "Lined": signed(u, i.CarriedN),
		"Span": u.Plain(i.SpanMM, 0) + " mm", "Diameters": u.Plain(i.SpanDiameters, 0), "End": i.To, "Formula": u.Plain(i.FormulaMM, 0) + " mm"}
	args["Start"] = i.Bearing
	if i.Bearing == "" {
		args["Start"] = s.Say(words.CostTheCoupling, nil)
	}
	sentence, number := words.Of("cost_"+string(i.Part), string(i.Grade)), words.Of("cost_number", string(i.Part))
	switch {
	case i.Part == Whirling && i.SpeedRPM == 0:
		number = words.CostNumberNoSpeed
	case i.Part == Spacing && i.SpeedRPM == 0:
		number = words.CostNumberSpacingNoSpeed
	}
	if i.Part == Spacing && i.Grade != Nothing && i.SpanDiameters < leastDiameters {
		sentence = words.CostSpacingClose
	}
	line := Line{s.Say(sentence, args), s.Say(number, args)}
	sure := words.CostWorkedOut
	if i.Sure == LowConfidence {
		sure = words.CostLowConfidence
	}
	line.Number += " " + s.Say(sure, nil)
	return line
}

// signed is a force with a minus where it points the other way.
func signed(u say.Units, n float64) string {
	if n < 0 {
		return "\u2212" + u.Force(-n)
	}
	return u.Force(n)
}

// Text says all of them, the gravest first, and what they rest on.
func (c *Costs) Text(s words.Speaker, u say.Units) []Line {
	var lines []Line
	for i := range c.Items {
		lines = append(lines, c.Items[i].Text(s, u))
	}
	return append(lines, Line{Sentence: s.Say(words.CostMaker, nil)})
}
