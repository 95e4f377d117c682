// Package drawn is what is drawn rather than written: the drive line in 3D that
// can be taken by its handles (Picture), and the two coupling faces close up
// (Faces), as widgets for any page of the program.
//
//	scene.Model + scene.State --Pose--> render.Scene --Draw--> pixels   Picture
//	kinematics.Result         --SetResult--> faces.Faces  --Draw--> pixels   Faces
//
// Whoever shows a Picture sets its State and calls Refresh; the library then asks
// for exactly the pixels it needs, once a frame at most. What a hand does to a
// handle is told to a Hand; the picture changes nothing but its view. While a hand
// is on something, Frames makes one update a frame out of however many events there
// were; otherwise nothing is redrawn.
//
// A Picture holds a renderer with buffers of its own and, for a second or so after
// its first painting, a goroutine that works out soft shadows: Close it when it is
// no longer shown.
package drawn
