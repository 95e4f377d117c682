// Package form is the page on which a yard enters a boat of its own with a tape
// measure, beside the picture of her.
//
//	+-----------+----------------------+---------------------------+
//	| parts     | fields of one part   | picture, with the tape of |
//	| Boat      |   Fore and aft  [  ] | the field chosen          |
//	| Engine    |   limits, what does  |                           |
//	| Mount ... |   not fit, the usual |---------------------------|
//	| Look over |                      | where to put the tape,    |
//	| Keep ...  |                      | how much it matters       |
//	+-----------+----------------------+---------------------------+
//
// A Draft outlives the page, which is made anew when language or looks change: it
// holds every hull there was since the beginning (fields.Past) and what is chosen.
// Each edit is written beside the logbook before it is shown.
//
// Everything goes by keyboard: Enter takes what was typed and goes to the next
// field, through all parts to the end; up and down go through the fields, Page Up and
// Page Down through the parts, Ctrl Z and Ctrl Y through the past.
package form
