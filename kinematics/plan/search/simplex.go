package search

// This file holds the dual simplex that finds good multipliers for a bound.

import "math"

// simplex solves the relaxed problem of a set: moves need not be whole, and an
// open item's charge is spread over its reach,
//
//	least  c.z  with  G z + s = Most, 0 <= z <= u, s >= 0,
//
// where z holds the steps up and the steps down of each item apart. Leaving all
// alone is optimal but for the rows, so the dual simplex starts there at once.
//
// The tableau is condensed: x_B + T x_N = beta, all x_N at 0. A variable at its
// upper end is written as what it lacks of it, u - x, and marked flipped (upper
// bounding as in V. Chvatal, Linear Programming, 1983, chapter 8; from memory).
type simplex struct {
	rows, cols int
	t          []float64 // rows x cols
	beta       []float64 // of rows
	d          []float64 // reduced costs, of columns
	basic      []int     // variable of each row
	nonbasic   []int     // variable of each column
	upper      []float64 // of variables; z first, then one for each row
	flipped    []bool    // of variables
	item       []int     // of z: its item
	sign       []float64 // of z: +1 up, -1 down
	z          int
}

func newSimplex(m *model) *simplex {
	most := 2 * len(m.items)
	return &simplex{
		rows: m.rows,
		t:    make([]float64, m.rows*most), beta: make([]float64, m.rows), d: make([]float64, most),
		basic: make([]int, m.rows), nonbasic: make([]int, most),
		upper: make([]float64, most+m.rows), flipped: make([]bool, most+m.rows),
		item: make([]int, most), sign: make([]float64, most),
	}
}

// simplexEps is what counts as zero, in a tableau whose rows are scaled to 1.
const simplexEps = 1e-9

// multipliers sets s.y for the set. It reports false when they are a proof
// that the rows contradict each other. However it ends, s.y >= 0.
func (x *simplex) multipliers(s *set) bool {
	x.start(s)
	for turn := 0; turn < 4*(x.rows+x.cols)+16; turn++ {
		r := x.worst()
		if r < 0 {
			break
		}
		if x.beta[r] > 0 {
			x.flipRow(r)
		}
		c := x.entering(r)
		if c < 0 {
			x.ray(s, r)
			return false
		}
		x.pivot(r, c)
	}
	x.prices(s)
	return true
}

// start lays out the tableau with nothing moved.
func (x *simplex) start(s *set) {
	x.z = 0
	column := func(i int, sign float64, reach int) {
		if reach == 0 {
			return
		}
		it := s.m.items[i]
		j := x.z
		x.item[j], x.sign[j], x.upper[j] = i, sign, float64(reach)
		x.d[j] = it.Each
		if s.state[i] == open {
			x.d[j] += it.Fixed / float64(reach)
		}
		x.z++
	}
	for i, st := range s.state {
		if st != out {
			column(i, 1, s.up[i])
			column(i, -1, s.down[i])
		}
	}
	x.cols = x.z
	for j := range x.cols {
		x.nonbasic[j] = j
		x.flipped[j] = false
		of := s.m.of[x.item[j]]
		for k := range x.rows {
			x.t[k*x.cols+j] = x.sign[j] * of[k]
		}
	}
	for k := range x.rows {
		x.beta[k] = s.m.most[k]
		x.basic[k] = x.z + k
		x.upper[x.z+k] = math.Inf(1)
		x.flipped[x.z+k] = false
	}
}

// worst is the row furthest outside its ends, -1 if none is.
func (x *simplex) worst() int {
	r, most := -1, simplexEps
	for k, b := range x.beta[:x.rows] {
		if by := max(-b, b-x.upper[x.basic[k]]); by > most {
			r, most = k, by
		}
	}
	return r
}

// flipRow writes the row's variable as what it lacks of its upper end.
func (x *simplex) flipRow(r int) {
	v := x.basic[r]
	x.flipped[v] = !x.flipped[v]
	x.beta[r] = x.upper[v] - x.beta[r]
	row := x.t[r*x.cols : (r+1)*x.cols]
	for j := range row {
		row[j] = -row[j]
	}
}

// entering is the column that keeps the reduced costs positive; of equals the
// one with the largest pivot. -1 if nothing can mend the row.
func (x *simplex) entering(r int) int {
	c, least, size := -1, math.Inf(1), 0.0
	for j, a := range x.t[r*x.cols : (r+1)*x.cols] {
		if a >= -simplexEps {
			continue
		}
		ratio := x.d[j] / -a
		if ratio < least-1e-12 || ratio <= least+1e-12 && -a > size {
			c, least, size = j, ratio, -a
		}
	}
	return c
}

// pivot swaps the variable of row r with that of column c.
func (x *simplex) pivot(r, c int) {
	n := x.cols
	row := x.t[r*n : (r+1)*n]
	inv := 1 / row[c]
	for j := range row {
		row[j] *= inv
	}
	row[c] = inv
	x.beta[r] *= inv
	for k := range x.rows {
		if k == r {
			continue
		}
		other := x.t[k*n : (k+1)*n]
		f := other[c]
		if f == 0 {
			continue
		}
		other[c] = 0
		for j, a := range row {
			other[j] -= f * a
		}
		x.beta[k] -= f * x.beta[r]
	}
	f := x.d[c]
	x.d[c] = 0
	for j, a := range row {
		x.d[j] = max(x.d[j]-f*a, 0)
	}
	// The leaving variable's reduced cost; -f*inv is positive as inv < 0.
	x.d[c] = max(-f*inv, 0)
	x.basic[r], x.nonbasic[c] = x.nonbasic[c], x.basic[r]
}

// prices reads the multipliers off the rows that bind.
func (x *simplex) prices(s *set) {
	clear(s.y)
	for j, v := range x.nonbasic[:x.cols] {
		if v >= x.z {
			s.y[v-x.z] = x.d[j]
		}
	}
}

// ray reads the contradiction off a row that nothing can mend: the sum of rows
// it stands for has only positive numbers left and a negative limit.
func (x *simplex) ray(s *set, r int) {
	clear(s.y)
	if v := x.basic[r]; v >= x.z {
		s.y[v-x.z] = 1
	}
	for j, v := range x.nonbasic[:x.cols] {
		if v >= x.z {
			s.y[v-x.z] = max(x.t[r*x.cols+j], 0)
		}
	}
}

// moved is how far each item moves in the relaxed answer, as a share of its
// reach: what a charge spread over the reach has paid of it.
func (x *simplex) moved(share []float64) {
	clear(share)
	add := func(v int, value float64) {
		if v >= x.z {
			return
		}
		if x.flipped[v] {
			value = x.upper[v] - value
		}
		share[x.item[v]] += max(value, 0) / x.upper[v]
	}
	for k, v := range x.basic[:x.rows] {
		add(v, x.beta[k])
	}
	for _, v := range x.nonbasic[:x.cols] {
		add(v, 0)
	}
}
