package window

// This file drives whole jobs by keyboard, from the verdict of a worked visit to
// its hand-over: the plan ticked step by step, the boat gauged again, fastened,
// gauged, bolted up, handed over. The boat answers by the whole model from the
// state that all readings of the worked visit together tell, and gives only part
// of what the model says of each move, as boats do.

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/report/job"
	"aligner/report/say"
)

// mate works at the keyboard of a window, and the boat answers what she is
// gauged at.
type mate struct {
	t     *testing.T
	w     *Window
	line  *kinematics.DriveLine
	state kinematics.State // where the engine truly stands
	given float64          // how much of what the model says she gives
	// pulls is what tightening a mount's nut moves it by, in flats; nil: nothing.
	pulls  map[string]float64
	runOut [2][2]float64 // of shaft half and flange at their marks, in mm
	events int           // of the visit that the boat has answered already
	did    []deed        // all that was done at the keyboard
}

// aboard opens a worked visit as it stood before its first move.
func aboard(t *testing.T, name string) *mate {
	t.Helper()
	w := opened(t, "Kittiwake")
	d := builtin.Visit(t, name)
	m := &mate{t: t, w: w, given: 0.93}
	var err error
	if m.line, err = kinematics.Prepare(d.Hull); err != nil {
		t.Fatal(err)
	}
	planner, err := plan.NewPlanner(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		t.Fatal(err)
	}
	model, err := gauge.NewModel(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		t.Fatal(err)
	}
	whole, err := model.Estimate(&d.Visit)
	if err != nil {
		t.Fatal(err)
	}
	first := *whole
	first.Gap.MeanMM = [2]float64{whole.States[0].CosMM, whole.States[0].SinMM}
	for half := range whole.RunOut {
		for k := range 2 {
			m.runOut[half][k] = whole.RunOut[half].MeanMM[k]
		}
	}
	moved := 0
	for d.Visit.Events[moved].Move == nil {
		moved++
	}
	d.Visit.Events = d.Visit.Events[:moved]
	m.state = kinematics.State{Held: whole.Aim, Afloat: d.Visit.State.Afloat()}
	if m.state.LiftMM, m.state.SlideMM, err = planner.AsFound(&d.Visit, &first); err != nil {
		t.Fatal(err)
	}
	w.do(&visit.OpenVisit{Visit: d.Visit, HullName: d.HullName, Hull: hulls.Encode(d.Hull)})
	m.events = moved
	return m
}

// press presses a key wherever the keyboard is.
func (m *mate) press(name fyne.KeyName) {
	x := string(name)
	if other, ok := xNames[name]; ok {
		x = other
	}
	m.did = append(m.did, deed{keys: []string{x}})
	if name == fyne.KeyF5 {
		m.did = append(m.did, deed{wait: true}) // for the plan
	}
	if f := m.w.win.Canvas().Focused(); f != nil {
		f.TypedKey(&fyne.KeyEvent{Name: name})
		return
	}
	m.w.win.Canvas().OnTypedKey()(&fyne.KeyEvent{Name: name})
}

// keys types letters wherever the keyboard is.
func (m *mate) keys(text string) {
	m.did = append(m.did, deed{text: text})
	for _, r := range text {
		if f := m.w.win.Canvas().Focused(); f != nil {
			f.TypedRune(r)
		} else {
			m.w.win.Canvas().OnTypedRune()(r)
		}
	}
}

// answer lets the boat do what was recorded since last time.
func (m *mate) answer() {
	d := m.w.history.Now()
	for ; m.events < len(d.Visit.Events); m.events++ {
		e := &d.Visit.Events[m.events]
		for i, mount := range d.Hull.Mounts {
			if e.Move != nil {
				m.state.LiftMM[i] += m.given * e.Move.NutFlats[mount.Name] * mount.LiftPerStepMM()
				m.state.SlideMM[i] += m.given * e.Move.SlideMM[mount.Name]
			}
			if e.Fasten != nil && (e.Fasten.Kind == visit.FastenedJamNuts || e.Fasten.Kind == visit.FastenedFootBolts) {
				for _, name := range e.Fasten.Mounts {
					if name == mount.Name {
						m.state.LiftMM[i] += m.pulls[name] * mount.LiftPerStepMM()
					}
				}
			}
		}
	}
}

