// Package boats is the page of all boats in the logbook: found by what is typed,
// those whose check is overdue at the head, each with what was done on her.
//
//	+--------------------------+-----------------------------------+
//	| words to look for        | her name, layout, numbers          |
//	+--------------------------+ next check and why                 |
//	| name          when due   | begin a visit, take her out ...    |
//	| layout, last visit, gap  +-----------------------------------+
//	| ...                      | her visits, the latest first       |
//	|                          | photos of the visit chosen         |
//	+--------------------------+-----------------------------------+
//	| take a boat in, the built-in boats                  back      |
//	+---------------------------------------------------------------+
//
// Words are typed at once; the arrows choose a boat while they are being typed,
// Enter goes to her visits, Enter there opens one, and the right arrow turns to her
// past (past.go), from which Escape leads back:
//
//	+--------------------------+-----------------------------------+
//	| date               hours | plots of spread, where it opens,  |
//	| found, left              | nuts and studs                    |
//	+--------------------------+                                   |
//	| what moved before, the   |                                   |
//	| likely cause, found, left| attach a photo; photos            |
//	+--------------------------+-----------------------------------+
//
// The page keeps nothing of its own and reads the logbook a hundred lines at a
// time (shelf.go), only the lines in sight; a hundred thousand visits are no
// different from ten. How many boats have the words is counted aside. What it
// opens or begins it asks of the window (Do).
package boats
