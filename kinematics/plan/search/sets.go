package search

// This file holds the upper search: which items are touched, best first.

import "math/bits"

// setNodes is what bounding one set counts for among the nodes: about as long
// as trying so many steps.
const setNodes = 50

// node is a set with what is known of it.
type node struct {
	in, out uint64  // masks
	bound   float64 // no move of it takes less
	walked  float64 // moves up to this effort have been tried; -1: none
	order   int     // of making, to part equals the same way each time
}

// before is the order of the queue: least bound first; of equals the one with
// fewest open items, then the older.
func (a node) before(b node) bool {
	if a.bound != b.bound {
		return a.bound < b.bound
	}
	if x, y := bits.OnesCount64(a.in|a.out), bits.OnesCount64(b.in|b.out); x != y {
		return x > y
	}
	return a.order < b.order
}

// sets is the search over sets.
type sets struct {
	m     *model
	best  *best
	set   *set
	lp    *simplex
	walk  *walk
	queue []node // a binary heap
	made  int
	nodes int
	most  int
	all   uint64
	step  float64   // the largest Each
	share []float64 // scratch
}

func newSets(m *model, b *best, mostNodes int) *sets {
	n := len(m.items)
	t := &sets{
		m: m, best: b, set: newSet(m), lp: newSimplex(m), most: mostNodes,
		all: 1<<n - 1, share: make([]float64, n),
	}
	t.walk = newWalk(t)
	for _, it := range m.items {
		t.step = max(t.step, it.Each)
	}
	return t
}

// search runs until nothing left can beat the best, done, or the nodes are used
// up. No move that was not tried takes less than bound.
func (t *sets) search() (bound float64, done bool) {
	t.push(node{walked: -1})
	for len(t.queue) > 0 {
		n := t.pop()
		settled := n.bound
		if settled > t.best.ceiling() {
			return settled, true
		}
		if t.nodes >= t.most {
			return settled, false
		}
		switch {
		case !t.judge(&n):
		case len(t.queue) > 0 && n.bound > t.queue[0].bound:
			t.push(n) // others promise more
		case n.in|n.out != t.all:
			t.split(n)
		case !t.walkOn(n):
			return settled, false
		}
	}
	return t.best.ceiling(), true
}

// judge spells out a node under the ceiling at hand, bounds it, and leaves the
// multipliers in t.set. It reports false if the node has no move to offer.
func (t *sets) judge(n *node) bool {
	ceiling := t.best.ceiling()
	t.nodes += setNodes
	if !t.set.spell(n.in, n.out, ceiling) {
		return false
	}
	for i, st := range t.set.state {
		if st == out {
			n.out |= 1 << i
		}
	}
	if !t.lp.multipliers(t.set) {
		if t.set.contradicts() {
			return false
		}
		// Rounding left the proof short: go on with the bound at hand.
		clear(t.set.y)
	}
	n.bound = max(n.bound, t.set.bound())
	return n.bound <= ceiling
}

// split parts a node by the open item of which the relaxed answer has paid the
// least that it ought to have.
func (t *sets) split(n node) {
	t.lp.moved(t.share)
	item, most := -1, -1.0
	for i, st := range t.set.state {
		if st != open {
			continue
		}
		owed := 0.0
		if t.share[i] > simplexEps {
			owed = (1 - t.share[i]) * t.m.items[i].Fixed
		}
		if owed > most {
			item, most = i, owed
		}
	}
	t.push(node{in: n.in | 1<<item, out: n.out, bound: n.bound, walked: -1})
	t.push(node{in: n.in, out: n.out | 1<<item, bound: n.bound, walked: -1})
}

// walkOn tries the moves of a set with no open item, up to somewhat above its
// bound, and puts it back if there is more. It reports false when the nodes are
// used up.
func (t *sets) walkOn(n node) bool {
	upTo := n.bound + max(n.bound/8, 2*t.step)
	more, ok := t.walk.run(n.walked, upTo)
	if !ok {
		return false
	}
	if more && upTo <= t.best.ceiling() {
		n.bound, n.walked = upTo, upTo
		t.push(n)
	}
	return true
}

// push puts a node in the queue.
func (t *sets) push(n node) {
	n.order = t.made
	t.made++
	t.queue = append(t.queue, n)
	q := t.queue
	for i := len(q) - 1; i > 0; {
		up := (i - 1) / 2
		if !q[i].before(q[up]) {
			break
		}
		q[i], q[up] = q[up], q[i]
		i = up
	}
}

// pop takes the first node out of the queue.
func (t *sets) pop() node {
	q := t.queue
	first := q[0]
	last := len(q) - 1
	q[0] = q[last]
	q = q[:last]
	t.queue = q
	for i := 0; ; {
		c := 2*i + 1
		if c >= len(q) {
			break
		}
		if c+1 < len(q) && q[c+1].before(q[c]) {
			c++
		}
		if !q[c].before(q[i]) {
			break
		}
		q[i], q[c] = q[c], q[i]
		i = c
	}
	return first
}
