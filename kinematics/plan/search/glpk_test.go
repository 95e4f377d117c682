package search

// This file holds the search against GLPK's branch and cut, on the problems of
// testdata/glpk, which the benchmarks run as well. testdata/glpk/remake.py makes
// them and asks glpsol; the tests need neither.

import (
	"encoding/json"
	"math"
	"os"
	"testing"
)

// stored is a problem and glpsol's least effort, nil where it found that there
// is none.
type stored struct {
	name   string
	p      Problem
	effort *float64
}

func load(t testing.TB) []stored {
	t.Helper()
	data, err := os.ReadFile("testdata/glpk/problems.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Problems []struct {
			Name   string
			Items  [][4]float64 // least, most, fixed, each
			Rows   [][]float64  // the numbers, then the limit
			Effort *float64
		}
	}
	if err := json.Unmarshal(data, &file); err != nil {
		t.Fatal(err)
	}
	var all []stored
	for _, from := range file.Problems {
		s := stored{name: from.Name, effort: from.Effort}
		for _, it := range from.Items {
			s.p.Items = append(s.p.Items, Item{int(it[0]), int(it[1]), it[2], it[3]})
		}
		for _, row := range from.Rows {
			n := len(row) - 1
			s.p.Rows = append(s.p.Rows, Row{row[:n], row[n]})
		}
		all = append(all, s)
	}
	return all
}

func TestAgainstGLPK(t *testing.T) {
	all := load(t)
	none := 0
	for _, s := range all {
		got := Least(s.p, Settings{})
		t.Logf("%s: %v %v %v nodes", s.name, got.Status, got.Effort, got.Nodes)
		if s.effort == nil {
			none++
			if got.Status != None {
				t.Errorf("%s: %v, want none", s.name, got)
			}
			continue
		}
		if got.Status != Found || math.Abs(got.Effort-*s.effort) > 1e-6 {
			t.Errorf("%s: %v, want effort %v", s.name, got, *s.effort)
		}
	}
	if len(all) < 60 || none < 5 {
		t.Errorf("%d problems, %d of them without an answer: too few to tell", len(all), none)
	}
}
