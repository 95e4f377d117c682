// Package job says what a visit to a boat takes and in which order: what to
// bring, what is dangerous, what to look over before anything is gauged, in
// which order to fasten, which mount pulled, what keeps the result provisional
// and when to look again. It is the trade's own knowledge as data, worked out
// for one hull and one visit, and knows no screen and no paper.
//
//	look over --> gauge --> move --> fasten --> hand over        (Stage)
//	    |           ^         |         |            |
//	 Checks         +---------+      PulledBy     Provisional,
//	    |                               |          Due
//	    +--> failed, skipped: on every later page
//
// Everything is a pure function of the hull and the visit. What people read is
// a Text: the ID of a sentence in assets/words with its gaps filled by
// quantities, which are written in the reader's units only when it is said.
//
// # Where it comes from
//
// Each check, caution and default has a Source. Most are common practice and
// have none; those that have are named by the original standard or manual, and
// those read in extracts only, or known from memory, say so.
//
// # Signs
//
// As everywhere: nuts in flats (a solid foot in shims), + raises; slides + to
// port; clock positions seen looking forward from the propeller. The gap is A
// cos t + B sin t, in mm.
//
// # What it leaves out
//
// Soft couplings, discs and dummies, separate V-drives as two linked jobs, and
// from symptom to cause. It never locks a stage: it says what a failed check
// makes worthless and leaves the choice.
package job
