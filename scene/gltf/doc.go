// Package gltf writes a posed scene as binary glTF 2.0 (Khronos Group, glTF 2.0
// Specification, 2021; ISO/IEC 12113:2022), for any viewer that reads it.
//
//	m.Pose(&state, &posed)                     // package scene
//	what := gltf.Of(m, &posed, name)           // name says things in words
//	err := what.Write(file)
//
// # Frame
//
// The scene is in the shaft frame S of package kinematics: x forward along the
// true shaft line, y to port, z up from it, mm. glTF is right-handed too, +Y up
// and +Z forward, metres, so a point is written as
//
//	(X, Y, Z) = (y, z, x) / 1000
//
// and one node, the boat's, turns all of it by the shaft angle about X, which
// brings the world's up onto +Y. What hangs under that node is in S, read in
// this order; what a viewer shows stands level.
//
// # What is written
//
//	boat ── engine, gearbox, mount fore port, ...   one node a thing
//	     ├─ shaft as gauged, true shaft line        lines, where they are shown
//	     └─ view                                    a camera, if given
//
// A thing's mesh has a primitive for each of its pieces. Points stand where they
// are drawn, X + N u(X) with the exaggeration N: that map is no turn and no
// stretch along axes, so no glTF node could hold it. N stands in the extras of
// the asset and of the scene. Hidden parts are left out. The same scene always
// comes to the same bytes.
//
// # What it leaves out
//
// Baked occlusion, highlights by gloss beyond roughness, labels, handles and
// outlines. Points are single precision: half a thousandth of a millimetre at
// four metres.
package gltf
