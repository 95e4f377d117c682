// Package photos is a strip of a visit's photos, for a page or a sheet: small
// pictures side by side, each shown large when it is pressed, and a line and a
// dialog to attach more.
//
//	[ /home/me/shot.jpg        ] [Attach] [Look for one ...]
//	+------+ +----------+ +------+
//	|      | |          | |      |
//	+------+ +----------+ +------+
//	 aft port  the strut
//
// Photos are read, shrunk and drawn aside; the strip never waits for them.
package photos
