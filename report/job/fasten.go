package job

// This file gives the order of fastening: outward from the mounts that carry
// the coupling, gauging between pairs, then the coupling's bolts crosswise in
// rounds (common practice, no source). What is tightened first is tightened
// where a slip would show most.

import (
	"cmp"
	"math"
	"slices"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/response"
)

// FastenKind is what a step does.
type FastenKind string

// The steps.
const (
	Clamps    FastenKind = "clamps"     // the slides' clamps or pinch bolts of a pair
	JamNuts   FastenKind = "jam nuts"   // of a pair, the adjusting nut held
	FootBolts FastenKind = "foot bolts" // of a pair of solid feet
	Regauge   FastenKind = "gauge"
	BoltRound FastenKind = "bolt round" // one round of the coupling's bolts
	TurnHand  FastenKind = "turn by hand"
	MarkNuts  FastenKind = "mark nuts"

	Loosen FastenKind = visit.Slackened // a pair's jam nuts or foot bolts, to tighten them one by one

	Support FastenKind = "support"  // the engine, before it stands on three mounts
	Slacken FastenKind = "slacken"  // the fourth mount, and gauge
	BringUp FastenKind = "bring up" // the fourth mount's nut, until its foot just rests
)

// FastenStep is one step of fastening.
type FastenStep struct {
	Kind    FastenKind
	Mounts  []int // of the hull, in the order they are tightened
	Order   []int // bolts by number, from 1, counted clockwise
	Round   int   // 1, 2, 3
	NM      float64
	Alone   bool // it counts as done only when these mounts alone were tightened
	Text    Text
	Sources []Source
}

// rounds are the parts of the full torque the coupling's bolts are brought to
// in turn (common practice, no source).
var rounds = [3]float64{1. / 3, 2. / 3, 1}

// FastenOrder lists the steps. makerNM is the maker's figure for the coupling's
// bolts, 0 for none; where no figure can be given the rounds have none.
func FastenOrder(h *hulls.Hull, lubricated bool, makerNM float64) ([]FastenStep, hulls.Tightening) {
	var steps []FastenStep
	add := func(kind FastenKind, mounts []int, args Args, sources ...Source) *FastenStep {
		if len(sources) == 0 {
			sources = []Source{CommonPractice}
		}
		steps = append(steps, FastenStep{Kind: kind, Mounts: mounts, Text: text("fasten", string(kind), args), Sources: sources})
		return &steps[len(steps)-1]
	}
	pairs := Outward(h)
	for i, pair := range pairs {
		args := Args{"Mounts": names(h, pair)}
		if h.Mounts[pair[0]].Kind == hulls.Solid {
			add(FootBolts, pair, args)
		} else {
			add(Clamps, pair, args)
			add(JamNuts, pair, args)
		}
		s := add(Regauge, nil, args)
		if i == len(pairs)-1 {
			s.Text = text("fasten", "gauge last", args)
		}
	}
	t, err := hulls.Tighten(h.Coupling.Bolts, lubricated, makerNM)
	order := Crosswise(h.Coupling.Bolts.Count)
	for i, part := range rounds {
		args := Args{"Round": i + 1, "Order": numbers(order)}
		s := add(BoltRound, nil, args, CommonPractice, BoltStandards)
		s.Order, s.Round = order, i+1
		if err == nil {
			s.NM = part * t.NM
			args["Torque"] = TorqueNM(s.NM)
		} else {
			s.Text.ID, s.Sources = "job_fasten_bolt_round_no_figure", []Source{CommonPractice}
		}
	}
	add(TurnHand, nil, nil)
	add(MarkNuts, nil, nil)
	return steps, t
}

// OneAtATime is an order in which each pair is slackened and tightened one mount
// after the other, gauging between: what tells which mount pulls where a pair's
// two move the gap alike (common practice, no source).
func OneAtATime(h *hulls.Hull, steps []FastenStep) []FastenStep {
	var out []FastenStep
	add := func(kind FastenKind, id string, mounts ...int) {
		out = append(out, FastenStep{Kind: kind, Mounts: mounts, Text: text("fasten", id, Args{"Mounts": names(h, mounts)}), Sources: []Source{CommonPractice}})
	}
	for _, s := range steps {
		switch s.Kind {
		case JamNuts, FootBolts:
			add(Loosen, string(Loosen), s.Mounts...)
			add(Regauge, "gauge loose", s.Mounts...)
			for _, m := range s.Mounts {
				add(s.Kind, string(s.Kind), m)
				out[len(out)-1].Alone = true
				add(Regauge, "gauge one", m)
			}
		case Regauge: // after each mount instead
		default:
			out = append(out, s)
		}
	}
	return out
}

