package main

// This file tests the verb picture.

import (
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"aligner/assets"
)

func TestPictureDrawsEveryBoat(t *testing.T) {
	for _, hull := range assets.HullNames() {
		file := filepath.Join(t.TempDir(), "boat.png")
		out, stderr, code := aligner("picture", hull, "-o", file, "--width", "320", "--height", "200")
		if code != exitDone || !strings.Contains(out, "movement x") {
			t.Fatalf("%s: exit %d: %s%s", hull, code, out, stderr)
		}
		f, err := os.Open(file)
		if err != nil {
			t.Fatal(err)
		}
		picture, err := png.Decode(f)
		f.Close()
		if err != nil {
			t.Fatal(err)
		}
		seen := map[any]bool{}
		for y := range 200 {
			for x := range 320 {
				seen[picture.At(x, y)] = true
			}
		}
		if len(seen) < 500 {
			t.Errorf("%s: only %d colours: nothing is drawn", hull, len(seen))
		}
	}
}

func TestPictureSaysWhatCannotBe(t *testing.T) {
	file := filepath.Join(t.TempDir(), "boat.png")
	for _, args := range [][]string{
		{"Eider", "-o", "boat.jpg"},
		{"Eider", "-o", file, "--width", "9"},
		{"Eider", "-o", file, "--times", "0"},
		{"Eider", "-o", file, "--view", "the moon"},
		{"Eider", "-o", filepath.Join(file, "no", "such.png")},
		{"Nosuch", "-o", file},
	} {
		_, stderr, code := aligner(append([]string{"picture"}, args...)...)
		if code != exitBadInput || strings.Count(stderr, "\n") != 1 {
			t.Errorf("%q: exit %d: %s", args, code, stderr)
		}
		if _, err := os.Stat(file); err == nil {
			t.Errorf("%q: refused, yet a file was written", args)
		}
	}
}
