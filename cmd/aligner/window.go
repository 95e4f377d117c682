package main

// This file opens the window: what the program does when no verb is given. It
// alone needs a real screen.

import (
	"os"
	"path/filepath"
	"runtime"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/cmd/aligner/window"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/report/learners"
)

// windowCmd is the program without a verb, or with a file alone.
type windowCmd struct {
	Hull string `arg:"" optional:"" help:"${help_hull}"`
}

// appID names the program to the system, for its preferences.
const appID = "aligner.drive.line"

// Run opens the window on a boat or a visit: the one named, or the last one, or the
// first. Without a screen it says so and writes a picture.
func (c *windowCmd) Run(e *env) error {
	seen, err := c.named()
	if err != nil {
		return err
	}
	if !hasScreen() {
		e.warn(speaker.Say(words.NoScreen, nil))
		name := c.Hull
		if name == "" {
			name = "Eider"
		}
		picture := pictureCmd{Hull: name, Held: "seated", View: "whole", Looking: "forward", Times: 100, Width: 1280, Height: 800,
			Out: filepath.Join(os.TempDir(), "aligner.png")}
		return picture.Run(e)
	}
	return openWindow(c.Hull, seen)
}

// named is the visit that was named, a file or a built-in one; nil where it is a boat,
// which is looked for first, or nothing. A visit of the logbook is opened from the list
// of boats, so that it goes on where it was left.
func (c *windowCmd) named() (*visit.Document, error) {
	if c.Hull == "" {
		return nil, nil
	}
	_, _, notHull := openHull(c.Hull)
	if notHull == nil {
		return nil, nil
	}
	data, err := readFile(c.Hull, visit.MaxFileBytes)
	if _, builtIn := assets.Visit(c.Hull); !builtIn && (err != nil || !isVisit(data)) {
		return nil, notHull
	}
	d, _, err := openVisit(c.Hull)
	return &d, err
}

// hasScreen reports whether a window can be opened at all.
func hasScreen() bool {
	if runtime.GOOS != "linux" {
		return true
	}
	return os.Getenv("DISPLAY") != "" || os.Getenv("WAYLAND_DISPLAY") != ""
}

func openWindow(name string, seen *visit.Document) error {
	a := app.NewWithID(appID)
	window.BeginIn(a.Preferences(), words.In(systemLanguage(os.Getenv)).Language())
	win := a.NewWindow("aligner")
	asked := name != ""
	if !asked {
		name = window.Load(a.Preferences()).Boat
	}
	var h hulls.Hull
	var err error
	if seen != nil {
		name, h = seen.HullName, seen.Hull
	} else if h, _, err = openHull(name); err != nil { // the last boat's file is gone
		name = "Eider"
		if h, _, err = openHull(name); err != nil {
			return err
		}
	}
	w, err := window.New(win, a.Preferences(), name, h, readHull)
	if err != nil {
		return err
	}
	keeper := &logbookKeeper{}
	defer keeper.close()
	var going window.Past
	if !asked { // go on where one was
		going = keeper.latest()
	}
	log := faultLog()
	w.Program, w.Faults = programName(), log
	if book, err := logbookPath(); err == nil {
		w.Learners = learners.Beside(book)
	}
	defer log.Panic()
	w.Keep(keeper, going)
	if languageAsked { // else what the mechanic chose
		w.Speak(speaker.Language())
	}
	if seen != nil {
		w.Show(seen)
	}
	win.SetMaster()
	a.Lifecycle().SetOnStarted(func() { fyne.Do(func() { fitOnScreen(win) }) })
	win.CenterOnScreen()
	win.ShowAndRun()
	return nil
}

// readHull finds a hull and gives its file too.
func readHull(name string) ([]byte, hulls.Hull, error) {
	h, _, err := openHull(name)
	if err != nil {
		return nil, h, err
	}
	return hulls.Encode(h), h, nil
}
