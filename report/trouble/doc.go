// Package trouble goes from a symptom to its likely causes and to the next cheap
// test that tells them apart.
//
//	symptom --> causes, each with a weight --test--> weights --test--> ...
//
// # The scheme
//
// A symptom gives each cause a weight: 4 where it is what the cause commonly does,
// 2 where it is met, 1 where it can be; whatever is not on the list has a weight
// of its own (Else). A test that bears on a cause is bad in most boats that have
// the cause (hit) and in few that have not (falseAlarm; a gap out of the rule in many,
// for most boats are gauged for it), so
//
//	bad:   weight x hit / falseAlarm
//	good:  weight x (1 - hit) / (1 - falseAlarm)
//
// and causes it does not bear on keep theirs. A cause's share is its weight in the
// sum of all. These are odds of a rough kind, multiplied as if tests failed
// independently; weights and hits are common practice without a source, and only
// the order and the words they come to (Grade) are told, never the numbers.
//
// What is known of one boat beforehand (boat.go) multiplies the weights too: how
// near her shaft comes to its whirling speed, and what most likely moved since the
// visit before.
//
// No symptom is a verdict: however large its share, a cause is graded no higher
// than likely until a test that shows it, which most boats that have it fail, came
// out bad. Shake is weak evidence:
// propellers, mounts and struts shake boats more often than line-up does, and an
// engine out of line often gives no feel at all, only wear.
//
// Tests that are checks of the look-over, or that the readings of a visit answer,
// are taken from the visit (known.go). The next test is the one that is expected
// to tell most for its minutes.
//
// # What it leaves out
//
// Two causes at once, which are common: after one is mended, ask again.
package trouble
