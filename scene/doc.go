// Package scene draws a hull's drive line: solids whose shapes follow from the
// hull file, moved as package kinematics says, with every movement made larger
// by one factor.
//
//	m := scene.NewModel(hull)              // meshes, once
//	m.Read(driveLine, &asked, &result, &now) // a copy of one answer
//	m.Pose(&scene.State{Now: &now, Exaggeration: 200, View: view}, &picture)
//	renderer.Draw(dst, &picture)
//
// Soft shadows come a little later: go m.Bake, then m.Use.
//
// # Frames
//
// Everything is in the shaft frame S of package kinematics, in millimetres: x
// forward along the true shaft line, y to port, z up. The world's up is (sin a,
// 0, cos a) with a the shaft angle, and ahead on the level (cos a, 0, -sin a).
// Engine, gearbox and mounts are built in E (bed) and carried to S.
//
// # Movement
//
// A point drawn at X with the true displacement u(X) is drawn at
//
//	X + N u(X)
//
// with N the exaggeration. Never is anything turned by N times its angle: the
// gap between two faces is then N times the true gap at every clock position.
// Each piece belongs to a body, which gives it its u:
//
//	fixed      0
//	engine     t + R X - X, exact: an affine map I + N (R - I), N t
//	shaft      (p - y Y' - z Z', Y, Z) with Y, Z the shaft's travel at x and p
//	           its place along x: seated, the faces' gap at the centre
//	base       (0, s, 0): a mount's lower plate with its slide
//	stud       engine's, less the lift along the stud
//	nut        engine's, and truly turned on the stud: a flat turned is seen
//	thread     from stud to nut, point by point: its free length grows by the lift
//	rubber     from base to stud, point by point
//	shims      on the base, as much higher as the lift
//	hose       from log to stuffing box, point by point
//	bore       outward by half the bearing's clearance: a wall the shaft has
//	           room before it touches; a strut's leg ends on it
//
// So a mount is drawn as a stud standing in rubber, with the engine's bracket
// between the adjusting nut under it and the jam nut over it. Nuts and bracket
// follow the engine; the stud sinks by what the rubber gives way.
//
// The log is the exception: it stands at its true size at every N, for its
// room is of the order of a centimetre and N times that would fill the boat.
// It turns to glass where the shaft is drawn outside it. Whether the shaft
// touches it is told by a mark and in words.
//
// # What the pictures leave out
//
// Engines, gearboxes and hulls are generic: their outlines follow from mass,
// centre of mass, mounts and angles, no maker's shape is meant. Where nothing
// in a hull file gives a dimension, a usual proportion is drawn (common
// practice, no source).
package scene
