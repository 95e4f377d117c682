package main

// The command line, tried from outside by the scripts in testdata.
//
// Besides the commands of package testscript there are:
//
//	exits CODE PROGRAM ARGS...   run it; it must end with that code
//	edit FROM TO OLD NEW         copy a file with its first OLD replaced by NEW
//	repeat FILE HEAD TEXT N      write HEAD and N times TEXT
//	unpack FILE FOLDER           take a zip file apart
//	refused WHAT OLD NEW WANT    edit kittiwake.hull.json; check must refuse it
//	                             in one line that holds WANT, with exit code 2
//
// In OLD, NEW, HEAD and TEXT, \n is a line break and \xNN a byte; an empty OLD
// stands for the whole file.

import (
	"archive/zip"
	"errors"
	"os"
	"os/exec"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

// TestMain makes the tests of this process speak English wherever they run; scripts
// have an environment of their own.
func TestMain(m *testing.M) {
	if len(os.Args) > 1 && strings.HasPrefix(os.Args[1], "-test.") { // else it is the program, run by a script
		os.Setenv("LC_ALL", "en_US.UTF-8")
	}
	testscript.Main(m, map[string]func(){"aligner": main})
}

func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir: "testdata",
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"unpack": unpack, "exits": exits, "edit": edit, "repeat": repeat, "refused": refused,
		},
	})
}

func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: exits CODE PROGRAM ARGS...")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	if got := exitCode(ts, args[1], args[2:]...); got != want {
		ts.Fatalf("exit code %d, want %d", got, want)
	}
}

func unpack(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: unpack FILE FOLDER")
	}
	z, err := zip.OpenReader(ts.MkAbs(args[0]))
	ts.Check(err)
	defer z.Close()
	ts.Check(os.CopyFS(ts.MkAbs(args[1]), z))
}

// exitCode runs a program and returns its exit code.
func exitCode(ts *testscript.TestScript, program string, args ...string) int {
	err := ts.Exec(program, args...)
	var exit *exec.ExitError
	switch {
	case err == nil:
		return 0
	case errors.As(err, &exit):
		return exit.ExitCode()
	}
	ts.Fatalf("%v", err)
	return -1
}

func edit(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 4 {
		ts.Fatalf("usage: edit FROM TO OLD NEW")
	}
	ts.Check(os.WriteFile(ts.MkAbs(args[1]), []byte(edited(ts, args[0], args[2], args[3])), 0o644))
}

// edited is a file's text after an edit, which must fit.
func edited(ts *testscript.TestScript, from, was, becomes string) string {
	text, was, becomes := ts.ReadFile(from), unescape(was), unescape(becomes)
	if was == "" {
		return becomes
	}
	if !strings.Contains(text, was) {
		ts.Fatalf("%s has no %q", from, was)
	}
	return strings.Replace(text, was, becomes, 1)
}

var escape = regexp.MustCompile(`\\n|\\x[0-9a-f]{2}`)

func unescape(s string) string {
	return escape.ReplaceAllStringFunc(s, func(e string) string {
		text, _ := strconv.Unquote(`"` + e + `"`)
		return text
	})
}

func repeat(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 4 {
		ts.Fatalf("usage: repeat FILE HEAD TEXT N")
	}
	n, err := strconv.Atoi(args[3])
	ts.Check(err)
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), []byte(unescape(args[1])+strings.Repeat(unescape(args[2]), n)), 0o644))
}

func refused(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 4 {
		ts.Fatalf("usage: refused WHAT OLD NEW WANT")
	}
	what, want := args[0], args[3]
	text := edited(ts, "kittiwake.hull.json", args[1], args[2])
	ts.Check(os.WriteFile(ts.MkAbs("bad.hull.json"), []byte(text), 0o644))
	code := exitCode(ts, "aligner", "check", "bad.hull.json")
	out, line := ts.ReadFile("stdout"), ts.ReadFile("stderr")
	switch {
	case code != exitBadInput:
		ts.Fatalf("%s: exit code %d, want %d", what, code, exitBadInput)
	case out != "":
		ts.Fatalf("%s: printed %q as if it were good", what, out)
	case strings.Count(line, "\n") != 1 || !strings.HasPrefix(line, "bad.hull.json: "):
		ts.Fatalf("%s: not one line about the file: %q", what, line)
	case !strings.Contains(line, want):
		ts.Fatalf("%s:\n got %s\nwant %s", what, line, want)
	}
}
