// Package response says how the gap between the faces answers nuts and slides,
// how sure that is, and learns from what a boat has answered so far.
//
//	change of [A, B] = sum over items j of  R_j move_j,   R_j = [a_j, b_j]
//
// An item is one mount's nut, its move counted in flats (or shims), or the
// slides of one station, all mounts that stand abreast, moved together in steps
// of StepMM, + to port. R is taken by central differences through the whole
// model (package kinematics), half way between the engine as estimated and the
// faces true, so that it is the secant of a move that closes the gap.
//
// # How sure
//
// Nobody knows a mount's stiffness to a third or a tape measure to five
// millimetres. Every number of the hull that matters is moved by its tolerance
// (Defaults, or the hull file's own), R taken again, and the change kept:
//
//	Cov R = sum over numbers p of  dR_p dR_p',  dR_p for one standard deviation
//
// a tolerance of plus or minus w being taken as evenly spread, sd = w/sqrt 3.
// Where in its clearances the shaft lies, which a seated gap does not tell, is
// one more such number, in height and to the side.
//
// # Learning
//
// Between two gaugings the gap changed by D = R m + noise, the noise being both
// estimates' and a little settling. All changes of a visit together, with their
// covariance, correct R and the present gap at once (a Gaussian update). A
// change too far off for all that is named: it is no matter of tolerances then.
//
// What a boat answered before, in visits past or to one nut turned for the purpose,
// stands in her hull file (hulls.Measured) and corrects the model once, in the same
// way, before any visit does.
//
// What it leaves out: that R changes along a large move (beyond the secant).
package response
