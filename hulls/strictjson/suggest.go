package strictjson

// This file guesses which key was meant by an unknown one: another case,
// another unit, a slip of the finger.

import "strings"

// otherUnits are units people write that a format's keys may not use, longer
// ones before those they end in.
var otherUnits = []string{
	"_lbf_per_in", "_lb_per_in", "_n_per_m", "_kn_per_mm", "_g_cm3", "_lb_in3", "_lb_ft3",
	"_thou", "_mil", "_inches", "_inch", "_in", "_ft", "_cm", "_um", "_m",
	"_lbs", "_lb", "_t", "_g", "_rad", "_degrees", "_hz", "_n",
}

// splitUnit parts a key into stem and unit; the unit may be "". Of the format's
// own units the longest fits: "_n_per_mm" is not "_mm".
func (f *Format) splitUnit(key string) (stem, unit string) {
	for u := range f.Units {
		if strings.HasSuffix(key, u) && len(key) > len(u) && len(u) > len(unit) {
			unit = u
		}
	}
	if unit != "" {
		return strings.TrimSuffix(key, unit), unit
	}
	for _, u := range otherUnits {
		if strings.HasSuffix(key, u) && len(key) > len(u) {
			return strings.TrimSuffix(key, u), u
		}
	}
	return key, ""
}

// unitOf names the unit of the number at a path: " of millimetres".
func (f *Format) unitOf(path string) string {
	if i := strings.LastIndexAny(path, "."); i >= 0 {
		path = path[i+1:]
	}
	if i := strings.IndexByte(path, '['); i > 0 {
		path = path[:i]
	}
	if other, ok := f.SameAs[path]; ok {
		path = other
	}
	_, unit := f.splitUnit(path)
	if w, ok := f.Units[unit]; ok {
		return " of " + w
	}
	return ""
}

// suggestKey says which key was likely meant, as limit and mend of a fault.
func (f *Format) suggestKey(key string, known []string) (limit, mend string) {
	if s, ok := f.Misplaced[key]; ok {
		return s[0], s[1]
	}
	for _, k := range known {
		if strings.EqualFold(k, key) {
			return k, "keys are in small letters: write " + k
		}
	}
	stem, unit := f.splitUnit(strings.ToLower(key))
	for _, k := range known {
		kStem, kUnit := f.splitUnit(k)
		if kUnit != "" && kStem == stem && unit != kUnit {
			return k + ", in " + f.Units[kUnit], "convert the number and write " + k
		}
	}
	best, bestAt := "", 3
	for _, k := range known {
		if d := editDistance(strings.ToLower(key), k); d < bestAt && d*2 < len(k) {
			best, bestAt = k, d
		}
	}
	if best != "" {
		return best, "if that is meant, write " + best
	}
	return "one of " + strings.Join(known, ", "), "delete it, or write one of these"
}

// editDistance counts the letters to insert, delete or replace. Long keys are
// not worth the time.
func editDistance(a, b string) int {
	if len(a) > 64 {
		return len(a)
	}
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := 1; i <= len(a); i++ {
		corner := row[0]
		row[0] = i
		for j := 1; j <= len(b); j++ {
			replace := corner
			if a[i-1] != b[j-1] {
				replace++
			}
			corner = row[j]
			row[j] = min(replace, row[j]+1, row[j-1]+1)
		}
	}
	return row[len(b)]
}
