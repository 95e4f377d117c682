// Package logbook keeps boats and what was done on them: every hull, every visit
// and every edit of it, in one file.
//
//	hulls --< hull_versions        a hull as measured, and as corrected later
//	  |             |
//	  '--< visits >-'              a job on that hull as it was then
//	          |
//	          |--< edits           what was put in, undone and done again, in order
//	          '--< photos          shrunk to MostPhotoPX
//
//	mechanics --< settings         units, leaves, rule, view ... of each
//
//	derived_hulls, derived_visits, derived_words, derived_snapshots
//
// # What is kept and what is derived
//
// A visit is its beginning and its edits:
//
//	document = base + replay(edits)
//
// Hull versions and edits are only ever added; the file itself refuses to change
// or delete them. Everything under derived_ follows from the rest and may be
// thrown away: Rebuild makes it again. It is there so that lists are quick, and
// so that a document need not be replayed from its beginning. What was worked
// out from a visit (its spread, when to look again) is derived too; it is put in
// by whoever worked it out, together with the edit it was worked out at.
//
// # When something is kept
//
// A Session is one visit being worked on. Do, Undo and Redo return only when the
// edit is committed and the disk has it; the caller shows it then. An edit that
// could not be written is not done, and the error says why. So a program killed
// at any moment has lost at most the edit it was not yet told was kept, and a
// Session begun again stands where the last one stood, undo and redo included.
//
// Any number of programs may have a logbook open, for writing too. A session that
// finds edits of another program on its visit takes them in before its own.
//
// # The file
//
// SQLite 3 in write-ahead mode, with an application id (Application) and a
// version (Version). A file with another id is a stranger's and is left alone; a
// version this program does not know is refused; older ones are brought forward
// by the scripts in migrations/, each in one transaction with its version.
//
// A boat that is being typed in is no boat yet. Her draft lies beside the logbook in a
// hull file of its own (KeepDraft), written anew after each field.
//
// Lengths are in mm, dates "2026-05-14", moments RFC 3339 in UTC.
//
// # What it leaves out
//
// A logbook lies on a disk of this machine: SQLite's locks do not hold on most
// network shares. Deleting hulls and visits is not offered.
package logbook
