// Package whys is the page that takes apart what a nut or a slide does, on this boat
// and beside it on one whose gearbox stands the other way about, so that it is seen
// why the words turn round.
//
//	+-----------------------------------------------------------+
//	| nut or slide, one step further, from the start, table      |
//	+-----------------------------+-----------------------------+
//	|  this boat, in 3D           |  the other boat, in 3D       |
//	+-----------------------------+-----------------------------+
//	|  1. the nut goes up         |  1. the nut goes up          |
//	|  2. the engine tips about   |  2. the engine tips about    |
//	|  ...             sum so far |  ...              sum so far |
//	+-----------------------------+-----------------------------+
//
// The picture is built up with the words (built.go): nut, line, face, coupling, shaft,
// each with arrows for what is new and seen from where it shows best.
//
// Space goes a step further, Backspace one back, Home to the start, up and down
// choose another nut, T shows the table of all nuts, Page Up and Down leaf. What is said and drawn is worked
// out by kinematics/why and said by report/say; the page holds only which nut and
// which step.
package whys
