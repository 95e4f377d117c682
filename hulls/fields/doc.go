// Package fields is a hull as a form: its numbers and texts as an ordered list, in
// groups a mechanic understands, each with what it is called, its unit, its limits,
// where to put the tape, and what to take where it cannot be measured.
//
//	Hull --List--> []Field
//	Hull, pointer, Value --Set--> Hull, or one fault: value, limit, mend
//
// A field is named by a JSON pointer (RFC 6901) into the hull file, such as
// /mounts/0/at_mm/2. Its words stand under "field_" and "tape_" with its Key.
//
// # Where to put the tape
//
// A Tape runs between two Points, in frame E along the engine's bed or S along the
// shaft (see package hulls). They follow from the hull as it is, so that a picture
// shows the tape where the number says it should be:
//
//	      |<--------- x of a mount --------->|
//	      face                              stud
//	E  ---+----------------------------------+----> bed
//
// # Drafts
//
// A boat is typed in number by number, and on the way a bearing may for a while
// stand behind the end of the shaft. So Set refuses only what a field can never be
// (hulls.Limit's Ever, a thread there is none of); what does not go together is left
// to hulls.Validate, and the hull is a draft until that refuses nothing.
//
// # Measured or assumed
//
// TakeUsual puts a stated usual value in place of a measured one, with its stated
// plus-or-minus in the hull's tolerance table. NewFrom takes over a whole boat, and
// marks every number in the same way. A number whose plus-or-minus there is as wide
// as that counts as assumed; measuring it takes the entry away, and the program's
// own tolerance for a measured number holds again.
//
// What it leaves out: nothing here moves, and how much a field matters to the
// answer is in package kinematics/sensitivity.
package fields
