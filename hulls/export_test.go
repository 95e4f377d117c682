package hulls

// ReadStructure tells whether a file has the structure of a hull, whatever its
// numbers, for comparison with the schema.
func ReadStructure(data []byte) []Fault {
	_, _, faults := readStructure(data, "")
	return faults
}
