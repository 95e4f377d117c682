package window

// This file enters every worked visit from its beginning by keys alone, as a
// mechanic with a mate calling numbers would, and holds the estimate against
// that of the file. Every key goes to what has the keyboard; fields are reached
// by Tab. Only what is tightened is recorded by its edit: it has tests of its own.

import (
	"math"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/hulls/visit/called"
	"aligner/kinematics/gauge"
	"aligner/report/job"
)

// begin enters everything before the look-over.
func (h *hands) begin(v *visit.Visit) {
	h.t.Helper()
	b := h.w.beginning
	h.key(fyne.KeyF2, fyne.KeyReturn) // read and minded
	s := v.State
	h.choose("where she lies", b.state.where, h.wordOf("boat", s.Boat))
	h.fill("hours", b.state.hours, h.w.maybe(s.HoursSinceLaunch))
	h.fill("fuel", b.state.fuel, h.w.maybe(s.FuelPercent))
	h.choose("ballast", b.state.ballast, h.wordOf("ballast", s.Ballast))
	h.choose("rig", b.state.rig, h.wordOf("rig", s.Rig))
	h.fill("age of mounts", b.state.mountAge, h.w.maybe(s.MountAgeMonths))
	h.fill("hours standing", b.state.mountHours, h.w.maybe(s.MountHoursStanding))
	h.fill("note", b.state.note, s.Note)
	if l := v.Leaves; len(l.Leaves) > 0 {
		h.choose("unit of leaves", b.leaves.unit, string(l.Unit))
		var list []string
		for _, leaf := range l.Leaves {
			list = append(list, h.w.units().Plain(leaf, 4))
		}
		h.fill("leaves", b.leaves.list, strings.Join(list, " "))
	}
	if r := v.Rule; inUse(r) >= 0 {
		h.choose("rule", b.rule.rule, h.say(words.Of("rule", r.Named)))
	} else {
		h.fill("limit", b.rule.limit, h.w.writeLength(r.Limit))
		h.choose("what is limited", b.rule.limits, h.say(words.Of("limits", r.Limits)))
		h.fill("name of the rule", b.rule.named, r.Named)
	}
	if g := v.Target; g.Spread.Given() {
		h.fill("target", b.target.spread, h.w.writeLength(g.Spread))
		h.fill("target's place", b.target.place, h.w.writePlace(g.OpensAtDeg))
		h.fill("target's reason", b.target.reason, g.Reason)
	}
	if p := v.UnderPower; p != (visit.UnderPower{}) {
		h.fill("thrust", b.branch.thrust, h.w.units().Plain(p.ThrustN, 1)+" N")
		h.fill("torque", b.branch.torque, h.w.units().Plain(p.TorqueNM, 1)+" N m")
	}
	if l := v.Linked; l.Job != "" {
		h.choose("which of two jobs", b.branch.job, h.say(words.Of("linked", l.Job)))
		h.fill("the other job", b.branch.other, l.Other)
	}
	h.fill("date", b.rest.date, v.Date)
	h.fill("visit's note", b.rest.note, v.Note)
}

// lookOver finds what the visit found.
func (h *hands) lookOver(v *visit.Visit) {
	h.t.Helper()
	h.key(fyne.KeyF3)
	d := h.w.history.Now()
	checks := job.LookOver(&d.Hull, &d.Visit)
	for _, f := range v.LookOver {
		ids := []string{f.Check}
		if f.Check == "mounts and bed sound" { // several checks in one
			ids = []string{job.MountsSound, job.BedSound, job.FeetFlat}
		}
		for i, c := range checks {
			if !slices.Contains(ids, c.ID) {
				continue
			}
			for range len(checks) {
				if h.w.looking.at == i {
					break
				}
				h.key(fyne.KeyDown)
			}
			if f.Note != "" {
				h.key(fyne.KeyReturn)
				h.letters(f.Note)
				h.key(fyne.KeyEscape)
			}
			if h.mouse && f.Finding == "good" {
				h.click(h.w.looking.found[0])
				continue
			}
			for r, finding := range lookKeys {
				if finding == f.Finding {
					h.letters(string(r))
				}
			}
		}
	}
}

