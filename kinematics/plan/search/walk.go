package search

// This file holds the lower search: the steps of the items of one set.

import "math"

// cell is what one row says of the steps of one item, with a the row's number
// for it and y >= 1 the steps up or down. Two things bound what the items still
// to come can take off the row: their ranges (box, a sum that is mostly
// negative), and the effort left for them, each unit of which takes off at most
// rho. With s what is left of the row and B the effort left before this item,
//
//	a x <= s - box                                   x = y up, -y down
//	a x - rho (B - each y) <= s, so (rho each +- a) y <= s + rho B.
type cell struct {
	a, perA    float64 // perA is 1/a
	box, rho   float64
	up, perUp  float64 // rho each + a
	down, perD float64 // rho each - a
}

// walk is the depth-first search through one set.
type walk struct {
	t     *sets
	rows  int         // the model's, and one more: their sum by the set's multipliers
	item  []int       // of each depth
	each  []float64   // of each depth
	later []float64   // effort of a step of each item after this depth
	cells [][]cell    // [depth][row]
	left  [][]float64 // [depth][row]: what is left of each row
	after float64     // only moves of more effort than this
	upTo  float64     // and of no more than this
	limit float64     // the lesser of upTo and the ceiling
	full  bool        // the nodes are used up
}

func newWalk(t *sets) *walk {
	n := len(t.m.items)
	w := &walk{
		t: t, rows: t.m.rows + 1,
		item: make([]int, 0, n), each: make([]float64, n), later: make([]float64, n),
		cells: make([][]cell, n), left: make([][]float64, n+1),
	}
	for d := range n {
		w.cells[d] = make([]cell, w.rows)
	}
	for d := range n + 1 {
		w.left[d] = make([]float64, w.rows)
	}
	return w
}

// run tries the moves of t.set whose effort lies above after and not above
// upTo. It reports whether there may be more above that, and false for ok when
// the nodes are used up.
func (w *walk) run(after, upTo float64) (more, ok bool) {
	w.after, w.upTo, w.full = after, upTo, false
	w.limit = min(upTo, w.t.best.ceiling())
	w.item = w.item[:0]
	spent, most := 0.0, 0.0
	for i, st := range w.t.set.state {
		if st != in {
			continue
		}
		it := w.t.m.items[i]
		w.each[len(w.item)] = it.Each
		w.item = append(w.item, i)
		spent += it.Fixed
		most += it.Each * float64(max(it.Most, -it.Least))
	}
	clear(w.t.best.try)
	if len(w.item) == 0 {
		w.t.nodes++
		w.t.best.offer()
		return false, true
	}
	w.layOut()
	w.visit(0, spent)
	return spent+most > upTo, !w.full
}

// layOut fills the cells from the last item to the first, and what is left of
// the rows before any item moves.
func (w *walk) layOut() {
	s, m := w.t.set, w.t.m
	s.weigh()
	copy(w.left[0], m.most)
	sum, size := 0.0, 0.0
	for k, y := range s.y {
		sum += y * m.most[k]
	}
	for _, i := range w.item {
		size = max(size, math.Abs(s.w[i]))
	}
	perSize := 0.0
	if size > 0 {
		perSize = 1 / size
	}
	w.left[0][m.rows] = sum * perSize
	for d := len(w.item) - 1; d >= 0; d-- {
		i := w.item[d]
		for k := range w.rows {
			a := s.w[i] * perSize
			if k < m.rows {
				a = m.of[i][k]
			}
			w.cells[d][k].a = a
			w.lay(d, k)
		}
		w.later[d] = 0
		if d+1 < len(w.item) {
			w.later[d] = w.later[d+1] + w.each[d+1]
		}
	}
}

