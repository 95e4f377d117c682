// Package hulls holds a boat's drive line as data: the hull file, its reader,
// its materials and threads, and what makes a set of numbers a possible boat.
//
// A hull is one engine on its mounts, one coupling, one shaft in its bearings,
// a log, a propeller. Nothing here moves; what moves what is in package
// kinematics.
//
// # Frames
//
// Two right-handed frames share one origin, the centre of the engine-side
// coupling face in the drawn (true) state:
//
//	   z_S  z_E                       fore ->
//	    |  /
//	    | /        d = down angle of the gearbox
//	    |/___________ x_S   forward along the true shaft line
//	   /  ` - .
//	y (port)     ` - x_E    along the crank line, the engine's bed
//
// S, the shaft frame: x forward along the true shaft line, y to port, z up,
// perpendicular to the shaft. The shaft line rises going forward by the shaft
// angle a, so the world's "up" is (sin a, 0, cos a) in S.
//
// E, the engine frame: S turned by the down angle d about +y, so that
// x_E = (cos d, 0, -sin d) and z_E = (sin d, 0, cos d) in S. The bed slopes by
// a - d. d is 0 in-line and commonly 7 to 15 degrees with down-angle gearboxes
// and V-drives.
//
// Mounts and the engine's centre of mass are given in E; bearings, log and
// propeller by the x of their middle in S (negative: aft of the face), with
// sideways offsets [y, z] in S.
//
// # Units
//
// Millimetres, newtons, kilograms and degrees, as the file's keys say; every
// field's name ends in its unit.
package hulls
