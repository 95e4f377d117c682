package job

// This file grades a visit: what keeps its result provisional. None is final.

import (
	"aligner/hulls"
	"aligner/hulls/visit"
)

// Reason is one thing that keeps a result provisional.
type Reason struct {
	Kind  ReasonKind
	Check string // of a check: its ID
	Text  Text
	// Stops is the first stage it makes worthless; "": none.
	Stops Stage
}

// ReasonKind says which.
type ReasonKind string

// The reasons.
const (
	CheckFailed      ReasonKind = "check failed"
	CheckSkipped     ReasonKind = "check skipped"
	CheckUnseen      ReasonKind = "check unseen"
	BearingBad       ReasonKind = "bearing"
	OutOfWater       ReasonKind = "out of the water"
	NoBoatState      ReasonKind = "no boat state"
	JustLaunched     ReasonKind = "just launched"
	NotLaden         ReasonKind = "not laden" // ballast out, rig slack or down
	NewRubber        ReasonKind = "new rubber"
	NotTurned        ReasonKind = "not turned"
	HeldUnsaid       ReasonKind = "held unsaid"
	NotForMoves      ReasonKind = "not for moves"
	NotSinceMove     ReasonKind = "not since move"
	NotFastened      ReasonKind = "not fastened"
	NotSinceFastened ReasonKind = "not since fastened"
	NothingGauged    ReasonKind = "nothing gauged"
	LinkedMoved      ReasonKind = "linked moved"
	LinkedFirst      ReasonKind = "linked first"
	SealPushes       ReasonKind = "seal pushes"
	SealLeft         ReasonKind = "seal left" // free
)

// Provisional lists the reasons, the gravest first: failed checks, what the
// readings lack, the boat's state, then what was not looked at.
func Provisional(h *hulls.Hull, v *visit.Visit) []Reason {
	checks := LookOver(h, v)
	g := &grader{}
	g.checks(checks, Failed, CheckFailed)
	g.bearings(h, v)
	g.gauged(v, checks)
	g.linked(v)
	g.seal(v)
	g.state(h, v)
	g.checks(checks, Skipped, CheckSkipped)
	g.checks(checks, Unseen, CheckUnseen)
	return g.reasons
}

// linked tells of the other of two jobs that hang together. Box to shaft first
// disturbs less (common practice, no source; some do it the other way about).
func (g *grader) linked(v *visit.Visit) {
	l := v.Linked
	switch {
	case l.OtherMoved:
		g.add(LinkedMoved, Args{"Other": l.Other}).Stops = Fastening
	case l.Job == visit.EngineToBox:
		g.add(LinkedFirst, Args{"Other": l.Other})
	}
}

type grader struct{ reasons []Reason }

func (g *grader) add(kind ReasonKind, args Args) *Reason {
	g.reasons = append(g.reasons, Reason{Kind: kind, Text: text("provisional", string(kind), args)})
	return &g.reasons[len(g.reasons)-1]
}

// checks adds those in one state. What the boat's own state says is told by
// state instead.
func (g *grader) checks(list []Check, state State, kind ReasonKind) {
	for _, c := range list {
		told := c.Told || state == Unseen && (c.ID == BoatAsUsed || c.ID == MountsStood)
		if c.State != state || told {
			continue
		}
		r := g.add(kind, Args{"Check": c.Title, "Note": c.Note, "Means": c.Means})
		r.Check = c.ID
		if state == Failed {
			r.Stops = c.Stops
		}
	}
}

func (g *grader) bearings(h *hulls.Hull, v *visit.Visit) {
	for _, b := range Wears(h, v) {
		if b.Wear != Even && b.Wear != NotTold {
			r := g.add(BearingBad, Args{"Finding": b.Text()})
			r.Check, r.Stops = BearingEven, Moving
		}
	}
}

// gauged looks at the order of events: gauged after the last move, fastened,
// and gauged again. The coupling's bolts come after the last gauging, so one
// thing tightened since is as it should be, where it is not said that it was a
// mount.
func (g *grader) gauged(v *visit.Visit, checks []Check) {
	last, moved, fastened, since, mounts := -1, -1, 0, 0, 0
	turned := false
	for i, e := range v.Events {
		switch {
		case e.Gauging != nil:
			last, since, mounts = i, 0, 0
			turned = turned || e.Gauging.ShaftTurnDeg != 0 || e.Gauging.FlangeTurnDeg != 0
		case e.Move != nil:
			moved, fastened, since, mounts = i, 0, 0, 0
		default:
			if e.Fasten.Kind == visit.Slackened {
				mounts++
				continue
			}
			fastened++
			since++
			if e.Fasten.OfCoupling() {
				since-- // which moves no mount
			} else if e.Fasten.Kind != "" {
				mounts++
			}
		}
	}
	if last < 0 {
		g.add(NothingGauged, nil)
		return
	}
	e := v.Events[last].Gauging
	switch {
	case e.LeverOn || e.BoltsIn || e.Held != "seated" && e.Held != "centred":
		g.add(NotForMoves, nil)
	case e.Held == "centred" && e.HeldBy == "":
		g.add(HeldUnsaid, nil)
	}
	if !turned && !isGood(checks, ShaftTrue) {
		g.add(NotTurned, nil)
	}
	switch {
	case moved > last:
		g.add(NotSinceMove, nil)
	case moved >= 0 && fastened == 0:
		g.add(NotFastened, nil)
	case since > 1 || mounts > 0:
		g.add(NotSinceFastened, nil)
	}
}

func isGood(list []Check, id string) bool {
	for _, c := range list {
		if c.ID == id {
			return c.State == Good
		}
	}
	return false
}

// state is what the boat's state lacks, unless somebody looked and found it
// good.
func (g *grader) state(h *hulls.Hull, v *visit.Visit) {
	s := v.State
	if _, looked := finding(v, BoatAsUsed); !looked {
		switch {
		case s.Boat == "":
			g.add(NoBoatState, nil)
		case !s.Afloat():
			g.add(OutOfWater, nil)
		case !s.HoursSinceLaunch.Known || s.HoursSinceLaunch.Value < StandingHours:
			g.add(JustLaunched, Args{"Hours": StandingHours})
		}
		if s.Afloat() && (s.Ballast == "out" || s.Rig == "slack" || s.Rig == "down") {
			g.add(NotLaden, nil)
		}
	}
	if _, looked := finding(v, MountsStood); !looked && hasKind(h, hulls.Rubber) && toldState(MountsStood, s) != Good {
		g.add(NewRubber, Args{"Hours": StandingHours})
	}
}
