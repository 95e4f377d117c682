package hulls

// This file opens the reader to the tests of the schema.

import "aligner/hulls/strictjson"

// ReadStructure tells whether a file has the structure of a hull, whatever its
// numbers, for comparison with the schema.
func ReadStructure(data []byte) []Fault {
	root, f := strictjson.Parse(data, "", hullFormat)
	if f != nil {
		return []Fault{*f}
	}
	_, faults := readStructure(root, "", "")
	return faults
}
