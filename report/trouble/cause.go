package trouble

// This file is the causes.

// Cause is what may be wrong.
type Cause string

// The causes.
const (
	OutOfLine      Cause = "engine out of line"
	CrookedHalf    Cause = "crooked coupling half"
	BentShaft      Cause = "bent shaft"
	Propeller      Cause = "propeller"
	RopeRound      Cause = "rope round the shaft"
	BearingLoose   Cause = "bearing worn"
	BearingSwollen Cause = "bearing swollen"
	StrutLoose     Cause = "strut loose"
	MountsTired    Cause = "mounts tired"
	NutBackedOff   Cause = "nut backed off"
	SoftFoot       Cause = "soft foot"
	BedSoft        Cause = "bed soft"
	CouplingSlack  Cause = "coupling slack on its shaft"
	BoltsLoose     Cause = "bolts loose"
	PilotBound     Cause = "pilot bound"
	Touching       Cause = "something touches"
	LogTouches     Cause = "shaft touches its log"
	GlandTight     Cause = "gland too tight"
	PackingWorn    Cause = "packing worn"
	SealWorn       Cause = "seal worn"
	GearBearing    Cause = "gearbox bearing"
	EngineUneven   Cause = "engine runs unevenly"
	Whirling       Cause = "whirling"
	Silt           Cause = "silt"
	HullChanged    Cause = "hull changed shape"
)

// Causes are all of them.
var Causes = []Cause{OutOfLine, CrookedHalf, BentShaft, Propeller, RopeRound, BearingLoose, BearingSwollen, StrutLoose,
	MountsTired, NutBackedOff, SoftFoot, BedSoft, CouplingSlack, BoltsLoose, PilotBound, Touching, LogTouches, GlandTight,
	PackingWorn, SealWorn, GearBearing, EngineUneven, Whirling, Silt, HullChanged}

// Grade is how much speaks for a cause, in a word.
type Grade string

// The grades. VeryLikely is given only after a test.
const (
	VeryLikely Grade = "very likely"
	Likely     Grade = "likely"
	Possible   Grade = "possible"
	Unlikely   Grade = "unlikely"
)

// Shares from which a grade is given (our own judgement).
const (
	veryLikelyFrom = 0.60
	likelyFrom     = 0.20
	possibleFrom   = 0.05
)

// grade puts a share into a word; tested says that a test which shows it was bad.
func grade(share float64, tested bool) Grade {
	switch {
	case share >= veryLikelyFrom && tested:
		return VeryLikely
	case share >= likelyFrom:
		return Likely
	case share >= possibleFrom:
		return Possible
	}
	return Unlikely
}
