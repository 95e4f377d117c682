package report

// This file lays out the record: all that was put in, what came of it, and the
// visit file itself attached, so that it can be worked out again.

import (
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/plan"
	"aligner/report/job"
	"aligner/report/paper"
	"aligner/report/say"
)

// record draws it. Its clock is always seen looking forward, as it is kept.
func record(in Input, o Options) (*drawer, error) {
	o.Seen = visit.LookingForward
	d := begin(in, o)
	d.AddPage()
	f := &flow{drawer: d}
	x, _, w, _ := d.InsideMM()
	f.y = d.head(d.say(words.Of("paper_kind", string(Record)), nil), d.facts()) + 2
	f.y += d.Paragraph(x, f.y, w, paper.Type{Points: 14, Bold: true}, d.recordHeadline()) + 1
	for _, line := range d.failed() {
		f.y += d.Paragraph(x, f.y, w, underType, line) + 1
	}
	f.paragraphs(d.say(words.PaperRecordAttached, words.Args{"File": d.visitFileName()}))
	f.y += 2
	f.y += d.Line(x, f.y, w, underType, d.say(words.PaperContents, nil))
	contents := f.y
	f.y += float64(f.sectionCount()) * (paper.Type{Points: 10}.LineMM() + 0.4)

	f.recordBoat()
	f.recordLookOver()
	f.recordEvents()
	f.recordEstimate()
	if err := f.recordMoves(); err != nil {
		return nil, err
	}
	f.recordFastening()
	f.recordMounts()
	f.recordPlan()
	f.recordNext()
	if err := f.recordPast(); err != nil {
		return nil, err
	}
	if err := f.recordPhotos(); err != nil {
		return nil, err
	}
	if err := f.recordAnswers(); err != nil {
		return nil, err
	}
	f.recordSigned()
	f.recordHull()
	f.contents(contents)
	d.attach()
	d.foot()
	return d, nil
}

// sectionCount is how many sections the record will have: room for its contents.
func (f *flow) sectionCount() int {
	n := 12 // every record has them
	if len(f.o.Photos) > 0 {
		n++
	}
	if f.o.Past != nil && len(f.o.Past.Entries) > 1 {
		n++
	}
	return n
}

func (d *drawer) recordHeadline() string {
	if !d.told() {
		return d.next()[0]
	}
	return d.say(words.VerdictLine, words.Args{"Verdict": d.say(words.Of("verdict", string(d.e.Verdict)), nil), "Chance": say.Chance(d.s, d.e.Within)})
}

func (d *drawer) visitFileName() string {
	name := d.o.FileName
	if name == "" {
		name = strings.ToLower(d.h.Name)
	}
	if !strings.HasSuffix(name, ".json") {
		name += ".visit.json"
	}
	return name
}

// attach puts the visit and its hull into the document.
func (d *drawer) attach() {
	file := d.o.File
	if file == nil {
		file = visit.Encode(*d.v)
	}
	d.Attach(d.visitFileName(), d.say(words.PaperAttachedVisit, nil), file)
	d.Attach(strings.ToLower(d.h.Name)+".hull.json", d.say(words.PaperAttachedHull, nil), hulls.Encode(*d.h))
}

