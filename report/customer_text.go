package report

// This file is what the customer is told: what was wrong, what it would have
// done, what was done, what to watch, when to come back. No word of the trade
// that a boat's owner does not use, and no fright.

import (
	"math"

	"aligner/assets/words"
	"aligner/kinematics/gauge"
	"aligner/report/job"
)

// sheetMM is about the thickness of a sheet of writing paper of 80 g/m2 (common
// knowledge, no source), which everybody has felt.
const sheetMM = 0.1

// side says where on the coupling, in an owner's words.
func (d *drawer) side(deg float64) string {
	names := []words.ID{words.PaperSideTop, words.PaperSideTopStarboard, words.PaperSideStarboard, words.PaperSideBottomStarboard,
		words.PaperSideBottom, words.PaperSideBottomPort, words.PaperSidePort, words.PaperSideTopPort}
	return d.say(names[int(math.Round(deg/45))%8], nil)
}

// plain writes a gap in a unit of everyday: thousandths of an inch as inches.
func (d *drawer) plain(mm float64) string {
	if d.u.Metric {
		return d.u.LeafWithUnit(mm)
	}
	return d.u.Plain(d.u.Leaf(mm)/25.4, 4) + " in"
}

// wide says a gap, and in sheets of paper what that is.
func (d *drawer) wide(mm float64) string {
	args := words.Args{"Gap": d.plain(mm), "Count": int(math.Round(mm / sheetMM))}
	if args["Count"] == 0 {
		return d.say(words.PaperThin, args)
	}
	return d.say(words.PaperSheets, args)
}

// apart is how far a state is from what was aimed at, as the widest gap.
func (d *drawer) apart(s *stood) float64 {
	return 2 * amplitude([2]float64{s.gapMM[0] - d.e.TargetMM[0], s.gapMM[1] - d.e.TargetMM[1]})
}

// aimed reports whether the gap wanted at rest is another than none.
func (d *drawer) aimed() bool { return d.u.Leaf(2*amplitude(d.e.TargetMM)) > 0 }

func (d *drawer) wasOutside(s *stood) bool {
	return s.estimate != nil && s.estimate.Verdict == gauge.Outside
}

func (d *drawer) customerHeadline(before, after *stood) string {
	switch {
	case before == nil && after == nil:
		return d.say(words.PaperHeadNothing, nil)
	case after == nil || after.planned:
		if d.e.Verdict == gauge.Within {
			return d.say(words.PaperHeadFine, nil)
		}
		return d.say(words.PaperHeadToDo, nil)
	case d.e.Verdict == gauge.Within && (len(d.failed()) > 0 || d.untrue()):
		return d.say(words.PaperHeadDoneBut, nil)
	case d.e.Verdict == gauge.Within:
		return d.say(words.PaperHeadDone, nil)
	}
	return d.say(words.PaperHeadNotYet, nil)
}

// customerSentences are three or four.
func (d *drawer) customerSentences(before, after *stood) []string {
	if before == nil {
		return []string{d.say(words.PaperTellNothing, nil)}
	}
	var lines []string
	size := 2 * amplitude(before.gapMM)
	args := words.Args{"Gap": d.wide(size), "Side": d.side(opensDeg(before.gapMM)), "Limit": d.plain(d.e.LimitMM)}
	if d.wasOutside(before) {
		lines = append(lines, d.say(words.PaperTellWrong, args), d.say(words.PaperTellHarm, nil))
	} else {
		lines = append(lines, d.say(words.PaperTellFine, args))
	}
	if d.untrue() {
		lines = append(lines, d.say(words.PaperTellUntrue, nil))
	}
	switch {
	case after == nil:
	case after.planned && d.u.Leaf(d.apart(after)) == 0:
		lines = append(lines, d.say(words.SheetPlannedFlat, nil))
	case after.planned:
		lines = append(lines, d.say(words.PaperTellPlanned, words.Args{"Gap": d.wide(d.apart(after))}))
	case d.e.Verdict == gauge.Within && d.v.Target.Spread.Given():
		lines = append(lines, d.say(words.PaperTellDoneAim, words.Args{"Gap": d.plain(d.apart(after)), "Limit": args["Limit"],
			"Aim": d.plain(d.v.Target.Spread.MM()), "Side": d.side(d.v.Target.OpensAtDeg), "Reason": d.v.Target.Reason}))
	case d.e.Verdict == gauge.Within && d.aimed():
		lines = append(lines, d.say(words.SheetDonePower, words.Args{"Gap": d.plain(d.apart(after)), "Limit": args["Limit"],
			"Aim": d.plain(2 * amplitude(d.e.TargetMM)), "Side": d.side(opensDeg(d.e.TargetMM))}))
	case d.e.Verdict == gauge.Within && d.u.Leaf(d.apart(after)) == 0:
		lines = append(lines, d.say(words.SheetDoneFlat, words.Args{"Limit": args["Limit"]}))
	case d.e.Verdict == gauge.Within:
		lines = append(lines, d.say(words.PaperTellDone, words.Args{"Gap": d.wide(d.apart(after)), "Limit": args["Limit"]}))
	case d.aimed():
		lines = append(lines, d.say(words.SheetNotYetAim, words.Args{"Gap": d.plain(d.apart(after)), "Limit": args["Limit"]}))
	default:
		lines = append(lines, d.say(words.PaperTellNotYet, words.Args{"Gap": d.wide(d.apart(after)), "Limit": args["Limit"]}))
	}
	return lines
}

// untrue reports whether one of the halves runs out by more than is let pass.
func (d *drawer) untrue() bool { return d.e.RunOut[0].Untrue || d.e.RunOut[1].Untrue }

// watch lists what should be watched, from the look-over and the boat's state.
func (d *drawer) watch() []string {
	var lines []string
	for _, r := range job.Provisional(d.h, d.v) {
		switch r.Kind {
		case job.CheckFailed, job.CheckSkipped:
			args := words.Args{"Check": r.Check, "Note": ""}
			for _, c := range job.LookOver(d.h, d.v) {
				if c.ID == r.Check {
					args["Check"], args["Note"] = c.Title.Say(d.s, d.u), c.Note
				}
			}
			lines = append(lines, d.say(words.Of("paper_watch", string(r.Kind)), args))
		case job.BearingBad:
			lines = append(lines, r.Text.Say(d.s, d.u))
		case job.OutOfWater, job.JustLaunched, job.NewRubber, job.NotLaden, job.NotFastened:
			lines = append(lines, d.say(words.Of("paper_watch", string(r.Kind)), nil))
		}
	}
	return lines
}

// comeBack says when, in the words of the job.
func (d *drawer) comeBack() []string {
	var lines []string
	for _, due := range job.Due(d.h, d.v) {
		lines = append(lines, due.Text.Say(d.s, d.u))
	}
	return lines
}
