package search

// This file holds the bound on the effort of a set of touched items.

import "math"

// state says what is known of an item in a set.
type state uint8

const (
	open state = iota
	in         // touched
	out        // left alone
)

// set is a node of the upper search spelt out: each item's state, and how far
// it can go within its range and the effort left.
type set struct {
	m        *model
	state    []state
	up, down []int   // steps
	paid     float64 // effort of touching the items in by one step each
	y        []float64
	w        []float64 // Of^T y
}

func newSet(m *model) *set {
	n := len(m.items)
	return &set{
		m: m, state: make([]state, n), up: make([]int, n), down: make([]int, n),
		y: make([]float64, m.rows), w: make([]float64, n),
	}
}

// spell fills the set from masks, under a ceiling on its effort. It reports
// false if an item that is in cannot move by even one step. Open items that
// cannot are put out.
func (s *set) spell(inMask, outMask uint64, ceiling float64) bool {
	s.paid = 0
	for i, it := range s.m.items {
		s.state[i] = open
		if inMask>>i&1 == 1 {
			s.state[i] = in
			s.paid += it.Fixed + it.Each
		} else if outMask>>i&1 == 1 {
			s.state[i] = out
		}
	}
	for i, it := range s.m.items {
		left := ceiling - s.paid
		switch s.state[i] {
		case in:
			left += it.Each
		case open:
			left -= it.Fixed
		case out:
			left = 0
		}
		s.up[i] = steps(left, it.Each, it.Most)
		s.down[i] = steps(left, it.Each, -it.Least)
		if s.up[i] > 0 || s.down[i] > 0 {
			continue
		}
		if s.state[i] == in {
			return false
		}
		s.state[i] = out
	}
	return true
}

// steps is how many steps an effort pays for, at most most. It errs upward by
// less than rounding could take.
func steps(effort, each float64, most int) int {
	n := effort/each + roundUp
	if n >= float64(most) {
		return most
	}
	if n < 1 {
		return 0
	}
	return int(n)
}

// roundUp, in steps, makes the ends of intervals err outward.
const roundUp = 1e-6

// bound is the least effort of any move of the set that keeps the rows, from
// the multipliers s.y: the least of effort + y.(Of x - Most) over all moves,
// rows or no rows, for y >= 0 makes the last term negative where rows are kept.
// It errs downward by what rounding could add.
func (s *set) bound() float64 {
	sum, size := s.weigh()
	for i, it := range s.m.items {
		if s.state[i] == out {
			continue
		}
		least := s.leastOf(i, it.Each) + it.Fixed
		if s.state[i] == open {
			least = min(least, 0)
		}
		sum += least
		size += math.Abs(least)
	}
	return sum - 1e-12*size
}

// contradicts reports whether the multipliers s.y prove that no move of the
// set keeps the rows: the same bound with efforts left out is above zero.
func (s *set) contradicts() bool {
	sum, size := s.weigh()
	for i := range s.m.items {
		if s.state[i] == out {
			continue
		}
		least := s.leastOf(i, 0)
		if s.state[i] == open {
			least = min(least, 0)
		}
		sum += least
		size += math.Abs(least)
	}
	return sum > 1e-12*size
}

// weigh adds the rows up with their multipliers: s.w and -y.Most, with the size
// of what was added.
func (s *set) weigh() (sum, size float64) {
	for k, y := range s.y {
		sum -= y * s.m.most[k]
		size += math.Abs(y * s.m.most[k])
	}
	for i, of := range s.m.of {
		w := 0.0
		if s.state[i] != out {
			for k, y := range s.y {
				w += y * of[k]
			}
		}
		s.w[i] = w
	}
	return sum, size
}

// leastOf is the least of each |x| + w x over an item's moves other than 0:
// linear on either side, so one of the ends.
func (s *set) leastOf(i int, each float64) float64 {
	least := math.Inf(1)
	if n := float64(s.up[i]); n > 0 {
		slope := each + s.w[i]
		least = min(least, slope, slope*n)
	}
	if n := float64(s.down[i]); n > 0 {
		slope := each - s.w[i]
		least = min(least, slope, slope*n)
	}
	return least
}
