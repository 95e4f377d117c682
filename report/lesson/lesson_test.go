package lesson

// This file answers every lesson by the program, and refuses bad ones.

import (
	"fmt"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
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
		"run-out": "at 6", "leaves": "1.5 goes, 2 stops", "tightening": "it opens the top", "held": "a bend of some newton metres", "v-drive": "it rises", "target": "it closes the top, by about half an allowance of 3 thou",
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

// Round the clock a choice may go through 12; elsewhere its range must have a low end.
func TestARangeThroughTwelve(t *testing.T) {
	data, _ := assets.Lesson("run-out")
	upright := strings.Replace(string(data), `"shaft_turn_deg": 180`, `"shaft_turn_deg": 355`, 1)
	l, r := Check([]byte(upright), "x", builtin.Find)
	if err := r.Err(); err != nil {
		t.Fatal(err)
	}
	if choice, value, err := l.Right(); err != nil || choice != 0 || value < 345 {
		t.Errorf("choice %d at %.1f deg, %v", choice, value, err)
	}
	data, _ = assets.Lesson("leaves")
	_, r = Check([]byte(strings.Replace(string(data), `"from": 2,`, `"from": 4,`, 1)), "x", builtin.Find)
	if err := r.Err(); err == nil || !strings.Contains(err.Error(), "from 4 below 3") {
		t.Errorf("a range from 4 below 3: %v", err)
	}
}

// A German text calls a mount as the picture beside it does.
func TestMountsInGerman(t *testing.T) {
	for _, name := range assets.LessonNames() {
		l := read(t, name)
		all := []Text{l.Question.Text, l.Question.Why}
		for _, w := range l.Watch {
			all = append(all, w.Text)
		}
		for _, text := range all {
			for _, m := range l.Hull.Mounts {
				if strings.Contains(text["de"], m.Name) && words.In("de").Part(m.Name) != m.Name {
					t.Errorf("%s: %q says %s", name, text["de"], m.Name)
				}
				if said := words.In("de").Part(m.Name); strings.Contains(text["en"], m.Name) && !strings.Contains(text["de"], said) {
					t.Errorf("%s: %q does not say %s", name, text["de"], said)
				}
			}
		}
	}
}

// What the lesson of twist gives to reckon with is this boat's.
func TestTwistCanBeReckoned(t *testing.T) {
	l := read(t, "twist")
	i := slices.IndexFunc(l.Hull.Mounts, func(m hulls.Mount) bool { return m.Name == "fore port" })
	load := Asked{Quantity: Load, Mount: "fore port", State: kinematics.State{Held: kinematics.Seated}}
	carried, err := load.Value(&l.Hull)
	if err != nil {
		t.Fatal(err)
	}
	mm, n := 3*l.Hull.Mounts[i].LiftPerStepMM(), l.Hull.Mounts[i].StiffnessNPerMM.Along
	for _, given := range []string{fmt.Sprintf("%.2f mm", mm), fmt.Sprintf("%.0f N for each mm", n), fmt.Sprintf("carried %.0f N", carried)} {
		if !strings.Contains(l.Watch[0].Text["en"]+l.Question.Text["en"], given) {
			t.Errorf("%q is not given", given)
		}
	}
	if ok, err := l.RightNumber(100 * mm * n / carried); err != nil || !ok {
		t.Errorf("reckoned so, %.1f %% is not right", 100*mm*n/carried)
	}
}

// The whole lesson that is shown to teachers is one.
func TestTheLessonInTheDocs(t *testing.T) {
	text, err := os.ReadFile("../../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	_, rest, _ := strings.Cut(string(text), "## Adding a lesson")
	begin := strings.Index(rest, `{"format"`)
	end := strings.Index(rest, "}}}\n")
	if begin < 0 || end < begin {
		t.Fatal("no lesson there")
	}
	l, r := Check([]byte(rest[begin:end+3]), "DEVELOPERS.md", builtin.Find)
	if err := r.Err(); err != nil {
		t.Fatal(err)
	}
	if choice, value, err := l.Right(); err != nil || l.Question.Choices[choice].Text["en"] != "to port" {
		t.Errorf("choice %d at %.1f deg, %v", choice, value, err)
	}
	for name, unit := range Quantities {
		if unit == "deg" {
			unit = "degrees"
		}
		if unit == "%" {
			unit = "per cent"
		}
		if _, table, _ := strings.Cut(rest, "| `quantity`"); !strings.Contains(table, "`"+name+"`") || !strings.Contains(table, unit) {
			t.Errorf("%s in %s is not told", name, unit)
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
