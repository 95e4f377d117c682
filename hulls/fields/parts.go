package fields

// This file adds and takes away what a hull has several of, or may be without:
// mounts, bearings, the stuffing box.

import (
	"fmt"
	"slices"
	"strings"

	"aligner/hulls"
)

// SetMounts is the hull on four mounts or on six. A pair is added midway between
// the others, like the foremost; the pair nearest the middle is taken away, with
// what was measured by turning it.
func SetMounts(h hulls.Hull, n int) (hulls.Hull, error) {
	if n != 4 && n != 6 {
		return h, &hulls.Fault{Place: "mounts", Value: fmt.Sprint(n), Limit: "4 or 6 mounts", Mend: "write other numbers into the hull file"}
	}
	pairs := hulls.MirroredPairs(&h)
	if len(pairs)*2 != len(h.Mounts) || len(h.Mounts) != 4 && len(h.Mounts) != 6 {
		return h, &hulls.Fault{Place: "mounts", Value: fmt.Sprintf("%d mounts, %d of them in pairs", len(h.Mounts), 2*len(pairs)), Limit: "two or three pairs", Mend: "name the mounts port and starboard"}
	}
	slices.SortStableFunc(pairs, func(a, b hulls.Mirrored) int {
		return int(h.Mounts[b.Port].AtMM[0] - h.Mounts[a.Port].AtMM[0])
	})
	next := h.Clone()
	switch {
	case n == len(h.Mounts):
	case n == 6:
		addPair(&next, pairs)
	default:
		dropMounts(&next, pairs[1].Port, pairs[1].Starboard)
	}
	return next, nil
}

// addPair puts a pair midway, after the foremost in the list.
func addPair(h *hulls.Hull, pairs []hulls.Mirrored) {
	after := max(pairs[0].Port, pairs[0].Starboard) + 1
	var pair []hulls.Mount
	for side, of := range []func(hulls.Mirrored) int{
		func(p hulls.Mirrored) int { return p.Port },
		func(p hulls.Mirrored) int { return p.Starboard },
	} {
		fore, aft := h.Mounts[of(pairs[0])], h.Mounts[of(pairs[1])]
		m := fore
		m.Name = freeName(h, []string{"middle port", "middle starboard"}[side])
		for k := range m.AtMM {
			m.AtMM[k] = (fore.AtMM[k] + aft.AtMM[k]) / 2
		}
		pair = append(pair, m)
	}
	moved := make([]int, len(h.Mounts))
	for i := range moved {
		if moved[i] = i; i >= after {
			moved[i] = i + 2
		}
	}
	h.Mounts = slices.Insert(h.Mounts, after, pair...)
	renumber(h, "/mounts/", moved)
}

func dropMounts(h *hulls.Hull, drop ...int) {
	moved, kept := make([]int, len(h.Mounts)), h.Mounts[:0:0]
	for i, m := range h.Mounts {
		if moved[i] = len(kept); slices.Contains(drop, i) {
			moved[i] = -1
			h.MeasuredResponse = slices.DeleteFunc(h.MeasuredResponse, func(r hulls.Measured) bool {
				_, turned := r.NutFlats[m.Name]
				_, slid := r.SlideMM[m.Name]
				return turned || slid
			})
			continue
		}
		kept = append(kept, m)
	}
	h.Mounts = kept
	if len(h.MeasuredResponse) == 0 {
		h.MeasuredResponse = nil
	}
	renumber(h, "/mounts/", moved)
}

// renumber follows list items to their new places in the tolerance table; -1: gone.
func renumber(h *hulls.Hull, list string, moved []int) {
	next := map[string]float64{}
	for pointer, plus := range h.Tolerance {
		rest, ok := strings.CutPrefix(pointer, list)
		if !ok {
			next[pointer] = plus
			continue
		}
		index, rest, _ := strings.Cut(rest, "/")
		i := 0
		if _, err := fmt.Sscan(index, &i); err == nil && i < len(moved) && moved[i] >= 0 {
			next[fmt.Sprintf("%s%d/%s", list, moved[i], rest)] = plus
		}
	}
	h.Tolerance = next
	tidy(h)
}

