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
// # Who works
//
// By the tool: gauge every position in reach with shaft and flange as they
// stand; do what the tool asks for next (a reading again, a whole gauging turned
// on, one leaf) up to a dozen times a state; stop where it says within, else
// make its move and gauge again; at most four moves. A set refused for moves is
// taken once more, then given up.
//
// By the lever rule, plain: gauge at the marks, lay a plane through the mid
// readings, swing the engine about the coupling to close it, nuts to whole flats
// and slides to a quarter of a millimetre; at most ten moves, or until the plane
// says within. Careful: also turn shaft and flange half round each time and take
// the mean, and wipe and read again what lies 1.5 thou off the plane. Neither
// learns, and neither knows that an engine on rubber stiffer fore and aft than
// athwart turns by only a part of what its ends are slid, which is why on soft
// mounts they seldom get there sideways.
//
// Everybody's minutes come from the planner's price list.
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
