package say

// This file says, step by step, why a nut or a slide does to the gap what it does.
// Rounded parts are made to add up to the rounded total.

import (
	"math"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/why"
)

// WhyKind is what a step is about.
type WhyKind uint8

// The kinds, in the order they are told.
const (
	WhyIsLift  WhyKind = iota // the nut, and how the mounts go
	WhyIsLine                 // the line the engine tips about
	WhyIsTilt                 // its face
	WhyIsFace                 // the coupling up, down, sideways
	WhyIsStick                // a straight shaft
	WhyIsBend                 // a bent one
	WhyIsBlock                // a shaft on its block
	WhyIsRest
	WhyIsTotal
)

// WhyStep is one step: a sentence, and the part of the gap it adds (mm across, at
// WhyHour).
type WhyStep struct {
	Kind  WhyKind
	Text  string
	AddMM float64
	Adds  bool // it adds to the gap; else it only moves something
}

// WhyHour is the hour, 10 to 3, at which the whole change is told.
func WhyHour(w *why.Why) int { return kinematics.EffectBetween(&w.Before, &w.After).Hour }

// Why takes a move apart, a step each, the last one the sum.
func Why(s words.Speaker, u Units, h *hulls.Hull, w *why.Why) []WhyStep {
	hour := WhyHour(w)
	across := func(part [2]float64) float64 { return u.RoundGap(why.AcrossMM(part, hour)) }
	total, tilt, stick, rest := across(w.Total), across(w.Tilt), across(w.Stick), across(w.Rest)
	if !w.Before.Held.Carries() {
		stick, rest = 0, u.RoundGap(total-tilt)
	}
	bend := u.RoundGap(total - tilt - stick - rest)
	args := func(mm float64) words.Args {
		return words.Args{"Place": place(s, hour), "Against": place(s, opposite(hour)), "Change": opens(s, u, mm),
			"Distance": u.Plain(w.FirstBearingMM, 0) + " mm"}
	}
	steps := []WhyStep{{Kind: WhyIsLift, Text: lifts(s, u, h, w)}, {Kind: WhyIsLine, Text: tipsAbout(s, u, h, w)},
		{WhyIsTilt, s.Say(words.WhyTilt, args(tilt)), tilt, true}, {Kind: WhyIsFace, Text: s.Say(words.WhyFace, words.Args{"Moves": faceMoves(s, u, w.FaceMM)})}}
	if w.Before.Held.Carries() {
		steps = append(steps, WhyStep{WhyIsStick, s.Say(words.WhyStick, args(stick)), stick, true})
		if bend != 0 {
			steps = append(steps, WhyStep{WhyIsBend, s.Say(words.WhyBend, args(bend)), bend, true})
		}
	} else {
		steps = append(steps, WhyStep{Kind: WhyIsBlock, Text: s.Say(words.WhyBlock, nil)})
	}
	if rest != 0 {
		steps = append(steps, WhyStep{WhyIsRest, s.Say(words.WhyRest, args(rest)), rest, true})
	}
	return append(steps, WhyStep{Kind: WhyIsTotal, Text: s.Say(words.WhyTotal, args(total)), AddMM: total})
}

// WhyPart says a part of the gap in a few words, for a picture.
func WhyPart(s words.Speaker, u Units, hour int, mm float64) string {
	return s.Say(words.WhyPart, words.Args{"Place": place(s, hour), "Change": opens(s, u, mm)})
}

// WhyCoupling says how the coupling goes, for a picture.
func WhyCoupling(s words.Speaker, u Units, w *why.Why) string { return faceMoves(s, u, w.FaceMM) }

// opens says "opens by 1.3 thou" or "closes by".
func opens(s words.Speaker, u Units, mm float64) string {
	id := words.WhyOpens
	if mm < 0 {
		id = words.WhyCloses
	}
	return s.Say(id, words.Args{"Gap": u.GapWithUnit(math.Abs(mm))})
}

// lifts says what is done and how the mounts go.
func lifts(s words.Speaker, u Units, h *hulls.Hull, w *why.Why) string {
	move := WhyMove(s, u, h, w)
	if w.Slide {
		return s.Say(words.WhySlid, words.Args{"Move": move})
	}
	way := s.Say(words.WhyUp, nil)
	if w.LiftMM < 0 {
		way = s.Say(words.WhyDown, nil)
	}
	var rises []string
	for i, m := range h.Mounts {
		rises = append(rises, s.Part(m.Name)+" "+WhyRise(u, w.RiseMM[i]))
	}
	return s.Say(words.WhyLifts, words.Args{"Move": move, "Way": way, "Lift": u.Plain(math.Abs(w.LiftMM), 2) + " mm", "Rises": strings.Join(rises, "; ")})
}

