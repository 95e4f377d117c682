package assets

// The built-in files are there, and under their names only.

import (
	"io/fs"
	"strings"
	"testing"
)

func TestHullNamesAndFilesAgree(t *testing.T) {
	found, err := fs.Glob(files, "hulls/*"+HullExt)
	if err != nil {
		t.Fatal(err)
	}
	if len(found) != len(HullNames()) {
		t.Errorf("%d files for %d names: %v", len(found), len(HullNames()), found)
	}
	if HullNames()[0] != "Eider" {
		t.Errorf("the first hull is %s; Eider opens first", HullNames()[0])
	}
	for _, name := range HullNames() {
		for _, spelling := range []string{name, strings.ToLower(name), strings.ToUpper(name), name + HullExt, strings.ToLower(name) + HullExt} {
			data, ok := Hull(spelling)
			if !ok || !strings.Contains(string(data), `"name": "`+name+`"`) {
				t.Errorf("Hull(%q): found %v, or not the hull of that name", spelling, ok)
			}
		}
	}
}

func TestHullUnknown(t *testing.T) {
	for _, name := range []string{"", "heron", "eider.json", "../assets", HullExt} {
		if _, ok := Hull(name); ok {
			t.Errorf("Hull(%q) found something", name)
		}
	}
}

func TestHullNamesIsACopy(t *testing.T) {
	HullNames()[0] = "changed"
	if HullNames()[0] == "changed" {
		t.Error("a caller can change the list")
	}
}

func TestVisitNamesAndFilesAgree(t *testing.T) {
	found, err := fs.Glob(files, "visits/*"+VisitExt)
	if err != nil {
		t.Fatal(err)
	}
	if len(found) != len(VisitNames()) {
		t.Errorf("%d files for %d names: %v", len(found), len(VisitNames()), found)
	}
	seen := map[string]string{}
	for _, name := range VisitNames() {
		for _, spelling := range []string{name, strings.ToUpper(name), name + VisitExt} {
			data, ok := Visit(spelling)
			if !ok || !strings.Contains(string(data), `"format": "visit/1"`) {
				t.Errorf("Visit(%q): found %v, or no visit", spelling, ok)
			}
			if before, twice := seen[string(data)]; twice && before != name {
				t.Errorf("%s and %s are one file", before, name)
			}
			seen[string(data)] = name
		}
	}
}

func TestVisitUnknown(t *testing.T) {
	for _, name := range []string{"", "first", "first-job.json", "../hulls/eider", VisitExt} {
		if _, ok := Visit(name); ok {
			t.Errorf("Visit(%q) found something", name)
		}
	}
}

func TestVisitNamesIsACopy(t *testing.T) {
	VisitNames()[0] = "changed"
	if VisitNames()[0] == "changed" {
		t.Error("a caller can change the list")
	}
}

func TestSchema(t *testing.T) {
	if data, ok := Schema("hull/1"); !ok || !strings.Contains(string(data), "2020-12") {
		t.Error("no schema of hull/1")
	}
	for _, name := range []string{"", "hull/2", "../hulls/eider"} {
		if _, ok := Schema(name); ok {
			t.Errorf("Schema(%q) found something", name)
		}
	}
}
