package job

// This file says which checks a boat wants before anything is gauged, and what
// the visit has found of each.

import (
	"slices"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// State is what is known of a check.
type State string

// Good, Failed and Skipped are the visit's own words; Unseen was not looked at
// yet.
const (
	Good    State = "good"
	Failed  State = "failed"
	Skipped State = "skipped"
	Unseen  State = "unseen"
)

// Check is one thing to look over.
type Check struct {
	ID string // what the visit's finding calls it

	Title, How, Looks, Means Text // what good looks like, what a failure means
	Sources                  []Source

	// Stops is the first stage a failure makes worthless or dangerous; "": none,
	// the result is provisional only.
	Stops Stage

	State      State
	Note       string      // the visit's
	TightAtDeg visit.Maybe // the visit's, of a shaft turned by hand
	// Told: nobody looked; the state follows from what the visit says of the
	// boat.
	Told bool
}

// Provisional reports whether the check leaves the result provisional.
func (c *Check) Provisional() bool { return c.State != Good }

// Name is the state in words.
func (s State) Name() Text { return text("state", string(s), nil) }

// IDs of checks, as a visit's findings call them.
const (
	SafeToWork       = "battery isolated, engine cold"
	StrutFirm        = "strut firm"
	BearingEven      = "bearing worn evenly"
	ShaftFree        = "shaft turns freely"
	ShaftTrue        = "shaft runs true"
	CouplingTight    = "coupling tight on its shaft"
	KeyAndBolts      = "key and bolts sound"
	FacesClean       = "faces clean"
	MountsSound      = "mounts sound"
	FeetFlat         = "feet stand flat"
	NutsFree         = "nuts and threads free"
	BedSound         = "bed sound"
	ShaftCentral     = "shaft central in its log"
	BoxSound         = "stuffing box sound"
	EngineClear      = "engine clear all round"
	ShaftUnderEngine = "shaft clear under the engine"
	BoatAsUsed       = "boat as used"
	MountsStood      = "mounts stood long enough"
)

// wider are findings that look at several things in one, as visits may hold
// them. A check of its own goes before.
var wider = map[string]string{
	MountsSound: "mounts and bed sound",
	FeetFlat:    "mounts and bed sound",
	BedSound:    "mounts and bed sound",
}

// Wider reports whether a finding's check looks at several of the checks listed
// here in one; it shows at each of them.
func Wider(check string) bool {
	for _, w := range wider {
		if w == check {
			return true
		}
	}
	return false
}

// LookOver lists the checks of a boat in the order that matters: the strut
// before the shaft in it, the shaft before its coupling, what carries the
// engine before the engine is moved. Each makes the later ones worthless if it
// fails.
func LookOver(h *hulls.Hull, v *visit.Visit) []Check {
	list := checks(h, v.State.Afloat())
	for i := range list {
		c := &list[i]
		c.State = Unseen
		if f, ok := finding(v, c.ID); ok {
			c.State, c.Note, c.TightAtDeg = State(f.Finding), f.Note, f.TightAtDeg
			continue
		}
		if told := toldState(c.ID, v.State); told != Unseen {
			c.State, c.Told = told, true
		}
	}
	return list
}

// finding is what the visit found of a check, or of a wider one.
func finding(v *visit.Visit, id string) (visit.Finding, bool) {
	for _, wanted := range []string{id, wider[id]} {
		i := slices.IndexFunc(v.LookOver, func(f visit.Finding) bool { return f.Check == wanted })
		if wanted != "" && i >= 0 {
			return v.LookOver[i], true
		}
	}
	return visit.Finding{}, false
}

// StandingHours is how long new rubber is to carry its engine, and a boat to
// float, before gauging (common practice, no source).
const StandingHours = 24

// newRubberMonths is the age under which rubber still settles.
const newRubberMonths = 1

// toldState is what the boat's state says of a check by itself. A boat out of
// the water is no failure: the check afloat is still to come.
func toldState(id string, s visit.State) State {
	switch id {
	case BoatAsUsed:
		switch {
		case s.Boat == "trailer" || s.Boat == "stands":
			return Skipped
		case s.Afloat() && s.HoursSinceLaunch.Known && s.HoursSinceLaunch.Value < StandingHours,
			s.Rig == "slack", s.Rig == "down", s.Ballast == "out":
			return Failed
		case s.Afloat() && s.HoursSinceLaunch.Known:
			return Good
		}
	case MountsStood:
		switch age, stood := s.MountAgeMonths, s.MountHoursStanding; {
		case age.Known && age.Value >= newRubberMonths, stood.Known && stood.Value >= StandingHours:
			return Good
		case stood.Known:
			return Failed
		}
	}
	return Unseen
}

// Standing is the first stage that failed checks stop, and which checks do; ""
// when none does.
func Standing(list []Check) (Stage, []Check) {
	var stage Stage
	var by []Check
	for _, c := range list {
		if c.State != Failed || c.Stops == "" {
			continue
		}
		if stage == "" || c.Stops.Before(stage) {
			stage, by = c.Stops, nil
		}
		if c.Stops == stage {
			by = append(by, c)
		}
	}
	return stage, by
}
