package window

// This file reads a reading as a mate calls it: "12 3/4", place, leaf that goes,
// leaf that stops.

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"aligner/assets/words"
	"aligner/hulls/visit"
)

// readEntry reads one line. askedDeg is the place asked for, used where the line
// names none; leaves are the set's, in the unit of the line, thinnest first.
func readEntry(s words.Speaker, text string, askedDeg float64, seen visit.Direction, unit visit.Unit, leaves []float64) (visit.Leaf, error) {
	bad := entryError(s.Say(words.GaugeBadEntry, words.Args{"Text": text}))
	fields := strings.Fields(strings.ReplaceAll(text, ",", "."))
	leaf := visit.Leaf{ClockDeg: askedDeg}
	switch len(fields) {
	case 2:
		deg, err := visit.ParseClock(fields[0], seen)
		if err != nil {
			return leaf, entryError(s.Retell(err.Error()))
		}
		leaf.ClockDeg = deg
	case 1:
	default:
		return leaf, bad
	}
	goes, stops, pair := strings.Cut(fields[len(fields)-1], "/")
	length := func(text string) (visit.Length, bool) {
		v, err := strconv.ParseFloat(text, 64)
		return visit.Length{Value: v, Unit: unit}, err == nil && v >= 0 && !math.IsInf(v, 0)
	}
	var ok bool
	if goes != "-" && goes != "0" && goes != "" {
		if leaf.Goes, ok = length(goes); !ok {
			return leaf, bad
		}
	}
	switch {
	case pair && stops != "-" && stops != "":
		if leaf.Stops, ok = length(stops); !ok {
			return leaf, bad
		}
	case !pair:
		leaf.Stops, ok = nextLeaf(leaf.Goes, unit, leaves)
		if !ok && !leaf.Goes.Given() {
			return leaf, bad
		}
	}
	switch {
	case !leaf.Goes.Given() && !leaf.Stops.Given():
		return leaf, bad
	case leaf.Goes.Given() && leaf.Stops.Given() && leaf.Goes.Value >= leaf.Stops.Value:
		return leaf, entryError(s.Say(words.GaugeBadLeaf, words.Args{"Goes": goes, "Stops": stops}))
	}
	return leaf, nil
}

// entryError is a line that is no reading, told in words.
type entryError string

func (e entryError) Error() string { return string(e) }

// nextLeaf is the next thicker leaf of the set, which is taken to have stopped.
func nextLeaf(goes visit.Length, unit visit.Unit, leaves []float64) (visit.Length, bool) {
	i, found := slices.BinarySearch(leaves, goes.Value)
	if found {
		i++
	}
	if i >= len(leaves) {
		return visit.Length{}, false
	}
	return visit.Length{Value: leaves[i], Unit: unit}, true
}

// nextPlace is the place asked for after those read: the order of the gauging
// before, where there is one, else eight places round the clock.
func nextPlace(before, now []float64) float64 {
	for _, deg := range before {
		if !slices.Contains(now, deg) {
			return deg
		}
	}
	for deg := 0.0; deg < 360; deg += 45 {
		if !slices.Contains(now, deg) {
			return deg
		}
	}
	return 0
}
