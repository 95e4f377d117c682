package window

// This file tests fastening: a mount that pulls the engine off is named and
// eased, the torque is the maker's before it is worked out, and the other method
// goes step by step.

import (
	"math"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/job"
)

// untilGauging ticks until the order asks to gauge.
func (m *mate) untilGauging() {
	m.t.Helper()
	m.press(fyne.KeyF6)
	for range 20 {
		i := m.w.fastening.at()
		if i < 0 {
			m.t.Fatal("all fast, and never gauged")
		}
		if m.w.fastening.steps[i].Kind == job.Regauge {
			return
		}
		m.keys("y")
		m.answer()
	}
	m.t.Fatal("the order does not come to gauging")
}

// TestTheMountThatPullsIsNamed: tightening the jam nut of one mount drags its
// adjusting nut down. Gauged again that mount is named with the flats to ease it
// by; eased so and tightened, the boat is within.
func TestTheMountThatPullsIsNamed(t *testing.T) {
	for _, c := range []struct {
		visit, mount string
		flats        float64
	}{{"first-job", "aft starboard", -4}, {"first-job", "aft port", -4}} {
		t.Run(c.mount, func(t *testing.T) {
			m := aboard(t, c.visit)
			m.moveUntilWithin()
			m.pulls = map[string]float64{c.mount: c.flats}
			m.untilGauging()
			m.keys("q")
			m.gauge(m.round()...)
			if e := m.w.mind.estimate; e.Verdict == gauge.Within {
				t.Fatalf("pulled by %g flats and still %s", c.flats, e.Verdict)
			}
			m.press(fyne.KeyF6)
			text := m.w.fastening.pulled.text.Text
			if !strings.Contains(text, c.mount+": tightening drew it down") || !m.w.fastening.pulled.figures.box.Visible() {
				t.Fatalf("%s pulled, told: %q", c.mount, text)
			}
			d := m.w.history.Now()
			for _, other := range d.Hull.Mounts {
				if other.Name != c.mount && strings.Contains(text, other.Name+": ") {
					t.Errorf("%s is named too: %q", other.Name, text)
				}
			}
			e := m.w.mind.estimate
			r, err := m.w.mind.planner.Response()
			if err != nil {
				t.Fatal(err)
			}
			k := len(e.States) - 1
			p := job.PulledBy(&d.Hull, r, gaussian(e, k-1), gaussian(e, k), job.TightenedBetween(&d.Hull, &d.Visit, e.States[k-1].LastEvent, e.States[k].FirstEvent))
			if math.Abs(p.Alike[0].Ease+c.flats) > 1 {
				t.Errorf("to be eased by %g flats, pulled by %g", p.Alike[0].Ease, c.flats)
			}
			// Eased as said: tried with the arrow keys, taken as done.
			m.press(fyne.KeyF5)
			m.keys(string(rune('1' + slices.IndexFunc(d.Hull.Mounts, func(o hulls.Mount) bool { return o.Name == c.mount }))))
			for range int(math.Round(p.Alike[0].Ease)) {
				m.press(fyne.KeyUp)
			}
			m.keys("z")
			m.pulls = nil // the nut is held this time
			m.given = 1
			m.answer()
			m.fasten()
			if e := m.w.mind.estimate; e.Verdict != gauge.Within {
				t.Errorf("eased and tightened: %s with %.2f", e.Verdict, e.Within)
			}
		})
	}
}

// TestOneMountAtATime: the pair's two move the gap alike, so both are named, with
// the way to tell; slackened and tightened one after the other, the one that
// pulls is named alone.
func TestOneMountAtATime(t *testing.T) {
	m := aboard(t, "low-to-port")
	m.moveUntilWithin()
	m.pulls = map[string]float64{"aft port": -4}
	m.untilGauging()
	m.keys("q")
	m.gauge(m.round()...)
	m.press(fyne.KeyF6)
	both := m.w.fastening.pulled.text.Text
	if !strings.Contains(both, "aft port: tightening drew") || !strings.Contains(both, "aft starboard: tightening drew") {
		t.Fatalf("told %q", both)
	}
	m.keys("kk")
	for range 9 {
		i := m.w.fastening.at()
		switch step := &m.w.fastening.steps[i]; step.Kind {
		case job.Regauge:
			m.keys("q")
			m.gauge(m.round()...)
			m.press(fyne.KeyF6)
			text := m.w.fastening.pulled.text.Text
			if named := strings.Index(text, "aft port: tightening drew"); named >= 0 && strings.Contains(text[:named], "one mount explains it") {
				if strings.Contains(text[:named], "aft starboard: tightening drew") {
					t.Errorf("told %q", text)
				}
				return
			}
		case job.Loosen: // slackened, the nut's pull is gone
			m.keys("y")
			aft := slices.IndexFunc(m.w.boat.hull.Mounts, func(o hulls.Mount) bool { return o.Name == "aft port" })
			m.state.LiftMM[aft] += 4 * m.w.boat.hull.Mounts[aft].LiftPerStepMM()
		default:
			m.keys("y")
			m.answer()
		}
	}
	t.Errorf("told %q", m.w.fastening.pulled.text.Text)
}

