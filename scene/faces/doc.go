// Package faces draws the two coupling faces close up: the gap between them
// round a clock, and the wedge edge-on as a mechanic sees it.
//
// # What is drawn
//
//	          12                         PORT          STBD
//	      8.3    7.9                    +------------------+  engine side
//	   ,-~~~~~~~-.                      +------------------+
//	  /  spread   \     track:           ::::::::::::           gap, times N
//	9| PORT   STBD |3   from the rim    +------------------+
//	  \ opens at  /     outwards        +------------------+  shaft side
//	   `-._____.-'                           from above
//	      touches
//	           6
//
// Round the clock the gap is a band that stands on a circle, the rim, and is
// k g(t) wide, in pixels, at clock angle t:
//
//	g(t) = G0 + Cos cos t + Sin sin t        mm, along the shaft, at the rim
//	k    = track width / full scale          the same all round
//
// The full scale is a round number and is written ("outer ring 10 thou"). It
// never falls below 5 thou or 0.1 mm, so a small gap looks small.
//
// # Laws
//
//  1. The band's width is proportional to the gap at every clock position, up to
//     the outer ring; a gap below zero (the faces cannot pass each other) has no
//     width.
//  2. Clock angles are stored as seen looking forward from the propeller: 12 up,
//     3 to starboard. Looking aft mirrors the picture about the line from 12 to
//     6: 3 and 9 swap, 1 and 11, and so on; nothing else does. Numerals and
//     times are then those of the clock as it is seen.
//  3. No two words or numbers overlap, at any size and text factor. Where a
//     text size does not fit, the largest that does is taken.
//  4. Nothing is told by colour alone: numbers, "opens here", "touches" and
//     hatching say it too.
//
// Tight is where the gap is in the lowest quarter of its spread (the third of
// the rim round its least). Faces that are parallel to a tenth of a thou have
// no tight side.
//
// Edge-on, the faces are seen from above, in the same sense as the clock (port
// at the same hand), and from port, with forward to the left. Gap and tilt are
// drawn N times their size against the face's diameter and N is written. The
// shaft side is drawn square; the engine side carries the whole tilt.
//
// Lengths are mm, angles radians unless a name says otherwise; pixels inside
// the layout. A drawing is a pure function of its arguments.
//
// What it leaves out: offset of the faces (a step at the rim), dished faces,
// and the turning part of run-out, which is drawn as it stands.
package faces