// gauging is begun, turned and held as in the file, and called.
func (h *hands) gauging(g *visit.Gauging) {
	h.t.Helper()
	h.key(fyne.KeyF4)
	s := h.w.gauging
	v := h.w.history.Now().Visit
	now := s.hold.asked()
	begun := lastGauging(&v)
	if begun >= 0 { // another seating
		h.tabTo("gauge again", s.turns.same)
		h.key(fyne.KeyReturn)
	}
	for range quarters(now.ShaftTurnDeg, g.ShaftTurnDeg) {
		h.tabTo("turn the shaft", s.turns.shaft)
		h.key(fyne.KeyReturn)
	}
	for range quarters(now.FlangeTurnDeg, g.FlangeTurnDeg) {
		h.tabTo("turn the flange", s.turns.flange)
		h.key(fyne.KeyReturn)
	}
	h.choose("how it is held", s.hold.held, h.say(words.Of("held", g.Held)))
	h.choose("what holds it", s.hold.by, h.wordOf("by", g.HeldBy))
	if g.Apart.Given() {
		h.fill("held apart", s.hold.apart, h.w.writeLength(g.Apart))
	}
	if of := g.Between; of.What == visit.Dummy {
		h.choose("what stands between", s.hold.between.what, h.say(words.BetweenDummy))
		h.fill("uneven by", s.hold.between.uneven, h.w.writeLength(of.Uneven))
		h.fill("thinnest at", s.hold.between.thin, h.w.writePlace(of.ThinAtDeg))
	}
	h.fill("note of the gauging", s.hold.note, g.Note)
	h.tabTo("the line", s.entry)
	for _, r := range g.Readings {
		h.call(r)
	}
	h.choose("kind", s.kinds.which, h.say(words.Of("kind", "leaf")))
}

// quarters are how many quarter turns lead from one to the other.
func quarters(from, to float64) int { return int(math.Mod(to-from+720, 360) / 90) }

// call types one reading as it is called, its kind and what goes with it chosen
// before.
func (h *hands) call(r visit.Reading) {
	h.t.Helper()
	s := h.w.gauging
	d := h.w.history.Now()
	h.choose("kind", s.kinds.which, h.say(words.Of("kind", r.Kind())))
	set := s.setting(&d.Visit)
	text, with := called.Write(r, set)
	switch r.Kind() {
	case "run-out":
		h.choose("face or rim", s.kinds.on, h.say(words.Of("read_on", with.On)))
		h.choose("half", s.kinds.half, s.kinds.half.Options[slices.Index(sidesOfCoupling, with.Half)])
	case "clearance":
		h.choose("where", s.kinds.where, s.kinds.where.Options[slices.Index(s.kinds.names, with.Where)])
		h.choose("end", s.kinds.end, s.kinds.end.Options[slices.Index(shaftEnds, with.End)])
	}
	h.tabTo("the line", s.entry)
	h.letters(text)
	h.key(fyne.KeyReturn)
	if s.entry.Text != "" {
		h.t.Fatalf("%q is not taken: %s", text, h.w.sentence.Text)
	}
}

// move is typed into the form for what was really done, where the plan has a
// step to put it against; reports whether it was.
func (h *hands) move(m *visit.Move) bool {
	h.t.Helper()
	h.key(fyne.KeyF5, fyne.KeyEscape)
	h.did = append(h.did, deed{wait: true}) // for the plan
	h.letters("q")
	f := h.w.moving.form
	if !f.box.Visible() {
		return false
	}
	for i, mount := range h.w.boat.hull.Mounts {
		for k, v := range []float64{m.NutFlats[mount.Name], m.SlideMM[mount.Name]} {
			e := f.flats[i]
			if k == 1 {
				e = f.slide[i]
			}
			h.tabTo(mount.Name, e)
			h.all(e)
			h.letters(h.w.units().Plain(v, 4))
		}
	}
	h.key(fyne.KeyReturn)
	return true
}

