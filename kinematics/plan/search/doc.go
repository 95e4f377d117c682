// Package search finds whole-numbered moves of least effort. It knows items
// that move in steps, linear limits on the moves, and what a move costs; what
// the items are is the caller's business.
//
// # Problem
//
//	least    sum over i with x_i != 0 of Fixed_i + Each_i |x_i|
//	with     sum_i Of_ki x_i <= Most_k            for every row k
//	         Least_i <= x_i <= Most_i, x_i whole  for every item i
//	         Accept(x), where there is such a test
//
// Touching an item at all costs Fixed, so the set of touched items matters as
// much as the steps. Moving nothing is a legal answer and costs nothing.
//
// # Method
//
// Branch and bound in two storeys.
//
// Above, sets of touched items are split best first: each node holds some items
// in, some out, the rest open (sets.go). Its bound comes from multipliers y >= 0
// on the rows,
//
//	bound(y) = sum_i least over x_i of (effort_i(x_i) + (Of^T y)_i x_i) - y.Most,
//
// which holds for any y whatever (bound.go). A dual simplex on the relaxed
// problem finds a good y (simplex.go); were it wrong, it would cost time and
// never the answer. A y with which the rows alone contradict each other rules
// the node out, and at the root it proves that nothing within range will do.
//
// Below, a set with no open item is walked depth first (walk.go). At each item
// every row gives the interval of steps it leaves, from the least that the
// items still to come can add to it within their ranges, and within what effort
// is left; steps outside are never visited. The last item's steps are read off
// its interval. Steps are tried by growing size.
//
// A set is walked up to an effort not far above its bound, put back, and walked
// further only when no other set promises less. So answers come in roughly
// rising effort, a refusing Accept leads outward and not into one corner, and
// all below the bound at hand is settled when the search stops early.
//
// # Laws
//
//  1. Found: no move within range, rows and Accept takes less effort, by more
//     than 1e-9.
//  2. None: there is no move within range, rows, Accept and MostEffort.
//  3. Raising a row's Most never raises the least effort, without Accept.
//  4. The order of items and of rows does not change the least effort.
//  5. Mirroring an item (its range and its column) mirrors the move.
//  6. The same problem gives the same result, to the last bit.
//
// # Tolerance
//
// A row is kept when its sum, added in the order of the items, is at most
// Most + 1e-9 s, with s the larger of |Most| and the row's largest |Of|: every
// answer is checked by that very sum. Bounds and intervals are looser than that
// by more than rounding could take from them, so they never cut off such a move.
// Efforts nearer than 1e-9 count as equal.
//
// # What it leaves out
//
// Limits that are not linear, other than by Accept, which only refuses and
// guides nothing: where it refuses nearly all, the search is an enumeration in
// rising effort and ends at MostNodes. Efforts that are not a charge plus so
// much a step, the same up as down. More than 64 items free to move.
package search
