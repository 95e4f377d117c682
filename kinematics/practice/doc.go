// Package practice hides a fault in a boat and lets a learner find it: he gauges
// with few leaves and an unsure hand, decides, turns nuts, tightens and hands her
// over. Then it tells what was true, what the tool would have done on the same boat,
// and where the thinking went astray.
//
//	Task{Grade, Number} --> boat with a hidden fault (rounds.Bench)
//	         |                         |
//	      []Act ------- Do --------> Work: readings, minutes   (Replay)
//	                                   |
//	         ByPlan: the same by the tool's own estimate and plan
//	                                   |
//	                                Debrief: in line or not, mistakes
//
// # A task
//
// A grade and a number make one boat, the same for everybody: a class can work on
// "burr, 3" and compare. Her truth differs from what her drawing says as package
// rounds tells. The grades, from easy to hard, and what is put into the boat:
//
//	tilt only    a gap that opens at top or bottom, 12 to 24 thou, all the rim in reach
//	both planes  12 to 30 thou in any direction; from here on 6 to 10 positions of
//	             twelve in reach, and each half's face out by up to 1 thou
//	run-out      one half's face out by 4 to 7 thou, under a gap of 8 to 20
//	burr         a burr of 4 to 8 thou that stays until it is filed
//	stuck nut    one mount's nut does not turn
//	soft foot    one mount is drawn down when first tightened, by as much as moves the
//	             gap by 4 to 7 thou
//	any fault    one of those before, and nobody says which
//
// All thou of a gap or of a face are total, largest less smallest. The sizes are our
// own judgement: large enough to be found, small enough to be met.
//
// # Work
//
// Acts are inputs; everything else follows. Replaying the same acts gives the same
// readings, so what is kept of a learner's work is its acts. An act that cannot be
// done (a leaf where none goes, a nut beyond its thread) is refused with the reason
// and is no act.
//
// # In line
//
// The true gap that the engine's place gives, run-out taken out, must be within the
// rule with every mount tight. Half a thou over is let pass: leaves do not show it.
//
// # What it leaves out
//
// Clamps spring back as the model says, but slides are made exactly; nobody drops a
// spanner; the boat does not settle meanwhile.
package practice
