package job

// This file is the three-then-fourth method: three mounts tight, gauged, and the
// fourth brought up until it just touches; if the gap changes when it is
// tightened, the fourth was wrong (common practice, no source).
//
// A solid foot just touches when a leaf no longer enters under it. On rubber,
// whose foot rests on its nut as long as it carries anything, it does when the
// rubber is as high as that of its neighbour.

import (
	"math"
	"strconv"

	"aligner/hulls"
)

// Fourth says which mounts are tightened and which is brought up.
type Fourth struct {
	Three  []int // the pair that carries the coupling, and one of the other pair
	Fourth int
	// InsideMM is how far the engine's centre of mass lies inside the triangle
	// of the three, in plan; negative: outside, and the engine tips over the
	// fourth corner unless it is held.
	InsideMM float64
	Steps    []Text
	// Order is the steps as they are ticked; what to do if the gap changed is
	// the last of Steps and no step of its own.
	Order []FastenStep
}

// leastInsideMM is how far inside the three the centre of mass must lie for the
// engine to be said to stand on them by itself (our own judgement, a tape
// measure's error several times over).
const leastInsideMM = 30

// StandsOnThree reports whether the engine surely stays on the three mounts.
func (f *Fourth) StandsOnThree() bool { return f.InsideMM >= leastInsideMM }

// ThreeThenFourth picks them; false where the method does not fit: it needs four
// mounts in two pairs. The pair that carries the coupling is kept, so in a
// V-drive that is the fore one; of the other pair the mount is kept that the
// engine's weight leans to.
func ThreeThenFourth(h *hulls.Hull) (Fourth, bool) {
	pairs := Outward(h)
	if len(h.Mounts) != 4 || len(pairs) != 2 || len(pairs[0]) != 2 {
		return Fourth{}, false
	}
	best := Fourth{InsideMM: math.Inf(-1)}
	for i, fourth := range pairs[1] {
		f := Fourth{Three: []int{pairs[0][0], pairs[0][1], pairs[1][1-i]}, Fourth: fourth}
		f.InsideMM = insideMM(h, f.Three)
		if f.InsideMM > best.InsideMM {
			best = f
		}
	}
	beside := best.Three[2]
	args := Args{"Beside": h.Mounts[beside].Name, "Leaf": ThicknessMM(softFootMM), "Kept": names(h, best.Three), "Fourth": h.Mounts[best.Fourth].Name, "Pair": names(h, best.Three[:2])}
	support := "support"
	if !best.StandsOnThree() {
		support = "support always"
	}
	ids := []string{support, "three tight", "slacken", "bring up", "tighten", "if it moved"}
	if h.Mounts[best.Fourth].Kind == hulls.Solid {
		ids[3], ids[5] = "bring up solid", "if it moved solid"
	}
	for _, id := range ids {
		best.Steps = append(best.Steps, text("fourth", id, args))
	}
	fast := JamNuts
	if h.Mounts[best.Fourth].Kind == hulls.Solid {
		fast = FootBolts
	}
	fourth := []int{best.Fourth}
	for i, s := range []FastenStep{{Kind: Support}, {Kind: fast, Mounts: best.Three}, {Kind: Slacken, Mounts: fourth},
		{Kind: BringUp, Mounts: fourth}, {Kind: fast, Mounts: fourth}, {Kind: Regauge}} {
		s.Text, s.Sources = best.Steps[min(i, 4)], []Source{CommonPractice}
		if s.Kind == Regauge {
			s.Text = text("fasten", "gauge one", Args{"Mounts": names(h, fourth)})
		}
		best.Order = append(best.Order, s)
	}
	return best, true
}

// insideMM is the distance in plan of the centre of mass from the nearest side
// of a triangle of mounts, negative outside.
func insideMM(h *hulls.Hull, three []int) float64 {
	c := h.Engine.CentreOfMassMM
	least := math.Inf(1)
	for k := range 3 {
		a, b, far := h.Mounts[three[k]].AtMM, h.Mounts[three[(k+1)%3]].AtMM, h.Mounts[three[(k+2)%3]].AtMM
		own := off(a, b, c[0], c[1])
		if off(a, b, far[0], far[1]) < 0 {
			own = -own
		}
		least = math.Min(least, own)
	}
	return least
}

// off is the signed distance in plan of (x, y) from the line a to b.
func off(a, b [3]float64, x, y float64) float64 {
	dx, dy := b[0]-a[0], b[1]-a[1]
	return (dx*(y-a[1]) - dy*(x-a[0])) / math.Hypot(dx, dy)
}

// numbers writes bolts' numbers one after another.
func numbers(list []int) string {
	s := ""
	for i, n := range list {
		if i > 0 {
			s += " - "
		}
		s += strconv.Itoa(n)
	}
	return s
}
