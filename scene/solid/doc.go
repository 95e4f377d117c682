// Package solid builds closed solids out of rings.
//
// A ring is a closed row of points. A skin is stretched over a row of rings
// with the same number of points, and its two ends are either capped or joined
// to each other:
//
//	ring 0   ring 1        ring 2
//	 ,--.     ,---.        ,---.
//	/    \---/     \------/     \     Capped: both ends closed, a lump
//	\    /---\     /------\     /     Looped: last joined to first, a tube
//	 `--'     `---'        `---'      or a plate with a hole
//
// Everything else is a way to make rings: turned parts (Lathe), blocks with
// bevelled edges (Block), pipes (Pipe), turned shells with a window cut out
// (Cutaway), flanges with bolt holes (Flange).
//
// # Laws
//
//  1. Every solid is closed: each directed edge runs once, and once the other
//     way round.
//  2. It is oriented: triangles run anticlockwise seen from outside, so that
//     its volume is positive.
//  3. No edge is much longer than the builder's edge length, so that light
//     baked into the vertices has something to hold on to.
//
// Mesh splits vertices where two faces meet at a crease and gives each its
// normal. Solids may overlap one another: nothing is cut out of anything.
package solid
