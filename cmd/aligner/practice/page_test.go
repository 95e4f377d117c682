package practice

// This file practises by keyboard in the library's test window.

import (
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/kinematics/practice"
	"aligner/report/learners"
)

// learner is a page in a window, and a hand on the keyboard.
type learner struct {
	*testing.T
	*Page
	win fyne.Window
}

func sit(t *testing.T, language string, s *Session, width, height float32) *learner {
	t.Helper()
	w := test.NewTempWindow(t, nil)
	w.SetPadded(false)
	w.Resize(fyne.NewSize(width, height))
	p := New(page.Desk{Speaker: words.In(language), Looks: drawn.Looks{TextSize: 1, NoMotion: true}, Window: w, Back: func() {},
		Key: func(*fyne.KeyEvent) bool { return false }}, s)
	w.SetContent(p.Content())
	w.Canvas().Focus(p.Focus())
	t.Cleanup(p.Close)
	return &learner{t, p, w}
}

func session(t *testing.T) *Session {
	t.Helper()
	test.NewTempApp(t)
	s := NewSession(learners.File{Path: filepath.Join(t.TempDir(), learners.Name)}, "")
	s.Now = func() time.Time { return time.Date(2026, 5, 14, 9, 0, 0, 0, time.UTC) }
	return s
}

// begun is a session at the first boat.
func begun(t *testing.T) *learner {
	t.Helper()
	s := session(t)
	s.Learner = "Ann"
	w, err := practice.Begin(practice.Task{Grade: practice.TiltOnly, Number: 1})
	if err != nil {
		t.Fatal(err)
	}
	s.begin(w)
	return sit(t, "en", s, 1280, 800)
}

// fits holds that nothing makes the window larger than it is.
func (l *learner) fits(when string) {
	l.Helper()
	least, size := l.Content().MinSize(), l.win.Canvas().Size()
	if least.Width > size.Width || least.Height > size.Height {
		l.Errorf("%s: wants %v of %v", when, least, size)
	}
}

// tab goes on to what stands so many places further.
func (l *learner) tab(to fyne.Focusable) {
	l.Helper()
	for range 60 {
		if l.win.Canvas().Focused() == to {
			l.inView(to)
			return
		}
		test.FocusNext(l.win.Canvas())
	}
	l.Fatalf("the keyboard does not get to %T", to)
}

// inView holds that what has the keyboard can be seen.
func (l *learner) inView(f fyne.Focusable) {
	l.Helper()
	o, driver := f.(fyne.CanvasObject), fyne.CurrentApp().Driver()
	top := driver.AbsolutePositionForObject(o).Y
	if bottom := top + o.Size().Height; top < 0 || bottom > l.win.Canvas().Size().Height {
		l.Errorf("%T at %v to %v has the keyboard out of view", f, top, bottom)
	}
}

func (l *learner) key(names ...fyne.KeyName) {
	for _, n := range names {
		l.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: n})
	}
}

func (l *learner) typed(text string) {
	test.Type(l.win.Canvas().Focused(), text)
	l.key(fyne.KeyReturn)
}

// choose goes to a choice and takes another line of it.
func (l *learner) choose(c *page.Choice, at int) {
	l.Helper()
	l.tab(c)
	for c.SelectedIndex() != at {
		l.key(fyne.KeyRight)
	}
}

// place is a position as it is typed.
func place(deg float64) string {
	return strconv.Itoa((int(deg/30)+11)%12 + 1)
}

// plays types acts as they were done, readings of one gauging together.
func (l *learner) plays(acts []practice.Act) {
	l.Helper()
	var places []string
	read := func() {
		if places != nil {
			l.tab(l.sheet.at)
			l.typed(strings.Join(places, " "))
		}
		places = nil
	}
	for _, a := range acts {
		if a.Read == nil && a.Clean == nil {
			read()
		}
		switch {
		case a.Read != nil:
			places = append(places, place(a.Read.ClockDeg))
		case a.Clean != nil:
			places = append(places, "-"+place(a.Clean.ClockDeg))
		case a.Gauge != nil:
			l.choose(l.sheet.shaft, int(a.Gauge.ShaftTurnDeg/90))
			l.choose(l.sheet.flange, int(a.Gauge.FlangeTurnDeg/90))
			l.tab(l.sheet.hold)
			l.key(fyne.KeyReturn)
		case a.Turn != nil:
			l.turns(a.Turn)
		case a.Fasten != nil:
			l.tab(l.sheet.tighten)
			l.key(fyne.KeySpace)
		case a.HandOver != nil:
			l.choose(l.sheet.cause, indexOf(practice.Causes, a.HandOver.Cause))
			l.tab(l.sheet.over)
			l.key(fyne.KeyReturn)
		}
		l.fits("at work")
	}
	read()
}

// turns types flats and slides into the mounts' rows; the last Enter turns them.
func (l *learner) turns(t *practice.Turn) {
	l.Helper()
	for i, m := range l.s.work.Hull().Mounts {
		for entry, text := range map[*page.Entry]string{
			l.sheet.nuts[i]:   l.desk.Looks.Units.Plain(float64(t.NutFlats[m.Name]), 0),
			l.sheet.slides[i]: l.desk.Looks.Units.Plain(t.SlideMM[m.Name], 2)} {
			l.tab(entry)
			entry.SetText("")
			test.Type(entry, text)
		}
	}
	l.key(fyne.KeyReturn)
}

