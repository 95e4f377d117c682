package lessons

// This file goes through every lesson by keyboard, in both languages.

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit/builtin"
	"aligner/scene"
)

func opened(t *testing.T, language string) *Page {
	t.Helper()
	test.NewTempApp(t)
	w := test.NewTempWindow(t, nil)
	w.Resize(fyne.NewSize(1280, 800))
	p := New(page.Desk{Speaker: words.In(language), Looks: drawn.Looks{TextSize: 1, NoMotion: true}, Window: w, Back: func() {},
		Key: func(*fyne.KeyEvent) bool { return false }}, builtin.Find)
	w.SetContent(p.Content())
	w.Canvas().Focus(p.Focus())
	t.Cleanup(p.Close)
	return p
}

func press(p *Page, keys ...fyne.KeyName) {
	for _, k := range keys {
		p.TypedKey(&fyne.KeyEvent{Name: k})
	}
}

func TestEveryLessonByKeys(t *testing.T) {
	for _, language := range []string{"en", "de"} {
		p := opened(t, language)
		if len(p.lessons) != len(assets.LessonNames()) {
			t.Fatalf("%d lessons", len(p.lessons))
		}
		for i := range p.lessons {
			l := &p.lessons[i]
			if p.at != i || p.text.Text != l.Watch[0].Text.In(language) {
				t.Fatalf("at lesson %d: %q", p.at, p.text.Text)
			}
			for range l.Watch {
				press(p, fyne.KeySpace)
			}
			right, value, err := l.Right()
			if err != nil || !p.asking() || p.text.Text != l.Question.Text.In(language) {
				t.Fatalf("%s: %v, %q", l.Title["en"], err, p.text.Text)
			}
			if right >= 0 {
				wrong := (right + 1) % len(l.Question.Choices)
				press(p, fyne.KeyName(fmt.Sprint(wrong+1)))
				if !strings.HasPrefix(p.result.Text, p.say(words.LessonWrong, words.Args{"Value": "X"})[:5]) {
					t.Errorf("%s: a wrong choice: %q", l.Title["en"], p.result.Text)
				}
				press(p, fyne.KeyName(fmt.Sprint(right+1)))
			} else {
				p.answer.SetText("")
				test.Type(p.answer, strings.Replace(fmt.Sprintf("%.3f", value), ".", ",", 1))
				p.answer.OnSubmitted(p.answer.Text)
			}
			if !strings.HasPrefix(p.result.Text, p.say(words.LessonRight, words.Args{"Value": "X"})[:6]) {
				t.Errorf("%s: %q", l.Title["en"], p.result.Text)
			}
			press(p, fyne.KeyDown)
		}
	}
}

func TestALessonOfOnesOwn(t *testing.T) {
	p := opened(t, "en")
	data, _ := assets.Lesson("sag")
	file := filepath.Join(t.TempDir(), "own.lesson.json")
	if err := os.WriteFile(file, []byte(strings.Replace(string(data), "Sag is not misalignment", "My own", 1)), 0o600); err != nil {
		t.Fatal(err)
	}
	p.Open(file)
	if n := len(p.lessons); p.at != n-1 || p.lessons[n-1].Title["en"] != "My own" {
		t.Errorf("at %d of %d", p.at, n)
	}
	if n := len(p.lessons); p.Dropped([]string{"boat.hull.json"}) || !p.Dropped([]string{file}) || len(p.lessons) != n+1 {
		t.Errorf("dropped: %d lessons, were %d", len(p.lessons), n)
	}
	if err := os.WriteFile(file, []byte(`{"format": "lesson/1"}`), 0o600); err != nil {
		t.Fatal(err)
	}
	p.Open(file)
	if !strings.Contains(p.result.Text, "own.lesson.json") {
		t.Errorf("told %q", p.result.Text)
	}
}

// A nut turned by keys and a mount dragged are answered by the faces; the next step,
// or Home, brings the lesson's own state back, and its answer never changes.
func TestTheLearnersHand(t *testing.T) {
	p := opened(t, "en")
	press(p, fyne.KeyDown, fyne.KeyDown) // one nut
	l := &p.lessons[p.at]
	_, was, err := l.Right()
	if err != nil {
		t.Fatal(err)
	}
	gap := func() float64 { return p.show.result.Gap.SpreadMM() }
	inLesson := gap()
	for range 4 {
		p.TypedRune('+')
	}
	if math.Abs(gap()-inLesson) < 0.01 || !strings.Contains(p.done.Text, "fore port up 4 flats") || !p.undo.Visible() {
		t.Errorf("four flats: %.4f mm, told %q", gap(), p.done.Text)
	}
	press(p, fyne.KeyHome)
	if math.Abs(gap()-inLesson) > 1e-6 || p.undo.Visible() {
		t.Errorf("back: %.4f mm, was %.4f", gap(), inLesson)
	}
	p.TypedRune('m')
	if !strings.Contains(p.done.Text, l.Hull.Mounts[1].Name) {
		t.Errorf("told %q", p.done.Text)
	}
	id := scene.HandleOf(2, scene.Vertical)
	p.TakeHandle(id)
	p.MoveHandle(id, 2.1*l.Hull.Mounts[2].LiftPerStepMM(), false)
	p.LeaveHandle()
	if !strings.Contains(p.done.Text, l.Hull.Mounts[2].Name+" up 2 flats") || math.Abs(gap()-inLesson) < 0.01 {
		t.Errorf("dragged: told %q", p.done.Text)
	}
	if _, is, err := l.Right(); err != nil || is != was {
		t.Errorf("worked out %v, was %v, %v", is, was, err)
	}
	press(p, fyne.KeySpace)
	if p.own.state != nil || math.Abs(gap()-inLesson) > 1e-6 {
		t.Error("the next step is not the lesson's")
	}
}

// No title is cut off, and no button, at the narrowest, in either language.
func TestNothingIsCutOff(t *testing.T) {
	for _, language := range []string{"en", "de"} {
		p := opened(t, language)
		p.desk.Window.Resize(fyne.NewSize(853, 533))
		for i := range p.lessons {
			l := widget.NewLabel(p.lessons[i].Title.In(language))
			if words := strings.Fields(l.Text); len(words) > 0 {
				for _, w := range words { // wrapped between words only
					l.SetText(w)
					if l.MinSize().Width > p.list.Size().Width {
						t.Errorf("%s: %q is wider than the list, %v", language, w, p.list.Size().Width)
					}
				}
			}
		}
		for _, b := range []*page.Button{p.further, p.back} {
			if b.Size().Width < b.MinSize().Width {
				t.Errorf("%s: %q has %v of %v", language, b.Text, b.Size().Width, b.MinSize().Width)
			}
		}
	}
}
