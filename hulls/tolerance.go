package hulls

// This file reads the tolerance table, which names numbers of the hull by JSON
// pointers (RFC 6901).

import (
	"fmt"
	"strings"

	"aligner/hulls/strictjson"
)

// MaxTolerances bounds the tolerance table; a hull of twelve mounts has fewer
// numbers than this.
const MaxTolerances = 500

// tolerance reads the table of plus-or-minus figures.
func (d *decoder) tolerance(n *strictjson.Node) map[string]float64 {
	if n == nil {
		return nil
	}
	if n.Kind != strictjson.IsObject {
		d.WrongKind(n, "tolerance", strictjson.IsObject)
		return nil
	}
	if len(n.Keys) > MaxTolerances {
		d.Refuse("tolerance", n.Line, fmt.Sprintf("%d tolerances", len(n.Keys)), fmt.Sprintf("at most %d", MaxTolerances), "leave out those that do not differ from the program's own")
		return nil
	}
	t := make(map[string]float64, len(n.Keys))
	for i, key := range n.Keys {
		item, path := n.Items[i], strictjson.Join("tolerance", key)
		switch {
		case item.Kind != strictjson.IsNumber:
			d.WrongKind(item, path, strictjson.IsNumber)
		case !strictjson.IsPointer(key):
			d.Refuse(path, item.Line, strictjson.Quoted(key), "a JSON pointer to a number of this file, such as /mounts/0/at_mm/2", "write the way to the number from the top, each step after a /")
		default:
			t[key] = item.Number
		}
	}
	if len(t) == 0 {
		return nil
	}
	return t
}

// tolerancePointers refuses pointers that lead to no number of the file.
func (d *decoder) tolerancePointers(root *strictjson.Node, t map[string]float64) {
	table := root.Member("tolerance")
	if table == nil || table.Kind != strictjson.IsObject {
		return
	}
	for i, key := range table.Keys {
		if _, read := t[key]; !read {
			continue
		}
		path := strictjson.Join("tolerance", key)
		if strings.HasPrefix(key, "/tolerance/") {
			d.Refuse(path, table.Items[i].Line, "a pointer to a tolerance", "a JSON pointer to a number of the hull", "point at the number itself, as in /mounts/0/at_mm/2")
			continue
		}
		switch target := root.Follow(key); {
		case target == nil:
			d.Refuse(path, table.Items[i].Line, "a pointer to nothing", "a JSON pointer to a number of this file", "correct the pointer; lists count from 0")
		case target.Kind != strictjson.IsNumber:
			d.Refuse(path, table.Items[i].Line, "a pointer to "+target.Kind.String(), "a JSON pointer to a number of the hull", "point at the number itself, as in /mounts/0/at_mm/2")
		}
	}
}
