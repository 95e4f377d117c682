// Package history tells a boat's past from her visits: how the gap was found and
// left each time, where nuts and studs stood, what moved between two visits, and
// what most likely moved it.
//
//	visit 1                 visit 2
//	begin --> hand-over     begin --> hand-over
//	              |           ^
//	              '-- change -'      D = [A, B] found - [A, B] left
//
// Gaps are those of package gauge: A, B in mm, seen looking forward, with their
// covariance. Begin is the first state that was gauged in a visit, hand-over the
// last, where nothing was moved after it.
//
// # The likely cause
//
// A cause says which seats sink or shift together, by one unknown amount s: all
// mounts by their share of the weight, one mount, the mounts of one side, all of
// them sideways. Through the boat's response R (package response) it makes
//
//	D = s R w + noise,   w the seats' share in it, by mount
//
// and leaves its mark, or none, on the studs: the height of a stud above its nut
// changes only when the nut turns on it. Rubber that tires, and a bed that gives,
// carry nut and stud down together.
//
//	  |  stud            |  stud
//	__|__ nut  F       __|      F + s: the nut came down by s
//	~~~~~ foot        ~~~~~
//	rubber            rubber
//
// Each cause has a chance beforehand, and a spread of amounts (causes.go; our own
// judgement, no source). What the visits show makes some of them likelier:
//
//	P(cause | D, studs, marks)  ~  P(cause) x integral over s of
//	    p(s) N(D; s R w, both gaps' + s^2 response's covariance) p(studs, marks | s)
//
// Nothing that moved is a cause among the others, and so is anything that is not
// listed: shaft, bearings, the shape of the hull, a slip. Two numbers cannot tell
// many causes apart; so the answer is a graded list, never a verdict, and says
// where it cannot tell, and what to measure next time so that it can.
//
// # What it leaves out
//
// Two causes at once. Nuts turned without a word being written down, but for one
// turned up. Visits of a hull whose mounts were changed in between.
package history
