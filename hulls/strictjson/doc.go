// Package strictjson reads and writes the project's files: JSON (RFC 8259)
// taken strictly, every fault told in one line, one canonical spelling.
//
//	bytes --Parse--> Node --Decoder, Object--> values of a format, or faults
//	values --Encoder--> bytes
//
// Strict means what the JSON grammar leaves open, or a lenient reader lets
// pass, is refused: byte order marks, bytes that are not UTF-8, keys given
// twice or in another case, a second value after the first, values nested too
// deep, files too large, numbers too large for a float64, null.
//
// It knows JSON, and units in the endings of keys; nothing of boats. What a
// format's keys mean is left to the packages that own the formats.
package strictjson
