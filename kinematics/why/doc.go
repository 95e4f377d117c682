// Package why takes apart what a nut or a slide does to the gap, into steps that can
// be followed with a finger and that add up to what the whole model says.
//
//	        nut up                        seen from starboard, in-line:
//	          |
//	 o--------^-------o=========|         1 a mount's seat is lifted
//	aft              fore   face|-----    2 the engine tips about a line
//	 '-- line the engine tips   |         3 so its face tips           (Tilt)
//	     about                            4 and its middle goes up or down
//	                                      5 the shaft's end goes with it: swung as
//	                                        a straight stick about its first
//	                                        bearing                    (Stick)
//	                                      6 and bent, for it is none   (Bend)
//	                                      7 all together               (Total)
//
// Gaps are changes of [A, B], gap = g0 + A cos t + B sin t, in mm, t clockwise from
// 12 looking forward. Tilt, Stick and Bend are differences of two answers of the
// whole model and add up to its Total to the last digit: nothing is linearised. What
// neither is (sag where a bearing takes hold otherwise, run-out) is Rest.
//
// # The line
//
// A rigid engine that turned by the small rotation w and whose face centre went by t
// stands still, but for what slides along it, on one line: the axis of that screw,
// along w through p = w x t / w.w (Chasles' theorem). It is told by the mounts that
// stand on it.
//
// # What it leaves out
//
// Which of it is sure: see package response. Held centred, the shaft's end stands on
// its block, and there is no Stick.
package why
