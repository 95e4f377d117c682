package search

// This file holds what goes in and what comes out.

import (
	"fmt"
	"math"
)

// Item is one thing that can be moved in whole steps.
type Item struct {
	Least, Most int     // allowed, Least <= 0 <= Most
	Fixed       float64 // effort once it is touched at all, >= 0
	Each        float64 // effort of each step, > 0
}

// Row is a linear limit: sum of Of[i]*move[i] <= Most. A Most of +Inf is no
// limit.
type Row struct {
	Of   []float64
	Most float64
}

// Problem is the items, what limits them, and which moves are liked.
type Problem struct {
	Items []Item
	Rows  []Row

	// Accept is a further test of a move that keeps all rows; nil: none. It
	// must give the same answer each time, and neither keep nor change the
	// slice.
	Accept func(move []int) bool

	// Prefer chooses among accepted moves of equal effort: the least is taken,
	// NaN counting as +Inf. Among equals, and where Prefer is nil, the move
	// that is first as a list of numbers is taken: -2 before 1 in the first
	// item where they differ. It must not keep or change the slice.
	Prefer func(move []int) float64
}

// Settings limit the search.
type Settings struct {
	// MostNodes limits the work, in steps tried; 0: DefaultMostNodes.
	MostNodes int
	// MostEffort is the largest effort wanted; 0: no cap.
	MostEffort float64
}

// DefaultMostNodes keeps a search that must enumerate to a few seconds.
const DefaultMostNodes = 20_000_000

// Status says how a search ended.
type Status int

const (
	// Found: Move is of least effort.
	Found Status = iota
	// None: proved, no move within range and MostEffort keeps the limits.
	None
	// Stopped: MostNodes was reached. Move is the best seen, nil if none.
	Stopped
)

func (s Status) String() string {
	switch s {
	case Found:
		return "found"
	case None:
		return "none"
	case Stopped:
		return "stopped"
	}
	return fmt.Sprintf("Status(%d)", int(s))
}

// Result is the answer and how it was come by.
type Result struct {
	Status Status
	Move   []int   // one number for each item; nil when there is none
	Effort float64 // of Move
	// Bound is what no move can take less than: Effort when Found, the cap or
	// +Inf when None, and when Stopped whatever was settled by then.
	Bound float64
	Nodes int // steps tried, the work on a set counted as setNodes of them
}

// equalEffort is how near two efforts count as equal.
const equalEffort = 1e-9

// rowSlack is the slack on a row, in units of its largest number.
const rowSlack = 1e-9

// Least finds the move of least effort. A problem that makes no sense (lists of
// different length, a range without 0, a number that is not one) panics.
func Least(p Problem, s Settings) Result {
	p.check()
	if s.MostNodes < 0 || !(s.MostEffort >= 0) {
		panic(fmt.Sprintf("search: MostNodes %d, MostEffort %v, want 0 or more", s.MostNodes, s.MostEffort))
	}
	most := s.MostNodes
	if most == 0 {
		most = DefaultMostNodes
	}
	best := newBest(p, s.MostEffort)
	m, ok := newModel(p)
	if !ok {
		return Result{Status: None, Bound: best.cap}
	}
	t := newSets(m, best, most)
	bound, done := t.search()
	r := Result{Status: Stopped, Bound: bound, Nodes: t.nodes}
	if best.seen {
		r.Move, r.Effort = best.move, best.effort
		r.Bound = min(bound, best.effort)
	}
	if done {
		r.Status, r.Bound = None, best.cap
		if best.seen {
			r.Status, r.Bound = Found, best.effort
		}
	}
	return r
}

// check panics on what only a mistake in the calling program can bring about.
func (p Problem) check() {
	for i, it := range p.Items {
		if it.Least > 0 || it.Most < 0 {
			panic(fmt.Sprintf("search: item %d ranges %d to %d, which leaves out 0", i, it.Least, it.Most))
		}
		if !(it.Fixed >= 0) || math.IsInf(it.Fixed, 1) {
			panic(fmt.Sprintf("search: item %d has Fixed %v, want 0 or more", i, it.Fixed))
		}
		if !(it.Each > 0) || math.IsInf(it.Each, 1) {
			panic(fmt.Sprintf("search: item %d has Each %v, want more than 0", i, it.Each))
		}
	}
	for k, row := range p.Rows {
		if len(row.Of) != len(p.Items) {
			panic(fmt.Sprintf("search: row %d has %d numbers for %d items", k, len(row.Of), len(p.Items)))
		}
		if math.IsNaN(row.Most) || math.IsInf(row.Most, -1) {
			panic(fmt.Sprintf("search: row %d has Most %v", k, row.Most))
		}
		for i, of := range row.Of {
			if math.IsNaN(of) || math.IsInf(of, 0) {
				panic(fmt.Sprintf("search: row %d has %v for item %d", k, of, i))
			}
		}
	}
}
