package main

// This file checks that the picture of a visit draws what its plan says to turn.

import (
	"strings"
	"testing"

	"aligner/scene/render"
)

func TestPictureOfAVisitDrawsItsPlan(t *testing.T) {
	c := &pictureCmd{Hull: "stuck-nut", Held: "seated", View: "engine", Times: 100, Width: 640, Height: 400, Quick: true}
	e := &env{stdout: &strings.Builder{}, stderr: &strings.Builder{}}
	what, err := c.subject(e)
	if err != nil {
		t.Fatal(err)
	}
	// As it ends nothing is to be moved; a plan given by hand is drawn all the same.
	c.PlanNut, c.PlanSlide = []string{"fore port=2", "aft port=-3"}, []string{"aft starboard=1.5"}
	d, err := c.solve(e, what)
	if err != nil {
		t.Fatal(err)
	}
	said := map[int]string{}
	for _, turn := range d.turns {
		said[turn.Mount] = turn.Text
	}
	want := map[string]string{"fore port": "2 flats up\nanticlockwise seen from above", "aft port": "3 flats down\nclockwise seen from above",
		"aft starboard": "slide 1.5 mm to port"}
	for i, m := range d.hull.Mounts {
		if text := want[m.Name]; (text == "") != (said[i] == "") || text != "" && said[i] != m.Name+"\n"+text {
			t.Errorf("%s is told %q, want %q", m.Name, said[i], text)
		}
	}
	var out render.Scene
	state := c.sceneState(d)
	d.model.Pose(&state, &out)
	if n := len(out.Overlay.Arrows); n != 3 {
		t.Errorf("%d arrows, want 3", n)
	}
}
