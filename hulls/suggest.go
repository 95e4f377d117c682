package hulls

// This file guesses which key was meant by an unknown one: another case,
// another unit, a slip of the finger.

import "strings"

// units of keys, longest first so that "_n_per_mm" is not taken for "_mm".
// The second list holds units people write that no key uses.
var (
	keyUnits   = []string{"_n_per_mm", "_kg_m3", "_mm", "_kg", "_deg", "_rpm"}
	otherUnits = []string{
		"_lbf_per_in", "_lb_per_in", "_n_per_m", "_kn_per_mm", "_g_cm3", "_lb_in3", "_lb_ft3",
		"_thou", "_mil", "_inches", "_inch", "_in", "_ft", "_cm", "_um", "_m",
		"_lbs", "_lb", "_t", "_g", "_rad", "_degrees", "_hz", "_n",
	}
	unitWords = map[string]string{
		"_n_per_mm": "newtons per millimetre", "_kg_m3": "kilograms per cubic metre",
		"_mm": "millimetres", "_kg": "kilograms", "_deg": "degrees", "_rpm": "turns a minute",
	}
)

// splitUnit parts a key into stem and unit; the unit may be "".
func splitUnit(key string) (stem, unit string) {
	for _, list := range [][]string{keyUnits, otherUnits} {
		for _, u := range list {
			if strings.HasSuffix(key, u) && len(key) > len(u) {
				return strings.TrimSuffix(key, u), u
			}
		}
	}
	return key, ""
}

// unitOf names the unit of the number at a path: " of millimetres".
func unitOf(path string) string {
	if i := strings.LastIndexAny(path, "."); i >= 0 {
		path = path[i+1:]
	}
	if i := strings.IndexByte(path, '['); i > 0 {
		path = path[:i]
	}
	if path == "along" || path == "fore_aft" || path == "athwart" {
		path = "stiffness_n_per_mm"
	}
	_, unit := splitUnit(path)
	if w, ok := unitWords[unit]; ok {
		return " of " + w
	}
	return ""
}

// misplaced keys are right elsewhere, or were left out of the format for a
// reason.
var misplaced = map[string][2]string{
	"thread":          {"no thread on a solid foot", "give shim_step_mm instead, or make the mount rubber"},
	"thread_pitch_mm": {"no thread on a solid foot", "give shim_step_mm instead, or make the mount rubber"},
	"shim_step_mm":    {"shims under solid feet only", `add "kind": "solid", or delete the key`},
	"density_kg_m3":   {"no density: it follows from the alloy", "delete it and name the alloy by its UNS number"},
	"density_g_cm3":   {"no density: it follows from the alloy", "delete it and name the alloy by its UNS number"},
}

// suggestKey says which key was likely meant, as limit and mend of a fault.
func suggestKey(key string, known []string) (limit, mend string) {
	if s, ok := misplaced[key]; ok {
		return s[0], s[1]
	}
	for _, k := range known {
		if strings.EqualFold(k, key) {
			return k, "keys are in small letters: write " + k
		}
	}
	stem, unit := splitUnit(strings.ToLower(key))
	for _, k := range known {
		kStem, kUnit := splitUnit(k)
		if kUnit != "" && kStem == stem && unit != kUnit {
			return k + ", in " + unitWords[kUnit], "convert the number and write " + k
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