// recordBoat is which boat, in what state, held to which rule.
func (f *flow) recordBoat() {
	f.section(words.PaperSecBoat)
	st, v := f.v.State, f.v
	known := func(m visit.Maybe, unit string) string {
		if !m.Known {
			return ""
		}
		return f.u.Plain(m.Value, 1) + unit
	}
	word := func(kind, what string) string {
		if what == "" {
			return ""
		}
		return f.say(words.Of(kind, what), nil)
	}
	rule := f.say(words.SheetRule, words.Args{"Named": f.e.Rule.Named, "Limits": f.say(words.Of("limits", f.e.Rule.Limits), nil), "Limit": f.u.GapWithUnit(f.e.LimitMM)})
	if !f.e.RuleChosen {
		rule += ". " + f.say(words.RuleDefault, nil)
	}
	target := ""
	if v.Target.Spread.Given() {
		target = f.say(words.EstimateTarget, words.Args{"Gap": f.u.LeafWithUnit(v.Target.Spread.MM()), "Opens": f.place(v.Target.OpensAtDeg), "Reason": v.Target.Reason})
	}
	label := func(id words.ID) string { return f.say(id, nil) }
	f.pairs(
		[2]string{label(words.PaperBoat), f.h.Name}, [2]string{"HIN", orNone(f.h.HIN, label(words.PaperNotKnown))},
		[2]string{label(words.PaperOwner), f.h.OwnerReference}, [2]string{label(words.PaperDate), f.dateText()},
		[2]string{label(words.PaperLayout), f.say(words.LogbookLayout, words.Args{"Layout": f.h.Layout})}, [2]string{label(words.PaperWhere), f.boat()},
		[2]string{label(words.PaperLaunched), known(st.HoursSinceLaunch, " h")}, [2]string{label(words.PaperFuel), known(st.FuelPercent, " %")},
		[2]string{label(words.PaperBallast), word("paper_ballast", st.Ballast)}, [2]string{label(words.PaperRig), word("paper_rig", st.Rig)},
		[2]string{label(words.PaperMountAge), known(st.MountAgeMonths, "")}, [2]string{label(words.PaperMountStood), known(st.MountHoursStanding, " h")},
		[2]string{label(words.PaperLeavesOwned), f.leafMarks()}, [2]string{label(words.PaperFeel), f.u.Thickness(v.Leaves.FeelErrorMM())},
		[2]string{label(words.PaperRuleName), rule}, [2]string{label(words.PaperTarget), target},
		[2]string{label(words.PaperNote), strings.Join(nonEmpty(st.Note, v.Note), ". ")})
}

func orNone(text, none string) string {
	if text == "" {
		return none
	}
	return text
}

func nonEmpty(list ...string) []string {
	var out []string
	for _, s := range list {
		if s != "" {
			out = append(out, s)
		}
	}
	return out
}

// leafMarks are the leaves as they are marked.
func (d *drawer) leafMarks() string {
	var marks []string
	for _, mm := range d.v.Leaves.SinglesMM() {
		marks = append(marks, d.thickness(mm))
	}
	return strings.Join(marks, ", ") + " " + d.leafUnit()
}

// recordLookOver is every check with what was found, and what stays provisional.
func (f *flow) recordLookOver() {
	f.section(words.PaperSecLook)
	var rows [][]string
	known := map[string]bool{}
	for _, c := range job.LookOver(f.h, f.v) {
		known[c.ID] = true
		note := c.Note
		if c.Told {
			note = strings.Join(nonEmpty(note, f.say(words.PaperTold, nil)), ". ")
		}
		rows = append(rows, []string{c.Title.Say(f.s, f.u), f.finding(c.State), note})
	}
	for _, l := range f.v.LookOver {
		if !known[l.Check] && !job.Wider(l.Check) {
			rows = append(rows, []string{l.Check, f.finding(job.State(l.Finding)), l.Note})
		}
	}
	f.table([]column{{f.say(words.PaperCheck, nil), 0.41, paper.Left}, {f.say(words.PaperFinding, nil), 0.2, paper.Left}, {f.say(words.PaperNote, nil), 0.39, paper.Left}}, rows)
	var places []string
	for _, t := range job.TightPlaces(f.v) {
		places = append(places, t.Say(f.s, f.u))
	}
	if len(places) > 0 {
		f.list(places...)
	}
	var keeps []string
	for _, r := range job.Provisional(f.h, f.v) {
		if r.Kind != job.CheckUnseen { // in the table above
			keeps = append(keeps, r.Text.Say(f.s, f.u))
		}
	}
	if len(keeps) > 0 {
		f.under(f.say(words.PaperProvisional, nil), 14)
		f.list(keeps...)
	}
}

