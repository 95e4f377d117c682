// Package troubles is the page that goes from what a boat does to what may be
// wrong with her, and through the tests that tell.
//
//	+----------------------+--------------------------------------+
//	| what does she do?    | what it may be, the likeliest first   |
//	| o shakes once a turn |                                      |
//	| x knocks             | next: the test, how, good, bad        |
//	| ...                  | [good] [bad] [another test]           |
//	+----------------------+                                      |
//	|                      | tried, and what the visit told        |
//	+----------------------+--------------------------------------+
//	| back                                                        |
//	+-------------------------------------------------------------+
//
// Arrows choose a symptom, Space notes it in the visit or takes it back; Y, Z and
// K answer the test shown: good, bad, another. All of it goes into the visit by
// edits and can be undone there; the page holds nothing but which test is shown.
package troubles
