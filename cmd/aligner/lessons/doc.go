// Package lessons is the page to learn by: a list of lessons, and of the one chosen
// what to watch, step by step, on the boat in 3D and on her faces, then a question
// whose answer the program works out.
//
//	+----------------+---------------------------+---------------+
//	| lessons        |  the boat                 |  the faces     |
//	|  sag ...       |                           +---------------+
//	|  twist ...     |                           |  text, then    |
//	|  from a file   |                           |  question and  |
//	|                |                           |  answer        |
//	+----------------+---------------------------+---------------+
//
// Space and Backspace go a step further and back; up and down choose a lesson; a
// number or a choice answers (1, 2, 3). A lesson file of one's own is opened by its
// button or dropped on the window. The learner may drag a mount, or choose it by M and
// turn its nut by + and -, and see the faces answer; Home, or the next step, puts the
// boat back (own.go). The lesson's answer stays its own.
package lessons
