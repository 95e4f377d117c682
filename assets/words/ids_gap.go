package words

// This file lists the sentences on gaps and moves; they stand in gap.en.json.

// Places on the clock.
const (
	Top       ID = "top"
	Bottom    ID = "bottom"
	Port      ID = "port"
	Starboard ID = "starboard"
	OClock    ID = "o_clock" // Hour
)

// What a move did.
const (
	EffectNone    ID = "effect_none"    // Move
	EffectPlain   ID = "effect_plain"   // Move, Total, Place, Against
	EffectTilt    ID = "effect_tilt"    // Move, Place, Against, Tilt, Total
	EffectBoth    ID = "effect_both"    // Move, Place, Against, Tilt, Carry, Swing, Total
	EffectAgainst ID = "effect_against" // the same
	EffectHardly  ID = "effect_hardly"  // the same

	OpensBy  ID = "opens_by"  // Gap, Unit
	ClosesBy ID = "closes_by" // Gap, Unit
	TipsOpen ID = "tips_open" // Gap, Unit
	TipsShut ID = "tips_shut" // Gap, Unit

	LiftsCoupling       ID = "lifts_coupling"
	LowersCoupling      ID = "lowers_coupling"
	CouplingToPort      ID = "coupling_to_port"
	CouplingToStarboard ID = "coupling_to_starboard"
)

// Moves.
const (
	NutUp           ID = "nut_up"            // Mount, Steps
	NutDown         ID = "nut_down"          // Mount, Steps
	SlidToPort      ID = "slid_to_port"      // Mount, Length
	SlidToStarboard ID = "slid_to_starboard" // Mount, Length
	Flats           ID = "flats"             // Count, Number
	Shims           ID = "shims"             // Count, Number
)
