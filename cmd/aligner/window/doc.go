// Package window is the program's one window: a boat's drive line that can be
// taken by its mounts, the two coupling faces close up, and what a mechanic
// reads beside them.
//
//	+--------------------------------------------------------------+
//	| boat, its state, back to drawn, undo, redo                  |
//	+------------------------------------------+-------------------+
//	|                                          |  faces            |
//	|   picture                                |  sentence         |
//	|                                          |  mounts (sheet.go)|
//	+------------------------------------------+-------------------+
//	| shaft held, exaggeration, view, units                        |
//	+--------------------------------------------------------------+
//
// The strips are in strips.go, what hand and keys mean in hand.go, the middle
// that joins all in window.go.
//
// # What is shown is a function of what was typed
//
//	visit.Document --solve--> shown (shown.go) --> picture, faces, sheet
//
// The document holds inputs only and changes by named edits (visit.Edit); the
// window keeps its history, works out everything else afresh, and holds no
// other state than how it looks at things (Settings). An event only notes the
// newest state and marks it; the picture is made once a frame
// (drawn.Frames). A page may fill the window in place of all this (pages.go).
//
// The package imports Fyne but not its app package, so its tests need no
// screen; the real window is opened by the program itself.
package window
