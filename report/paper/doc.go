// Package paper puts text, lines and pictures on pages and the pages into a PDF
// file. It knows nothing of boats.
//
//	(0, 0) ----> x           lengths in mm from the upper left corner,
//	  |   +--------------+   sizes of type in points (1/72 in)
//	  v   | margin       |
//	  y   |              |
//
// # Black and white
//
// Ink is black, or a grey that a copier keeps. Nothing is told by colour: fills
// are hatched, signs have their own outline. Only pictures have colour.
//
// # The same bytes
//
// A document made twice in the same way, with the same date, comes out the same
// byte for byte: no clock is read, catalogues are sorted.
//
// # What it leaves out
//
// Languages written from right to left or in letters the embedded fonts lack,
// and hyphenation: a word too long for its line is cut where the line ends.
package paper
