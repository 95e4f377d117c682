// Package assets holds the files built into the program: the hulls it opens
// without any file of the user's, and the schemas of its file formats. Words
// people read are in package assets/words.
//
// The built-in boats are invented. Their numbers are such as a yard meets:
// bearings 20 to 55 shaft diameters apart, rubber pressed together by 2 to 4
// mm, every mount and bearing loaded, the first whirling speed above the
// fastest the shaft turns.
package assets

import (
	"embed"
	"strings"
)

//go:embed hulls/*.hull.json schemas/*.schema.json
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
