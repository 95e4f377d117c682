package hulls

// This file lists the spanners a hull's own fasteners need.

import "slices"

// SpannerUse is what a spanner turns.
type SpannerUse string

// What spanners turn. A jam nut is as wide as the nut it locks.
const (
	MountNut SpannerUse = "mount nut"
	JamNut   SpannerUse = "jam nut"
	BoltHead SpannerUse = "bolt head"
	BoltNut  SpannerUse = "bolt nut"
)

// NeededSpanner is one size with what it is for.
type NeededSpanner struct {
	Spanner Spanner
	// Count is how many are wanted at once: one holds the adjusting nut, or the
	// bolt's head, while the other turns.
	Count int
	Uses  []SpannerUse
	// Older is for metric hardware of the former widths: bring it, it may be
	// what fits.
	Older bool
}

// Spanners lists the spanners for the mounts' nuts and jam nuts and for the
// coupling's bolts, each size once, in that order. Untold names the threads
// whose hexagons are not known; solid feet have no thread in a hull file and
// are told as "".
func Spanners(h Hull) (needed []NeededSpanner, untold []string) {
	l := &spannerList{}
	for _, m := range h.Mounts {
		if m.Kind == Solid {
			l.miss("")
			continue
		}
		if x, ok := l.hexagon(m.Thread); ok {
			l.add(x.Nut, 2, false, MountNut, JamNut)
			l.add(x.Older, 2, true, MountNut, JamNut)
		}
	}
	if x, ok := l.hexagon(h.Coupling.Bolts.Thread); ok {
		l.bolts(x)
	}
	return l.needed, l.untold
}

type spannerList struct {
	needed []NeededSpanner
	untold []string
}

// bolts need one spanner on the head and one on the nut.
func (l *spannerList) bolts(x Hexagon) {
	if x.Head != x.Nut {
		l.add(x.Head, 1, false, BoltHead)
		l.add(x.Nut, 1, false, BoltNut)
		return
	}
	l.add(x.Head, 2, false, BoltHead, BoltNut)
	l.add(x.Older, 2, true, BoltHead, BoltNut)
}

func (l *spannerList) hexagon(thread string) (Hexagon, bool) {
	t, err := ThreadOf(thread)
	if err == nil {
		var x Hexagon
		if x, err = HexagonOf(t); err == nil {
			return x, true
		}
	}
	l.miss(thread)
	return Hexagon{}, false
}

func (l *spannerList) miss(thread string) {
	if !slices.Contains(l.untold, thread) {
		l.untold = append(l.untold, thread)
	}
}

// add joins uses of the same size. A size some hardware surely has is no longer
// one for older hardware only.
func (l *spannerList) add(s Spanner, count int, older bool, uses ...SpannerUse) {
	if s == (Spanner{}) {
		return
	}
	i := slices.IndexFunc(l.needed, func(n NeededSpanner) bool { return n.Spanner == s })
	if i < 0 {
		l.needed = append(l.needed, NeededSpanner{Spanner: s, Older: older})
		i = len(l.needed) - 1
	}
	n := &l.needed[i]
	n.Count = max(n.Count, count)
	n.Older = n.Older && older
	for _, u := range uses {
		if !slices.Contains(n.Uses, u) {
			n.Uses = append(n.Uses, u)
		}
	}
}