func TestEveryWorkedVisitByKeys(t *testing.T) {
	moves, typed := 0, 0
	for _, name := range assets.VisitNames() {
		t.Run(name, func(t *testing.T) {
			file := builtin.Visit(t, name)
			v := &file.Visit
			w := openedOn(t, file.Hull.Name, file.Hull)
			h := &hands{t: t, w: w}
			h.begin(v)
			h.lookOver(v)
			for _, m := range v.Mounts { // what cannot be turned
				h.key(fyne.KeyF5, fyne.KeyEscape)
				h.letters(string(rune('1' + slices.IndexFunc(file.Hull.Mounts, hasName(m.Mount)))))
				h.letters("k")
			}
			for _, e := range v.Events {
				switch {
				case e.Gauging != nil:
					h.gauging(e.Gauging)
				case e.Move != nil:
					moves++
					if h.move(e.Move) {
						typed++
					} else {
						w.do(&visit.RecordMove{Move: *e.Move})
					}
				default:
					w.do(&visit.RecordFastening{Fasten: *e.Fasten})
				}
			}
			sameVisit(t, w, &file)
			t.Logf("%d keys", h.keys)
		})
	}
	if typed < 8 {
		t.Errorf("%d of %d moves were typed", typed, moves)
	}
}

func hasName(name string) func(hulls.Mount) bool {
	return func(m hulls.Mount) bool { return m.Name == name }
}

// sameVisit holds what was entered against the file: the readings one by one,
// and the estimate.
func sameVisit(t *testing.T, w *Window, file *visit.Document) {
	t.Helper()
	got := w.history.Now()
	var readings [2][]visit.Reading
	for k, v := range []*visit.Visit{&got.Visit, &file.Visit} {
		for _, e := range v.Events {
			if e.Gauging != nil {
				readings[k] = append(readings[k], e.Gauging.Readings...)
			}
		}
	}
	if !slices.EqualFunc(readings[0], readings[1], sameReading) {
		t.Errorf("read %v, wanted %v", readings[0], readings[1])
	}
	if got.Visit.State != file.Visit.State || got.Visit.Target != file.Visit.Target || got.Visit.Rule != file.Visit.Rule || got.Visit.UnderPower != file.Visit.UnderPower || got.Visit.Linked != file.Visit.Linked || got.Visit.Date != file.Visit.Date || !got.Visit.CautionsMinded {
		t.Errorf("begun with %+v %+v %+v", got.Visit.State, got.Visit.Rule, got.Visit.Target)
	}
	w.enter(stageGauge)
	if e := w.mind.estimate; e == nil {
		t.Errorf("no estimate: %v", w.mind.err)
	} else {
		sameEstimate(t, e, file)
	}
}

// sameEstimate holds an estimate against that of a file.
func sameEstimate(t *testing.T, e *gauge.Estimate, file *visit.Document) {
	t.Helper()
	want := estimateOf(t, file)
	if e.Verdict != want.Verdict || e.Status != want.Status || math.Abs(e.Within-want.Within) > 1e-9 ||
		math.Abs(e.Gap.MeanMM[0]-want.Gap.MeanMM[0]) > 1e-9 || math.Abs(e.Gap.MeanMM[1]-want.Gap.MeanMM[1]) > 1e-9 ||
		len(e.Odd) != len(want.Odd) || len(e.SetAside) != len(want.SetAside) {
		t.Errorf("estimate %+v, wanted %+v", e, want)
	}
}

func estimateOf(t *testing.T, d *visit.Document) *gauge.Estimate {
	t.Helper()
	m, err := gauge.NewModel(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		t.Fatal(err)
	}
	e, err := m.Estimate(&d.Visit)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

func sameReading(a, b visit.Reading) bool {
	x, _ := called.Write(a, called.Setting{})
	y, _ := called.Write(b, called.Setting{})
	return x == y
}
