package search

// This file holds the problem made ready for searching: without the items that
// cannot move and the rows that cannot bind.

import (
	"fmt"
	"math"
	"slices"
)

// mostMoving is how many items a set can hold.
const mostMoving = 64

// model is the problem in the order in which it is searched.
type model struct {
	items []Item
	place []int // where each stands in the caller's list
	rows  int
	of    [][]float64 // [item][row], each row in units of its largest number
	most  []float64   // looser than the caller's rows by rounding
}

// newModel drops what does not matter; ok is false when a row cannot be kept by
// any move within range.
func newModel(p Problem) (m *model, ok bool) {
	m = &model{}
	for i, it := range p.Items {
		if it.Least < 0 || it.Most > 0 {
			m.place = append(m.place, i)
		}
	}
	if len(m.place) > mostMoving {
		panic(fmt.Sprintf("search: %d items can move, at most %d", len(m.place), mostMoving))
	}
	m.order(p)
	for _, i := range m.place {
		m.items = append(m.items, p.Items[i])
	}
	m.of = make([][]float64, len(m.place))
	for _, row := range p.Rows {
		if !m.add(row) {
			return nil, false
		}
	}
	return m, true
}

// order puts items that do much first: the little that those to come can still
// do then leaves narrow intervals. (The other way round, the fine problems of
// the tests take seven to eighteen times the nodes.) What an item does is
// measured row by row against the row's largest number.
func (m *model) order(p Problem) {
	does := make([]float64, len(p.Items))
	for _, row := range p.Rows {
		largest := 0.0
		for _, i := range m.place {
			largest = max(largest, math.Abs(row.Of[i]))
		}
		if largest == 0 {
			continue
		}
		for _, i := range m.place {
			does[i] += (row.Of[i] / largest) * (row.Of[i] / largest)
		}
	}
	slices.SortStableFunc(m.place, func(a, b int) int {
		switch {
		case does[a] > does[b]:
			return -1
		case does[a] < does[b]:
			return 1
		}
		return 0
	})
}

// add takes in a row unless it always holds; it reports false when the row
// never does.
func (m *model) add(row Row) bool {
	var least, most, largest float64 // of the sum
	for j, i := range m.place {
		of, it := row.Of[i], m.items[j]
		down, up := of*float64(it.Least), of*float64(it.Most)
		least += min(down, up)
		most += max(down, up)
		largest = max(largest, math.Abs(of))
	}
	// Rounding in a sum of n numbers is below n 1.2e-16 times their sizes.
	limit := row.Most + 2*rowSlack*row.size() + 1e-13*(most-least)
	if least > limit {
		return false
	}
	if largest == 0 {
		return 0 <= row.Most+rowSlack*row.size()
	}
	if most <= row.Most {
		return true
	}
	for j, i := range m.place {
		m.of[j] = append(m.of[j], row.Of[i]/largest)
	}
	m.most = append(m.most, limit/largest)
	m.rows++
	return true
}