// WhyRise is how far a mount's top goes, with its sign.
func WhyRise(u Units, mm float64) string {
	text := u.Fixed(math.Abs(mm), 2)
	switch {
	case text == u.Fixed(0, 2):
	case mm < 0:
		text = "\u2212" + text
	default:
		text = "+" + text
	}
	return text + " mm"
}

// WhyRowName says what a row of the table is of.
func WhyRowName(s words.Speaker, u Units, h *hulls.Hull, r *why.Row) string {
	one := why.Why{Mounts: r.Mounts[:1], Slide: r.Slide, Steps: r.Steps}
	var names []string
	for _, i := range r.Mounts {
		names = append(names, s.Part(h.Mounts[i].Name))
	}
	return strings.Replace(WhyMove(s, u, h, &one), names[0], strings.Join(names, ", "), 1)
}

// WhyTitle is the heading of the table.
func WhyTitle(s words.Speaker, u Units, h *hulls.Hull, held kinematics.Held) string {
	id := words.WhyTable
	for i := range h.Mounts {
		if h.Mounts[i].Kind == hulls.Solid {
			id = words.WhyTableShims
		}
	}
	return s.Say(id, words.Args{"Hull": h.Name, "Slide": u.Plain(why.SlideMM, 0) + " mm", "Held": s.Say(words.Of("held", string(held)), nil)})
}

// WhyMove says the move itself.
func WhyMove(s words.Speaker, u Units, h *hulls.Hull, w *why.Why) string {
	steps, slides := make([]float64, len(h.Mounts)), make([]float64, len(h.Mounts))
	for _, i := range w.Mounts {
		if w.Slide {
			slides[i] = w.Steps
		} else {
			steps[i] = w.Steps
		}
	}
	return Move(s, u, h, steps, slides)
}

// tipsAbout says the line the engine tips about: by the mounts on it, or by its way
// and where it passes.
func tipsAbout(s words.Speaker, u Units, h *hulls.Hull, w *why.Why) string {
	if len(w.Line.On) >= 2 && !w.Slide {
		var names []string
		for _, i := range w.Line.On {
			names = append(names, s.Part(h.Mounts[i].Name))
		}
		return s.Say(words.WhyLine, words.Args{"Mounts": strings.Join(names, s.Say(words.WhyAnd, nil))})
	}
	along := w.Line.Along
	way := words.WhyLineAcross
	switch {
	case math.Abs(along[1]) > 0.9:
		way = words.WhyLineAthwart
	case math.Abs(along[0]) > 0.9:
		way = words.WhyLineAlong
	case math.Abs(along[2]) > 0.9:
		way = words.WhyLineUpright
	}
	id, x := words.WhyLineAt, w.Line.MiddleMM()
	switch {
	case x < -closeByMM:
		id = words.WhyLineAft
	case x > closeByMM:
		id = words.WhyLineAhead
	}
	where := s.Say(id, words.Args{"Distance": u.Plain(math.Round(math.Abs(x)), 0) + " mm"})
	if way == words.WhyLineUpright {
		return s.Say(words.WhyLineUpright, words.Args{"Place": where})
	}
	return s.Say(words.WhyLineThrough, words.Args{"Way": s.Say(way, nil), "Place": where})
}

// closeByMM is as near to the face as makes no difference to the eye.
const closeByMM = 20

// stillMM is a movement of the coupling not worth telling.
const stillMM = 0.005

func faceMoves(s words.Speaker, u Units, yz [2]float64) string {
	var parts []string
	tell := func(v float64, up, down words.ID) {
		if math.Abs(v) < stillMM {
			return
		}
		id := up
		if v < 0 {
			id = down
		}
		parts = append(parts, s.Say(id, words.Args{"Size": u.MM(math.Abs(v))}))
	}
	tell(yz[1], words.WhyFaceUp, words.WhyFaceDown)
	tell(yz[0], words.WhyFacePort, words.WhyFaceStarboard)
	if len(parts) == 0 {
		return s.Say(words.WhyFaceStill, nil)
	}
	return strings.Join(parts, ", ")
}

// NutTable is what one flat of each nut does, and one mm of each slide, a line each
// under a heading.
func NutTable(s words.Speaker, u Units, h *hulls.Hull, held kinematics.Held, rows []why.Row) []string {
	lines := []string{WhyTitle(s, u, h, held)}
	for i := range rows {
		lines = append(lines, nutRow(s, u, h, &rows[i]))
	}
	return append(lines, s.Say(words.WhyWords, nil))
}

func nutRow(s words.Speaker, u Units, h *hulls.Hull, r *why.Row) string {
	id := words.WhyRow
	if r.Hardly {
		id = words.WhyRowHardly
	}
	return s.Say(id, words.Args{"What": WhyRowName(s, u, h, r), "Place": Place(s, r.OpensAtDeg()), "Gap": u.GapWithUnit(r.SpreadMM()),
		"Error": u.GapWithUnit(2 * math.Hypot(r.SD[0], r.SD[1])), "Moves": faceMoves(s, u, r.FaceMM)})
}
