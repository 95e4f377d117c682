package lesson

// This file answers every lesson by the program, and refuses bad ones.

import (
	"math"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/hulls/visit/builtin"
)

func read(t *testing.T, name string) Lesson {
	t.Helper()
	data, ok := assets.Lesson(name)
	if !ok {
		t.Fatalf("no lesson %q", name)
	}
	l, r := Check(data, name, builtin.Find)
	if err := r.Err(); err != nil {
		t.Fatal(err)
	}
	return l
}

// The right answer of each lesson is worked out, and is the one a teacher would give;
// these were put down before the program was asked.
func TestEveryLessonIsAnswered(t *testing.T) {
	right := map[string]string{
		"sag": "more than 4 mm", "angle-and-offset": "it opens the top", "one-nut": "it carries more",
		"run-out": "at 6", "leaves": "1.5 goes, 2 stops", "tightening": "it opens the top", "held": "a bend of some newton metres", "v-drive": "it rises", "target": "by a part of what is let pass",
	}
	if len(assets.LessonNames()) != 10 {
		t.Errorf("%d lessons", len(assets.LessonNames()))
	}
	for _, name := range assets.LessonNames() {
		l := read(t, name)
		choice, value, err := l.Right()
		if err != nil {
			t.Fatal(err)
		}
		t.Logf("%s: %.2f %s", name, value, Quantities[l.Question.Of.Quantity])
		for _, text := range []Text{l.Title, l.Question.Text, l.Question.Why, l.Watch[0].Text} {
			if text["en"] == "" || text["de"] == "" {
				t.Errorf("%s lacks a text: %v", name, text)
			}
		}
		if len(l.Question.Choices) == 0 {
			for off, want := range map[float64]bool{0: true, 0.9: true, 1.1: false, -1.1: false} {
				if ok, err := l.RightNumber(value + off*l.Question.Tolerance); err != nil || ok != want {
					t.Errorf("%s: %v of the tolerance off: %v, %v", name, off, ok, err)
				}
			}
			continue
		}
		if got := l.Question.Choices[choice].Text["en"]; got != right[name] {
			t.Errorf("%s: %q (%.2f), want %q", name, got, value, right[name])
		}
	}
}

// On another hull the answer is another: nothing is kept in the file.
func TestTheHullDecides(t *testing.T) {
	l := read(t, "v-drive")
	onV, was, err := l.Right()
	if err != nil {
		t.Fatal(err)
	}
	l.Hull = builtin.Hull(t, "Kittiwake")
	inLine, is, err := l.Right()
	if err != nil || onV == inLine || was*is >= 0 {
		t.Errorf("on a V-drive %d (%.3f), in-line %d (%.3f), %v", onV, was, inLine, is, err)
	}
}

// Bad lessons are refused in one line that says where.
func TestBadLessons(t *testing.T) {
	good, _ := assets.Lesson("twist")
	for _, c := range []struct{ old, new, want string }{
		{`"lesson/1"`, `"lesson/2"`, "format"},
		{`"hull": "Kittiwake"`, `"hull": "Albatross"`, "built-in hull"},
		{`"fore port": 3`, `"bow port": 3`, "a mount of Kittiwake"},
		{`"quantity": "change of load"`, `"quantity": "luck"`, "one of"},
		{`"tolerance": 5`, `"tolerance": 0`, "more than 0"},
		{`"watch": [`, `"look": [`, "unknown key"},
		{`"view": "engine"`, `"view": "nowhere"`, "one of whole"},
		{`"tolerance": 5`, `"tolerance": 5, "choices": [{"text": {"en": "x"}}]`, "beside choices"},
		{`"title"`, `"title"`, ""},
		{`"tolerance": 5`, `"tolerance": "five"`, "number"},
	} {
		data := strings.Replace(string(good), c.old, c.new, 1)
		_, r := Check([]byte(data), "bad.lesson.json", builtin.Find)
		err := r.Err()
		switch {
		case c.want == "":
			if err != nil {
				t.Errorf("unchanged: %v", err)
			}
		case err == nil || !strings.Contains(err.Error(), c.want) || strings.Contains(err.Error(), "\n"):
			t.Errorf("%s: %v", c.new, err)
		}
	}
}

// A question with no right choice, or two, is refused.
func TestOneRightChoice(t *testing.T) {
	data, _ := assets.Lesson("v-drive")
	for old, new := range map[string]string{`"from": 0.02`: `"from": 50`, `"below": -0.02`: `"below": 50`} {
		_, r := Check([]byte(strings.Replace(string(data), old, new, 1)), "x", builtin.Find)
		if err := r.Err(); err == nil || !strings.Contains(err.Error(), "right") {
			t.Errorf("%s: %v", new, err)
		}
	}
}

func FuzzCheck(f *testing.F) {
	for _, name := range assets.LessonNames() {
		data, _ := assets.Lesson(name)
		f.Add(data)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		l, r := Check(data, "fuzz", builtin.Find)
		if r.Err() != nil {
			return
		}
		if _, v, err := l.Right(); err != nil || math.IsNaN(v) {
			t.Errorf("accepted, but %v, %v", v, err)
		}
	})
}
