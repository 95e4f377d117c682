package search

// This file holds the laws of doc.go.

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
)

// quick is every stored problem that takes next to no time, and some small ones.
func quick(t testing.TB) []stored {
	t.Helper()
	var all []stored
	for _, s := range load(t) {
		if len(s.p.Items) == 6 && !strings.HasPrefix(s.name, "four-fine") {
			all = append(all, s)
		}
	}
	r := rand.New(rand.NewPCG(3, 4))
	for i := range 400 {
		all = append(all, stored{name: fmt.Sprintf("small-%d", i), p: small(r)})
	}
	return all
}

// effortOf is the least effort, +Inf where nothing will do.
func effortOf(p Problem) float64 {
	r := Least(p, Settings{})
	if r.Status == None {
		return math.Inf(1)
	}
	return r.Effort
}

func near(a, b float64) bool { return a == b || math.Abs(a-b) <= 1e-9 }

func TestLooseningARowNeverRaisesTheEffort(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	lowered := 0
	for _, s := range quick(t) {
		p := s.p
		p.Accept = nil
		if len(p.Rows) == 0 {
			continue
		}
		before := effortOf(p)
		p.Rows = slices.Clone(p.Rows)
		k := r.IntN(len(p.Rows))
		p.Rows[k].Most += 3 * r.Float64()
		after := effortOf(p)
		if after > before+1e-9 {
			t.Errorf("%s: row %d loosened takes %v, before %v", s.name, k, after, before)
		}
		if after < before-1e-9 {
			lowered++
		}
	}
	if lowered < 20 {
		t.Errorf("only %d efforts fell: the rows loosened do not matter", lowered)
	}
}

// shuffled is the problem with items and rows in another order: item i of it is
// item at[i] of p.
func shuffled(p Problem, r *rand.Rand) (q Problem, at []int) {
	at = r.Perm(len(p.Items))
	for _, i := range at {
		q.Items = append(q.Items, p.Items[i])
	}
	for _, k := range r.Perm(len(p.Rows)) {
		row := Row{Most: p.Rows[k].Most}
		for _, i := range at {
			row.Of = append(row.Of, p.Rows[k].Of[i])
		}
		q.Rows = append(q.Rows, row)
	}
	if p.Accept != nil {
		old := make([]int, len(at))
		q.Accept = func(move []int) bool {
			for j, i := range at {
				old[i] = move[j]
			}
			return p.Accept(old)
		}
	}
	return q, at
}

func TestTheOrderOfItemsDoesNotMatter(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for _, s := range quick(t) {
		s.p.Prefer = nil
		q, at := shuffled(s.p, r)
		if a, b := effortOf(s.p), effortOf(q); !near(a, b) {
			t.Errorf("%s: %v, in the order %v %v", s.name, a, at, b)
		}
	}
}

func TestAMirroredItemMirrorsTheMove(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	for _, s := range quick(t) {
		if len(s.p.Items) == 0 {
			continue
		}
		i := r.IntN(len(s.p.Items))
		back := func(move []int) []int {
			old := slices.Clone(move)
			old[i] = -old[i]
			return old
		}
		// A preference without ties picks one move, so that the moves
		// themselves can be compared.
		p := s.p
		p.Prefer = func(move []int) float64 { return scramble(move, 11) }
		q := Problem{Items: slices.Clone(p.Items)}
		q.Items[i].Least, q.Items[i].Most = -p.Items[i].Most, -p.Items[i].Least
		for _, row := range p.Rows {
			row.Of = slices.Clone(row.Of)
			row.Of[i] = -row.Of[i]
			q.Rows = append(q.Rows, row)
		}
		if p.Accept != nil {
			q.Accept = func(move []int) bool { return p.Accept(back(move)) }
		}
		q.Prefer = func(move []int) float64 { return p.Prefer(back(move)) }
		a, b := Least(p, Settings{}), Least(q, Settings{})
		if a.Status != b.Status || !near(a.Effort, b.Effort) || a.Move != nil && !slices.Equal(a.Move, back(b.Move)) {
			t.Errorf("%s: %v, with item %d mirrored %v", s.name, a, i, b)
		}
	}
}

func TestTheSameProblemGivesTheSameResult(t *testing.T) {
	for _, s := range quick(t) {
		a, b := Least(s.p, Settings{}), Least(s.p, Settings{})
		if a.Status != b.Status || a.Effort != b.Effort || a.Nodes != b.Nodes || !slices.Equal(a.Move, b.Move) {
			t.Errorf("%s: %v, then %v", s.name, a, b)
		}
	}
}

// TestAcceptSeesEachMoveOnce also looks at what it is shown.
func TestAcceptSeesEachMoveOnce(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 13))
	shown := 0
	for range 300 {
		p := small(r)
		seen := map[string]bool{}
		p.Accept = func(move []int) bool {
			key := fmt.Sprint(move)
			if seen[key] {
				t.Errorf("shown %v again\n%+v", move, p)
			}
			seen[key] = true
			shown++
			for i, it := range p.Items {
				if move[i] < it.Least || move[i] > it.Most {
					t.Errorf("shown %v, out of range\n%+v", move, p)
				}
			}
			return false
		}
		got := Least(p, Settings{})
		want := 0
		all := p
		all.Accept = func([]int) bool { want++; return false }
		brute(all, 0)
		if got.Status != None || len(seen) != want {
			t.Errorf("%v after %d moves, want all %d refused\n%+v", got.Status, len(seen), want, p)
		}
	}
	if shown < 1000 {
		t.Errorf("only %d moves shown", shown)
	}
}

func ExampleLeast() {
	// Bring 7 within 1 of 0 by steps of 2 and of 3, the latter dear to touch.
	p := Problem{
		Items: []Item{
			{Least: -5, Most: 5, Fixed: 1, Each: 1},
			{Least: -5, Most: 5, Fixed: 4, Each: 1},
		},
		Rows: []Row{
			{Of: []float64{2, 3}, Most: 1 - 7},
			{Of: []float64{-2, -3}, Most: 1 + 7},
		},
	}
	r := Least(p, Settings{})
	fmt.Println(r.Status, r.Move, r.Effort)
	// Output: found [-3 0] 4
}