// Torque says what the coupling's bolts are tightened to, where that comes from
// and what it is worth.
func Torque(h *hulls.Hull, oiled bool, makerNM float64) []Text {
	t, err := hulls.Tighten(h.Coupling.Bolts, oiled, makerNM)
	list := TorqueText(h.Coupling.Bolts, oiled, t, err)
	if dry, err := hulls.Tighten(h.Coupling.Bolts, false, 0); err == nil {
		wet, _ := hulls.Tighten(h.Coupling.Bolts, true, 0)
		list = append(list, text("torque", "range", Args{"Dry": TorqueNM(dry.NM), "Oiled": TorqueNM(wet.NM),
			"FactorDry": Number(hulls.FactorDry), "FactorOiled": Number(hulls.FactorLubricated)}))
	}
	return list
}

// TorqueText says where the bolts' figure comes from and what it is worth.
// t is what Tighten gave with err.
func TorqueText(b hulls.Bolts, lubricated bool, t hulls.Tightening, err error) []Text {
	how := text("torque", "dry", nil)
	if lubricated {
		how = text("torque", "oiled", nil)
	}
	args := Args{"Torque": TorqueNM(t.NM), "Computed": TorqueNM(t.ComputedNM), "Thread": b.Thread, "Grade": b.Grade, "How": how,
		"Low": int(math.Round(100 * hulls.ScatterLow)), "High": int(math.Round(100 * hulls.ScatterHigh))}
	var list []Text
	switch {
	case err != nil:
		return []Text{text("torque", "none", args)}
	case t.Maker && t.ComputedNM > 0:
		list = append(list, text("torque", "maker", args), text("torque", "beside", args))
	case t.Maker:
		list = append(list, text("torque", "maker", args))
	default:
		list = append(list, text("torque", "computed", args), text("torque", "maker first", nil))
	}
	if t.ComputedNM > 0 {
		list = append(list, text("torque", "scatter", args))
	}
	if t.BeyondProof {
		list = append(list, text("torque", "beyond proof", args))
	}
	if t.FromMemory {
		list = append(list, text("torque", "from memory", args), text("torque", "stainless", nil))
	}
	return list
}

// Outward groups mounts that stand abreast, those nearest the coupling first:
// in an in-line boat the aft pair, in a V-drive the fore pair.
func Outward(h *hulls.Hull) [][]int {
	pairs := response.Stations(h)
	slices.SortStableFunc(pairs, func(a, b []int) int { return cmp.Compare(alongMM(h, a), alongMM(h, b)) })
	return pairs
}

// alongMM is how far a station stands from the coupling along the bed.
func alongMM(h *hulls.Hull, station []int) float64 {
	sum := 0.0
	for _, i := range station {
		sum += h.Mounts[i].AtMM[0]
	}
	return math.Abs(sum) / float64(len(station))
}

// Crosswise is the order in which bolts on a circle are tightened, numbered from
// 1: each next one opposite, or as nearly as there is one, and each next pair as
// far from those done as can be.
func Crosswise(count int) []int {
	var order []int
	if count%2 == 1 {
		// An odd ring has no opposites: stepping by nearly half of it meets every
		// bolt once.
		step := max(1, (count-1)/2)
		for i := range count {
			order = append(order, i*step%count+1)
		}
		return order
	}
	half := count / 2
	done := []int{}
	for range half {
		best, far := 0, -1
		for axis := range half {
			near := half
			for _, d := range done {
				apart := (axis - d + half) % half
				near = min(near, apart, half-apart)
			}
			if near > far {
				best, far = axis, near
			}
		}
		done = append(done, best)
		order = append(order, best+1, best+half+1)
	}
	return order
}

func names(h *hulls.Hull, mounts []int) []string {
	list := make([]string, len(mounts))
	for i, m := range mounts {
		list[i] = h.Mounts[m].Name
	}
	return list
}
