package copied

// This file writes plain text.

import (
	"strings"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/report/job"
	"aligner/report/say"
)

// Results are what is copied. Estimate and Plan may be nil: not known.
type Results struct {
	Document   *visit.Document
	Estimate   *gauge.Estimate
	Plan       *plan.Plan
	LookingAft bool
}

// Text is the visit in lines: boat and date, how it stands, the plan, the
// readings, and what keeps the result provisional.
func Text(s words.Speaker, u say.Units, r Results) string {
	d := r.Document
	lines := []string{s.Say(words.CopiedTitle, words.Args{"Hull": d.Hull.Name, "Date": d.Visit.Date})}
	part := func(id words.ID, all []string) {
		if len(all) > 0 {
			lines = append(lines, "", s.Say(id, nil))
			lines = append(lines, all...)
		}
	}
	if r.Estimate != nil {
		part(words.CopiedEstimate, say.Estimate(s, u, &d.Visit, r.Estimate))
	}
	if r.Plan != nil && r.Estimate != nil {
		part(words.CopiedPlan, say.Plan(s, u, &d.Hull, r.Estimate, r.Plan, d.Visit.State.Afloat()))
	}
	part(words.CopiedReadings, readings(s, u, r))
	var reasons []string
	for _, why := range job.Provisional(&d.Hull, &d.Visit) {
		reasons = append(reasons, why.Text.Say(s, u))
	}
	part(words.HandOverProvisional, reasons)
	return strings.Join(lines, "\n") + "\n"
}

// readings is a line an event.
func readings(s words.Speaker, u say.Units, r Results) []string {
	seen := words.SeenForward
	if r.LookingAft {
		seen = words.SeenAft
	}
	lines := []string{s.Say(words.CopiedClock, words.Args{"Seen": s.Say(seen, nil), "Unit": u.GapUnit()})}
	for i, e := range r.Document.Visit.Events {
		line := ""
		switch {
		case e.Gauging != nil:
			var read []string
			for _, one := range e.Gauging.Readings {
				read = append(read, say.Reading(s, u, one, r.LookingAft))
			}
			line = s.Say(words.CopiedGauging, words.Args{"Held": e.Gauging.Held, "Shaft": u.Plain(e.Gauging.ShaftTurnDeg, 0),
				"Flange": u.Plain(e.Gauging.FlangeTurnDeg, 0), "Readings": strings.Join(read, "; ")})
		case e.Move != nil:
			line = moved(s, u, r.Document, e.Move)
		case e.Fasten != nil:
			line = s.Say(words.EditRecordFastening, words.Args{"What": job.Fastened(s, u, e.Fasten)})
		}
		lines = append(lines, s.Say(words.CopiedEvent, words.Args{"Number": i + 1, "What": line}))
	}
	if len(lines) == 1 {
		return nil
	}
	return lines
}

func moved(s words.Speaker, u say.Units, d *visit.Document, m *visit.Move) string {
	steps, slides := make([]float64, len(d.Hull.Mounts)), make([]float64, len(d.Hull.Mounts))
	for i, mount := range d.Hull.Mounts {
		steps[i], slides[i] = m.NutFlats[mount.Name], m.SlideMM[mount.Name]
	}
	return say.Move(s, u, &d.Hull, steps, slides)
}
