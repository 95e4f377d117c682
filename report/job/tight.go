package job

// This file is the place of the turn at which a shaft goes heavily, before and
// after the coupling was bolted up: a place that stays is the shaft's own, one
// that comes with bolting is not (common practice, no source).

import (
	"math"

	"aligner/hulls/visit"
)

// samePlaceDeg is how near two heavy places are one, felt by hand (our own
// judgement).
const samePlaceDeg = 45

// TightPlaces says where the shaft went heavily, and what the two places have to
// do with each other. Nil: it was marked nowhere.
func TightPlaces(v *visit.Visit) []Text {
	before, after := visit.Maybe{}, v.HandedOver.TightAtDeg
	if f, ok := finding(v, ShaftFree); ok {
		before = f.TightAtDeg
	}
	var list []Text
	if before.Known {
		list = append(list, text("tight", "unbolted", Args{"Deg": Number(turnDeg(before.Value))}))
	}
	if after.Known {
		list = append(list, text("tight", "bolted", Args{"Deg": Number(turnDeg(after.Value))}))
	}
	switch _, looked := finding(v, ShaftFree); {
	case before.Known && after.Known && math.Abs(math.Remainder(before.Value-after.Value, 360)) <= samePlaceDeg:
		list = append(list, text("tight", "same", nil))
	case before.Known && after.Known:
		list = append(list, text("tight", "other", nil))
	case after.Known && looked:
		list = append(list, text("tight", "new", nil))
	case before.Known && v.HandedOver.TurnedByHand == "smooth":
		list = append(list, text("tight", "gone", nil))
	}
	return list
}

// turnDeg is a turn from 0 to 360.
func turnDeg(deg float64) float64 { return math.Mod(math.Mod(deg, 360)+360, 360) }
