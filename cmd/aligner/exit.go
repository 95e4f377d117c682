package main

// This file says how a command ends.

import (
	"errors"

	"aligner/assets/words"
	"aligner/hulls"
)

// Exit codes.
const (
	exitDone     = 0
	exitAnswer   = 1 // done, and the answer is "outside", "cannot tell yet" or "no such move"
	exitBadInput = 2 // bad input or usage, told in one line
	exitFailed   = 3 // unconverged, or a fault of the program
)

// usageError is a command line that cannot be read.
type usageError struct{ error }

// told ends a command whose lines are printed already.
type told int

func (told) Error() string { return "told already" }

// exit tells an error in one line and picks the code.
func (e *env) exit(err error) int {
	var (
		fault *hulls.Fault
		usage usageError
		code  told
	)
	switch {
	case err == nil:
		return exitDone
	case errors.As(err, &code):
		return int(code)
	case errors.As(err, &fault):
		e.warn(oneLine(speaker.Retell(err.Error())))
		return exitBadInput
	case errors.As(err, &usage):
		e.warn(oneLine(speaker.Say(words.BadUsage, words.Args{"What": err.Error()})))
		return exitBadInput
	}
	faultLog().Note("command", err)
	e.warn(oneLine(speaker.Say(words.Internal, words.Args{"What": err.Error()})))
	return exitFailed
}
