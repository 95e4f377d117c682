package job

// This file names the mount that pulled in boats whose numbers are not those of
// the hull file: stiffness off by up to 30 %, places by 5 mm, the gap read with
// an error of a quarter of a thou.

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"aligner/hulls"
	"aligner/kinematics"
)

// otherwise is the hull with its numbers off by what a drawing is off.
func otherwise(h *hulls.Hull, r *rand.Rand) hulls.Hull {
	off := func(part float64) float64 { return part * (2*r.Float64() - 1) }
	c := *h
	c.Mounts = slices.Clone(h.Mounts)
	for i := range c.Mounts {
		m := &c.Mounts[i]
		m.StiffnessNPerMM.Along *= 1 + off(0.3)
		m.StiffnessNPerMM.ForeAft *= 1 + off(0.3)
		m.StiffnessNPerMM.Athwart *= 1 + off(0.3)
		for k := range 3 {
			m.AtMM[k] += off(5)
		}
	}
	return c
}

// TestPulledInOtherBoats: of a hundred pulls of two to four flats, the mount is
// among those named in all but a few, and hardly ever is another named alone.
func TestPulledInOtherBoats(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	const sd = 0.25 * 0.0254
	var among, alone, wrong, unmoved, far int
	const n = 100
	for _, name := range []string{"Eider", "Wren"} {
		b := newBoat(t, name)
		for range n / 2 {
			truth := otherwise(b.h, r)
			line, err := kinematics.Prepare(truth)
			if err != nil {
				t.Fatal(err)
			}
			mount, flats := r.IntN(4), 2+2*r.Float64()
			var gaps [2][2]float64
			for i := range 2 {
				s := kinematics.State{Held: kinematics.Seated, LiftMM: make([]float64, 4)}
				s.LiftMM[mount] = -float64(i) * flats * truth.Mounts[mount].LiftPerStepMM()
				var got kinematics.Result
				if err := line.Solve(&s, &got); err != nil {
					t.Fatal(err)
				}
				gaps[i] = [2]float64{got.Gap.CosMM + sd*r.NormFloat64(), got.Gap.SinMM + sd*r.NormFloat64()}
			}
			p := PulledBy(b.h, b.r, told(gaps[0][0], gaps[0][1]), told(gaps[1][0], gaps[1][1]), nil)
			i := slices.IndexFunc(p.Alike, func(q Pull) bool { return !q.Slide && q.Mounts[0] == mount })
			switch {
			case p.Status == Unmoved:
				unmoved++
			case i < 0:
				wrong++
			default:
				among++
				if p.Status == Named {
					alone++
				}
				if math.Abs(p.Alike[i].Ease-flats) > 1.5 {
					far++
				}
			}
		}
	}
	t.Logf("of %d pulls: among those named %d (alone %d), missed %d, told as no change %d; mend off by over 1.5 flats %d", n, among, alone, wrong, unmoved, far)
	if among < 90 || wrong > 3 || far > 5 || alone == 0 {
		t.Errorf("among those named %d of %d, missed %d, mend far off %d, alone %d", among, n, wrong, far, alone)
	}
}
