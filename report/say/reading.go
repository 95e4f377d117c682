package say

// This file says one reading, short enough for a list.

import (
	"strings"

	"aligner/assets/words"
	"aligner/hulls/visit"
)

// Reading is a reading in a few signs: its place as seen, and what was found
// there, in the unit wanted.
func Reading(s words.Speaker, u Units, r visit.Reading, lookingAft bool) string {
	at := func(deg float64) string {
		return strings.TrimSuffix(visit.ClockText(deg, visit.Direction(lookingAft)), ":00")
	}
	switch r := r.(type) {
	case visit.Leaf:
		return s.Say(words.ReadLeaf, words.Args{"Clock": at(r.ClockDeg), "Limits": limits(u, r.Goes, r.Stops)})
	case visit.LeafRound:
		return s.Say(words.ReadRound, words.Args{"Leaf": length(u, r.Leaf), "Enters": arcs(s, r.Enters, at, lookingAft), "Stops": arcs(s, r.Stops, at, lookingAft)})
	case visit.RimStep:
		high := words.ReadStepNone
		if r.High != "" {
			high = words.Of("read_step", r.High)
		}
		return s.Say(high, words.Args{"Clock": at(r.ClockDeg), "Limits": limits(u, r.Goes, r.Stops)})
	case visit.Dial:
		return s.Say(words.Of("read_dial", r.On), words.Args{"Clock": at(r.ClockDeg), "Reads": withSign(u, r.Reads)})
	case visit.RunOut:
		low := ""
		if r.LowDeg.Known {
			low = at(r.LowDeg.Value)
		}
		return s.Say(words.Of("read_run_out", r.Half), words.Args{"TIR": length(u, r.TIR), "Low": low, "On": s.Say(words.Of("read_on", r.On), nil)})
	case visit.Clearance:
		return s.Say(words.ReadClearance, words.Args{"Where": Where(s, r.Where), "End": s.Say(words.Of("end", r.End), nil), "Clock": at(r.ClockDeg), "Limits": limits(u, r.Goes, r.Stops)})
	case visit.Pilot:
		return s.Say(words.Of("read_pilot", r.Enters), nil)
	}
	return r.Kind()
}

// limits are "goes/stops", "-" for one that is not known.
func limits(u Units, goes, stops visit.Length) string {
	first, second := "-", "-"
	if goes.Given() {
		first = length(u, goes)
	}
	if stops.Given() {
		second = length(u, stops)
	}
	return first + "/" + second
}

// length writes a leaf as it is marked, without its unit.
func length(u Units, l visit.Length) string {
	if u.Metric {
		return u.Plain(l.MM(), 3)
	}
	return u.Plain(l.Thou(), 2)
}

func withSign(u Units, l visit.Length) string {
	text := length(u, l)
	if l.Value > 0 {
		return "+" + text
	}
	return text
}

func arcs(s words.Speaker, list []visit.Arc, at func(float64) string, lookingAft bool) string {
	var said []string
	for _, a := range list {
		if a.AllRound() {
			return s.Say(words.ReadAllRound, nil)
		}
		from, to := a.FromDeg, a.ToDeg
		if lookingAft {
			from, to = to, from
		}
		said = append(said, at(from)+"-"+at(to))
	}
	if len(said) == 0 {
		return "-"
	}
	return strings.Join(said, " ")
}

// Where names a bearing, or the log, which every hull calls so.
func Where(s words.Speaker, name string) string {
	if name == "log" {
		return s.Say(words.ReadLog, nil)
	}
	return name
}
