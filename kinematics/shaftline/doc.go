// Package shaftline bends a propeller shaft in its bearings.
//
// # Model
//
// An Euler-Bernoulli beam in two planes, from the coupling face at x = 0 aft
// to its end at x = -length. Small slopes; no shear, no axial force, no
// spinning. x is forward, y to port, z up (the shaft frame S), all in mm and N.
//
//	     aft                                                   fore
//	   propeller     bearing               log      stuffing   coupling
//	      |        ___________          __________     box      half
//	______O_______|_|_|_|_|_|_|________|__________|_____$________|#| x = 0
//	               ^ ^ ^ ^ ^ ^          ^        ^      |          front end
//	               springs with       lip       lip   spring,
//	               clearance                          no clearance
//
// A bearing is an elastic foundation of its radial stiffness spread over its
// length, inside a clearance: it pushes back only where the shaft has moved
// more than half the diametral clearance c from the bearing's axis,
//
//	force = k * max(0, r - c/2), towards the axis,
//
// with r the radial travel, y and z together. The foundation is laid out as
// springs at evenly spaced stations, the end ones at half weight. The log is
// a tube: a stiff contact at each lip once the room round the shaft is used
// up. A stuffing box is a spring without clearance.
//
// # Method
//
// Sweeping from the aft end forward, everything aft of a station is condensed
// into one stiffness of the four end movements there,
//
//	P = S q + s,   q = (y, dy/dx, z, dz/dx),
//
// where P is the force that holds the cut end at q (work-conjugate to q, so a
// moment goes with each slope). A length of shaft is a rigid half, a compliance
// in slope (h/EI) and in travel (h^3/12EI), and another rigid half, which
// condenses without ever dividing by a small length: stations may lie as close
// as they like, and a bearing may overlap a lip of the log. Contacts add to S
// and s where they are. See sweep.go.
//
// Contact makes the energy convex but piecewise, with directions that are
// nearly flat (a shaft touching nothing in one plane), so Newton's method is
// damped and searched along its step, and an answer is accepted by the
// residual of the contact forces, in newtons. See newton.go.
//
// # Laws, held by the tests
//
//  1. Reactions and end forces balance weight and moments.
//  2. Force at each contact is the law above at the answer's own travel.
//  3. At a fixed set of contacts the response is reciprocal.
//  4. Mirroring y mirrors the answer.
//  5. The answer does not depend on where the iteration starts.
//
// # What it leaves out
//
// Shear deflection (under 1 % for spans over 20 diameters), the stiffening by
// the coupling half's hub, thrust in the shaft, bearings that tilt or sink
// with the hull, friction.
package shaftline
