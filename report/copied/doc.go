// Package copied writes what a visit came to in forms to be pasted elsewhere:
// plain text for a message, rows for a spreadsheet. Both say their units, their
// rule and how sure they are, as screen and paper do.
package copied
