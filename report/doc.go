// Package report makes paper of a visit: what goes into the bay, into the file,
// to the customer and into a class.
//
//	hull, visit, estimate, plan, options  ->  PDF
//
// Four kinds of sheet:
//
//	bay       one page by torchlight: which nut, which way, what to expect,
//	          boxes for what is found
//	record    all that was put in and what came of it, the visit file attached
//	customer  before and after, in a few plain sentences
//	class     an exercise, its answers on a second page
//
// A sheet is a pure function of its inputs: made twice, it is the same byte for
// byte. Numbers come from the estimate and the plan as they are; nothing is
// worked out anew that they hold.
//
// # Directions
//
// Clock positions are stored looking forward from the propeller. A sheet shows
// them as its reader sees the faces (Options.Seen), says which way that is, and
// writes PORT and STBD. Mounts are drawn from above, at their places in plan,
// with the side away from the reader at the top of the page. A nut's arrow is
// how the hand turns it, seen from above the nut, on a right-hand thread
// standing still: clockwise lowers, against the clock raises.
//
// # The wave
//
// A record plots gaugings: each reading a bar from the leaf that went in to the
// leaf that did not, and through the bars the estimate's
//
//	gap(t) = g0 + A cos t + B sin t
//
// with A and B of the engine's position as it then was, and both halves' run-out
// turned as far as shaft and flange were.
//
// # What it leaves out
//
// Gaugings between the first and the last are not plotted, only tabled. Photos and
// the boat's past are the logbook's; a visit from a file has none.
package report
