package job

// This file says how far the fastening of a visit has come: which step each
// thing tightened since the last move was, and which is next. What is tightened
// is an event of the visit; the rest follows from the order of events.

import (
	"slices"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/report/say"
)

// Progress is how far one step has come.
type Progress string

// A step is done, next or to come; a gauging between pairs that was not made
// before going on is left out.
const (
	Done    Progress = "done"
	Next    Progress = "next"
	ToCome  Progress = "to come"
	LeftOut Progress = "left out"
)

// FastenProgress says it of each step of an order. Of the last nothing need be
// next.
func FastenProgress(h *hulls.Hull, v *visit.Visit, steps []FastenStep) []Progress {
	events := v.Events
	from := 0
	for i, e := range events {
		if e.Move != nil {
			from = i + 1
		}
	}
	at := make([]int, len(steps)) // the event a step was done by; -1: it is not
	for i := range steps {
		at[i] = steps[i].doneAt(h, v, from)
	}
	all := make([]Progress, len(steps))
	last := -1
	for i := range steps {
		all[i] = ToCome
		if at[i] >= 0 || steps[i].gauges() && gaugedThere(v, steps, at, i) {
			all[i], last = Done, i
		}
	}
	next := -1
	for i, s := range steps {
		switch {
		case all[i] == Done:
		case i < last && !s.recorded():
			all[i] = LeftOut
		case next < 0:
			next = i
		}
	}
	if next >= 0 {
		all[next] = Next
	}
	return all
}

// recorded reports whether a step leaves something in the visit that must not be
// missed; a gauging between pairs may be.
func (s *FastenStep) recorded() bool {
	return !s.gauges() && s.Kind != Support && s.Kind != BringUp
}

// gauges reports whether a step is to gauge.
func (s *FastenStep) gauges() bool { return s.Kind == Regauge || s.Kind == Slacken }

// gaugedThere reports whether something was gauged at step i: after what the
// step before it tightened, and before what the next one did.
func gaugedThere(v *visit.Visit, steps []FastenStep, at []int, i int) bool {
	first, last := -1, len(v.Events)
	for k := i - 1; k >= 0 && first < 0; k-- {
		if steps[k].recorded() {
			first = at[k]
			if first < 0 {
				return false // nothing tightened yet to be gauged after
			}
		}
	}
	for k := i + 1; k < len(steps); k++ {
		if steps[k].recorded() && at[k] >= 0 {
			last = at[k]
			break
		}
	}
	for e := first + 1; e < last && first >= 0; e++ {
		if g := v.Events[e].Gauging; g != nil && len(g.Readings) > 0 {
			return true
		}
	}
	return false
}

// doneAt is the event by which a step was done, looking from event from on; -1:
// it is not, or is a gauging.
func (s *FastenStep) doneAt(h *hulls.Hull, v *visit.Visit, from int) int {
	switch s.Kind {
	case TurnHand:
		if v.HandedOver.TurnedByHand == "" {
			return -1
		}
		return len(v.Events)
	case SetSealBack:
		if !v.Seal.SetBack {
			return -1
		}
		return len(v.Events)
	case MarkNuts:
		if !v.HandedOver.NutsMarked {
			return -1
		}
		return len(v.Events)
	case BoltRound:
		for i := from; i < len(v.Events); i++ {
			if f := v.Events[i].Fasten; f != nil && f.OfCoupling() && (f.Round == 0 || f.Round >= s.Round) {
				return i
			}
		}
		return -1
	case Regauge, Slacken, Support, BringUp:
		return -1
	}
	open, done := slices.Clone(s.Mounts), -1
	for i := from; i < len(v.Events); i++ {
		f := v.Events[i].Fasten
		switch {
		case f == nil || f.OfCoupling():
			continue
		case f.Kind == visit.Slackened && (s.Kind == JamNuts || s.Kind == FootBolts):
			loose := named(h, f)
			if slices.ContainsFunc(s.Mounts, func(m int) bool { return slices.Contains(loose, m) }) {
				open, done = slices.Clone(s.Mounts), -1
			}
			continue
		case f.Kind != "" && f.Kind != string(s.Kind):
			continue
		}
		tight := named(h, f)
		if s.Alone && len(tight) != len(s.Mounts) {
			continue
		}
		open = slices.DeleteFunc(open, func(m int) bool { return slices.Contains(tight, m) })
		if len(open) == 0 && done < 0 {
			done = i
		}
	}
	return done
}

// named are the mounts of one fastening: those it names, else the one its text
// names, else all.
func named(h *hulls.Hull, f *visit.Fasten) []int {
	var named, all []int
	for i, m := range h.Mounts {
		all = append(all, i)
		if slices.Contains(f.Mounts, m.Name) || len(f.Mounts) == 0 && f.What == m.Name {
			named = append(named, i)
		}
	}
	switch {
	case f.OfCoupling():
		return nil
	case len(named) == 0:
		return all
	}
	return named
}

// TightenedBetween are the mounts tightened between two events; nil: none.
func TightenedBetween(h *hulls.Hull, v *visit.Visit, first, last int) []int {
	var list []int
	for i := first + 1; i < last && i < len(v.Events); i++ {
		if f := v.Events[i].Fasten; f != nil && f.Kind != visit.Slackened {
			for _, m := range named(h, f) {
				if !slices.Contains(list, m) {
					list = append(list, m)
				}
			}
		}
	}
	slices.Sort(list)
	return list
}

// Record is a step as a visit keeps it; false for one that tightens nothing.
func (s *FastenStep) Record(h *hulls.Hull) (visit.Fasten, bool) {
	f := visit.Fasten{Kind: string(s.Kind), Round: s.Round}
	switch s.Kind {
	case Clamps, JamNuts, FootBolts, Loosen:
		f.Mounts = names(h, s.Mounts)
		f.What = f.Kind + ": " + strings.Join(f.Mounts, ", ")
	case BoltRound:
		f.Kind, f.What = visit.FastenedCouplingBolts, visit.FastenedCouplingBolts
		if s.NM > 0 {
			f.Torque = visit.Torque{Value: float64(int(s.NM*10+0.5)) / 10, Unit: visit.InNM}
		}
	default:
		return visit.Fasten{}, false
	}
	return f, true
}

// Fastened says what one fastening was: by its kind where that is told, in the
// file's own words where not.
func Fastened(s words.Speaker, u say.Units, f *visit.Fasten) string {
	if f.Kind == "" {
		return f.What
	}
	return Text{ID: words.Of("fastened", f.Kind), Args: Args{"Mounts": f.Mounts, "Round": f.Round}}.Say(s, u)
}

// CouplingBolts is what a visit knows of them: oiled or dry, and the maker's
// figure, 0 for none.
func CouplingBolts(v *visit.Visit) (oiled bool, makerNM float64) {
	return v.Bolts.Oiled, v.Bolts.Maker.NM()
}
