package faces

// This file holds the words on the picture, which the caller may give in
// another language.

// Words are all there are. A verb like %s stands where a number comes in.
type Words struct {
	Port, Starboard         string // at 9 and 3 o'clock
	Top, Bottom             string // edge-on
	SeenForward, SeenAft    string // the direction of view
	Thou, MM                string // units
	Spread                  string // below the headline
	OpensAt                 string // %s: a time
	Parallel                string // the same gap all round
	OpensHere               string // at the widest
	Touches, Tightest       string // at the narrowest: no gap, or some
	TouchAllRound, AllRound string // parallel: no gap; %s: a gap
	Hanging, NoGap          string // a gap that is not known
	Bolted, DrawnFlat       string // drawn together
	InCoupling              string // after the moment
	OuterRing               string // %s: the full scale
	FromAbove, FromPort     string // titles of the edge-on views
	GapTimes                string // %s: exaggeration edge-on
	NotToScale              string // the same, where it cannot be told
	EngineSide, ShaftSide   string // the two halves
	AsGauged, Planned       string // %s: spread, %s: a time
	AsGaugedFlat            string // %s: spread, where it opens nowhere
	PlannedFlat             string
	RunOut                  string // %s: total indicator reading, %s: a time
	MarksKey                string // what the bars of readings are
	MarksLessKey            string // the same, of what is not drawn taken off
	OddKey, UnusedKey       string // and those that are crossed, or dashed
	NextAt                  string // %s: a time
}

// DefaultWords are English.
func DefaultWords() Words {
	return Words{
		Port: "PORT", Starboard: "STBD", Top: "TOP", Bottom: "BOTTOM",
		SeenForward: "seen looking forward from the propeller",
		SeenAft:     "seen looking aft from the gearbox",
		Thou:        "thou", MM: "mm",
		Spread: "spread", OpensAt: "opens at %s",
		Parallel: "faces parallel", OpensHere: "opens here",
		Touches: "touches", Tightest: "tightest",
		TouchAllRound: "touching all round", AllRound: "%s all round",
		Hanging: "shaft hanging", NoGap: "no gap to tell",
		Bolted: "bolted", DrawnFlat: "faces drawn flat", InCoupling: "in the coupling",
		OuterRing: "outer ring %s", FromAbove: "from above", FromPort: "from port",
		GapTimes: "gap × %s", NotToScale: "gap not to scale",
		EngineSide: "engine", ShaftSide: "shaft",
		AsGauged: "as gauged: %s, opens at %s", Planned: "planned: %s, opens at %s",
		AsGaugedFlat: "as gauged: %s", PlannedFlat: "planned: %s",
		RunOut:   "run-out %s TIR, high at %s",
		MarksKey: "bars: what goes to what stops", MarksLessKey: "bars: readings, less dummy, run-out, distance held", OddKey: "×: does not fit", UnusedKey: "dashed: not used",
		NextAt: "?: gauge next at %s",
	}
}