// gapMM is the boat's gap at a place, the faces touching and the halves turned,
// through the dummy a gauging has between them.
func (m *mate) gapMM(deg float64, g *visit.Gauging) float64 {
	m.t.Helper()
	var r kinematics.Result
	if err := m.line.Solve(&m.state, &r); err != nil {
		m.t.Fatal(err)
	}
	a, b := r.Gap.CosMM, r.Gap.SinMM
	if g.Between.What == visit.Dummy {
		sin, cos := math.Sincos((g.Between.ThinAtDeg + g.ShaftTurnDeg) * math.Pi / 180)
		a += g.Between.Uneven.MM() / 2 * cos
		b += g.Between.Uneven.MM() / 2 * sin
	}
	for half, turn := range [2]float64{g.ShaftTurnDeg, g.FlangeTurnDeg} {
		sin, cos := math.Sincos(turn * math.Pi / 180)
		a += m.runOut[half][0]*cos - m.runOut[half][1]*sin
		b += m.runOut[half][0]*sin + m.runOut[half][1]*cos
	}
	sin, cos := math.Sincos(deg * math.Pi / 180)
	return math.Hypot(a, b) + a*cos + b*sin
}

// gauge goes round the rim with the leaves of the visit and calls what goes and
// what stops.
func (m *mate) gauge(hours ...string) {
	m.t.Helper()
	m.answer()
	m.press(fyne.KeyF4)
	d := m.w.history.Now()
	unit, leaves := m.w.gauging.leaves(&d.Visit)
	g := m.w.gauging.hold.asked()
	if i := lastGauging(&d.Visit); i >= 0 {
		g = *d.Visit.Events[i].Gauging
	}
	for _, hour := range hours {
		m.call(hour, &g, unit, leaves)
	}
	d = m.w.history.Now()
	if last := d.Visit.Events[len(d.Visit.Events)-1].Gauging; last == nil || len(last.Readings) != len(hours) {
		m.t.Fatalf("called %d readings, the visit has %+v; told %q", len(hours), last, m.w.sentence.Text)
	}
	// What is asked for where that does not tell yet.
	for range 8 {
		e := m.w.mind.estimate
		if e.Verdict != gauge.CannotTell || e.Next == nil || e.Next.LeafMM == 0 {
			break
		}
		m.call(visit.ClockText(e.Next.ClockDeg, m.w.seen()), &g, unit, leaves)
	}
	m.events = len(d.Visit.Events)
}

// call says what goes and what stops at a place.
func (m *mate) call(place string, g *visit.Gauging, unit visit.Unit, leaves []float64) {
	m.t.Helper()
	deg, err := visit.ParseClock(place, m.w.seen())
	if err != nil {
		m.t.Fatal(err)
	}
	gap := m.gapMM(deg, g)
	if g.Apart.MM() > visit.WideMM { // block and leaves, to a twentieth of a mm
		low := math.Floor((gap+g.Apart.MM())/0.05) * 0.05
		m.keys(fmt.Sprintf("%s %.2f/%.2fmm", place, low, low+0.05))
		m.press(fyne.KeyReturn)
		return
	}
	if unit != visit.InMM {
		gap /= say.MMPerThou
	}
	goes, stops := "-", "-"
	for _, leaf := range leaves {
		if leaf > gap {
			stops = fmt.Sprint(leaf)
			break
		}
		goes = fmt.Sprint(leaf)
	}
	m.keys(place + " " + goes + "/" + stops)
	m.press(fyne.KeyReturn)
}

// round are places a leaf can be got at in a visit.
func (m *mate) round() []string {
	d := m.w.history.Now()
	if d.Visit.Reach.AllRound() {
		return []string{"12", "1:30", "3", "4:30", "6", "7:30", "9", "10:30"}
	}
	var hours []string
	for h := range 12 {
		if deg := float64(30 * h); d.Visit.Reach.Reaches(deg) {
			hours = append(hours, say.Clock(deg, false))
		}
	}
	return hours
}

// tabTo goes on from one thing to the next until the keyboard is where it is
// wanted.
func (m *mate) tabTo(wanted fyne.Focusable) {
	m.t.Helper()
	for range 100 {
		if m.w.win.Canvas().Focused() == wanted {
			return
		}
		m.w.win.Canvas().FocusNext()
		m.did = append(m.did, deed{keys: []string{"Tab"}})
	}
	m.t.Fatal("the keyboard does not come there")
}

// gaugeRound goes round, and again with the shaft turned as asked for where one
// round does not tell.
func (m *mate) gaugeRound() {
	m.t.Helper()
	m.gauge(m.round()...)
	for range 2 {
		if e := m.w.mind.estimate; e.Verdict != gauge.CannotTell || e.Next == nil || e.Next.What != gauge.TurnShaft {
			return
		}
		m.tabTo(m.w.gauging.turns.proposed)
		m.press(fyne.KeyReturn)
		m.gauge(m.round()...)
	}
}

