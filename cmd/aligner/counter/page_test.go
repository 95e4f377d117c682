package counter

// This file goes through the counter view by keyboard.

import (
	"math"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
)

func opened(t *testing.T, language string, h hulls.Hull) *Page {
	t.Helper()
	test.NewTempApp(t)
	w := test.NewTempWindow(t, nil)
	w.Resize(fyne.NewSize(1280, 800))
	n := len(h.Mounts)
	b := Boat{Hull: h, Planned: true,
		Before: kinematics.State{Held: kinematics.Seated, LiftMM: make([]float64, n), SlideMM: make([]float64, n)},
		After:  kinematics.State{LiftMM: make([]float64, n), SlideMM: make([]float64, n)}}
	for i := range n / 2 {
		b.Before.LiftMM[i] = 3
	}
	p := New(page.Desk{Speaker: words.In(language), Looks: drawn.Looks{TextSize: 1, NoMotion: true}, Window: w, Back: func() {},
		Key: func(*fyne.KeyEvent) bool { return false }}, b)
	w.SetContent(p.Content())
	t.Cleanup(p.Close)
	return p
}

func press(p *Page, keys ...fyne.KeyName) {
	for _, k := range keys {
		p.TypedKey(&fyne.KeyEvent{Name: k})
	}
}

func said(p *Page) string {
	var all []string
	for _, o := range p.words.Objects {
		all = append(all, o.(*widget.Label).Text)
	}
	return strings.Join(all, "\n")
}

func TestFromBeforeToAfterByKeys(t *testing.T) {
	for _, language := range []string{"en", "de"} {
		p := opened(t, language, builtin.Hull(t, "Kittiwake"))
		off := p.result.Gap.SpreadMM()
		if text := said(p); off < 0.2 || strings.Contains(text, "<no value>") || strings.Contains(text, "[") {
			t.Errorf("before: %.3f mm apart; told %q", off, text)
		}
		last := off
		for range 10 {
			press(p, fyne.KeyRight)
			if now := p.result.Gap.SpreadMM(); now > last && p.share < 0.95 { // true, the shaft's own sag is left
				t.Errorf("%s: at %v it opens again", language, p.share)
			} else {
				last = now
			}
		}
		if p.share != 1 || p.handle.Value != 1 || last > 0.06 {
			t.Errorf("at %v: %.4f mm", p.share, last)
		}
		press(p, fyne.KeyHome)
		if p.share != 0 || math.Abs(p.result.Gap.SpreadMM()-off) > 1e-6 {
			t.Error("not back at the start")
		}
	}
}

// Without motion a turn is played a step a press; a whole turn of them ends where it
// began, and moving the handle leaves the turn.
func TestATurnStepByStep(t *testing.T) {
	p := opened(t, "en", builtin.Hull(t, "Kittiwake"))
	press(p, fyne.KeySpace)
	if p.result.Held != kinematics.Bolted || p.picture.State.Spot == nil || !strings.Contains(p.between.Text, "MPa") || !strings.Contains(said(p), "Nothing shakes") {
		t.Fatalf("held %s, told %q", p.result.Held, p.between.Text)
	}
	first := p.between.Text
	for range turnSteps {
		press(p, fyne.KeySpace)
	}
	if p.between.Text != first {
		t.Errorf("after a turn %q, was %q", p.between.Text, first)
	}
	press(p, fyne.KeyRight)
	if p.result.Held != kinematics.Seated || p.picture.State.Spot != nil {
		t.Error("the turn goes on")
	}
}

func TestASoftCouplingIsSaid(t *testing.T) {
	h := builtin.Hull(t, "Kittiwake")
	h.Coupling.Soft.ThicknessMM = 20
	p := opened(t, "en", h)
	if !strings.Contains(said(p), "soft coupling") {
		t.Errorf("told %q", said(p))
	}
	press(p, fyne.KeySpace)
	if p.result.Held == kinematics.Bolted {
		t.Error("bolted all the same")
	}
}

// A turn plays for six seconds, a picture a step, and then nothing is drawn any more;
// neither is anything drawn before it begins.
func TestATurnPlaysAndThenIsStill(t *testing.T) {
	p := opened(t, "en", builtin.Hull(t, "Kittiwake"))
	p.desk.Looks.NoMotion = false
	clock, stopped := make(chan time.Time), make(chan struct{})
	var pace time.Duration
	p.player.every = func(d time.Duration) (<-chan time.Time, func()) {
		pace = d
		return clock, func() { close(stopped) }
	}
	before := p.picture.Asked()
	press(p, fyne.KeySpace)
	if whole := turnSteps * stepTime; pace != 0 && pace != stepTime || whole < 4*time.Second || whole > 10*time.Second {
		t.Errorf("a turn in %v, a step in %v", whole, pace)
	}
	if p.picture.Asked() != before {
		t.Errorf("%d pictures before the first step", p.picture.Asked()-before)
	}
	for range turnSteps {
		clock <- time.Now()
	}
	<-stopped
	wait(t, func() bool { return p.player.quit == nil })
	if pace != stepTime {
		t.Errorf("a step in %v, want %v", pace, stepTime)
	}
	if n := p.picture.Asked() - before; n != turnSteps {
		t.Errorf("%d pictures in a turn of %d steps", n, turnSteps)
	}
	if p.player.at != 0 || p.play.Text != p.say(words.CounterPlay, nil) {
		t.Errorf("ended at step %d, the button says %q", p.player.at, p.play.Text)
	}
	idle := p.picture.Asked()
	time.Sleep(4 * stepTime)
	if n := p.picture.Asked() - idle; n != 0 {
		t.Errorf("%d pictures while nothing is played", n)
	}
}

