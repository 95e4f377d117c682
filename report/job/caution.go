package job

// This file holds what can hurt someone, and when it is said: all that is
// general once at the start, and again only where it bites.

// Caution is one thing to mind.
type Caution struct {
	Text    Text
	Sources []Source
}

// danger is a caution with where it bites.
type danger struct {
	id      string
	stages  []Stage
	afloat  bool // only in the water
	sources []Source
}

// bites are the dangers of single checks: said again there, beside the check.
var bites = map[string][]string{
	StrutFirm:     {"propeller", "stream"},
	BearingEven:   {"propeller", "stream"},
	ShaftFree:     {"propeller", "stream"},
	ShaftTrue:     {"propeller", "stream"},
	CouplingTight: {"shaft slides"},
	FacesClean:    {"between faces", "shaft slides"},
	MountsSound:   {"under mount"},
	FeetFlat:      {"under mount"},
	NutsFree:      {"under mount"},
	BoxSound:      {"gland"},
	ShaftCentral:  {"gland"},
}

var dangers = []danger{
	{"maker first", []Stage{LookingOver}, false, []Source{CommonPractice}},
	{"locked out", []Stage{LookingOver}, false, []Source{LockOut, ShipRepair}},
	{"sign", []Stage{LookingOver}, false, []Source{ShipRepair}},
	{"vapour", []Stage{LookingOver}, false, []Source{SmallCraft}},
	{"propeller", []Stage{LookingOver}, false, []Source{ShipRepair}},
	{"stream", []Stage{LookingOver, Gauging}, true, []Source{CommonPractice}},
	{"gland", []Stage{LookingOver, Gauging, Moving}, true, []Source{CommonPractice}},
	{"between faces", []Stage{Gauging}, false, []Source{CommonPractice}},
	{"shaft slides", []Stage{Gauging}, false, []Source{CommonPractice}},
	{"under mount", []Stage{LookingOver, Moving}, false, []Source{CommonPractice}},
	{"weight", []Stage{Moving}, false, []Source{CommonPractice}},
	{"lever", []Stage{Moving}, false, []Source{CommonPractice}},
	{"spanner slips", []Stage{Fastening}, false, []Source{CommonPractice}},
	{"lock out last", []Stage{Fastening, HandingOver}, false, []Source{ArmyTug}},
	{"clear to turn", []Stage{HandingOver}, false, []Source{ShipRepair}},
	{"first start", []Stage{HandingOver}, false, []Source{SmallCraft}},
	{"gland runs", []Stage{HandingOver}, true, []Source{CommonPractice}},
}

// Cautions are those of a stage, the gravest first. At the start of a visit,
// looking over, they are the general ones.
func Cautions(stage Stage, afloat bool) []Caution {
	var list []Caution
	for _, d := range dangers {
		if d.afloat && !afloat {
			continue
		}
		for _, s := range d.stages {
			if s == stage {
				list = append(list, Caution{Text: text("caution", d.id, nil), Sources: d.sources})
			}
		}
	}
	return list
}

// CautionsAt are those that bite at one check of the look-over.
func CautionsAt(check string, afloat bool) []Caution {
	var list []Caution
	for _, id := range bites[check] {
		for _, d := range dangers {
			if d.id == id && (afloat || !d.afloat) {
				list = append(list, Caution{Text: text("caution", d.id, nil), Sources: d.sources})
			}
		}
	}
	return list
}