// lay works out a cell from its a and the cell of the item after it.
func (w *walk) lay(d, k int) {
	c := &w.cells[d][k]
	c.box, c.rho = 0, 0
	if d+1 < len(w.item) {
		next, i := w.cells[d+1][k], w.item[d+1]
		help, least := 0.0, math.Inf(1)
		if up := float64(w.t.set.up[i]); up > 0 {
			help = max(help, -next.a)
			least = min(least, next.a, next.a*up)
		}
		if down := float64(w.t.set.down[i]); down > 0 {
			help = max(help, next.a)
			least = min(least, -next.a, -next.a*down)
		}
		c.box = next.box + least
		c.rho = max(next.rho, help/w.each[d+1])
	}
	c.perA = 1 / c.a
	c.up, c.down = c.rho*w.each[d]+c.a, c.rho*w.each[d]-c.a
	c.perUp, c.perD = 1/c.up, 1/c.down
}

// span is the steps that the rows leave an item, by the side.
type span struct {
	upLeast, upMost     float64
	downLeast, downMost float64
}

// span works out what the rows leave item d, with effort for its steps and
// those to come; ok is false if it is nothing.
func (w *walk) span(d int, effort float64) (p span, ok bool) {
	i := w.item[d]
	steps := (effort - w.later[d]) / w.each[d]
	p = span{1, min(steps, float64(w.t.set.up[i])), 1, min(steps, float64(w.t.set.down[i]))}
	effort += equalEffort + 1e-12*effort // what rounding could have taken
	left := w.left[d]
	for k := range w.cells[d] {
		c := &w.cells[d][k]
		s1, s2 := left[k]-c.box, left[k]+c.rho*effort
		v := s1 * c.perA
		switch {
		case c.a > 0:
			p.upMost = min(p.upMost, v)
			p.downLeast = max(p.downLeast, -v)
		case c.a < 0:
			p.downMost = min(p.downMost, -v)
			p.upLeast = max(p.upLeast, v)
		case s1 < 0:
			return p, false
		}
		if c.up < 0 {
			p.upLeast = max(p.upLeast, s2*c.perUp)
		} else if s2 < 0 {
			p.upMost = -1
		} else if c.up > 0 {
			p.upMost = min(p.upMost, s2*c.perUp)
		}
		if c.down < 0 {
			p.downLeast = max(p.downLeast, s2*c.perD)
		} else if s2 < 0 {
			p.downMost = -1
		} else if c.down > 0 {
			p.downMost = min(p.downMost, s2*c.perD)
		}
		if p.upMost+roundUp < p.upLeast && p.downMost+roundUp < p.downLeast {
			return p, false
		}
	}
	return p, true
}

// visit tries all steps of the item at depth d, and with each all of those to
// come. All charges and the steps so far are spent.
func (w *walk) visit(d int, spent float64) {
	p, ok := w.span(d, w.limit-spent)
	if !ok {
		return
	}
	p.upLeast -= roundUp
	p.downLeast -= roundUp
	p.upMost += roundUp
	p.downMost += roundUp
	least := p.upLeast
	if p.upLeast > p.upMost || p.downLeast <= p.downMost && p.downLeast < p.upLeast {
		least = p.downLeast
	}
	last := math.Inf(-1)
	if p.upLeast <= p.upMost {
		last = p.upMost
	}
	if p.downLeast <= p.downMost {
		last = max(last, p.downMost)
	}
	for y := math.Ceil(least); y <= last; y++ {
		effort := spent + w.each[d]*y
		if w.full || effort+w.later[d] > w.limit+equalEffort {
			return
		}
		if y >= p.upLeast && y <= p.upMost {
			w.try(d, y, effort)
		}
		if y >= p.downLeast && y <= p.downMost {
			w.try(d, -y, effort)
		}
	}
}

// try moves the item at depth d by x steps and goes on to the next.
func (w *walk) try(d int, x, spent float64) {
	t := w.t
	if t.nodes >= t.most {
		w.full = true
		return
	}
	t.nodes++
	t.best.try[t.m.place[w.item[d]]] = int(x)
	if d+1 == len(w.item) {
		if spent > w.after && spent <= w.upTo {
			t.best.offer()
			w.limit = min(w.upTo, t.best.ceiling())
		}
		return
	}
	left, next := w.left[d], w.left[d+1]
	for k := range w.cells[d] {
		next[k] = left[k] - w.cells[d][k].a*x
	}
	w.visit(d+1, spent)
}
