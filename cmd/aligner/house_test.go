package main

// This file keeps the house: who may import whom, and how long a file may be.

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

const top = "../.."

// goFiles calls back with every Go file's path from the top, slashes forward.
func goFiles(t *testing.T, each func(path string)) {
	t.Helper()
	n := 0
	err := filepath.WalkDir(top, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if name := d.Name(); d.IsDir() && path != top && (strings.HasPrefix(name, ".") || name == "bin") {
			return fs.SkipDir
		}
		if strings.HasSuffix(path, ".go") {
			rel, err := filepath.Rel(top, path)
			if err != nil {
				return err
			}
			n++
			each(filepath.ToSlash(rel))
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if n < 20 {
		t.Fatalf("found only %d Go files: the walk is broken", n)
	}
}

// mayImport says what of this module each part of the house may import, by
// longest prefix. Tests may import anything.
var mayImport = map[string][]string{
	"hulls":                  {},
	"hulls/visit":            {"hulls"},
	"hulls/visit/builtin":    {"hulls", "assets"},
	"hulls/logbook":          {"hulls"},
	"hulls/fields":           {"hulls"},
	"kinematics":             {"hulls", "kinematics/shaftline"},
	"kinematics/shaftline":   {},
	"kinematics/gauge":       {"hulls", "kinematics"},
	"kinematics/plan":        {"hulls", "kinematics"},
	"kinematics/plan/search": {},
	"kinematics/response":    {"hulls", "kinematics"},
	"kinematics/sensitivity": {"hulls", "kinematics"},
	"kinematics/why":         {"hulls", "kinematics"},
	"kinematics/turn":        {"hulls", "kinematics"},
	"kinematics/rounds":      {"hulls", "kinematics", "assets"},
	"kinematics/practice":    {"hulls", "kinematics", "assets"},
	"scene":                  {"hulls", "kinematics", "scene"},
	"scene/render":           {"assets"},
	"report":                 {"hulls", "kinematics", "scene", "assets", "report"},
	"assets":                 {"assets"},
	"cmd/aligner":            {"hulls", "kinematics", "scene", "report", "assets", "cmd/aligner"},
}

// rulesFor finds the entry of mayImport for a file.
func rulesFor(path string) (part string, allowed []string) {
	for dir := filepath.ToSlash(filepath.Dir(path)); dir != "."; dir = filepath.ToSlash(filepath.Dir(dir)) {
		if allowed, ok := mayImport[dir]; ok {
			return dir, allowed
		}
	}
	return "", nil
}

func TestWhoMayImportWhom(t *testing.T) {
	goFiles(t, func(path string) {
		if strings.HasSuffix(path, "_test.go") {
			return
		}
		part, allowed := rulesFor(path)
		if part == "" {
			t.Errorf("%s: lies where the house has no room for it", path)
			return
		}
		f, err := parser.ParseFile(token.NewFileSet(), filepath.Join(top, path), nil, parser.ImportsOnly)
		if err != nil {
			t.Error(err)
			return
		}
		for _, spec := range f.Imports {
			name := strings.Trim(spec.Path.Value, `"`)
			own, ok := strings.CutPrefix(name, "aligner/")
			if ok && own != part && !strings.HasPrefix(own, part+"/") && !underAny(own, allowed) {
				t.Errorf("%s imports %s: %s may import %v only", path, name, part, allowed)
			}
			if strings.HasPrefix(name, "fyne.io/") && !strings.HasPrefix(path, "cmd/aligner/") {
				t.Errorf("%s imports %s: the window's library stays under cmd/aligner", path, name)
			}
			if name == "fyne.io/fyne/v2/app" && filepath.ToSlash(filepath.Dir(path)) != "cmd/aligner" {
				t.Errorf("%s imports %s: only the program itself needs a real window", path, name)
			}
		}
	})
}

func underAny(path string, parts []string) bool {
	for _, p := range parts {
		if path == p || strings.HasPrefix(path, p+"/") {
			return true
		}
	}
	return false
}

// mostLines is where a file surely holds more than one idea.
const mostLines = 400

func TestFilesAreShortAndSayWhatTheyHold(t *testing.T) {
	goFiles(t, func(path string) {
		data, err := os.ReadFile(filepath.Join(top, path))
		if err != nil {
			t.Error(err)
			return
		}
		text := string(data)
		if n := strings.Count(text, "\n"); n > mostLines {
			t.Errorf("%s: %d lines, at most %d", path, n, mostLines)
		}
		// A comment above or right below the package clause.
		clause := strings.Index("\n"+text, "\npackage ")
		above := strings.HasPrefix(text, "//") && clause > 0
		_, rest, _ := strings.Cut(text[max(clause, 0):], "\n")
		if !above && !strings.HasPrefix(strings.TrimLeft(rest, "\n"), "//") {
			t.Errorf("%s: does not open by saying what it holds", path)
		}
	})
}

// topEntries are what the top holds: the house, and what builds it. What git is told
// to ignore may stand there too.
var topEntries = []string{"cmd", "scene", "kinematics", "hulls", "report", "assets", "testdata",
	"README.md", "DEVELOPERS.md", "LICENSE", "Makefile", "FyneApp.toml", "go.mod", "go.sum"}

func TestTheTopHoldsTheHouseAlone(t *testing.T) {
	entries, err := os.ReadDir(top)
	if err != nil {
		t.Fatal(err)
	}
	ignored, err := os.ReadFile(filepath.Join(top, ".gitignore"))
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		name := e.Name()
		if strings.HasPrefix(name, ".") || slices.Contains(topEntries, name) || slices.Contains(strings.Fields(strings.ReplaceAll(string(ignored), "/", " ")), name) {
			continue
		}
		t.Errorf("%s stands at the top: it belongs into one of %v", name, topEntries)
	}
}
