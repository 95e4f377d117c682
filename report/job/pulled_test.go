package job

// This file holds the naming of the mount that pulled against boats in which it
// is known, worked out by the whole non-linear model, and against laws.

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/mat"

	"aligner/assets"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/gauge"
	"aligner/kinematics/response"
)

// told is a gap known to a quarter of a thou.
func told(a, b float64) gauge.Gaussian {
	const v = 0.25 * 0.25 * 0.0254 * 0.0254
	return gauge.Gaussian{MeanMM: [2]float64{a, b}, CovMM2: [2][2]float64{{v, 0}, {0, v}}}
}

// boat is a hull with its response and a way to ask what a pull does.
type boat struct {
	h *hulls.Hull
	m *response.Model
	r *response.Response
}

func newBoat(t *testing.T, name string) boat {
	t.Helper()
	h := hull(t, name)
	held := kinematics.Seated
	if !h.Coupling.HasPilot() {
		held = kinematics.Centred
	}
	m, err := response.NewModel(h, held, false)
	if err != nil {
		t.Fatal(err)
	}
	r, err := m.At(nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	return boat{h, m, r}
}

// pulls gives the gap before and after one item was moved by steps.
func (b boat) pulls(t *testing.T, item int, steps float64) (before, after gauge.Gaussian) {
	t.Helper()
	n := len(b.h.Mounts)
	moves := make([]float64, len(b.r.Items))
	var gaps [2]gauge.Gaussian
	for i := range 2 {
		s := kinematics.State{LiftMM: make([]float64, n), SlideMM: make([]float64, n)}
		response.Add(b.r.Items, moves, s.LiftMM, s.SlideMM)
		r, err := b.m.Solve(s)
		if err != nil {
			t.Fatal(err)
		}
		gaps[i] = told(r.Gap.CosMM, r.Gap.SinMM)
		moves[item] = steps
	}
	return gaps[0], gaps[1]
}

// Each mount of each boat is pulled down three flats, its pair having been
// tightened. It must be among those named, its mend within half a flat; named
// alone where port and starboard answer apart by more than the readings err.
func TestPulledMountIsNamed(t *testing.T) {
	alone := 0
	for _, name := range []string{"Eider", "Kittiwake", "Avocet", "Wren", "Bench"} {
		b := newBoat(t, name)
		for _, pair := range response.Stations(b.h) {
			for _, mount := range pair {
				before, after := b.pulls(t, mount, -3)
				p := PulledBy(b.h, b.r, before, after, pair)
				i := slices.IndexFunc(p.Alike, func(q Pull) bool { return !q.Slide && q.Mounts[0] == mount })
				if p.Status == Unmoved {
					if d := 2 * math.Hypot(p.ChangeMM[0], p.ChangeMM[1]) / 0.0254; d > 3 {
						t.Errorf("%s, %s: %.1f thou told as no change", name, b.h.Mounts[mount].Name, d)
					}
					continue
				}
				if i < 0 {
					t.Errorf("%s, %s pulled: %s, not among %+v", name, b.h.Mounts[mount].Name, p.Status, p.Alike)
					continue
				}
				if math.Abs(p.Alike[i].Ease-3) > 0.5 {
					t.Errorf("%s, %s: ease %g flats, want 3", name, b.h.Mounts[mount].Name, p.Alike[i].Ease)
				}
				if p.Status == Named {
					alone++
				}
				t.Logf("%s, %s: %s, %+v", name, b.h.Mounts[mount].Name, p.Status, p.Alike)
			}
		}
	}
	if alone == 0 {
		t.Error("no mount was named alone in any boat")
	}
}

// With all mounts tightened at once, the pair at least is right: what goes down
// fore does to the faces what would have to go up aft.
func TestPulledPairIsRight(t *testing.T) {
	b := newBoat(t, "Kittiwake")
	for mount := range b.h.Mounts {
		before, after := b.pulls(t, mount, -4)
		p := PulledBy(b.h, b.r, before, after, nil)
		if len(p.Alike) == 0 {
			t.Errorf("%s: %s", b.h.Mounts[mount].Name, p.Status)
		}
		for _, q := range p.Alike {
			if q.Steps >= 0 || b.h.Mounts[q.Mounts[0]].AtMM[0] != b.h.Mounts[mount].AtMM[0] {
				t.Errorf("%s pulled: %s named, %.1f flats", b.h.Mounts[mount].Name, b.h.Mounts[q.Mounts[0]].Name, q.Steps)
			}
		}
	}
}

// A clamp that slipped moves the faces to the side, which no nut does here.
func TestSlippedClampIsNamed(t *testing.T) {
	b := newBoat(t, "Kittiwake")
	for j, it := range b.r.Items {
		if !it.Slide {
			continue
		}
		before, after := b.pulls(t, j, -6) // 1.5 mm to starboard
		p := PulledBy(b.h, b.r, before, after, it.Mounts)
		if p.Status != Slipped || len(p.Alike) != 1 || !slices.Equal(p.Alike[0].Mounts, it.Mounts) || math.Abs(p.Alike[0].Ease-1.5) > 0.25 {
			t.Errorf("station %v slid: %s, %+v", it.Mounts, p.Status, p.Alike)
		}
	}
}

func TestPulledStatuses(t *testing.T) {
	h := &hulls.Hull{Mounts: []hulls.Mount{{Name: "a"}, {Name: "b"}, {Name: "c"}}}
	const thou = 0.0254
	// a and b move A alike and B apart; c does what a does.
	r := &response.Response{
		Items: []response.Item{{Mounts: []int{0}, MM: 1}, {Mounts: []int{1}, MM: 1}, {Mounts: []int{2}, MM: 1}, {Mounts: []int{0, 1}, Slide: true, MM: 0.25}},
		Mean:  []float64{-thou, 2 * thou, -thou, -2 * thou, -thou, 1.9 * thou, 0, -3 * thou},
		Cov:   mat.NewSymDense(8, nil),
	}
	for _, c := range []struct {
		name      string
		change    [2]float64 // thou
		tightened []int
		want      PullStatus
		mounts    []int // of the best
		ease      float64
	}{
		{"nothing", [2]float64{0.2, -0.3}, nil, Unmoved, nil, 0},
		{"a of a and b", [2]float64{2, -4}, []int{0, 1}, Named, []int{0}, 2},
		{"b of a and b", [2]float64{2, 4}, []int{0, 1}, Named, []int{1}, 2},
		{"a or c", [2]float64{2, -4}, nil, CannotTell, []int{0}, 2},
		{"c was not tightened", [2]float64{2, -4}, []int{0}, Named, []int{0}, 2},
		{"a crept up", [2]float64{-2, 4}, []int{0, 1}, Named, []int{0}, -2},
		{"the slide", [2]float64{0, 6}, []int{0, 1}, Slipped, []int{0, 1}, 0.5},
		{"nothing by itself", [2]float64{12, 0}, []int{0, 1}, NotOne, nil, 0},
		{"too far for a nut", [2]float64{10, -20}, []int{0}, NotOne, nil, 0},
	} {
		p := PulledBy(h, r, told(0, 0), told(c.change[0]*thou, c.change[1]*thou), c.tightened)
		if p.Status != c.want || (len(p.Alike) > 0) != (c.mounts != nil) {
			t.Errorf("%s: %s %+v, want %s", c.name, p.Status, p.Alike, c.want)
			continue
		}
		if c.mounts == nil {
			continue
		}
		if best := p.Alike[0]; !slices.Equal(best.Mounts, c.mounts) || math.Abs(best.Ease-c.ease) > 1e-9 {
			t.Errorf("%s: %+v, want mounts %v eased by %g", c.name, best, c.mounts, c.ease)
		}
	}
}

// Laws: what is asked twice is answered alike; a gap told less well is never told
// apart better; nothing tightened, nothing named.
func TestPulledLaws(t *testing.T) {
	b := newBoat(t, "Avocet")
	before, after := b.pulls(t, 2, -3)
	sharp := PulledBy(b.h, b.r, before, after, nil)
	blunt := func(g gauge.Gaussian) gauge.Gaussian {
		for i := range 2 {
			g.CovMM2[i][i] *= 16
		}
		return g
	}
	dull := PulledBy(b.h, b.r, blunt(before), blunt(after), nil)
	if dull.Status != Unmoved && len(dull.Alike) < len(sharp.Alike) {
		t.Errorf("told to 1 thou %d explain it, to a quarter %d", len(dull.Alike), len(sharp.Alike))
	}
	if p := PulledBy(b.h, b.r, before, after, []int{}); p.Status != NotOne || p.Alike != nil {
		t.Errorf("nothing tightened: %s, %+v", p.Status, p.Alike)
	}
	for _, name := range assets.HullNames() {
		b := newBoat(t, name)
		if p := PulledBy(b.h, b.r, told(0.1, 0.1), told(0.1, 0.1), nil); p.Status != Unmoved || p.Alike != nil || p.Others != nil {
			t.Errorf("%s: no change at all: %s", name, p.Status)
		}
	}
}

// A nut whose response is not well known explains what it would not if it were.
func TestUnsureResponseExplainsMore(t *testing.T) {
	const thou = 0.0254
	h := &hulls.Hull{Mounts: []hulls.Mount{{Name: "a"}}}
	r := &response.Response{Items: []response.Item{{Mounts: []int{0}, MM: 1}}, Mean: []float64{-2 * thou, 0}, Cov: mat.NewSymDense(2, nil)}
	before, after := told(0, 0), told(4*thou, 2*thou)
	if p := PulledBy(h, r, before, after, nil); p.Status != NotOne {
		t.Errorf("response known: %s", p.Status)
	}
	r.Cov = mat.NewSymDense(2, []float64{0, 0, 0, thou * thou})
	if p := PulledBy(h, r, before, after, nil); p.Status != Named || math.Abs(p.Alike[0].Ease-2) > 0.5 {
		t.Errorf("to the side known to a thou a flat: %s, %+v", p.Status, p.Alike)
	}
}
