// Package assets holds the files built into the program: the hulls it opens
// without any file of the user's, worked visits to them, and the schemas of its
// file formats. Words people read are in package assets/words.
//
// The built-in boats are invented. Their numbers are such as a yard meets:
// bearings 20 to 55 shaft diameters apart, rubber pressed together by 2 to 4
// mm, every mount and bearing loaded, the first whirling speed above the
// fastest the shaft turns.
//
// The visits are whole jobs on these boats, or on one of their own, one for each
// difficulty. Their
// readings are simulated: a boat whose true numbers differ from the hull's as
// those of a tape measure do, read with the leaves named, felt to a quarter of
// a thou.
package assets

import (
	"embed"
	"slices"
	"strings"
)

//go:embed hulls/*.hull.json visits/*.visit.json lessons/*.lesson.json schemas/*.schema.json
var files embed.FS

// HullExt ends the name of every hull file.
const HullExt = ".hull.json"

// hullNames in the order of the list of boats; the first opens first.
var hullNames = []string{"Eider", "Kittiwake", "Avocet", "Wren", "Cormorant", "Bench"}

// HullNames lists the built-in hulls.
func HullNames() []string { return append([]string(nil), hullNames...) }

// Hull gives the file of a built-in hull by its name, capitals or not, with or
// without the file's ending.
func Hull(name string) ([]byte, bool) {
	wanted := strings.TrimSuffix(strings.ToLower(name), HullExt)
	for _, known := range hullNames {
		if strings.ToLower(known) == wanted {
			return read("hulls/" + wanted + HullExt), true
		}
	}
	return nil, false
}

// VisitExt ends the name of every visit file.
const VisitExt = ".visit.json"

// visitNames in the order to learn by; each names its difficulty.
var visitNames = []string{"first-job", "low-to-port", "v-drive", "crooked-flange", "bent-shaft", "burr", "half-rim",
	"hogging", "stuck-nut", "solid-feet", "dummy", "under-power", "far-apart"}

// VisitNames lists the built-in visits.
func VisitNames() []string { return append([]string(nil), visitNames...) }

// Visit gives the file of a built-in visit by its name, capitals or not, with
// or without the file's ending.
func Visit(name string) ([]byte, bool) {
	wanted := strings.TrimSuffix(strings.ToLower(name), VisitExt)
	if !slices.Contains(visitNames, wanted) {
		return nil, false
	}
	return read("visits/" + wanted + VisitExt), true
}

// LessonExt ends the name of every lesson file.
const LessonExt = ".lesson.json"

// lessonNames in the order to learn by.
var lessonNames = []string{"sag", "angle-and-offset", "one-nut", "twist", "run-out", "leaves", "held", "v-drive", "tightening", "target"}

// LessonNames lists the built-in lessons.
func LessonNames() []string { return append([]string(nil), lessonNames...) }

// Lesson gives the file of a built-in lesson by its name, with or without the file's
// ending.
func Lesson(name string) ([]byte, bool) {
	wanted := strings.TrimSuffix(strings.ToLower(name), LessonExt)
	if !slices.Contains(lessonNames, wanted) {
		return nil, false
	}
	return read("lessons/" + wanted + LessonExt), true
}

// Schema gives the JSON Schema (2020-12) of a file format by its name, such as
// "hull/1".
func Schema(format string) ([]byte, bool) {
	data, err := files.ReadFile("schemas/" + strings.ReplaceAll(format, "/", "-") + ".schema.json")
	return data, err == nil
}

// read reads a file known to be there.
func read(path string) []byte {
	data, err := files.ReadFile(path)
	if err != nil {
		panic("assets: " + err.Error()) // the list of names and the files disagree
	}
	return data
}
