// Package called reads readings as a mate calls them out of the bilge, one a
// line, and whole tables of them out of a spreadsheet.
//
//	leaf         12 3/4        at 12 the leaf of 3 goes, that of 4 stops
//	             3/4           the same at the place asked for
//	             3             3 goes, and the next leaf of the set stops
//	             0             not even the thinnest enters
//	             3/-           3 goes, nothing thicker was tried
//	             3+4/8         two leaves put together go
//	leaf round   2 9-11/11-3   a leaf of 2 enters from 9 to 11, stops from 11 to 3
//	rim step     12 e 2/3      the straightedge lies on the engine side, 2 goes under it
//	             12 0/1.5      no step: not even 1.5 enters
//	dial         6 -4          at 6 the dial shows 4 less than where it was set to nought
//	run-out      2.5 4:30      2.5 in all, the low spot at 4:30
//	clearance    12 5/6        a strip of 5 goes, one of 6 does not
//	pilot        f, w or n     enters freely, with force, not
//
// Any of them may end in "@46" (at a radius of 46 mm) and "# words" (a note). A
// length may name its unit, "6.5/7mm". Comma and point are one. Letters are
// taken in English and German: e or m engine side, s or w shaft side.
//
// Places are as visit.ParseClock reads them, seen in the direction of the
// Setting; arcs run clockwise as seen. What a reading means is not asked here.
package called
