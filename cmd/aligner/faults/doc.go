// Package faults keeps a small file of what went wrong in the program, beside
// the logbook, and packs a report of a problem for whoever mends it.
//
//	Log   --Begin, Note-->  faults.txt     the last few runs, so many bytes
//	Pack  --> problem.zip   READ-ME, about, visit, hull, faults
//
// Nothing is ever sent: a report is a file that the user saves, may read, and
// gives to somebody or not. Folders of the user's own are written as "~".
package faults
