package lesson

// This file is a lesson as it is read.

import (
	"aligner/hulls"
	"aligner/kinematics"
)

// Format is the value of a lesson file's "format" key; Ext ends its name.
const (
	Format = "lesson/1"
	Ext    = ".lesson.json"
)

// Text is a text by language ("en", "de").
type Text map[string]string

// In is the text in a language, else in English.
func (t Text) In(language string) string {
	if s := t[language]; s != "" {
		return s
	}
	return t["en"]
}

// Lesson is one.
type Lesson struct {
	Title    Text
	HullName string
	Hull     hulls.Hull
	Watch    []Scene
	Question Question
}

// Scene is one thing to watch.
type Scene struct {
	Text  Text
	State kinematics.State
	View  string  // of package scene; "": the whole boat
	Times float64 // movement larger than life; 0: 100
}

// Question is asked at the end.
type Question struct {
	Text      Text
	Of        Asked
	Tolerance float64  // of a number, in the quantity's unit; with Choices: not used
	Choices   []Choice // none: a number is asked for
	Why       Text     // said with the answer
}

// Choice is one answer to choose: right where the value worked out is at least From
// and less than Below, in the quantity's unit; of where the gap opens, From may be
// more than Below: through 12.
type Choice struct {
	Text        Text
	From, Below float64 // left out: without bound
}
