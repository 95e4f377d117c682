package history

// This file says a past in sentences: each visit, and what happened before it.

import (
	"fmt"
	"math"
	"strings"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/report/say"
)

// Speech is a past in one language and unit.
type Speech struct {
	Speaker words.Speaker
	Units   say.Units
	Past    *Past
}

func (t Speech) say(id words.ID, args words.Args) string { return t.Speaker.Say(id, args) }

// Visit says how a boat was found and left at entry i, a line each: its heading
// first.
func (t Speech) Visit(i int) []string {
	e := &t.Past.Entries[i]
	head := words.Args{"Date": e.Date, "Number": e.Number, "Hours": ""}
	if e.EngineHours.Known {
		head["Hours"] = t.Units.Plain(e.EngineHours.Value, 1)
	}
	lines := []string{t.say(words.HistoryVisit, head)}
	if e.Trouble != "" {
		return append(lines, t.say(words.HistoryTrouble, words.Args{"What": strings.TrimSuffix(t.Speaker.Retell(e.Trouble), ".")}))
	}
	add := func(g Gap, id, not words.ID) {
		if g.Known {
			lines = append(lines, t.say(id, words.Args{"Gap": t.gap(g)}))
		} else {
			lines = append(lines, t.say(not, nil))
		}
	}
	add(e.Begin, words.HistoryFound, words.HistoryNotFound)
	add(e.HandOver, words.HistoryLeft, words.HistoryNotLeft)
	if list := t.byMount(known(e.NutsAfterMM), true); list != "" {
		lines = append(lines, t.say(words.HistoryNuts, words.Args{"List": list}))
	}
	if list := t.byMount(e.StudLeftMM, false); list != "" {
		lines = append(lines, t.say(words.HistoryStuds, words.Args{"List": list}))
	}
	return lines
}

// known are numbers of which those that are not nought are told.
func known(mm []float64) []visit.Maybe {
	list := make([]visit.Maybe, len(mm))
	for i, v := range mm {
		list[i] = visit.Maybe{Value: v, Known: math.Abs(v) > 1e-6}
	}
	return list
}

// gap says how wide and where.
func (t Speech) gap(g Gap) string {
	args := words.Args{"Spread": t.Units.GapWithUnit(g.SpreadMM), "Error": t.Units.GapWithUnit(g.SpreadSDMM)}
	if !g.OpensKnown {
		return t.say(words.HistoryGapRound, args)
	}
	args["Place"], args["Minutes"] = say.Place(t.Speaker, g.OpensAtDeg), math.Round(g.OpensSDDeg*minutesPerDeg)
	return t.say(words.HistoryGap, args)
}

// minutesPerDeg: an hour of the clock is 30 degrees.
const minutesPerDeg = 2

// byMount lists lengths by mount; "": none is known.
func (t Speech) byMount(mm []visit.Maybe, signed bool) string {
	var parts []string
	for i, v := range mm {
		if !v.Known {
			continue
		}
		sign := ""
		if signed && v.Value > 0 {
			sign = "+"
		}
		parts = append(parts, fmt.Sprintf("%s %s%s mm", t.Speaker.Part(t.Past.Hull.Mounts[i].Name), sign, t.Units.Plain(v.Value, 1)))
	}
	if t.Units.DecimalComma {
		return strings.Join(parts, "; ")
	}
	return strings.Join(parts, ", ")
}

// Change says what happened between entry i and the one before: what moved, the
// likely cause with the others in question, what weakens that, and what would
// tell more. None for the first.
func (t Speech) Change(i int) []string {
	c := t.Past.Entries[i].Since
	if c == nil {
		return nil
	}
	args := words.Args{"Date": t.Past.Entries[c.From].Date, "Days": "", "Hours": ""}
	if c.Days.Known {
		args["Days"] = t.Units.Plain(c.Days.Value, 0)
	}
	if c.Hours.Known {
		args["Hours"] = t.Units.Plain(c.Hours.Value, 1)
	}
	lines := []string{t.say(words.HistorySince, args)}
	switch {
	case c.WhyNot != "":
		lines = append(lines, t.say(words.Of("history_why", string(c.WhyNot)), nil))
	case c.Moved:
		lines = append(lines, t.say(words.HistoryChanged, words.Args{"Spread": t.Units.GapWithUnit(c.Gap.SpreadMM),
			"Error": t.Units.GapWithUnit(c.Gap.SpreadSDMM), "Place": say.Place(t.Speaker, c.Gap.OpensAtDeg)}))
	default:
		lines = append(lines, t.say(words.HistoryUnchanged, words.Args{"Error": t.Units.GapWithUnit(sure * c.Gap.SpreadSDMM)}))
	}
	lines = append(lines, t.studs(c)...)
	lines = append(lines, t.causes(c)...)
	for _, w := range c.Caveats {
		lines = append(lines, t.say(words.Of("history_caveat", string(w)), nil))
	}
	for _, a := range c.Advice {
		lines = append(lines, t.say(words.Of("history_advice", string(a)), nil))
	}
	return lines
}

