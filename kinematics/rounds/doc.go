// Package rounds measures the tool honestly: it makes boats whose truth the tool
// is not told, lets a simulated mechanic line each of them up by the tool's
// estimate and plan alone, and counts what came of it.
//
//	nominal hull --perturb--> true hull + engine error + run-out     (Boat)
//	                                |
//	     gauge <--- truth: kinematics.DriveLine, non-linear          (yard)
//	       |
//	   readings --> estimate --> within? --> stop
//	       ^            |
//	       |          plan --> nuts in whole flats, slides           (Job)
//	       +---- move ---+
//
// Beside it, on the same boats, works a mechanic with the textbook lever rule.
//
// # The truth of a boat
//
// Uniform round the nominal hull: each mount's stiffness in each direction
// +-30 %, each bearing's stiffness and clearance +-50 %, mounts and centre of
// mass +-5 mm in each coordinate, bearings +-5 mm along the shaft (across it
// they are the true shaft line, which the engine's error counts from), mass
// +-5 %. Half the boats are afloat.
//
// The engine's error is an unknown lift and slide of every mount. Each is first
// drawn from a Gaussian of 1 mm, which stands the coupling high, low or to a
// side; then the least change (least squares over nuts and slides, with the
// true hull's response) is added that makes the seated gap what was drawn: a
// spread uniform in 12 to 40 thou that opens in any direction alike. That is
// the Gaussian given its gap. Under solid feet the error keeps the feet in one
// plane: soft foot is cured before faces are gauged, and faces do not show it.
//
// Each half's face runs out by up to 2 thou total indicator reading, at any
// angle. 6 to 10 of twelve clock positions can be reached, the same all job
// long; in half the boats those that cannot lie side by side, in the others
// anywhere.
//
// # The readings
//
// Leaves of 1 to 40 thou in steps of 1, two together above that. Each trial of a
// leaf has a feel error of its own, Gaussian, 0.3 thou. A reading tries leaves
// upward until one stops. In one gauging in twenty a burr lowers what is read at
// one position by 2 to 5 thou, until that reading is asked for again: then the
// face is wiped and filed there. The shaft is seated anew for each gauging and
// pushed until the faces first touch, so the least gap round the clock is 0 with
// run-out counted.
//
// # The gap judged by
//
// The true gap is what the engine's position gives, run-out taken out: the part
// that nuts can cure. The gap at the marks, run-out and all, is counted beside.
//
// # What it leaves out
//
// Moves are made exactly as planned. The mounts do not settle, the boat does not
// change, no nut is stuck, no reading is written down wrong.
package rounds
