package trouble

// This file is the symptoms, and how well each fits the causes.

// Symptom is what a customer tells or a mechanic notices.
type Symptom string

// The symptoms.
const (
	ShakesOnceATurn  Symptom = "shakes once a turn"
	ShakesWithSpeed  Symptom = "shakes more with speed"
	ShakesAtOneSpeed Symptom = "shakes at one speed"
	Knocks           Symptom = "knocks"
	WarmGland        Symptom = "warm gland"
	GlandLeaks       Symptom = "gland leaks"
	GearSealLeaks    Symptom = "gearbox seal leaks"
	BearingWears     Symptom = "bearing wears"
	BoltBroken       Symptom = "bolt broken"
	ShaftStiff       Symptom = "shaft stiff"
	EngineLow        Symptom = "engine low"
	DoesNotHold      Symptom = "does not hold"
	NoAnswer         Symptom = "moves make no difference"
)

// Symptoms are all of them, in the order they are offered.
var Symptoms = []Symptom{ShakesOnceATurn, ShakesWithSpeed, ShakesAtOneSpeed, Knocks, WarmGland, GlandLeaks, GearSealLeaks,
	BearingWears, BoltBroken, ShaftStiff, EngineLow, DoesNotHold, NoAnswer}

// Shakes reports whether a symptom is a shake.
func (s Symptom) Shakes() bool {
	return s == ShakesOnceATurn || s == ShakesWithSpeed || s == ShakesAtOneSpeed
}

// Weights.
const (
	commonly = 4.0
	met      = 2.0
	canBe    = 1.0
)

// Else is the weight of whatever is not on the list.
const Else = 1.0

// fits are the causes of each symptom with their weights.
var fits = map[Symptom]map[Cause]float64{
	ShakesOnceATurn:  {Propeller: commonly, CrookedHalf: met, BentShaft: met, RopeRound: met, BearingLoose: canBe, CouplingSlack: canBe, OutOfLine: canBe},
	ShakesWithSpeed:  {Propeller: commonly, MountsTired: commonly, BentShaft: met, StrutLoose: met, BearingLoose: met, Whirling: canBe, CrookedHalf: canBe, OutOfLine: canBe},
	ShakesAtOneSpeed: {MountsTired: commonly, EngineUneven: commonly, Whirling: met, StrutLoose: met, Touching: met, OutOfLine: canBe},
	Knocks:           {CouplingSlack: commonly, BoltsLoose: commonly, GearBearing: met, BearingLoose: met, Touching: met, LogTouches: canBe, OutOfLine: canBe},
	WarmGland:        {GlandTight: commonly, LogTouches: met, OutOfLine: met, BentShaft: canBe},
	GlandLeaks:       {PackingWorn: commonly, BentShaft: met, LogTouches: met, BearingLoose: met, OutOfLine: canBe},
	GearSealLeaks:    {SealWorn: commonly, GearBearing: met, OutOfLine: met, CrookedHalf: canBe},
	BearingWears:     {Silt: commonly, OutOfLine: commonly, StrutLoose: met, BentShaft: met, Propeller: canBe},
	BoltBroken:       {BoltsLoose: commonly, OutOfLine: met, CouplingSlack: met, RopeRound: met, CrookedHalf: canBe},
	ShaftStiff:       {GlandTight: commonly, OutOfLine: met, RopeRound: met, LogTouches: met, BearingSwollen: met, GearBearing: canBe, BentShaft: canBe},
	EngineLow:        {MountsTired: commonly, NutBackedOff: met, BedSoft: met, HullChanged: canBe},
	DoesNotHold:      {NutBackedOff: commonly, MountsTired: met, SoftFoot: met, BedSoft: met, HullChanged: met},
	NoAnswer:         {NutBackedOff: canBe, SoftFoot: commonly, Touching: commonly, PilotBound: met, BedSoft: met, CrookedHalf: met, LogTouches: met},
}
