// Package counter is the view for the counter: a boat shown to people who have never
// seen one, with nothing but picture, faces and sentences in large type.
//
//	+-----------------------------------+------------------------+
//	|                                   |   the faces            |
//	|   the boat, larger than life      +------------------------+
//	|                                   |   what it means, in    |
//	|                                   |   large plain words    |
//	+-----------------------------------+------------------------+
//	| before  ---------o------------ after     play a turn   back|
//	+------------------------------------------------------------+
//
// The handle goes from how the engine was found to how it stands or is planned to, with
// everything between; left and right move it. Space plays one turn of the bolted
// shaft, slowly, every step through the whole model (package turn); where motion is not
// wanted it goes a step at a time. What it costs to leave the boat so is worked out and
// graded by report/cost, the number behind each word below it in smaller type.
//
// Type grows with the window (page.Grow, large.go says how far); T shows the boat's
// movement at its true size, Up, Down and the page keys leaf through the words. While
// nothing is played nothing is redrawn.
package counter
