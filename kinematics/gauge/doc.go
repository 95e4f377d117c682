// Package gauge says what readings at a coupling mean: how the engine stands,
// how sure that is, which reading does not fit, and what to gauge next.
//
// # What is not known
//
// For each state of the engine (from one move to the next), four numbers:
//
//	A, B    the gap that the engine's position gives, A cos t + B sin t at the
//	        face's outer edge, with the shaft held as the job aims at: seated
//	        where there is a pilot, else centred; mm
//	y, z    the engine-side face's centre off the drawn shaft line, the shaft
//	        apart; mm
//
// for the whole visit, the run-out of either half, each a cosine that turns
// with it; and for each seating the gap g0 at the faces' centre. A leaf at
// clock t, radius rho, finds
//
//	g0 + (rho/r) [ (A + a_s + a_f) cos t + (B + b_s + b_f) sin t ],
//
// a_s, b_s the shaft half's run-out as turned, a_f, b_f the flange's. Seated,
// the engine's offset swings the shaft and is already in A and B. Centred, the
// shaft does not follow, and the swing the hull's model gives for y, z is taken
// off again. Rim steps and rim dials see y, z themselves; strips in the log or
// a bearing see them through the seated shaft.
//
// # How it is found
//
// Every reading is an interval with a feel error, every belief a Gaussian, and
// package interval finds the one optimum and its covariance. Beliefs: A, B to
// a millimetre, y, z to three, each half's run-out to what is commonly let pass
// (or, where the readings say otherwise, to ten times that), and seated to
// first touch, g0 equal to the amplitude of the gap itself. That last one is
// not linear; it is laid out anew round each optimum until nothing moves.
// Whether the faces did touch, and whether a half runs out more than is let
// pass, is decided by the evidence: the height of the likelihood times the room
// round its top (Laplace's approximation), against stated odds.
//
// # Flat faces
//
// Two planes obey 12 + 6 = 3 + 9. The general form: each reading is left out in
// turn, and what the likelihood gains by not having to meet it is compared with
// the gain chance would give to one of so many readings once in a hundred
// times. A set that fails is not for moves until the odd reading has been taken
// again, or where no single one can be named.
//
// # What it leaves out
//
// A feel error that is the same for all readings (it goes into g0), bent or
// dished faces, and the error of the hull's model where readings of different
// kinds are joined by it, but for a stated allowance on clearances.
package gauge
