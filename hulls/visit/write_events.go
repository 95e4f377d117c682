package visit

// This file writes what happened in a visit, and the readings.

func (e *encoder) event(ev Event) {
	e.OptionalText("date", ev.Date)
	switch {
	case ev.Gauging != nil:
		e.gauging("gauging", *ev.Gauging)
	case ev.Move != nil:
		e.move("move", *ev.Move)
	case ev.Fasten != nil:
		e.fasten("fasten", *ev.Fasten)
	}
}

func (e *encoder) gauging(key string, g Gauging) {
	e.Open(key, '{')
	e.Text("held", g.Held)
	e.OptionalText("held_by", g.HeldBy)
	e.OptionalNumber("seating", float64(g.Seating), 0)
	e.OptionalNumber("shaft_turn_deg", g.ShaftTurnDeg, 0)
	e.OptionalNumber("flange_turn_deg", g.FlangeTurnDeg, 0)
	e.length("apart", g.Apart)
	if g.Between != (Between{}) {
		e.between("between", g.Between)
	}
	e.OptionalNumber("push_n", g.PushN, 0)
	e.OptionalBool("lever_on", g.LeverOn)
	e.OptionalBool("bolts_in", g.BoltsIn)
	writeList(e, "readings", g.Readings, func(r Reading) { e.reading(r) })
	e.OptionalText("note", g.Note)
	e.Close('}')
}

func (e *encoder) reading(r Reading) {
	e.Text("kind", r.Kind())
	r.write(e)
}

func (e *encoder) move(key string, m Move) {
	e.Open(key, '{')
	e.byMount("nut_flats", m.NutFlats)
	e.byMount("slide_mm", m.SlideMM)
	e.OptionalBool("lever_on", m.LeverOn)
	e.OptionalText("note", m.Note)
	e.Close('}')
}

func (e *encoder) fasten(key string, f Fasten) {
	e.Open(key, '{')
	e.Text("what", f.What)
	e.OptionalText("kind", f.Kind)
	e.Texts("mounts", f.Mounts)
	e.OptionalNumber("round", float64(f.Round), 0)
	if f.Torque.Given() {
		e.Number("torque_"+string(f.Torque.Unit), f.Torque.Value)
	}
	e.OptionalText("note", f.Note)
	e.Close('}')
}

func (r Leaf) write(e *encoder) {
	e.Number("clock_deg", r.ClockDeg)
	e.length("goes", r.Goes)
	e.length("stops", r.Stops)
	e.OptionalNumber("radius_mm", r.RadiusMM, 0)
	e.OptionalText("note", r.Note)
}

func (r LeafRound) write(e *encoder) {
	e.length("leaf", r.Leaf)
	e.arcs("enters_deg", r.Enters)
	e.arcs("stops_deg", r.Stops)
	e.OptionalNumber("radius_mm", r.RadiusMM, 0)
	e.OptionalText("note", r.Note)
}

func (e *encoder) arcs(key string, arcs []Arc) {
	if len(arcs) == 0 {
		return
	}
	e.Open(key, '[')
	for _, a := range arcs {
		e.Numbers("", []float64{a.FromDeg, a.ToDeg})
	}
	e.Close(']')
}

func (r RimStep) write(e *encoder) {
	e.Number("clock_deg", r.ClockDeg)
	e.OptionalText("high", r.High)
	e.length("goes", r.Goes)
	e.length("stops", r.Stops)
	e.OptionalText("note", r.Note)
}

func (r Dial) write(e *encoder) {
	e.Text("on", r.On)
	if r.CarriedBy != ShaftSide {
		e.OptionalText("carried_by", r.CarriedBy)
	}
	e.Number("clock_deg", r.ClockDeg)
	e.length("reads", r.Reads)
	e.OptionalNumber("zero_deg", r.ZeroDeg, 0)
	e.length("sag", r.Sag)
	e.OptionalNumber("radius_mm", r.RadiusMM, 0)
	e.OptionalText("note", r.Note)
}

func (r RunOut) write(e *encoder) {
	e.Text("half", r.Half)
	e.Text("on", r.On)
	e.length("tir", r.TIR)
	e.maybe("low_deg", r.LowDeg)
	e.OptionalNumber("radius_mm", r.RadiusMM, 0)
	e.OptionalText("note", r.Note)
}

func (r Clearance) write(e *encoder) {
	e.Text("where", r.Where)
	e.Text("end", r.End)
	e.Number("clock_deg", r.ClockDeg)
	e.length("goes", r.Goes)
	e.length("stops", r.Stops)
	e.OptionalText("note", r.Note)
}

func (r Pilot) write(e *encoder) {
	e.Text("enters", r.Enters)
	e.OptionalText("note", r.Note)
}
