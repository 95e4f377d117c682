package response

// A boat whose rubber is not what her file says is predicted better once she has
// answered; how sure that is gets better too, and never worse; answers of another
// way of holding the shaft are left alone.

import (
	"math"
	"math/rand/v2"
	"testing"

	"aligner/hulls"
	"aligner/kinematics"
)

// answer is what a true boat answers to flats of one nut, gauged with an error.
func answer(t *testing.T, truth *hulls.Hull, items []Item, nut int, flats, errorMM float64, r *rand.Rand) hulls.Measured {
	t.Helper()
	line, err := kinematics.Prepare(*truth)
	if err != nil {
		t.Fatal(err)
	}
	var gap [2]hulls.FaceGap
	for k := range gap {
		s := kinematics.State{Held: kinematics.Seated, LiftMM: make([]float64, len(truth.Mounts)), SlideMM: make([]float64, len(truth.Mounts))}
		s.LiftMM[nut] = float64(k) * flats * items[nut].MM
		var got kinematics.Result
		if err := line.Solve(&s, &got); err != nil {
			t.Fatal(err)
		}
		gap[k] = hulls.FaceGap{CosMM: got.Gap.CosMM + errorMM*r.NormFloat64(), SinMM: got.Gap.SinMM + errorMM*r.NormFloat64()}
	}
	return hulls.Measured{NutFlats: map[string]float64{truth.Mounts[nut].Name: flats}, Held: "seated", Before: gap[0], After: gap[1], ErrorMM: errorMM}
}

// off is how far a model's nuts are from the truth, in all.
func off(t *testing.T, h, truth *hulls.Hull) (distance, said float64) {
	t.Helper()
	m, err := NewModel(h, kinematics.Seated, false)
	if err != nil {
		t.Fatal(err)
	}
	r, err := m.At(nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	want, err := Mean(truth, m.Items, kinematics.Seated, false)
	if err != nil {
		t.Fatal(err)
	}
	for i := range want {
		if !m.Items[i/2].Slide {
			distance += (r.Mean[i] - want[i]) * (r.Mean[i] - want[i])
			said += r.Cov.At(i, i)
		}
	}
	return math.Sqrt(distance), math.Sqrt(said)
}

func TestMeasuredResponseFitsTheBoat(t *testing.T) {
	const boats = 30
	r := rand.New(rand.NewPCG(3, 4))
	better, before, after := 0, 0.0, 0.0
	for n := range boats {
		h := hull(t, []string{"kittiwake", "eider", "wren"}[n%3])
		truth := h.Clone()
		for i := range truth.Mounts { // each a third stiffer or softer: all of its tolerance
			s := &truth.Mounts[i].StiffnessNPerMM
			part := 1 + 0.3*float64(1-2*r.IntN(2))
			s.Along, s.ForeAft, s.Athwart = s.Along*part, s.ForeAft*part, s.Athwart*part
		}
		items := Items(h)
		fitted := h.Clone()
		for _, nut := range []int{0, 1, 2} { // half a thou of error, six flats
			fitted.MeasuredResponse = append(fitted.MeasuredResponse, answer(t, &truth, items, nut, 6, 0.0127, r))
		}
		was, wasSaid := off(t, h, &truth)
		is, isSaid := off(t, &fitted, &truth)
		if is < was {
			better++
		}
		before, after = before+was, after+is
		if isSaid > wasSaid*1.0001 {
			t.Errorf("boat %d: less sure after it answered: %g, %g", n, isSaid, wasSaid)
		}
	}
	t.Logf("%d of %d boats predicted better; %.2f of the error is left", better, boats, after/before)
	if better < boats*8/10 || after > 0.6*before {
		t.Errorf("%d of %d boats predicted better; %.2f of the error is left", better, boats, after/before)
	}
}

func TestMeasuredOtherwiseHeldIsLeftAlone(t *testing.T) {
	h := hull(t, "kittiwake")
	m, err := NewModel(h, kinematics.Seated, false)
	if err != nil {
		t.Fatal(err)
	}
	other := h.Clone()
	other.MeasuredResponse = []hulls.Measured{{NutFlats: map[string]float64{"fore port": 3}, Held: "centred", After: hulls.FaceGap{CosMM: 1}, ErrorMM: 0.01}}
	o, err := NewModel(&other, kinematics.Seated, false)
	if err != nil {
		t.Fatal(err)
	}
	a, _ := m.At(nil, nil)
	b, _ := o.At(nil, nil)
	for i := range a.Mean {
		if a.Mean[i] != b.Mean[i] {
			t.Fatalf("element %d: %g, %g", i, a.Mean[i], b.Mean[i])
		}
	}
	if o.Measured != 0 {
		t.Errorf("%d answers learnt", o.Measured)
	}
}
