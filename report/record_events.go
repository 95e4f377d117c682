package report

// This file writes a visit's events as they were put in: gaugings with every
// reading in the unit it was typed in, moves, fastenings.

import (
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/job"
	"aligner/report/paper"
	"aligner/report/say"
)

// recordEvents is all that happened, in order.
func (f *flow) recordEvents() {
	f.section(words.PaperSecEvents)
	if len(f.v.Events) == 0 {
		f.paragraphs(f.say(words.NothingGauged, nil))
		return
	}
	f.paragraphs(f.say(words.PaperClockSeen, words.Args{"Seen": f.seen()}))
	date := f.v.Date
	for i, e := range f.v.Events {
		if e.Date != "" {
			date = e.Date
		}
		args := words.Args{"Number": i + 1, "Date": date}
		switch {
		case e.Gauging != nil:
			args["What"] = f.gaugedHow(e.Gauging)
			f.under(f.say(words.PaperEvent, args), 24)
			f.readings(i, e.Gauging)
			f.paragraphs(e.Gauging.Note)
		case e.Move != nil:
			args["What"] = f.say(words.PaperMoved, words.Args{"Move": f.moveText(e.Move), "Lever": e.Move.LeverOn})
			f.under(f.say(words.PaperEvent, args), 12)
			f.paragraphs(e.Move.Note)
		case e.Fasten != nil:
			args["What"] = f.say(words.PaperTightened, words.Args{"What": job.Fastened(f.s, f.u, e.Fasten), "Torque": f.torque(e.Fasten.Torque)})
			f.under(f.say(words.PaperEvent, args), 12)
			f.paragraphs(e.Fasten.Note)
		}
	}
}

// gaugedHow says how a gauging was made: held, turned, pushed.
func (d *drawer) gaugedHow(g *visit.Gauging) string {
	parts := []string{d.say(words.PaperGauged, words.Args{"Held": d.say(words.Of("paper_held", g.Held), nil), "By": g.HeldBy})}
	if g.ShaftTurnDeg != 0 || g.FlangeTurnDeg != 0 {
		parts = append(parts, d.say(words.PaperTurned, words.Args{"Shaft": d.u.Plain(g.ShaftTurnDeg, 1), "Flange": d.u.Plain(g.FlangeTurnDeg, 1)}))
	}
	if g.Seating > 0 {
		parts = append(parts, d.say(words.PaperSeating, words.Args{"Number": g.Seating}))
	}
	if g.Apart.Given() {
		parts = append(parts, d.say(words.PaperApart, words.Args{"Gap": d.typed(g.Apart)}))
	}
	if b := g.Between; b.What != "" {
		between := d.say(words.Of("between", b.What), nil)
		if b.Uneven.Given() {
			between += " " + d.say(words.PaperUneven, words.Args{"Gap": d.typed(b.Uneven), "Clock": d.clock(b.ThinAtDeg)})
		}
		parts = append(parts, d.say(words.PaperThrough, words.Args{"What": between}))
	}
	if g.PushN != 0 {
		parts = append(parts, d.say(words.PaperPushed, words.Args{"Force": d.u.Force(g.PushN)}))
	}
	if g.LeverOn {
		parts = append(parts, d.say(words.PaperLeverOn, nil))
	}
	if g.BoltsIn {
		parts = append(parts, d.say(words.PaperBoltsIn, nil))
	}
	return strings.Join(parts, ", ")
}

// readings is the table of one gauging.
func (f *flow) readings(event int, g *visit.Gauging) {
	if len(g.Readings) == 0 {
		f.paragraphs(f.say(words.PaperNoReadings, nil))
		return
	}
	var rows [][]string
	for i, r := range g.Readings {
		row := f.reading(r)
		row[4] = strings.Join(nonEmpty(row[4], f.fit(event, i)), ". ")
		rows = append(rows, []string{row[0], row[1], row[2], row[3], "", row[4]})
	}
	said := func(id words.ID) string { return f.say(id, nil) }
	f.table([]column{{said(words.PaperKindOf), 0.2, paper.Left}, {said(words.PaperClock), 0.13, paper.Right}, {said(words.PaperGoes), 0.13, paper.Right},
		{said(words.PaperStops), 0.13, paper.Right}, {"", 0.02, paper.Left}, {said(words.PaperNote), 0.39, paper.Left}}, rows)
}

// fit says of a reading that it does not fit or was not used.
func (d *drawer) fit(event, at int) string {
	var said []string
	for _, o := range d.e.Odd {
		if o.Event == event && o.Reading == at {
			said = append(said, d.say(words.PaperOdd, nil))
		}
	}
	for _, a := range d.e.SetAside {
		if a.Event == event && (a.Reading == at || a.Reading < 0) {
			said = append(said, d.say(words.PaperAside, words.Args{"Why": d.say(words.Of("aside", string(a.Why)), nil)}))
		}
	}
	return strings.Join(said, ". ")
}

// typed writes a length as it was typed.
func (d *drawer) typed(l visit.Length) string {
	if !l.Given() {
		return "–"
	}
	return d.u.Plain(l.Value, 4) + " " + string(l.Unit)
}

