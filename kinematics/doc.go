// Package kinematics says what moves what: from nuts turned under an engine to
// the gap between the two coupling faces.
//
// # Frames and letters
//
//	S  shaft frame: origin at the engine-side face as drawn, x forward along
//	   the true shaft line, y to port, z up
//	E  engine frame, fixed to the bed: S turned by the down angle d about +y,
//	   x_E = (cos d, 0, -sin d), y_E = y, z_E = (sin d, 0, cos d)
//	F  the engine-side face, which moves with the engine
//	H  the shaft-side half, which moves with the shaft's front end
//
// Poses are changes from drawn, written in S. p_FM_S is the arm from the face
// centre to a mount, in S.
//
// # A mount
//
//	          engine's foot
//	         ____|____            along    z_E   nut, + raises the seat by u
//	        |  rubber |           athwart  y_E   slide, + shifts it to port by s
//	nut  ===|____ ____|===        fore_aft x_E
//	             |  stud
//	---------- bed ----------
//
// Each mount is three springs between the foot at R p + t and its seat at
// p + u z_E + s y_E, along axes that stay with the bed. With d the foot's
// travel past its seat, its force on the engine is
//
//	F = F0 - K d,
//
// F0 the preload: the elastic solution with the engine drawn and all seats in
// one plane, so that the drawn engine is at rest. Rubber is bonded and pulls
// as well as pushes. A solid foot only pushes along its stud; sideways its
// bolt goes on locating it.
//
// The pose minimises the springs' energy plus gravity, with finite rotations.
// While an engine is levered, the mounts being slid have no athwart stiffness
// and their feet stand where the lever put them.
//
// # The faces
//
// The clock is seen looking forward from the propeller: 12 is +z, 3 is
// starboard (-y). At clock angle t the gap, positive when open and measured
// along x at the outer radius r, is
//
//	gap(t) = g0 + A cos t + B sin t
//	A = r (dz/dx - n_z/n_x),  B = r (n_y/n_x - dy/dx),
//
// with n the normal of F and the derivatives the shaft's slopes at its front
// end; to first order A = r (theta_y + dz/dx) and B = r (theta_z - dy/dx).
// Run-out of either half adds a cosine that turns with it.
//
// # How the shaft is held
//
//	hanging   free front end
//	centred   on a block in the middle of its free travel, or pulled up by a
//	          stated force
//	seated    carried by the pilot on the face's centre, pushed forward until
//	          the faces touch
//	bolted    faces drawn flat together: travel and slope agree; through a soft
//	          coupling the slopes differ by what its bending spring gives
//
// Seated and bolted, the shaft's end force acts back on the engine, and both
// are one Newton iteration: the engine is the front of package shaftline.
//
// # What it leaves out
//
// Clearance of the pilot (under 0.3 thou), heat (under 1 thou at 50 K), the
// hull's own bending, friction, and the bending of the engine.
package kinematics