// leastStudMM is a change of a stud's height worth telling: more than a rule shows.
const leastStudMM = 2 * studSDMM

func (t Speech) studs(c *Change) (lines []string) {
	told := make([]visit.Maybe, len(c.StudMM))
	var turned []int
	for i, m := range c.StudMM {
		told[i] = visit.Maybe{Value: m.Value, Known: m.Known && math.Abs(m.Value) >= leastStudMM}
		if c.Marks[i] == visit.MarkTurned {
			turned = append(turned, i)
		}
	}
	if list := t.byMount(told, true); list != "" {
		lines = append(lines, t.say(words.HistoryStudChanges, words.Args{"List": list}))
	}
	if turned != nil {
		lines = append(lines, t.say(words.HistoryMarksTurned, words.Args{"Mounts": t.mounts(turned, words.AndList)}))
	}
	return lines
}

// causes says as much of an answer as there is, and what else is in question.
func (t Speech) causes(c *Change) (lines []string) {
	if c.WhyNot != "" {
		return nil
	}
	told := c.Told()
	id := words.HistoryTold
	if c.Open(told) {
		id = words.HistoryToldOpen
	}
	if told.Cause == "" {
		lines = append(lines, t.say(words.HistoryUntold, nil))
	} else {
		lines = append(lines, t.say(id, words.Args{"Grade": t.say(words.Of("history_grade", string(told.Grade)), nil), "Cause": t.cause(told, c.Open(told))}))
	}
	var also []string
	for _, l := range c.Likely {
		covered := l.Cause == told.Cause && (c.Open(told) || l.Chance >= toldFrom) || told.Cause == CornerDown && (l.Cause == MountDown || l.Cause == NutBacked)
		if l.Chance < leastNamed || covered || len(also) == mostNamed {
			continue
		}
		also = append(also, t.say(words.HistoryInQuestion, words.Args{"Cause": t.cause(l, false), "Grade": t.say(words.Of("history_in_grade", string(l.Grade)), nil)}))
	}
	if also != nil {
		lines = append(lines, t.say(words.HistoryAlso, words.Args{"List": strings.Join(also, "; ")}))
	}
	return lines
}

// mostNamed is how many causes are named beside the likeliest.
const mostNamed = 4

// cause says one. Where it is open which of its mounts it was, they are told as a
// choice.
func (t Speech) cause(l Likely, open bool) string {
	args := words.Args{"MM": t.Units.Plain(l.MM, 1) + " mm", "Side": t.Speaker.Say(words.Port, nil)}
	if l.Side < 0 {
		args["Side"] = t.Speaker.Say(words.Starboard, nil)
	}
	join := words.AndList
	if open {
		join = words.HistoryOr
	}
	args["Mounts"] = t.mounts(l.Mounts, join)
	many := len(l.Mounts) > 1 && !open
	switch {
	case many && l.Cause == MountDown:
		return t.say(words.HistoryCauseMountsDown, args)
	case many && l.Cause == NutBacked:
		return t.say(words.HistoryCauseNutsBacked, args)
	}
	return t.say(words.Of("history_cause", string(l.Cause)), args)
}

func (t Speech) mounts(at []int, join words.ID) string {
	var names []string
	for _, i := range at {
		names = append(names, t.Speaker.Part(t.Past.Hull.Mounts[i].Name))
	}
	if n := len(names); n > 1 {
		return t.say(join, words.Args{"First": strings.Join(names[:n-1], ", "), "Last": names[n-1]})
	}
	return strings.Join(names, "")
}
