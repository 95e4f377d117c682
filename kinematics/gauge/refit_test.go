package gauge

// This file holds the estimates of the built-in visits to fits by R's
// survival::survreg, whose rows testdata/refit.R builds from the same files.

import (
	"encoding/json"
	"math"
	"os"
	"testing"

	"aligner/hulls/visit/builtin"
)

// refitted is one visit of testdata/refit.json: every state's A and B in turn.
type refitted struct {
	Name       string      `json:"name"`
	Untrue     [2]bool     `json:"untrue"`
	Touching   []bool      `json:"touching"`
	Rows       int         `json:"rows"`
	GapMM      []float64   `json:"gap_mm"`
	Covariance [][]float64 `json:"covariance_mm2"`
}

func refits(t *testing.T) []refitted {
	t.Helper()
	raw, err := os.ReadFile("testdata/refit.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Visits []refitted `json:"visits"`
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		t.Fatal(err)
	}
	if len(file.Visits) < 5 {
		t.Fatalf("only %d visits refitted", len(file.Visits))
	}
	return file.Visits
}

// estimated is the program's own estimate of a built-in visit.
func estimated(t *testing.T, name string) *Estimate {
	t.Helper()
	doc := builtin.Visit(t, name)
	m, err := NewModel(&doc.Hull, doc.Visit.State.Afloat())
	if err != nil {
		t.Fatal(err)
	}
	e, err := m.Estimate(&doc.Visit)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

// refitPart is what an A or B may be off, of itself or of its standard
// deviation, whichever is the larger: a gap near nought is known to its error
// only. Elements of the covariance are held to the same part of the two
// deviations' product.
const refitPart = 1e-6

func TestAgainstRefits(t *testing.T) {
	for _, r := range refits(t) {
		t.Run(r.Name, func(t *testing.T) {
			e := estimated(t, r.Name)
			if len(e.Odd) > 0 {
				t.Fatalf("odd readings, which the refit has not left out: %v", e.Odd)
			}
			sameBeliefs(t, r, e)
			if 2*len(e.States) != len(r.GapMM) {
				t.Fatalf("%d states, refitted %d numbers", len(e.States), len(r.GapMM))
			}
			worst, worstCov := 0.0, 0.0
			for i, want := range r.GapMM {
				got := [2]float64{e.States[i/2].CosMM, e.States[i/2].SinMM}[i%2]
				sd := math.Sqrt(r.Covariance[i][i])
				worst = math.Max(worst, math.Abs(got-want)/math.Max(math.Abs(want), sd))
				for j, c := range r.Covariance[i] {
					size := sd * math.Sqrt(r.Covariance[j][j])
					worstCov = math.Max(worstCov, math.Abs(e.StateCovMM2.At(i, j)-c)/size)
				}
			}
			t.Logf("off by %.1e, covariance by %.1e", worst, worstCov)
			if worst > refitPart || worstCov > refitPart {
				t.Errorf("off by %.2e, covariance by %.2e of its size; at most %g", worst, worstCov, refitPart)
			}
		})
	}
}

// sameBeliefs: the refit was told which beliefs hold; the estimate found them.
func sameBeliefs(t *testing.T, r refitted, e *Estimate) {
	t.Helper()
	if e.Status == Ready {
		for half := range 2 {
			if e.RunOut[half].Untrue != r.Untrue[half] {
				t.Errorf("half %d untrue: %v, refitted with %v", half, e.RunOut[half].Untrue, r.Untrue[half])
			}
		}
	}
	if len(e.Seatings) != len(r.Touching) {
		t.Fatalf("%d seatings, refitted %d", len(e.Seatings), len(r.Touching))
	}
	for s, seat := range e.Seatings {
		if seat.Touched != r.Touching[s] {
			t.Errorf("seating %d touches: %v, refitted with %v", s, seat.Touched, r.Touching[s])
		}
	}
}
