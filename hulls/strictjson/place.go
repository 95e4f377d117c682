package strictjson

// This file follows places in a file: JSON pointers (RFC 6901), and the paths
// used in faults, such as mounts[1].thread_pitch_mm.

import (
	"strconv"
	"strings"
)

// IsPointer reports whether s is a JSON pointer with at least one step.
func IsPointer(s string) bool {
	if !strings.HasPrefix(s, "/") {
		return false
	}
	for i := 0; i < len(s); i++ {
		if s[i] == '~' && (i+1 == len(s) || s[i+1] != '0' && s[i+1] != '1') {
			return false
		}
	}
	return true
}

// steps parts a JSON pointer.
func steps(pointer string) []string {
	parts := strings.Split(pointer, "/")[1:]
	for i, p := range parts {
		parts[i] = strings.ReplaceAll(strings.ReplaceAll(p, "~1", "/"), "~0", "~")
	}
	return parts
}

// Follow finds what a JSON pointer points at, or nil.
func (n *Node) Follow(pointer string) *Node {
	for _, step := range steps(pointer) {
		switch n.Kind {
		case IsObject:
			n = n.Member(step)
		case IsArray:
			i, err := strconv.Atoi(step)
			if err != nil || i < 0 || i >= len(n.Items) || strconv.Itoa(i) != step {
				return nil
			}
			n = n.Items[i]
		default:
			return nil
		}
		if n == nil {
			return nil
		}
	}
	return n
}

// LineOf finds the line of a fault's path. Where the path names a key that was
// left out, it is the line of the nearest thing that holds it.
func (n *Node) LineOf(path string) int {
	line := n.Line
	for path != "" && n != nil {
		n, path = n.step(path)
		if n != nil {
			line = n.Line
		}
	}
	return line
}

// step goes down by the first step of a path, and gives the rest of it.
func (n *Node) step(path string) (*Node, string) {
	for i, key := range n.Keys {
		// Keys may hold any sign, quoted ones are cut when long: what Join makes
		// of each is compared.
		if rest, ok := strings.CutPrefix(path, Join("", key)); ok && (rest == "" || rest[0] == '.' || rest[0] == '[') {
			return n.Items[i], strings.TrimPrefix(rest, ".")
		}
	}
	if n.Kind == IsArray && path[0] == '[' {
		if end := strings.IndexByte(path, ']'); end > 0 {
			i, err := strconv.Atoi(path[1:end])
			if err == nil && i >= 0 && i < len(n.Items) {
				return n.Items[i], strings.TrimPrefix(path[end+1:], ".")
			}
		}
	}
	return nil, ""
}

// Below is a path under a place; either may be "".
func Below(place, path string) string {
	if place == "" || path == "" || path[0] == '[' {
		return place + path
	}
	return place + "." + path
}

// Locate gives faults found in what was read from n the file it came from, its
// place in that file, and their lines.
func (n *Node) Locate(faults []Fault, file, place string) {
	for i := range faults {
		faults[i].File = file
		faults[i].Line = n.LineOf(faults[i].Place)
		faults[i].Place = Below(place, faults[i].Place)
	}
}
