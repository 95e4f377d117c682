// Package visit holds what a person has put in: the document of one job on one
// boat, its named edits, and undo.
//
//	Document = hull + what is being tried
//
// A document holds inputs only. Gaps, loads, pictures and sentences are worked
// out from it elsewhere and never stored. A document is a value: an edit makes
// a new one and leaves the old one as it was, so keeping the past is enough to
// undo anything.
//
//	next, err := edit.Apply(document)
//
// An edit is applied as a whole or refused with a reason. It has a name, words
// for the undo list, and a JSON form that lands in the same place when it is
// replayed.
//
// Mounts are told by name in edits and by their order in the hull in a
// document. Units: steps of an adjuster (flats of a nut, shims of a solid
// foot), mm, N, N m.
package visit
