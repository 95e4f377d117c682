// Package practice is the page to practise on: a boat with a hidden fault, worked on
// without help, and afterwards what the tool would have done and where the thinking
// went astray.
//
//	+--------------------------------------------------------------+
//	| name   what to learn   boat   Begin                     Back |
//	+--------------------+--------------------+--------------------+
//	|  the boat, arrows  |  gauge, turn,      |  what was done,    |
//	|  at what is typed  |  tighten, hand     |  line by line;     |
//	+--------------------+  over; after: what |  before: results   |
//	|  the faces, with   |  came of it        |  kept              |
//	|  these readings    |                    |                    |
//	+--------------------+--------------------+--------------------+
//
// The picture shows the boat as drawn and never where the engine truly is: that is
// what the learner is to find out. Readings are asked for by the clock, several at a
// time ("12 3 6 9"; "-3" wipes and files). All is kept as it is done: a piece of work
// goes on where it was left, also after the program was closed.
package practice