// TestMakersTorqueFirst: typed with or without a unit it is kept and each round
// follows it; taken back, thread and grade say it.
func TestMakersTorqueFirst(t *testing.T) {
	m := aboard(t, "first-job")
	m.press(fyne.KeyF6)
	s := m.w.fastening
	rounds := func() string {
		var list []string
		for i := range s.steps {
			if s.steps[i].Kind == job.BoltRound {
				list = append(list, s.steps[i].Text.Say(m.w.speaker, m.w.units()))
			}
		}
		return strings.Join(list, " ")
	}
	if !strings.Contains(s.torque.text.Text, "Worked out of") || !strings.Contains(s.torque.text.Text, "25 to 30 %") {
		t.Errorf("no figure of the maker's, told: %q", s.torque.text.Text)
	}
	worked := rounds()
	for typed, nm := range map[string]float64{"24": 24 * 1.3558179483314004, "30 N m": 30, "30nm": 30, "20,5 lb-ft": 20.5 * 1.3558179483314004} {
		m.press(fyne.KeyEscape)
		m.keys("z")
		s.torque.maker.SetText("")
		m.keys(typed)
		m.press(fyne.KeyReturn)
		if got := m.w.history.Now().Visit.Bolts.Maker.NM(); math.Abs(got-nm) > 1e-9 {
			t.Errorf("%q is kept as %g N m, want %g", typed, got, nm)
		}
		if !strings.Contains(s.torque.text.Text, "The maker's figure") || rounds() == worked {
			t.Errorf("%q: told %q, rounds %q", typed, s.torque.text.Text, rounds())
		}
	}
	m.press(fyne.KeyEscape)
	m.keys("z")
	s.torque.maker.SetText("")
	m.press(fyne.KeyReturn)
	if rounds() != worked {
		t.Errorf("taken back: %q, before %q", rounds(), worked)
	}
	s.torque.threads.SetSelectedIndex(1)
	if !m.w.history.Now().Visit.Bolts.Oiled || rounds() == worked {
		t.Error("oiled threads change nothing")
	}
}

// TestThreeThenTheFourthByKeys goes through the other method.
func TestThreeThenTheFourthByKeys(t *testing.T) {
	m := aboard(t, "first-job")
	m.moveUntilWithin()
	m.press(fyne.KeyF6)
	m.keys("k")
	f, _ := job.ThreeThenFourth(&m.w.boat.hull)
	if len(m.w.fastening.steps) != len(f.Order) || !strings.Contains(m.w.fastening.afterAll.Text, m.w.boat.hull.Mounts[f.Fourth].Name) {
		t.Fatalf("%d steps, then %q", len(m.w.fastening.steps), m.w.fastening.afterAll.Text)
	}
	for i := range f.Order {
		if at := m.w.fastening.at(); at != i {
			t.Fatalf("step %d is next, want %d: %v", at, i, m.w.fastening.progress)
		}
		m.keys("y")
		if k := f.Order[i].Kind; k == job.Slacken || k == job.Regauge {
			m.gauge(m.round()...)
			m.press(fyne.KeyF6)
		}
	}
	d := m.w.history.Now()
	last := len(d.Visit.Events) - 1
	if got := job.TightenedBetween(&d.Hull, &d.Visit, last-3, last); !slices.Equal(got, []int{f.Fourth}) {
		t.Errorf("between the last two gaugings %v were tightened, want %d", got, f.Fourth)
	}
	m.keys("kk") // one at a time, and round again
	if i := m.w.fastening.at(); i < 0 || m.w.fastening.steps[i].Kind != job.Clamps {
		t.Errorf("back in the usual order step %d is next", i)
	}
}

// TestHeavyTurningIsKept: bolted up and turned by hand, a heavy shaft is told.
func TestHeavyTurningIsKept(t *testing.T) {
	m := aboard(t, "first-job")
	m.press(fyne.KeyF6)
	m.w.do(&visit.RecordFastening{Fasten: visit.Fasten{What: "jam nuts"}})
	m.w.do(&visit.RecordFastening{Fasten: visit.Fasten{What: "coupling bolts"}})
	if !m.w.fastening.heavy.Visible() {
		t.Fatalf("next: %q", m.w.fastening.next.Text)
	}
	m.w.fastening.heavy.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if got := m.w.history.Now().Visit.HandedOver.TurnedByHand; got != "heavy" {
		t.Errorf("kept as %q", got)
	}
	m.press(fyne.KeyF7)
	if !strings.Contains(m.w.handing.done.Text, "heavy") {
		t.Errorf("handed over as %q", m.w.handing.done.Text)
	}
}
