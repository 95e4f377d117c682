package lessons

// This file goes through every lesson by keyboard, in both languages.

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit/builtin"
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
	if err := os.WriteFile(file, []byte(`{"format": "lesson/1"}`), 0o600); err != nil {
		t.Fatal(err)
	}
	p.Open(file)
	if !strings.Contains(p.result.Text, "own.lesson.json") {
		t.Errorf("told %q", p.result.Text)
	}
}
