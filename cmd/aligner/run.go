package main

// This file reads the command line and hands it to its verb.

import (
	"fmt"
	"io"
	"strings"

	"github.com/alecthomas/kong"

	"aligner/assets/words"
)

// commands are the verbs. Each is a struct of its flags with a method
// Run(*env) error, in a file of its own.
type commands struct {
	Logbook string `placeholder:"FILE" help:"${help_logbook}"`
	Lang    string `placeholder:"LANGUAGE" help:"${help_lang}"`

	Predict  predictCmd  `cmd:"" help:"${help_predict}"`
	Window   windowCmd   `cmd:"" default:"withargs" hidden:"" help:"${help_window}"`
	Picture  pictureCmd  `cmd:"" help:"${help_picture}"`
	Estimate estimateCmd `cmd:"" help:"${help_estimate}"`
	Plan     planCmd     `cmd:"" help:"${help_plan}"`
	Sheet    sheetCmd    `cmd:"" help:"${help_sheet}"`
	Problem  problemCmd  `cmd:"" name:"report-problem" help:"${help_problem}"`
	Lessons  lessonsCmd  `cmd:"" help:"${help_lessons}"`
	Practice practiceCmd `cmd:"" help:"${help_practice}"`
	Why      whyCmd      `cmd:"" help:"${help_why}"`
	Trouble  troubleCmd  `cmd:"" help:"${help_trouble}"`
	Check    checkCmd    `cmd:"" help:"${help_check}"`
	Hulls    hullsCmd    `cmd:"" help:"${help_hulls}"`
	Visits   visitsCmd   `cmd:"" help:"${help_visits}"`
}

// env is what a verb may touch besides its flags and files.
type env struct {
	stdout, stderr io.Writer
}

// say prints a sentence for people.
func (e *env) say(id words.ID, args words.Args) { fmt.Fprintln(e.stdout, speaker.Say(id, args)) }

// warn prints one line to the side.
func (e *env) warn(line string) { fmt.Fprintln(e.stderr, line) }

// leave carries the exit code of --help out of the parser, which would
// otherwise go on.
type leave int

// run runs one command line and returns its exit code.
func run(args []string, stdout, stderr io.Writer) (code int) {
	e := &env{stdout: stdout, stderr: stderr}
	defer func() {
		if r := recover(); r != nil {
			c, ok := r.(leave)
			if !ok {
				panic(r)
			}
			code = int(c)
		}
	}()
	if err := chooseLanguage(args); err != nil {
		return e.exit(err)
	}
	verbs := &commands{}
	parser, err := kong.New(verbs,
		kong.Name("aligner"),
		kong.Description(speaker.Say(words.HelpProgram, nil)),
		kong.Writers(stdout, stderr),
		kong.Exit(func(code int) { panic(leave(code)) }),
		kong.Bind(e),
		helpWords(),
	)
	if err != nil {
		return e.exit(fmt.Errorf("command line grammar: %w", err))
	}
	ctx, err := parser.Parse(args)
	if err != nil {
		return e.exit(usageError{err})
	}
	logbookFile = verbs.Logbook
	return e.exit(ctx.Run())
}

// helpWords lets struct tags take their help from the words: help:"${help_x}".
func helpWords() kong.Vars {
	vars := kong.Vars{}
	for _, id := range append(logbookHelp, []words.ID{
		words.HelpJSON, words.HelpLang, words.HelpCheck, words.HelpCheckFile,
		words.HelpWindow, words.HelpPicture, words.HelpPictureOut, words.HelpPictureView, words.HelpPictureTimes,
		words.HelpPictureWidth, words.HelpPictureHeight, words.HelpPictureDark,
		words.HelpPictureOf, words.HelpPictureQuick, words.HelpPictureAsGauged, words.HelpPictureGaugedNut, words.HelpPictureGaugedSlide, words.HelpPicturePlanNut, words.HelpPicturePlanSlide, words.HelpPictureLooking,
		words.HelpPredict, words.HelpPredictNut, words.HelpPredictSlide, words.HelpPredictHeld, words.HelpPredictLever,
		words.HelpPredictAfloat, words.HelpPredictThrust, words.HelpPredictTorque, words.HelpPredictApart,
		words.HelpPredictPull, words.HelpMetric,
		words.HelpEstimate, words.HelpVisit, words.HelpPlan, words.HelpPlanWanted,
		words.HelpProblem, words.HelpProblemVisit, words.HelpProblemOut,
		words.HelpSheet, words.HelpSheetKind, words.HelpSheetOut, words.HelpSheetPaper, words.HelpSheetLooking, words.HelpSheetUntil,
		words.HelpLessons, words.HelpLessonsList, words.HelpLessonsShow, words.HelpLesson, words.HelpLessonAnswer,
		words.HelpPractice, words.HelpPracticeList, words.HelpPracticeResults, words.HelpPracticeOf, words.HelpPracticeRows,
		words.HelpWhy, words.HelpWhyNut, words.HelpWhySlide,
		words.HelpTrouble, words.HelpTroubleOf, words.HelpTroubleSymptom, words.HelpTroubleTest,
		words.HelpHulls, words.HelpHullsList, words.HelpHullsShow, words.HelpHull,
	}...) {
		vars[string(id)] = speaker.Say(id, nil)
	}
	return vars
}

// oneLine keeps a message on one line whatever was typed.
func oneLine(s string) string {
	return strings.Map(func(r rune) rune {
		if r < ' ' || r == 0x7f {
			return ' '
		}
		return r
	}, s)
}