// playable is a boat of a grade whose work by the tool has no leaf tried singly, which
// the page does not offer.
func playable(t *testing.T, g practice.Grade) *practice.Work {
	t.Helper()
	for n := 1; n <= practice.Numbers; n++ {
		w, err := practice.ByPlan(practice.Task{Grade: g, Number: n})
		if err != nil {
			t.Fatal(err)
		}
		singly := false
		for _, a := range w.Acts {
			singly = singly || a.Leaf != nil
		}
		if !singly {
			return w
		}
	}
	t.Fatalf("%s: no boat", g)
	return nil
}

func TestEveryGradeByKeyboard(t *testing.T) {
	sizes := map[string][2]float32{"en": {1280, 800}, "de": {853, 533}}
	for language, size := range sizes {
		for _, g := range practice.Grades {
			tools := playable(t, g)
			s := session(t)
			l := sit(t, language, s, size[0], size[1])
			l.fits("before")
			l.tab(l.learner)
			l.key(fyne.KeyReturn)
			test.Type(l.learner, "Ann")
			l.choose(l.grade, indexOf(practice.Grades, g))
			l.choose(l.number, tools.Task.Number-1)
			l.tab(l.begin)
			l.key(fyne.KeyReturn)
			l.fits("begun")
			half := len(tools.Acts) / 2
			for tools.Acts[half].Gauge == nil {
				half++
			}
			l.plays(tools.Acts[:half])

			// The program goes down, and goes on in the other half.
			s = NewSession(s.File, "")
			l = sit(t, language, s, size[0], size[1])
			if len(s.work.Acts) != half || s.Learner != "Ann" || strings.Count(l.log.Text, "\n")+1 != half {
				t.Fatalf("%s: went on with %d acts of %d, %q", g, len(s.work.Acts), half, s.Learner)
			}
			l.plays(tools.Acts[half:])
			l.fits("judged")
			d := s.debrief
			if d == nil || !d.Passed || !d.CauseFound || len(d.Mistakes) > 0 || d.Yours != d.Tools {
				t.Errorf("%s, %s: %+v", language, g, d)
			}
			all, _, err := s.File.All()
			if err != nil || len(all) != 1 || all[0].Learner != "Ann" || len(all[0].Acts) != len(tools.Acts) {
				t.Errorf("kept %d results, %v", len(all), err)
			}
			if u, _ := s.File.GoOn(); u != nil {
				t.Error("what was handed over still goes on")
			}
		}
	}
}

// Handing over wants a cause, the rows of the table are all results, and a page made
// anew while the work is judged judges it.
func TestHandingOverAndTheTable(t *testing.T) {
	l := begun(t)
	s, w := l.s, l.s.work
	l.tab(l.sheet.over)
	l.key(fyne.KeyReturn)
	if w.Ended() || l.told.Text != l.say(words.PracticeSayCause, nil) {
		t.Errorf("handed over without a cause: %q", l.told.Text)
	}
	if err := s.do(practice.Act{HandOver: &practice.HandOver{Cause: practice.EngineAlone}}); err != nil {
		t.Fatal(err)
	}
	if u, _ := s.File.GoOn(); u == nil || len(u.Acts) != 0 {
		t.Error("what is not judged yet cannot be handed over again")
	}
	l = sit(t, "de", s, 853, 533)
	if s.debrief == nil || s.debrief.Passed || l.end.verdict.Text == "" {
		t.Errorf("not judged: %+v", s.debrief)
	}
	file := filepath.Join(t.TempDir(), exportName)
	l.writeResults(file)
	data, err := os.ReadFile(file)
	if err != nil || strings.Count(string(data), "\n") != 2 || !strings.Contains(string(data), "Ann,2026-05-14T09:00:00Z,tilt only,1,false") {
		t.Errorf("%q, %v", data, err)
	}
}

// A boat being worked on is not left without a question.
func TestABoatIsLeftAfterAQuestion(t *testing.T) {
	l := begun(t)
	s, w := l.s, l.s.work
	l.tab(l.sheet.hold)
	l.key(fyne.KeyReturn)
	l.tab(l.begin)
	l.key(fyne.KeyReturn)
	if s.work != w || l.win.Canvas().Overlays().Top() == nil {
		t.Error("left without a question")
	}
}

// The buttons of the clock read, or wipe, as is chosen.
func TestTheButtonsOfTheClock(t *testing.T) {
	l := begun(t)
	w := l.s.work
	l.sheet.gauge()
	test.Tap(l.sheet.clock[3])
	l.sheet.wipes.SetSelectedIndex(1)
	test.Tap(l.sheet.clock[3])
	if n := len(w.Acts); n != 3 || w.Acts[1].Read == nil || w.Acts[2].Clean == nil || w.Acts[2].Clean.ClockDeg != 90 {
		t.Errorf("did %+v", w.Acts)
	}
}
