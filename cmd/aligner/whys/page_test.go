package whys

// This file goes through the page by keyboard.

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics/why"
	"aligner/report/say"
)

func opened(t *testing.T, language string) *Page {
	t.Helper()
	test.NewTempApp(t)
	w := test.NewTempWindow(t, nil)
	w.Resize(fyne.NewSize(1280, 800))
	p := New(page.Desk{Speaker: words.In(language), Looks: drawn.Looks{TextSize: 1}, Window: w, Back: func() {},
		Key: func(*fyne.KeyEvent) bool { return false }}, builtin.Hull(t, "Kittiwake"), builtin.Hull(t, "Avocet"), false)
	w.SetContent(p.Content())
	t.Cleanup(p.Close)
	return p
}

func press(p *Page, keys ...fyne.KeyName) {
	for _, k := range keys {
		p.TypedKey(&fyne.KeyEvent{Name: k})
	}
}

func TestStepByStepOnBothBoats(t *testing.T) {
	p := opened(t, "en")
	if strings.Contains(p.sides[0].words.Text, "1.") || p.sides[0].picture.State.Now != nil {
		t.Error("something is told before it was asked for")
	}
	press(p, fyne.KeySpace, fyne.KeySpace, fyne.KeySpace, fyne.KeySpace)
	for i, s := range p.sides {
		if !strings.Contains(s.words.Text, "4. So the coupling") || len(s.picture.State.Pointers) == 0 || s.picture.State.Now == nil {
			t.Errorf("boat %d: %q, arrows %v", i, s.words.Text, s.picture.State.Pointers)
		}
	}
	// The same nut sinks the coupling of an in-line drive and lifts a V-drive's.
	if !strings.Contains(p.sides[0].words.Text, "the coupling sinks") || !strings.Contains(p.sides[1].words.Text, "the coupling rises") {
		t.Errorf("%q\n%q", p.sides[0].words.Text, p.sides[1].words.Text)
	}
	for range 10 {
		press(p, fyne.KeySpace)
	}
	if !strings.Contains(p.sides[0].words.Text, "Together") {
		t.Errorf("%q", p.sides[0].words.Text)
	}
	press(p, fyne.KeyHome)
	if p.step != 0 || p.sides[0].picture.State.Now != nil {
		t.Error("not back at the start")
	}
}

func TestAnotherNutAndTheTable(t *testing.T) {
	p := opened(t, "de")
	press(p, fyne.KeyDown)
	if p.at != 1 || p.choose.SelectedIndex() != 1 {
		t.Errorf("at %d", p.at)
	}
	press(p, fyne.KeyUp, fyne.KeyUp) // round to the last slide
	if !p.moves[p.at].Slide {
		t.Errorf("at %d", p.at)
	}
	p.TypedRune('t')
	if !p.told.Visible() || p.steps.Visible() {
		t.Error("no table")
	}
	press(p, fyne.KeySpace)
	if p.told.Visible() || !p.steps.Visible() {
		t.Error("the table stays")
	}
}

// texts are the words in a tree of objects, in their order.
func texts(o fyne.CanvasObject) (all []string) {
	switch o := o.(type) {
	case *widget.Label:
		all = append(all, o.Text)
	case *fyne.Container:
		for _, c := range o.Objects {
			all = append(all, texts(c)...)
		}
	case *container.Scroll:
		all = texts(o.Content)
	}
	return all
}

// A row of the table is what the model does at 12, 3, 6 and 9: opposite hours are
// opposite, and the numbers are those of the table of package why.
func TestTheTableHasColumns(t *testing.T) {
	p := opened(t, "en")
	p.TypedRune('t')
	all := texts(p.told)
	at := slices.Index(all, "fore port up 1 flat")
	if at < 0 || at+6 >= len(all) {
		t.Fatalf("%q", all)
	}
	rows, err := why.Table(&p.sides[0].hull, p.sides[0].held, false)
	if err != nil {
		t.Fatal(err)
	}
	i := slices.IndexFunc(rows, func(r why.Row) bool { return !r.Slide && len(r.Mounts) == 1 && r.Mounts[0] == 0 })
	for k, want := range []float64{rows[i].Change[0], rows[i].Change[1], -rows[i].Change[0], -rows[i].Change[1]} {
		text := strings.NewReplacer("\u2212", "-", "+", "").Replace(all[at+1+k])
		got, err := strconv.ParseFloat(text, 64)
		if err != nil || math.Abs(got*say.MMPerThou-want) > 0.0051*say.MMPerThou {
			t.Errorf("column %d: %q, want %.4f mm", k, all[at+1+k], want)
		}
	}
	if text := strings.Join(all, "\n"); strings.Contains(text, "[") || strings.Contains(text, "<no value>") {
		t.Errorf("%q", text)
	}
}

// Step by step the picture is built up: the nut with nothing moved, the engine moved
// with the shaft where it was, the shaft straight with it, then all of it; at each the
// arrows of what is new.
func TestThePictureIsBuiltUp(t *testing.T) {
	p := opened(t, "en")
	s := p.sides[0]
	st := &s.picture.State
	front := func() float64 { return st.Now.Shaft[len(st.Now.Shaft)-1].Z }
	press(p, fyne.KeySpace)
	if st.Now.TranslationMM != s.before.TranslationMM || len(st.Turns) != 1 || len(st.Pointers) != len(s.hull.Mounts) {
		t.Errorf("the nut: engine moved by %v, %d turns, %d arrows", st.Now.TranslationMM, len(st.Turns), len(st.Pointers))
	}
	press(p, fyne.KeySpace)
	was := s.before.Shaft[len(s.before.Shaft)-1].Z
	if st.Now.TranslationMM == s.before.TranslationMM || front() != was || st.Axis == nil || len(st.Pointers) != 1 {
		t.Errorf("the line: engine %v, shaft %v, axis %v", st.Now.TranslationMM, front()-was, st.Axis)
	}
	press(p, fyne.KeySpace, fyne.KeySpace, fyne.KeySpace) // tilt, coupling, stick
	end := s.endMM()
	if math.Abs(front()-was-end[1]) > 1e-9 {
		t.Errorf("the stick's end went %v, the coupling took it by %v", front()-was, end[1])
	}
	bearing := slices.Index(s.model.StationsMM(), -s.why.FirstBearingMM)
	if bearing < 0 || st.Now.Shaft[bearing].Z != s.before.Shaft[bearing].Z {
		t.Error("the stick moved in its bearing")
	}
	for range 3 {
		press(p, fyne.KeySpace)
	}
	if front() != s.after.Shaft[len(s.after.Shaft)-1].Z || len(st.Pointers) != 4 {
		t.Errorf("all together: shaft's end %v, %d arrows", front(), len(st.Pointers))
	}
}
