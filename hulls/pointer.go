package hulls

// This file follows places in a file: JSON pointers (RFC 6901), by which the
// tolerance table names numbers, and the paths used in faults.

import (
	"fmt"
	"strconv"
	"strings"
)

// MaxTolerances bounds the tolerance table; a hull of twelve mounts has fewer
// numbers than this.
const MaxTolerances = 500

// tolerance reads the table of plus-or-minus figures.
func (d *decoder) tolerance(n *node) map[string]float64 {
	if n == nil {
		return nil
	}
	if n.kind != isObject {
		d.wrongKind(n, "tolerance", isObject)
		return nil
	}
	if len(n.keys) > MaxTolerances {
		d.refuse("tolerance", n.line, fmt.Sprintf("%d tolerances", len(n.keys)), fmt.Sprintf("at most %d", MaxTolerances), "leave out those that do not differ from the program's own")
		return nil
	}
	t := make(map[string]float64, len(n.keys))
	for i, key := range n.keys {
		item, path := n.items[i], join("tolerance", key)
		switch {
		case item.kind != isNumber:
			d.wrongKind(item, path, isNumber)
		case !isPointer(key):
			d.refuse(path, item.line, quoted(key), "a JSON pointer to a number of this file, such as /mounts/0/at_mm/2", "write the way to the number from the top, each step after a /")
		default:
			t[key] = item.number
		}
	}
	if len(t) == 0 {
		return nil
	}
	return t
}

// tolerancePointers refuses pointers that lead to no number of the file.
func (d *decoder) tolerancePointers(root *node, t map[string]float64) {
	table := root.member("tolerance")
	if table == nil || table.kind != isObject {
		return
	}
	for i, key := range table.keys {
		if _, read := t[key]; !read {
			continue
		}
		path := join("tolerance", key)
		if strings.HasPrefix(key, "/tolerance/") {
			d.refuse(path, table.items[i].line, "a pointer to a tolerance", "a JSON pointer to a number of the hull", "point at the number itself, as in /mounts/0/at_mm/2")
			continue
		}
		switch target := root.follow(key); {
		case target == nil:
			d.refuse(path, table.items[i].line, "a pointer to nothing", "a JSON pointer to a number of this file", "correct the pointer; lists count from 0")
		case target.kind != isNumber:
			d.refuse(path, table.items[i].line, "a pointer to "+target.kind.String(), "a JSON pointer to a number of the hull", "point at the number itself, as in /mounts/0/at_mm/2")
		}
	}
}

// isPointer reports whether s is a JSON pointer with at least one step.
func isPointer(s string) bool {
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

// follow finds what a JSON pointer points at, or nil.
func (n *node) follow(pointer string) *node {
	for _, step := range steps(pointer) {
		switch n.kind {
		case isObject:
			n = n.member(step)
		case isArray:
			i, err := strconv.Atoi(step)
			if err != nil || i < 0 || i >= len(n.items) || strconv.Itoa(i) != step {
				return nil
			}
			n = n.items[i]
		default:
			return nil
		}
		if n == nil {
			return nil
		}
	}
	return n
}

// lineOf finds the line of a fault's path. Where the path names a key that was
// left out, it is the line of the nearest thing that holds it.
func (n *node) lineOf(path string) int {
	line := n.line
	if strings.HasPrefix(path, "tolerance[") {
		if t := n.member("tolerance"); t != nil {
			for i, key := range t.keys {
				if join("tolerance", key) == path {
					return t.items[i].line
				}
			}
			return t.line
		}
		return line
	}
	for _, step := range strings.FieldsFunc(path, func(r rune) bool { return r == '.' || r == '[' || r == ']' }) {
		n = n.follow("/" + step)
		if n == nil {
			break
		}
		line = n.line
	}
	return line
}
