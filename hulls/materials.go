package hulls

// This file holds the shaft alloys by UNS number (the unified numbering system
// of ASTM E527 and SAE J1086), with what the mechanics needs of them.
//
// Sources. Minimum yield and tensile strength: ASTM A276/A479 (austenitic and
// duplex bar), A564 (17-4), B164 (N04400), B865 (N05500), B446 (N06625), B21
// (C46400), written down from memory except C46400, which was compared with an
// alloy data sheet. Young's modulus and density: those of N04400, N05500 and
// the two given for S20910 agree with published shaft and alloy tables; the
// rest are from memory. The seawater fatigue range is from memory, an order of
// magnitude only (it depends on cathodic protection, frequency and surface),
// and no check may lean on it.

import (
	"fmt"
	"strings"

	"aligner/hulls/strictjson"
)

// Material is a shaft alloy in one condition.
type Material struct {
	UNS       string // "UNS S20910"
	Family    string
	Condition string

	YoungGPa, ShearGPa float64
	DensityGPerCM3     float64
	YieldMinMPa        float64
	TensileMinMPa      float64
	// EnduranceMPa is the range of a cautious seawater fatigue figure at 1e8
	// turns: low confidence, order of magnitude only.
	EnduranceMPa [2]float64
}

// materials in the order in which a number's conditions are chosen: the first
// stands where a hull names none.
var materials = []Material{
	{"UNS S30400", "austenitic stainless", "annealed", 193, 77, 8.00, 205, 515, [2]float64{70, 105}},
	{"UNS S31600", "austenitic stainless", "annealed", 193, 77, 8.00, 205, 515, [2]float64{95, 140}},
	{"UNS S31603", "austenitic stainless", "annealed", 193, 77, 8.00, 170, 485, [2]float64{95, 140}},
	{"UNS S20910", "nitrogen-strengthened austenitic stainless", "annealed", 200, 79, 7.88, 380, 690, [2]float64{200, 280}},
	{"UNS S20910", "nitrogen-strengthened austenitic stainless", "high-strength bar <=2 in", 200, 79, 7.88, 725, 930, [2]float64{200, 280}},
	{"UNS S17400", "precipitation-hardening stainless", "H1150", 196, 77, 7.82, 725, 930, [2]float64{95, 140}},
	{"UNS S17400", "precipitation-hardening stainless", "H1025", 196, 77, 7.81, 1000, 1070, [2]float64{95, 140}},
	{"UNS S31803", "duplex stainless", "annealed", 200, 77, 7.82, 450, 655, [2]float64{150, 230}},
	{"UNS S32205", "duplex stainless", "annealed", 200, 77, 7.82, 450, 655, [2]float64{150, 230}},
	{"UNS S32750", "superduplex stainless", "annealed", 200, 77, 7.80, 550, 800, [2]float64{200, 280}},
	{"UNS N04400", "nickel-copper", "cold drawn stress relieved", 179, 65, 8.80, 345, 580, [2]float64{70, 110}},
	{"UNS N05500", "nickel-copper-aluminium", "aged", 179, 66, 8.44, 585, 895, [2]float64{120, 180}},
	{"UNS N06625", "nickel-chromium-molybdenum", "annealed", 206, 79, 8.44, 414, 827, [2]float64{250, 345}},
	{"UNS C46400", "naval brass", "H02 half hard 1/2-1 in", 103, 39, 8.41, 186, 414, [2]float64{50, 70}},
	{"UNS C46400", "naval brass", "H02 over 1-2 in", 103, 39, 8.41, 179, 400, [2]float64{50, 70}},
}

// MaterialOf finds an alloy by its UNS number, with or without the letters
// "UNS", in a condition; "" is the first one known for that number. The error
// lists what is known.
func MaterialOf(uns, condition string) (Material, error) {
	number := "UNS " + strings.TrimPrefix(uns, "UNS ")
	conditions := Conditions(number)
	if len(conditions) == 0 {
		return Material{}, fmt.Errorf("no material %s; known are %s", strictjson.Quoted(uns), strings.Join(MaterialNumbers(), ", "))
	}
	for _, m := range materials {
		if m.UNS == number && (condition == "" || m.Condition == condition) {
			return m, nil
		}
	}
	return Material{}, fmt.Errorf("no condition %s of %s; known are %s", strictjson.Quoted(condition), number, strings.Join(conditions, ", "))
}

// MaterialNumbers lists the UNS numbers known, each once.
func MaterialNumbers() []string {
	var list []string
	for i, m := range materials {
		if i == 0 || m.UNS != materials[i-1].UNS {
			list = append(list, m.UNS)
		}
	}
	return list
}

// Conditions lists the conditions known of a UNS number, the default first.
func Conditions(uns string) []string {
	var list []string
	for _, m := range materials {
		if m.UNS == uns {
			list = append(list, m.Condition)
		}
	}
	return list
}
