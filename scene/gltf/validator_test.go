package gltf

// This file holds every built-in hull's file to the glTF validator of the
// Khronos Group (npm: gltf-validator). It runs on Node.js; .ci/setup test, and
// so make test, installs both. Where they are missing this one test is skipped
// and says so; what read_test.go checks by itself is checked all the same.

import (
	"bytes"
	"encoding/json"
	"errors"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"aligner/assets"

	"github.com/go-gl/mathgl/mgl64"
)

// finding is what testdata/validator/check.js prints for a file.
type finding struct {
	File                           string
	Errors, Warnings, Infos, Hints int
	Messages                       []struct{ Code, Message, Pointer string }
}

// validate runs the validator on files.
func validate(t *testing.T, files ...string) []finding {
	t.Helper()
	node, err := exec.LookPath("node")
	if err != nil {
		t.Fatal("the Khronos glTF validator cannot be asked: Node.js is missing; make test installs it")
	}
	const folder = "testdata/validator"
	if _, err := os.Stat(folder + "/node_modules/gltf-validator"); errors.Is(err, fs.ErrNotExist) {
		t.Fatal("the Khronos glTF validator is not there; make test fetches it (or npm ci in scene/gltf/" + folder + ")")
	}
	out, err := exec.Command(node, append([]string{folder + "/check.js"}, files...)...).Output()
	if err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	var found []finding
	for d := json.NewDecoder(bytes.NewReader(out)); d.More(); {
		var f finding
		if err := d.Decode(&f); err != nil {
			t.Fatal(err)
		}
		found = append(found, f)
	}
	if len(found) != len(files) {
		t.Fatalf("%d answers for %d files", len(found), len(files))
	}
	return found
}

func TestKhronosValidator(t *testing.T) {
	var files []string
	keep := func(name string, data []byte) {
		files = append(files, filepath.Join(t.TempDir(), name+".glb"))
		if err := os.WriteFile(files[len(files)-1], data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for _, hull := range assets.HullNames() {
		for n, name := range map[float64]string{1: hull + " dry", 100: hull + " afloat"} {
			m, drawn := posed(t, hull, n, n > 1)
			keep(name, written(t, whole(m, drawn)))
		}
	}
	// One that is wrong, so that a validator which finds nothing is found out.
	m, drawn := posed(t, "Bench", 1, false)
	wrong := whole(m, drawn)
	wrong.Camera.View.Near = -1
	wrong.Lines = append(wrong.Lines, Line{Name: "a point", Points: []mgl64.Vec3{{}}})
	keep("wrong", written(t, wrong))
	found := validate(t, files...)
	for _, f := range found[:len(found)-1] {
		if f.Errors+f.Warnings > 0 {
			t.Errorf("%s: %d errors, %d warnings: %+v", filepath.Base(f.File), f.Errors, f.Warnings, f.Messages[:min(3, len(f.Messages))])
		}
	}
	if last := found[len(found)-1]; last.Errors == 0 {
		t.Errorf("the validator accepts a camera that begins behind its eye: %+v", last)
	}
}
