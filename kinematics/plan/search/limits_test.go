package search

// This file holds what ends a search early, and what it refuses to start on.

import (
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
)

func refuse([]int) bool { return false }

// TestStoppedTellsTheTruth cuts searches short at all lengths.
func TestStoppedTellsTheTruth(t *testing.T) {
	r := rand.New(rand.NewPCG(14, 15))
	stopped, withMove := 0, 0
	for range 400 {
		p := small(r)
		least := brute(p, 0)
		for most := 1; most < 3000; most += 1 + most/30 {
			got := Least(p, Settings{MostNodes: most})
			// A set is bounded or a step tried before the count is looked at.
			if got.Nodes > most+setNodes {
				t.Fatalf("%d nodes, allowed %d\n%+v", got.Nodes, most, p)
			}
			if got.Status != Stopped {
				same(t, p, got, least)
				break
			}
			stopped++
			if least.Status == Found && got.Bound > least.Effort+1e-9 {
				t.Fatalf("stopped at %d: bound %v, but %v takes %v\n%+v", most, got.Bound, least.Move, least.Effort, p)
			}
			if got.Move == nil {
				continue
			}
			withMove++
			only := p
			only.Accept = func(m []int) bool { return slices.Equal(m, got.Move) && (p.Accept == nil || p.Accept(m)) }
			if as := brute(only, 0); as.Status != Found || !near(as.Effort, got.Effort) || got.Bound > got.Effort {
				t.Fatalf("stopped at %d with %v, which is %v\n%+v", most, got, as, p)
			}
		}
	}
	if stopped < 300 || withMove < 30 {
		t.Errorf("stopped %d times, %d with a move: too few to tell", stopped, withMove)
	}
}

// TestARefusingAcceptStops also looks at how far the search has come by then:
// its bound ought to rise with the nodes allowed.
func TestARefusingAcceptStops(t *testing.T) {
	p := load(t)[0].p
	p.Accept = refuse
	before := -1.0
	for _, most := range []int{1000, 10_000, 100_000, 500_000} {
		got := Least(p, Settings{MostNodes: most})
		t.Logf("%d nodes: bound %.2f", most, got.Bound)
		if got.Status != Stopped || got.Move != nil || got.Nodes > most+setNodes {
			t.Errorf("%v, want stopped without a move after %d", got, most)
		}
		if got.Bound <= before {
			t.Errorf("bound %v after %d nodes, %v before", got.Bound, most, before)
		}
		before = got.Bound
	}
}

// TestWalkingDoesNotAllocate compares a short search with a long one: all that
// the long one may add is the growing of the queue of sets.
func TestWalkingDoesNotAllocate(t *testing.T) {
	p := load(t)[0].p
	p.Accept = refuse
	count := func(most int) float64 {
		return testing.AllocsPerRun(1, func() { Least(p, Settings{MostNodes: most}) })
	}
	if short, long := count(5000), count(200_000); long > short+8 {
		t.Errorf("%v allocations in 5000 nodes, %v in 200000", short, long)
	}
}

func TestMostEffortCaps(t *testing.T) {
	for _, s := range load(t)[:20] {
		if s.effort == nil {
			continue
		}
		if got := Least(s.p, Settings{MostEffort: *s.effort}); got.Status != Found {
			t.Errorf("%s: %v under a cap of its own effort %v", s.name, got, *s.effort)
		}
		cap := *s.effort - 0.001
		if got := Least(s.p, Settings{MostEffort: cap}); got.Status != None || got.Bound != cap || got.Move != nil {
			t.Errorf("%s: %v under a cap of %v", s.name, got, cap)
		}
	}
}

func TestEdges(t *testing.T) {
	inf := math.Inf(1)
	one := []Item{{Least: -3, Most: 3, Fixed: 1, Each: 1}}
	for _, c := range []struct {
		name   string
		p      Problem
		status Status
		move   []int
	}{
		{"no item", Problem{}, Found, []int{}},
		{"no item, a limit missed", Problem{Rows: []Row{{nil, -1}}}, None, nil},
		{"no item, refused", Problem{Accept: refuse}, None, nil},
		{"no limit", Problem{Items: one, Rows: []Row{{[]float64{1}, inf}}}, Found, []int{0}},
		{"already kept", Problem{Items: one, Rows: []Row{{[]float64{1}, 0}}}, Found, []int{0}},
		{"a row of nothing", Problem{Items: one, Rows: []Row{{[]float64{0}, -1}}}, None, nil},
		{"stuck", Problem{Items: make([]Item, 0), Rows: []Row{{[]float64{}, 0}}}, Found, []int{}},
		{"missed by rounding alone", Problem{Items: one, Rows: []Row{{[]float64{0.1}, -0.1 - 1e-12}}}, Found, []int{-1}},
		{"missed by more than the slack", Problem{Items: one, Rows: []Row{{[]float64{0.1}, -0.1 - 1e-9}}}, Found, []int{-2}},
		{"out of reach", Problem{Items: one, Rows: []Row{{[]float64{1}, -3.5}}}, None, nil},
		{"between two steps", Problem{Items: one, Rows: []Row{{[]float64{1}, -1.25}, {[]float64{-1}, 1.75}}}, None, nil},
		{"either way, the lower", Problem{Items: one, Accept: func(m []int) bool { return m[0] != 0 }}, Found, []int{-1}},
		{"either way, the preferred", Problem{
			Items:  one,
			Accept: func(m []int) bool { return m[0] != 0 },
			Prefer: func(m []int) float64 { return -float64(m[0]) },
		}, Found, []int{1}},
		{"a preference that is no number", Problem{
			Items:  one,
			Accept: func(m []int) bool { return m[0] != 0 },
			Prefer: func(m []int) float64 { return math.Sqrt(float64(m[0])) },
		}, Found, []int{1}},
	} {
		got := Least(c.p, Settings{})
		if got.Status != c.status || !slices.Equal(got.Move, c.move) || (got.Move == nil) != (c.move == nil) {
			t.Errorf("%s: %v, want %v %v", c.name, got, c.status, c.move)
		}
	}
}

func TestMistakesPanic(t *testing.T) {
	ok := Item{Least: -1, Most: 1, Each: 1}
	for _, c := range []struct {
		want string
		p    Problem
		s    Settings
	}{
		{"item 0 ranges 1 to 2", Problem{Items: []Item{{Least: 1, Most: 2, Each: 1}}}, Settings{}},
		{"item 1 has Fixed -1", Problem{Items: []Item{ok, {Fixed: -1, Each: 1}}}, Settings{}},
		{"item 0 has Each 0", Problem{Items: []Item{{Most: 1}}}, Settings{}},
		{"row 0 has 2 numbers for 1 items", Problem{Items: []Item{ok}, Rows: []Row{{[]float64{1, 2}, 0}}}, Settings{}},
		{"row 0 has NaN for item 0", Problem{Items: []Item{ok}, Rows: []Row{{[]float64{math.NaN()}, 0}}}, Settings{}},
		{"row 0 has Most NaN", Problem{Items: []Item{ok}, Rows: []Row{{[]float64{1}, math.NaN()}}}, Settings{}},
		{"65 items can move, at most 64", Problem{Items: slices.Repeat([]Item{ok}, 65)}, Settings{}},
		{"MostEffort -1", Problem{}, Settings{MostEffort: -1}},
		{"MostNodes -1", Problem{}, Settings{MostNodes: -1}},
	} {
		func() {
			defer func() {
				if got, _ := recover().(string); !strings.Contains(got, c.want) {
					t.Errorf("panic %q, want %q in it", got, c.want)
				}
			}()
			Least(c.p, c.s)
		}()
	}
}