// moveUntilWithin ticks plans and gauges again until the verdict is within.
func (m *mate) moveUntilWithin() {
	m.t.Helper()
	for range 4 {
		m.press(fyne.KeyF5)
		if m.w.mind.plan == nil {
			m.t.Fatalf("no plan: %q", m.w.moving.text.Text)
		}
		if m.w.mind.step() == nil {
			m.t.Fatalf("nothing to move: %q", m.w.moving.text.Text)
		}
		steps := 0
		for m.w.mind.step() != nil {
			if !m.w.moving.done.Visible() || m.w.moving.turns.Text == "" {
				m.t.Fatalf("step %d is not shown: %q", steps+1, m.w.moving.turns.Text)
			}
			m.keys("y")
			if steps++; steps > 30 {
				m.t.Fatal("the steps do not end")
			}
		}
		if !m.w.moving.gauge.Visible() {
			m.t.Fatal("all done, and not asked to gauge again")
		}
		m.gaugeRound()
		if m.w.mind.estimate.Verdict == gauge.Within {
			return
		}
		m.t.Logf("after %d steps: %s with %.2f", steps, m.w.mind.estimate.Verdict, m.w.mind.estimate.Within)
	}
	m.t.Fatalf("not within after four rounds: %v", m.w.gauging.estimate.Text)
}

// fasten ticks the order to its end, gauging where it says so.
func (m *mate) fasten() {
	m.t.Helper()
	m.press(fyne.KeyF6)
	for range 40 {
		i := m.w.fastening.at()
		if i < 0 {
			return
		}
		kind := m.w.fastening.steps[i].Kind
		if kind == job.Regauge {
			m.keys("q")
			if m.w.stage != stageGauge {
				m.t.Fatalf("gauging again leads to stage %d", m.w.stage)
			}
			m.gaugeRound()
			m.press(fyne.KeyF6)
			continue
		}
		m.keys("y")
		m.answer()
	}
	m.t.Fatalf("fastening does not end: step %d of %v", m.w.fastening.at(), m.w.fastening.progress)
}

// handOver hands the boat over.
func (m *mate) handOver() {
	m.t.Helper()
	m.w.handing.today = func() string { return "2026-12-24" }
	m.press(fyne.KeyF7)
	m.keys("y")
	d := m.w.history.Now()
	if !d.Visit.HandedOver.Done() || d.Visit.HandedOver.TurnedByHand != "smooth" || !d.Visit.HandedOver.NutsMarked {
		m.t.Errorf("handed over as %+v", d.Visit.HandedOver)
	}
	if !strings.Contains(m.w.handing.title.Text, "2026-12-24") {
		m.t.Errorf("the sheet says %q", m.w.handing.title.Text)
	}
	if r := visit.Validate(d.Visit, &d.Hull); len(r.Refusals) > 0 {
		m.t.Errorf("the visit would not be read again: %v", r.Refusals)
	}
}

// TestWorkedVisitsToTheirHandOver drives each to its end.
func TestWorkedVisitsToTheirHandOver(t *testing.T) {
	for _, name := range assets.VisitNames() {
		t.Run(name, func(t *testing.T) {
			m := aboard(t, name)
			m.press(fyne.KeyF4)
			if e := m.w.mind.estimate; e.Verdict == gauge.Within {
				t.Fatalf("begins %s", e.Verdict)
			}
			m.moveUntilWithin()
			m.fasten()
			if e := m.w.mind.estimate; e.Verdict != gauge.Within {
				t.Errorf("bolted up %s with %.2f", e.Verdict, e.Within)
			}
			m.handOver()
			d := m.w.history.Now()
			for _, r := range job.Provisional(&d.Hull, &d.Visit) {
				switch r.Kind {
				case job.NotSinceMove, job.NotFastened, job.NotSinceFastened, job.NothingGauged, job.NotForMoves:
					t.Errorf("in the end: %s", r.Text.Say(m.w.speaker, m.w.units()))
				}
			}
			m.trulyWithin()
		})
	}
}

// trulyWithin holds the boat herself against the rule, whatever was read.
func (m *mate) trulyWithin() {
	m.t.Helper()
	var r kinematics.Result
	if err := m.line.Solve(&m.state, &r); err != nil {
		m.t.Fatal(err)
	}
	e := m.w.mind.estimate
	off := 2 * math.Hypot(r.Gap.CosMM-e.TargetMM[0], r.Gap.SinMM-e.TargetMM[1])
	if off > e.LimitMM {
		m.t.Errorf("called within, and truly %.2f thou off the gap aimed at", off/say.MMPerThou)
	}
}
