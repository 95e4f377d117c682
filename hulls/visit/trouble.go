package visit

// This file holds what is wrong with a boat as her people tell it, and the tests
// made to find out why: read, written, judged. What symptoms and tests there are
// is the business of who weighs them; here they are words.

import (
	"fmt"
	"slices"

	"aligner/hulls/strictjson"
)

// Trouble is what was told and what was tried.
type Trouble struct {
	Symptoms []string   // in the order they were told, each once
	Tests    []TestMade // in the order they were made, each once
}

// TestMade is one test.
type TestMade struct {
	Test   string
	Answer string // one of TestAnswers
	Note   string
}

// TestAnswers are the words TestMade.Answer may be.
var TestAnswers = []string{"good", "bad"}

// None reports whether nothing was told or tried.
func (t *Trouble) None() bool { return len(t.Symptoms)+len(t.Tests) == 0 }

func (d *decoder) trouble(n *strictjson.Node, path string) Trouble {
	o := d.Object(n, path, "symptoms?", "tests?")
	t := Trouble{Symptoms: d.names(o, "symptoms")}
	items, path := o.List("tests", mostItems)
	for i, item := range items {
		o := d.Object(item, at(path, i), "test", "answer", "note?")
		t.Tests = append(t.Tests, TestMade{Test: o.Text("test"), Answer: o.OneOf("answer", "", TestAnswers...), Note: o.Text("note")})
	}
	return t
}

func (e *encoder) trouble(key string, t Trouble) {
	e.Open(key, '{')
	if len(t.Symptoms) > 0 {
		e.Texts("symptoms", t.Symptoms)
	}
	if len(t.Tests) > 0 {
		e.Open("tests", '[')
		for i, test := range t.Tests {
			e.Item(i, '{')
			e.Text("test", test.Test)
			e.Text("answer", test.Answer)
			e.OptionalText("note", test.Note)
			e.Close('}')
		}
		e.Close(']')
	}
	e.Close('}')
}

// trouble judges what was told and tried.
func (c *checker) trouble() {
	t := &c.v.Trouble
	for i, s := range t.Symptoms {
		c.word(at("trouble.symptoms", i), s, t.Symptoms[:i])
	}
	var before []string
	for i, test := range t.Tests {
		place := at("trouble.tests", i)
		c.word(place+".test", test.Test, before)
		c.oneOf(place+".answer", test.Answer, TestAnswers...)
		c.note(place+".note", test.Note)
		before = append(before, test.Test)
	}
}

// word holds what is in a list once to a few words.
func (c *checker) word(place, s string, before []string) {
	if s == "" {
		c.refuse(place, strictjson.Quoted(s), "a text", "say it in a few words")
	}
	if slices.Contains(before, s) {
		c.refuse(place, fmt.Sprintf("%s a second time", strictjson.Quoted(s)), "each once", "delete one of the two")
	}
	c.note(place, s)
}

func init() {
	register(
		func() Edit { return &NoteSymptom{} },
		func() Edit { return &AnswerTest{} },
	)
}

// NoteSymptom notes what a boat does, or takes it back.
type NoteSymptom struct {
	Symptom string `json:"symptom"`
	Gone    bool   `json:"gone"`
}

// Name is "note symptom".
func (*NoteSymptom) Name() string { return "note symptom" }

// Words say "noted: knocks".
func (e *NoteSymptom) Words() (string, map[string]any) {
	if e.Gone {
		return "edit_symptom_gone", map[string]any{"Symptom": e.Symptom}
	}
	return "edit_note_symptom", map[string]any{"Symptom": e.Symptom}
}

// Apply notes it.
func (e *NoteSymptom) Apply(d Document) (Document, error) {
	v := d.Visit
	v.Trouble.Symptoms = slices.DeleteFunc(slices.Clone(v.Trouble.Symptoms), func(s string) bool { return s == e.Symptom })
	if !e.Gone {
		v.Trouble.Symptoms = append(v.Trouble.Symptoms, e.Symptom)
	}
	return d.withVisit(v)
}

// AnswerTest says how a test came out; with no answer, that it was not made.
type AnswerTest struct {
	Test   string `json:"test"`
	Answer string `json:"answer"`
	Note   string `json:"note"`
}

// Name is "answer test".
func (*AnswerTest) Name() string { return "answer test" }

// Words say "shake the strut: bad".
func (e *AnswerTest) Words() (string, map[string]any) {
	if e.Answer == "" {
		return "edit_test_gone", map[string]any{"Test": e.Test}
	}
	return "edit_answer_test", map[string]any{"Test": e.Test, "Answer": e.Answer}
}

// Apply says it.
func (e *AnswerTest) Apply(d Document) (Document, error) {
	v := d.Visit
	tests := slices.Clone(v.Trouble.Tests)
	i := slices.IndexFunc(tests, func(t TestMade) bool { return t.Test == e.Test })
	switch made := (TestMade{e.Test, e.Answer, e.Note}); {
	case e.Answer == "" && i >= 0:
		tests = slices.Delete(tests, i, i+1)
	case e.Answer == "":
	case i >= 0:
		tests[i] = made
	default:
		tests = append(tests, made)
	}
	v.Trouble.Tests = tests
	return d.withVisit(v)
}