// freeName is a name no mount or bearing has yet.
func freeName(h *hulls.Hull, name string) string {
	taken := func(s string) bool {
		return slices.ContainsFunc(h.Mounts, func(m hulls.Mount) bool { return strings.EqualFold(m.Name, s) }) ||
			slices.ContainsFunc(h.Bearings, func(b hulls.Bearing) bool { return strings.EqualFold(b.Name, s) })
	}
	free := name
	for n := 2; taken(free); n++ {
		free = fmt.Sprintf("%s %d", name, n)
	}
	return free
}

// AddBearing is the hull with one more bearing, in the middle of the longest clear
// span, of usual size.
func AddBearing(h hulls.Hull) (hulls.Hull, error) {
	at, long, from := 0.0, 0.0, -h.Coupling.ShaftHalfLengthMM
	ends := slices.Clone(h.Bearings)
	slices.SortFunc(ends, func(a, b hulls.Bearing) int { return int(b.AtMM - a.AtMM) })
	for _, b := range ends {
		if span := from - (b.AtMM + b.LengthMM/2); span > long {
			at, long = from-span/2, span
		}
		from = b.AtMM - b.LengthMM/2
	}
	next := h.Clone()
	d := h.Shaft.DiameterMM
	length := round(min(4*d, long/3), 1)
	next.Bearings = append(next.Bearings, hulls.Bearing{Name: freeName(&h, "middle"), AtMM: -round(-at, 1), LengthMM: length,
		DiametralClearanceMM: usualClearance(d).Value, RadialStiffnessNPerMM: usualBearing(length, d).Value})
	if err := newRefusal(h, next, "bearings"); err != nil {
		return h, err
	}
	return markAssumed(next, fmt.Sprintf("/bearings/%d/", len(h.Bearings))), nil
}

// RemoveBearing is the hull without a bearing.
func RemoveBearing(h hulls.Hull, i int) (hulls.Hull, error) {
	if i < 0 || i >= len(h.Bearings) || len(h.Bearings) == 1 {
		return h, &hulls.Fault{Place: "bearings", Value: fmt.Sprintf("%d bearings", len(h.Bearings)), Limit: "at least one", Mend: "give every bearing that carries the shaft"}
	}
	next := h.Clone()
	moved := make([]int, len(h.Bearings))
	for k := range moved {
		switch moved[k] = k; {
		case k == i:
			moved[k] = -1
		case k > i:
			moved[k] = k - 1
		}
	}
	next.Bearings = slices.Delete(next.Bearings, i, i+1)
	renumber(&next, "/bearings/", moved)
	return next, nil
}

// SetBox is the hull with a stuffing box that rides on the shaft, or without.
func SetBox(h hulls.Hull, on bool) hulls.Hull {
	next := h.Clone()
	switch {
	case on && h.StuffingBox == nil:
		lip := h.Log.AtMM + h.Log.LengthMM/2
		next.StuffingBox = &hulls.StuffingBox{AtMM: min(lip+60, -h.Coupling.ShaftHalfLengthMM-10), MassKg: usualBoxMass(h.Shaft.DiameterMM).Value, RadialStiffnessNPerMM: 15}
		next = markAssumed(next, "/stuffing_box/")
	case !on:
		next.StuffingBox = nil
		for pointer := range next.Tolerance {
			if strings.HasPrefix(pointer, "/stuffing_box/") {
				delete(next.Tolerance, pointer)
			}
		}
		tidy(&next)
	}
	return next
}

// newRefusal is what a change brought about at a place, refused.
func newRefusal(before, after hulls.Hull, place string) error {
	had := hulls.Validate(before).Refusals
	for _, f := range hulls.Validate(after).Refusals {
		if strings.HasPrefix(f.Place, place) && !slices.Contains(had, f) {
			return &f
		}
	}
	return nil
}

// markAssumed gives every number under a pointer the plus-or-minus of one nobody
// measured.
func markAssumed(h hulls.Hull, under string) hulls.Hull {
	next := h.Clone()
	for _, f := range List(&h) {
		if plus := f.guessPlus(&h); strings.HasPrefix(f.Pointer, under) && plus > 0 {
			if next.Tolerance == nil {
				next.Tolerance = map[string]float64{}
			}
			next.Tolerance[f.Pointer] = plus
		}
	}
	return next
}
