package search

// This file holds the search against plain enumeration, on many small problems
// and as a fuzz test.

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"
)

// brute walks every move within range, with the stated rule for equals.
func brute(p Problem, mostEffort float64) Result {
	r := Result{Status: None}
	if mostEffort == 0 {
		mostEffort = math.Inf(1)
	}
	move := make([]int, len(p.Items))
	rank := 0.0
	var visit func(i int)
	visit = func(i int) {
		if i < len(move) {
			for x := p.Items[i].Least; x <= p.Items[i].Most; x++ {
				move[i] = x
				visit(i + 1)
			}
			return
		}
		for _, row := range p.Rows {
			sum, size := 0.0, math.Abs(row.Most)
			for j, x := range move {
				sum += row.Of[j] * float64(x)
				size = max(size, math.Abs(row.Of[j]))
			}
			if sum > row.Most+1e-9*size {
				return
			}
		}
		effort := 0.0
		for j, x := range move {
			if x != 0 {
				effort += p.Items[j].Fixed + p.Items[j].Each*math.Abs(float64(x))
			}
		}
		if effort > mostEffort+1e-9 || p.Accept != nil && !p.Accept(move) {
			return
		}
		own := 0.0
		if p.Prefer != nil {
			own = p.Prefer(move)
		}
		// Moves come first as lists first, so an equal never replaces.
		if r.Status == None || effort < r.Effort-1e-9 || effort < r.Effort+1e-9 && own < rank {
			r = Result{Status: Found, Move: slices.Clone(move), Effort: effort}
			rank = own
		}
	}
	visit(0)
	return r
}

// scramble is a number from 0 to 1 out of a move, the same each time and
// without any order to it.
func scramble(move []int, salt uint64) float64 {
	h := salt
	for _, x := range move {
		h = (h ^ uint64(x+1000)) * 0x9E3779B97F4A7C15
		h ^= h >> 29
	}
	return float64(h>>11) / (1 << 53)
}

// small makes a problem that brute can do. Numbers are coarse, so that efforts
// tie often and rows are met to the last digit, in units that round and units
// that do not.
func small(r *rand.Rand) Problem {
	n, reach := r.IntN(6), 5
	if r.IntN(8) == 0 {
		n, reach = r.IntN(3), 40 // far enough to walk a set in several goes
	}
	var p Problem
	minute := []float64{0.25, 0.1}[r.IntN(2)]
	for range n {
		it := Item{
			Least: -r.IntN(reach), Most: r.IntN(reach),
			Fixed: minute * float64(r.IntN(17)), Each: minute * float64(1+r.IntN(4)),
		}
		if r.IntN(5) == 0 {
			it.Least = 0
		}
		if r.IntN(3) == 0 {
			it.Fixed, it.Each = r.Float64()*4, 0.1+r.Float64()
		}
		p.Items = append(p.Items, it)
	}
	for range r.IntN(9) {
		unit := []float64{0.5, 0.5, 0.1, 1e-7 / 3, 7e5 / 3}[r.IntN(5)]
		row := Row{Of: make([]float64, n), Most: float64(r.IntN(13)-7) * unit}
		for i := range row.Of {
			row.Of[i] = float64(r.IntN(9)-4) * unit
			if r.IntN(8) == 0 {
				row.Of[i] = r.NormFloat64()
			}
		}
		if r.IntN(6) == 0 {
			row.Most = r.NormFloat64() * 3
		}
		p.Rows = append(p.Rows, row)
	}
	salt := r.Uint64()
	if share := r.Float64(); r.IntN(2) == 0 {
		if r.IntN(2) == 0 {
			share *= 0.1
		}
		p.Accept = func(move []int) bool { return scramble(move, salt) < share }
	}
	if r.IntN(2) == 0 {
		// Few values, so that preference ties as well.
		p.Prefer = func(move []int) float64 { return math.Floor(4 * scramble(move, salt+1)) }
	}
	return p
}

// same compares an answer with brute's.
func same(t *testing.T, p Problem, got, want Result) {
	t.Helper()
	if got.Status != want.Status {
		t.Fatalf("%v, want %v\n%+v", got, want, p)
	}
	if math.Abs(got.Effort-want.Effort) > 1e-9 || !slices.Equal(got.Move, want.Move) {
		t.Fatalf("%v, want %v\n%+v", got, want, p)
	}
}

func TestAgainstEnumeration(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	count := map[Status]int{}
	moved := 0
	for range 6000 {
		p, cap := small(r), 0.0
		if r.IntN(4) == 0 {
			cap = r.Float64() * 12
		}
		want := brute(p, cap)
		same(t, p, Least(p, Settings{MostEffort: cap}), want)
		count[want.Status]++
		if want.Effort > 0 {
			moved++
		}
	}
	t.Logf("%v, %d of them moved something", count, moved)
	if count[None] < 500 || moved < 500 {
		t.Errorf("%v, %d moved: the problems are too alike to tell much", count, moved)
	}
}

func FuzzAgainstEnumeration(f *testing.F) {
	for seed := range uint64(20) {
		f.Add(seed, seed*7, 0.0)
	}
	f.Add(uint64(3), uint64(9), 4.5)
	f.Fuzz(func(t *testing.T, a, b uint64, cap float64) {
		if !(cap >= 0) || math.IsInf(cap, 1) {
			return
		}
		p := small(rand.New(rand.NewPCG(a, b)))
		same(t, p, Least(p, Settings{MostEffort: cap}), brute(p, cap))
	})
}
