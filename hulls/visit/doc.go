// Package visit holds what a person has put in: one job on one boat (a visit),
// what is being tried on the screen, the named edits that change both, and
// undo.
//
//	Document = hull + visit + what is being tried
//
// A document holds inputs only. Gaps, loads, pictures, verdicts and sentences
// are worked out from it elsewhere and never stored. A document is a value: an
// edit makes a new one and leaves the old one as it was, so keeping the past is
// enough to undo anything.
//
//	next, err := edit.Apply(document)
//
// An edit is applied as a whole or refused with a reason. It has a name, words
// for the undo list, and a JSON form that lands in the same place when it is
// replayed.
//
// # A visit
//
// A visit file (visit/1) says in what state the boat was, which leaves and
// which rule were used, and then what happened, in order:
//
//	gauging --> move --> gauging --> move --> gauging --> fasten --> gauging
//
// A gauging holds the readings of one way of holding and turning the shaft.
// Readings may share a seating: until the shaft is moved, what the faces are
// held apart by stays the same. Moves say what was turned and slid since the
// gauging before.
//
// # Clock, signs, units
//
// Clock positions are degrees clockwise from 12 as seen looking forward from
// the propeller: 90 is starboard, 270 port. How far shaft and flange were
// turned counts the same way. Anything told looking aft is turned round before
// it gets here (ParseClock).
//
//	       0 (12)
//	        top
//	270 PORT   STBD 90     looking forward
//	       bottom
//	        180
//
// Nuts count flats (a sixth of a turn; a solid foot counts shims), + raises.
// Slides count mm, + to port. Gaps are positive when open. A thickness stays in
// the unit it was typed in, thou (0.001 inch) or mm, and the key says which.
//
// Mounts are told by name in edits and files, and by their order in the hull in
// what is being tried.
package visit