// reading writes one: kind, place, goes, stops, and the rest.
func (d *drawer) reading(r visit.Reading) [5]string {
	row := [5]string{d.say(words.Of("paper_reading", r.Kind()), nil)}
	radius := func(mm float64) string {
		if mm == 0 {
			return ""
		}
		return d.say(words.PaperRadius, words.Args{"Length": d.u.Plain(mm, 1) + " mm"})
	}
	rest := func(parts ...string) { row[4] = strings.Join(nonEmpty(parts...), ". ") }
	switch r := r.(type) {
	case visit.Leaf:
		row[1], row[2], row[3] = d.clock(r.ClockDeg), d.typed(r.Goes), d.typed(r.Stops)
		rest(radius(r.RadiusMM), r.Note)
	case visit.LeafRound:
		row[2] = d.typed(r.Leaf)
		rest(d.say(words.PaperEnters, words.Args{"Arcs": d.arcs(r.Enters)}), d.say(words.PaperDoesNot, words.Args{"Arcs": d.arcs(r.Stops)}), radius(r.RadiusMM), r.Note)
	case visit.RimStep:
		row[1], row[2], row[3] = d.clock(r.ClockDeg), d.typed(r.Goes), d.typed(r.Stops)
		high := ""
		if r.High != "" {
			high = d.say(words.PaperHigh, words.Args{"Half": d.say(words.Of("paper_half", r.High), nil)})
		}
		rest(high, r.Note)
	case visit.Dial:
		row[1], row[2] = d.clock(r.ClockDeg), d.typed(r.Reads)
		rest(d.say(words.PaperDialled, words.Args{"On": d.say(words.Of("paper_on", r.On), nil), "By": d.say(words.Of("paper_half", orNone(r.CarriedBy, visit.ShaftSide)), nil),
			"Zero": d.clock(r.ZeroDeg), "Sag": d.typed(r.Sag)}), radius(r.RadiusMM), r.Note)
	case visit.RunOut:
		row[2] = d.typed(r.TIR)
		low := ""
		if r.LowDeg.Known {
			low = d.say(words.PaperLowAt, words.Args{"Clock": d.clock(r.LowDeg.Value)})
		}
		rest(d.say(words.PaperRunOutOf, words.Args{"Half": d.say(words.Of("paper_half", r.Half), nil), "On": d.say(words.Of("paper_on", r.On), nil)}), low, radius(r.RadiusMM), r.Note)
	case visit.Clearance:
		row[1], row[2], row[3] = d.clock(r.ClockDeg), d.typed(r.Goes), d.typed(r.Stops)
		rest(say.Where(d.s, r.Where)+", "+d.say(words.Of("paper_end", r.End), nil), r.Note)
	case visit.Pilot:
		rest(d.say(words.PaperPilot, words.Args{"Enters": d.say(words.Of("paper_enters", r.Enters), nil)}), r.Note)
	}
	return row
}

// arcs writes where a leaf went round, as the reader sees the clock.
func (d *drawer) arcs(list []visit.Arc) string {
	var said []string
	for _, a := range list {
		from, to := a.FromDeg, a.ToDeg
		if d.o.Seen == visit.LookingAft { // clockwise the other way
			from, to = to, from
		}
		said = append(said, d.clock(from)+" – "+d.clock(to))
	}
	return orNone(strings.Join(said, ", "), "–")
}

// moveText says a move by mounts, in the hull's order.
func (d *drawer) moveText(m *visit.Move) string {
	var parts []string
	for i := range d.h.Mounts {
		mount := &d.h.Mounts[i]
		if n := m.NutFlats[mount.Name]; n != 0 {
			parts = append(parts, d.nutText(mount, n))
		}
		if mm := m.SlideMM[mount.Name]; mm != 0 {
			parts = append(parts, d.s.Part(mount.Name)+" "+d.slideText(mm))
		}
	}
	return orNone(strings.Join(parts, ", "), "–")
}

// nutText says a nut's turn, which need not be whole flats.
func (d *drawer) nutText(m *hulls.Mount, n float64) string {
	unit := words.Flats
	if m.Kind == hulls.Solid {
		unit = words.Shims
	}
	count, sign := 2, "+"
	if n < 0 {
		sign, n = "−", -n
	}
	if n == 1 {
		count = 1
	}
	return d.s.Part(m.Name) + " " + sign + d.say(unit, words.Args{"Count": count, "Number": d.u.Plain(n, 2)})
}

// torque writes one as it was given, and in the reader's unit if that differs.
func (d *drawer) torque(t visit.Torque) string {
	if !t.Given() {
		return ""
	}
	unit := "N m"
	if t.Unit == visit.InLbFt {
		unit = "lb-ft"
	}
	text := d.u.Plain(t.Value, 1) + " " + unit
	if d.u.Metric != (t.Unit == visit.InNM) {
		text += " (" + d.u.Moment(t.NM()*1000) + ")"
	}
	return text
}

// ready reports whether there is an estimate to write out.
func (d *drawer) ready() bool { return d.e.Status == gauge.Ready }