// Stopped half-way it stands still where it is.
func TestATurnIsStopped(t *testing.T) {
	p := opened(t, "en", builtin.Hull(t, "Kittiwake"))
	p.desk.Looks.NoMotion = false
	clock, stopped := make(chan time.Time), make(chan struct{})
	p.player.every = func(time.Duration) (<-chan time.Time, func()) { return clock, func() { close(stopped) } }
	before := p.picture.Asked()
	press(p, fyne.KeySpace)
	for range 5 {
		clock <- time.Now()
	}
	wait(t, func() bool { return p.picture.Asked() == before+5 })
	press(p, fyne.KeySpace)
	<-stopped
	if p.player.at != 5 || p.player.quit != nil {
		t.Errorf("at step %d", p.player.at)
	}
	if p.result.Held != kinematics.Bolted {
		t.Error("no longer bolted")
	}
}

// wait waits until something on the window's side has come about.
func wait(t *testing.T, come func() bool) {
	t.Helper()
	for range 200 {
		done := false
		fyne.DoAndWait(func() { done = come() })
		if done {
			return
		}
		time.Sleep(5 * time.Millisecond)
	}
	t.Fatal("it never comes about")
}

// The handle goes by the mouse, and afterwards the keys still mean what they did.
func TestTheHandleByMouse(t *testing.T) {
	p := opened(t, "en", builtin.Hull(t, "Kittiwake"))
	c := p.desk.Window.Canvas()
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(p.handle)
	test.TapCanvas(c, at.Add(fyne.NewPos(p.handle.Size().Width/2, p.handle.Size().Height/2)))
	if math.Abs(p.share-0.5) > 0.051 {
		t.Errorf("tapped in the middle: %v", p.share)
	}
	was := p.share
	test.Drag(c, at.Add(fyne.NewPos(0.8*p.handle.Size().Width, p.handle.Size().Height/2)), 5, 0)
	if p.share <= was {
		t.Errorf("dragged on: %v", p.share)
	}
	c.Focus(p.handle)
	for _, k := range []fyne.KeyName{fyne.KeySpace, fyne.KeyHome} {
		c.Focused().TypedKey(&fyne.KeyEvent{Name: k})
		if k == fyne.KeySpace && p.result.Held != kinematics.Bolted {
			t.Error("Space does not play with the keyboard on the handle")
		}
	}
	if p.share != 0 || p.result.Held != kinematics.Seated {
		t.Errorf("Home: %v, %s", p.share, p.result.Held)
	}
}

// The type grows with the window, and the true size is a key away.
func TestTypeAndTrueSize(t *testing.T) {
	p := opened(t, "de", builtin.Hull(t, "Kittiwake"))
	small := p.override.Theme.Size(headingSize)
	p.desk.Window.Resize(fyne.NewSize(1920, 1080))
	if big := p.override.Theme.Size(headingSize); big < 1.4*small {
		t.Errorf("a headline is %v high in 1280, %v in 1920", small, big)
	}
	if p.picture.State.Exaggeration < 2 {
		t.Errorf("drawn %v times larger", p.picture.State.Exaggeration)
	}
	p.TypedRune('t')
	if p.picture.State.Exaggeration != 1 || p.caption.Text != p.say(words.CounterTruly, nil) {
		t.Errorf("true size: %v times, told %q", p.picture.State.Exaggeration, p.caption.Text)
	}
	p.TypedRune('t')
	if p.picture.State.Exaggeration < 2 {
		t.Error("not larger again")
	}
}

// What is played is said as it is graded: a shake is told of where one is to be felt,
// and not otherwise.
func TestWhatIsPlayedIsSaid(t *testing.T) {
	for _, c := range []struct {
		lift  float64
		fault float64
		want  words.ID
	}{{0, 0, words.CounterPlayedQuiet}, {3, 0, words.CounterPlayedSteady}, {0, 0.05, words.CounterPlayedFaint}, {0, 0.6, words.CounterPlayedShake}, {3, 0.6, words.CounterPlayedBoth}, {3, 0.05, words.CounterPlayedBothFaint}} {
		p := opened(t, "en", builtin.Hull(t, "Kittiwake"))
		for i := range p.boat.Before.LiftMM {
			p.boat.Before.LiftMM[i] = 0
		}
		p.boat.Before.LiftMM[0], p.boat.Before.LiftMM[1] = c.lift, c.lift
		p.boat.Fault.ShaftMM = c.fault
		p.to(0)
		press(p, fyne.KeySpace)
		whole := p.say(c.want, words.Args{"Still": "strut", "Round": "strut"})
		if !strings.HasPrefix(said(p), whole) {
			t.Errorf("%v: told %q, want %q", c, said(p)[:min(len(said(p)), 200)], whole)
		}
		p.Close()
	}
}
