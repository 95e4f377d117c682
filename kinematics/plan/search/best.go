package search

// This file holds the best move seen so far and what it takes to replace it.

import (
	"math"
	"slices"
)

// best is the best move seen, checked against the problem as it was given.
type best struct {
	p      Problem
	most   []float64 // each row's Most with its slack
	cap    float64   // MostEffort, +Inf when there is none
	seen   bool
	move   []int
	effort float64
	rank   float64 // what Prefer gave
	try    []int   // the move handed to Accept and Prefer
}

func newBest(p Problem, mostEffort float64) *best {
	b := &best{p: p, cap: math.Inf(1), move: make([]int, len(p.Items)), try: make([]int, len(p.Items))}
	if mostEffort > 0 {
		b.cap = mostEffort
	}
	for _, row := range p.Rows {
		b.most = append(b.most, row.Most+rowSlack*row.size())
	}
	return b
}

// size is the largest number of a row, the unit of its slack.
func (r Row) size() float64 {
	size := math.Abs(r.Most)
	if math.IsInf(size, 1) {
		size = 0
	}
	for _, of := range r.Of {
		size = max(size, math.Abs(of))
	}
	return size
}

// ceiling is the effort above which a move is of no more interest. Below it by
// less than equalEffort a move may still be preferred.
func (b *best) ceiling() float64 {
	if b.seen {
		return min(b.cap, b.effort) + equalEffort
	}
	return b.cap + equalEffort
}

// offer takes the move in b.try if it keeps the rows, is accepted, and beats
// the one held.
func (b *best) offer() {
	effort := b.p.effort(b.try)
	if effort > b.ceiling() {
		return
	}
	tied := b.seen && effort >= b.effort-equalEffort
	if tied && b.p.Prefer == nil && slices.Compare(b.try, b.move) >= 0 {
		return
	}
	if !b.keeps() || b.p.Accept != nil && !b.p.Accept(b.try) {
		return
	}
	rank := 0.0
	if b.p.Prefer != nil {
		if rank = b.p.Prefer(b.try); math.IsNaN(rank) {
			rank = math.Inf(1)
		}
	}
	if tied && (rank > b.rank || rank == b.rank && slices.Compare(b.try, b.move) >= 0) {
		return
	}
	b.seen, b.effort, b.rank = true, effort, rank
	copy(b.move, b.try)
}

// effort of a move, added in the order of the items.
func (p Problem) effort(move []int) float64 {
	sum := 0.0
	for i, x := range move {
		if x != 0 {
			sum += p.Items[i].Fixed + p.Items[i].Each*math.Abs(float64(x))
		}
	}
	return sum
}

// keeps reports whether b.try keeps every row.
func (b *best) keeps() bool {
	for k, row := range b.p.Rows {
		sum := 0.0
		for i, x := range b.try {
			sum += row.Of[i] * float64(x)
		}
		if sum > b.most[k] {
			return false
		}
	}
	return true
}
