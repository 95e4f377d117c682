package fields

// This file begins a boat of one's own: from the nearest one there is, or as a
// copy of one.

import (
	"math"

	"aligner/hulls"
)

// Wanted is what is asked about a new boat before anything else.
type Wanted struct {
	Layout   hulls.Layout
	Mounts   int // 4 or 6
	Bearings int
	Solid    bool // on solid feet rather than rubber
}

// Nearest is which of some hulls is nearest to what is wanted, the first of equals;
// -1 where there are none.
func Nearest(w Wanted, all []hulls.Hull) int {
	best, least := -1, math.Inf(1)
	for i, h := range all {
		off := 2*math.Abs(float64(len(h.Bearings)-w.Bearings)) + 0.6*math.Abs(float64(len(h.Mounts)-w.Mounts))
		if h.Layout != w.Layout {
			off += 8
		}
		if (h.Mounts[0].Kind == hulls.Solid) != w.Solid {
			off += 4
		}
		if off < least {
			best, least = i, off
		}
	}
	return best
}

// NewFrom is a new boat like another: its numbers taken over and marked as not
// measured, with as many mounts and bearings as wanted, and nothing that tells the
// other boat from all others.
func NewFrom(base hulls.Hull, name string, w Wanted) (hulls.Hull, error) {
	h := Copy(base, name)
	h.Layout, h.Tolerance, h.OneSided, h.ShaftSpeedMaxRPM = w.Layout, nil, false, 0
	var err error
	if len(h.Mounts) != w.Mounts {
		if h, err = SetMounts(h, w.Mounts); err != nil {
			return h, err
		}
	}
	kind := hulls.Rubber
	if w.Solid {
		kind = hulls.Solid
	}
	for i := range h.Mounts {
		changeKind(&h, i, kind)
	}
	for len(h.Bearings) < w.Bearings {
		if h, err = AddBearing(h); err != nil {
			return h, err
		}
	}
	for len(h.Bearings) > max(1, w.Bearings) {
		if h, err = RemoveBearing(h, foremost(&h)); err != nil {
			return h, err
		}
	}
	return markAssumed(h, "/"), nil
}

func foremost(h *hulls.Hull) int {
	at := 0
	for i, b := range h.Bearings {
		if b.AtMM > h.Bearings[at].AtMM {
			at = i
		}
	}
	return at
}

// Copy is a boat of the same measurements under another name. What tells the first
// boat from all others, and what she answered, is left out.
func Copy(h hulls.Hull, name string) hulls.Hull {
	c := h.Clone()
	c.Name, c.HIN, c.OwnerReference, c.MeasuredResponse = name, "", "", nil
	return c
}
