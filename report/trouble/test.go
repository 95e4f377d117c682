package trouble

// This file is the tests: what each costs and what it bears on.

import "aligner/report/job"

// Test is something cheap to try.
type Test string

// The tests, the cheapest first.
const (
	OutOfGear     Test = "run it out of gear"
	PaperRound    Test = "paper round the engine"
	MarksInLine   Test = "marks across the nuts"
	LookAtScrew   Test = "look at the propeller"
	TurnByHand    Test = "turn the shaft by hand"
	TapStrut      Test = "shake the strut"
	BoltsTight    Test = "try the coupling bolts"
	LiftFlange    Test = "lift the gearbox flange"
	FeelGland     Test = "feel the gland"
	SlackGland    Test = "slacken the gland"
	TryCoupling   Test = "try the coupling on its shaft"
	LookAtMounts  Test = "look at the mounts"
	TryBed        Test = "try the bed"
	StripBearing  Test = "strip round the shaft in its bearing"
	StripLog      Test = "strip round the shaft in its log"
	SlackOneBolt  Test = "slacken one foot at a time"
	ReadSpeed     Test = "read the speed it shakes at"
	PilotByHand   Test = "enter the pilot by hand"
	TurnQuarters  Test = "gauge with the shaft turned"
	GaugeRound    Test = "gauge all round"
	AfloatAndDry  Test = "gauge afloat and ashore"
	LookAtGrooves Test = "look at the worn bearing"
	WipeSeal      Test = "wipe the seal and watch"
	NipGland      Test = "nip up the gland"
	OtherScrew    Test = "another propeller"
)

// falseAlarm is how often a test is bad though nothing it bears on is wrong.
const falseAlarm = 0.1

// alarms are tests that come out bad more often than that though nothing they bear
// on does what the boat does: most boats are gauged because they are out of line,
// and few of them shake; and a shaft goes heavily for a tight gland alone (common
// practice, no source).
var alarms = map[Test]float64{GaugeRound: 0.5, TurnByHand: 0.3}

// alarm is how often a test is bad though nothing it bears on is at work.
func (t Test) alarm() float64 {
	if a, ok := alarms[t]; ok {
		return a
	}
	return falseAlarm
}

// trial is a test with what it costs and how often a cause makes it bad.
type trial struct {
	minutes int
	hits    map[Cause]float64
	// check is the check of the look-over that answers it; "": none.
	check string
}

// How often a test is bad where the cause is there: nearly always, mostly, more
// often than not.
const (
	nearlyAlways = 0.95
	mostly       = 0.8
	oftener      = 0.6
)

// trials are all tests.
var trials = map[Test]trial{
	OutOfGear:     {5, map[Cause]float64{EngineUneven: nearlyAlways, MountsTired: oftener, Touching: oftener}, ""},
	PaperRound:    {5, map[Cause]float64{Touching: nearlyAlways}, job.EngineClear},
	MarksInLine:   {5, map[Cause]float64{NutBackedOff: nearlyAlways}, ""},
	LookAtScrew:   {5, map[Cause]float64{Propeller: oftener, RopeRound: nearlyAlways}, ""},
	TurnByHand:    {5, map[Cause]float64{GlandTight: mostly, BearingSwollen: mostly, RopeRound: oftener, OutOfLine: oftener, BentShaft: oftener, LogTouches: oftener}, job.ShaftFree},
	TapStrut:      {5, map[Cause]float64{StrutLoose: nearlyAlways}, job.StrutFirm},
	BoltsTight:    {5, map[Cause]float64{BoltsLoose: nearlyAlways}, job.KeyAndBolts},
	LiftFlange:    {5, map[Cause]float64{GearBearing: mostly, SealWorn: canHit}, ""},
	FeelGland:     {10, map[Cause]float64{GlandTight: mostly, LogTouches: oftener}, ""},
	SlackGland:    {10, map[Cause]float64{GlandTight: nearlyAlways, PackingWorn: oftener}, job.BoxSound},
	TryCoupling:   {10, map[Cause]float64{CouplingSlack: nearlyAlways}, job.CouplingTight},
	LookAtMounts:  {10, map[Cause]float64{MountsTired: mostly}, job.MountsSound},
	TryBed:        {10, map[Cause]float64{BedSoft: mostly}, job.BedSound},
	StripBearing:  {15, map[Cause]float64{BearingLoose: nearlyAlways, Silt: oftener}, job.BearingEven},
	StripLog:      {10, map[Cause]float64{LogTouches: nearlyAlways}, job.ShaftCentral},
	SlackOneBolt:  {15, map[Cause]float64{SoftFoot: nearlyAlways}, job.FeetFlat},
	ReadSpeed:     {10, map[Cause]float64{Whirling: mostly}, ""},
	PilotByHand:   {15, map[Cause]float64{PilotBound: nearlyAlways, OutOfLine: oftener}, ""},
	TurnQuarters:  {25, map[Cause]float64{CrookedHalf: nearlyAlways, BentShaft: nearlyAlways}, ""},
	GaugeRound:    {20, map[Cause]float64{OutOfLine: nearlyAlways}, ""},
	AfloatAndDry:  {60, map[Cause]float64{HullChanged: nearlyAlways}, ""},
	LookAtGrooves: {5, map[Cause]float64{Silt: mostly}, ""},
	WipeSeal:      {10, map[Cause]float64{SealWorn: mostly}, ""},
	NipGland:      {5, map[Cause]float64{PackingWorn: mostly}, ""},
	OtherScrew:    {60, map[Cause]float64{Propeller: nearlyAlways}, ""},
}

// canHit is a test that shows a cause about as often as not.
const canHit = 0.5

// Tests are all of them, in the order of their names above.
var Tests = []Test{OutOfGear, PaperRound, MarksInLine, LookAtScrew, TurnByHand, TapStrut, BoltsTight, LiftFlange, FeelGland,
	SlackGland, TryCoupling, LookAtMounts, TryBed, StripBearing, StripLog, SlackOneBolt, ReadSpeed, PilotByHand, TurnQuarters,
	GaugeRound, AfloatAndDry, LookAtGrooves, WipeSeal, NipGland, OtherScrew}

// Minutes a test takes, about (common practice, no source).
func (t Test) Minutes() int { return trials[t].minutes }

// Shows reports whether a test that comes out bad shows a cause: most boats that
// have it fail it.
func (t Test) Shows(c Cause) bool { return trials[t].hits[c] >= mostly }

// BearsOn reports whether a test tells anything of a cause.
func (t Test) BearsOn(c Cause) bool { return trials[t].hits[c] > 0 }
