package main

// This file is the verb lessons: list and show what can be learnt.

import (
	"fmt"
	"os"
	"strings"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/report/lesson"
)

type lessonsCmd struct {
	List lessonsListCmd `cmd:"" default:"1" help:"${help_lessons_list}"`
	Show lessonsShowCmd `cmd:"" help:"${help_lessons_show}"`
}

type lessonsListCmd struct{}

// Run lists them.
func (c *lessonsListCmd) Run(e *env) error {
	for _, name := range assets.LessonNames() {
		l, report := openLesson(name)
		if err := report.Err(); err != nil {
			return err
		}
		e.say(words.LessonLine, words.Args{"Name": name, "Title": l.Title.In(speaker.Say(words.LessonLanguage, nil)), "Hull": l.Hull.Name})
	}
	return nil
}

type lessonsShowCmd struct {
	Lesson string `arg:"" help:"${help_lesson}"`
	Answer bool   `help:"${help_lesson_answer}"`
}

// Run shows one.
func (c *lessonsShowCmd) Run(e *env) error {
	l, report := openLesson(c.Lesson)
	if err := report.Err(); err != nil {
		return err
	}
	in := speaker.Say(words.LessonLanguage, nil)
	fmt.Fprintln(e.stdout, l.Title.In(in))
	for i, w := range l.Watch {
		fmt.Fprintf(e.stdout, "%d. %s\n", i+1, w.Text.In(in))
	}
	e.say(words.LessonQuestion, words.Args{"Text": l.Question.Text.In(in)})
	for i, choice := range l.Question.Choices {
		fmt.Fprintf(e.stdout, "   %d. %s\n", i+1, choice.Text.In(in))
	}
	if !c.Answer {
		return nil
	}
	_, value, err := l.Right()
	if err != nil {
		return err
	}
	e.say(words.LessonAnswer, words.Args{"Value": l.Question.Of.Said(speaker, readerUnits(false), value), "Why": l.Question.Why.In(in)})
	return nil
}

// openLesson reads a lesson file, or a built-in one by its name.
func openLesson(nameOrPath string) (lesson.Lesson, hulls.Report) {
	data, err := readFile(nameOrPath, lesson.MaxFileBytes)
	if err != nil {
		var ok bool
		if data, ok = assets.Lesson(nameOrPath); !ok || !os.IsNotExist(err) {
			return lesson.Lesson{}, hulls.Report{Refusals: []hulls.Fault{{File: nameOrPath, Value: speaker.Say(words.LessonNone, nil),
				Limit: speaker.Say(words.LessonKnown, words.Args{"Known": strings.Join(assets.LessonNames(), ", ")}), Mend: speaker.Say(words.NoReadMend, nil)}}}
		}
	}
	return lesson.Check(data, nameOrPath, func(name string) (hulls.Hull, error) {
		h, _, err := openHull(name)
		return h, err
	})
}