// finding says a state of a check; a failure is not to be overlooked.
func (f *flow) finding(s job.State) string {
	text := s.Name().Say(f.s, f.u)
	if s == job.Failed {
		return strings.ToUpper(text)
	}
	return text
}

// recordPlan is what would be next, as the plan says it.
func (f *flow) recordPlan() {
	f.section(words.PaperSecPlan)
	f.paragraphs(f.planLines()...)
}

// planLines are the plan's sentences, its clock as the reader sees it.
func (d *drawer) planLines() []string {
	if !d.planned() {
		head := d.say(words.PaperGaugeFirst, nil)
		switch d.p.Status {
		case plan.Nothing:
			head = d.say(words.PlanNothing, words.Args{"Chance": say.Chance(d.s, d.p.Probability)})
		case plan.None:
			head = d.say(words.PlanNone, nil)
		}
		return append(append([]string{head}, d.next()...), d.stopped()...)
	}
	lines := []string{d.say(words.PlanFound, words.Args{"Move": say.Move(d.s, d.u, d.h, floats(d.p.NutFlats), d.p.SlideMM), "Minutes": minutes(d.p)})}
	lines = append(lines, d.expected(), d.say(words.PlanDrawBack, words.Args{"Length": d.u.Plain(d.p.DrawBackMM, 1) + " mm"}))
	lines = append(lines, d.stopped()...)
	for i := range d.p.Steps {
		step := &d.p.Steps[i]
		lines = append(lines, d.say(words.PlanStep, words.Args{"Number": i + 1, "Move": d.stepMove(step)})+" "+d.stepHow(step)+" "+d.expectText(step)+" "+d.stopText(step))
	}
	return lines
}

// expectText says the gap after a step at every position.
func (d *drawer) expectText(step *plan.Step) string {
	var gaps []string
	for _, deg := range d.positions() {
		gaps = append(gaps, d.say(words.PlanExpectAt, words.Args{"Clock": d.clock(deg), "Gap": d.leaf(step.GapAtMM(deg))}))
	}
	return d.say(words.PlanExpect, words.Args{"Unit": d.u.GapUnit(), "Gaps": strings.Join(gaps, ", ")})
}

// recordNext is when to look again.
func (f *flow) recordNext() {
	f.section(words.PaperSecNext)
	f.list(f.comeBack()...)
}

// recordHull is the hull file, line by line.
func (f *flow) recordHull() {
	f.need(110) // mostly whole, at the least
	f.section(words.PaperSecHull)
	f.paragraphs(f.say(words.PaperHullUsed, nil))
	x, _, w, _ := f.InsideMM()
	t := paper.Type{Points: 7}
	lines := strings.Split(strings.TrimSpace(string(hulls.Encode(*f.h))), "\n")
	const columns = 3
	for len(lines) > 0 {
		f.need(20)
		_, top, _, tall := f.InsideMM()
		fit := max(int((top+tall-f.y)/t.LineMM()), 1)
		each := min(fit, (len(lines)+columns-1)/columns)
		for c := range columns {
			for i := range min(each, len(lines)) {
				text := strings.TrimLeft(lines[i], " ")
				indent := float64(len(lines[i]) - len(text))
				f.Line(x+float64(c)*w/columns+indent*1.1, f.y+float64(i)*t.LineMM(), w/columns-indent*1.1-2, t, text)
			}
			lines = lines[min(each, len(lines)):]
		}
		f.y += float64(each)*t.LineMM() + 1
	}
}

// recordSigned is who answers for it, and what made it.
func (f *flow) recordSigned() {
	f.need(52) // whole
	f.section(words.PaperSecSigned)
	f.paragraphs(f.say(words.PaperModel, nil), f.say(words.PaperMadeBy, words.Args{"Program": f.o.Program}))
	f.need(22)
	f.signatures(f.y+8, words.PaperSignMechanic, words.PaperSignOwner, words.PaperSignDate)
	f.y += 18
}
