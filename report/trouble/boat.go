package trouble

// This file is what is known of one boat before anything is tested: how near her
// shaft comes to its first whirling speed, and what moved since the visit before.
// It makes causes likelier or less so than on any boat, never certain.

import (
	"math"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/report/history"
)

// Boat is what is known of one. The zero value knows nothing.
type Boat struct {
	times map[Cause]float64 // as likely as on any boat
	why   []reason
}

type reason struct {
	id   words.ID
	args words.Args
}

// Parts of the lower whirling speed below which whirling is not to be thought of,
// and from which it is; and by how much either counts (our own judgement).
const (
	farFromWhirling, nearWhirling = 0.7, 0.9
	whirlingLess, whirlingMore    = 0.25, 4.0
)

// moved is by how much what most likely moved since the visit before counts (our
// own judgement): half of it, or twice, is no more than a hint.
var moved = map[history.Cause]map[Cause]float64{
	history.Steady:        {MountsTired: 0.5, NutBackedOff: 0.5, BedSoft: 0.5, HullChanged: 0.5},
	history.Settled:       {MountsTired: 2},
	history.MountDown:     {MountsTired: 2, BedSoft: 2},
	history.NutBacked:     {NutBackedOff: 3},
	history.CornerDown:    {MountsTired: 2, NutBackedOff: 2, BedSoft: 2},
	history.SomethingElse: {HullChanged: 2, BearingLoose: 2, BentShaft: 2},
}

// BoatOf puts together what her hull tells, and her past (nil: none) before the
// visit of a number.
func BoatOf(h *hulls.Hull, past *history.Past, number int64) (Boat, error) {
	b := Boat{times: map[Cause]float64{}}
	if err := b.whirling(h); err != nil {
		return b, err
	}
	if past != nil {
		b.past(past, number)
	}
	return b, nil
}

func (b *Boat) whirling(h *hulls.Hull) error {
	if h.ShaftSpeedMaxRPM == 0 {
		return nil
	}
	line, err := kinematics.Prepare(*h)
	if err != nil {
		return err
	}
	low, high, err := line.WhirlRPM()
	if err != nil {
		return err
	}
	args := words.Args{"Speed": math.Round(h.ShaftSpeedMaxRPM), "Low": tens(low), "High": tens(high)}
	switch share := h.ShaftSpeedMaxRPM / low; {
	case share < farFromWhirling:
		b.add(map[Cause]float64{Whirling: whirlingLess}, words.TroubleBoatWhirlFar, args)
	case share >= nearWhirling:
		b.add(map[Cause]float64{Whirling: whirlingMore}, words.TroubleBoatWhirlNear, args)
	}
	return nil
}

func tens(v float64) float64 { return 10 * math.Round(v/10) }

// past takes the likely cause of what changed before a visit, where there is one.
func (b *Boat) past(p *history.Past, number int64) {
	for i := range p.Entries {
		e := &p.Entries[i]
		if e.Number != number || e.Since == nil {
			continue
		}
		told := e.Since.Told()
		if times, ok := moved[told.Cause]; ok {
			b.add(times, words.Of("trouble_boat", string(told.Cause)), nil)
		}
	}
}

func (b *Boat) add(times map[Cause]float64, id words.ID, args words.Args) {
	for c, t := range times {
		b.times[c] = b.counts(c) * t
	}
	b.why = append(b.why, reason{id, args})
}

// counts is how much likelier a cause is on this boat.
func (b *Boat) counts(c Cause) float64 {
	if t, ok := b.times[c]; ok {
		return t
	}
	return 1
}

// Text says what of it counts for a symptom, a line each.
func (b *Boat) Text(in words.Speaker, s Symptom) []string {
	var lines []string
	for _, r := range b.why {
		whirl := r.id == words.TroubleBoatWhirlFar || r.id == words.TroubleBoatWhirlNear
		if whirl && fits[s][Whirling] == 0 {
			continue
		}
		lines = append(lines, in.Say(r.id, r.args))
	}
	return lines
}
