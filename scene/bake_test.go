package scene

// This file holds that baked light fits the model it was baked for.

import (
	"context"
	"testing"

	"aligner/scene/render"
)

func TestBakedLightFits(t *testing.T) {
	m := NewModel(builtIn(t, "Wren"))
	sky, err := m.Bake(context.Background(), render.BakeSettings{Directions: 8, Resolution: 128})
	if err != nil {
		t.Fatal(err)
	}
	if err := m.Use(sky); err != nil {
		t.Fatal(err)
	}
	var sc render.Scene
	m.Pose(&State{}, &sc)
	for i := range m.pieces {
		if p := &sc.Parts[i]; len(p.Occlusion) != len(p.Mesh.Positions) {
			t.Fatalf("part %d: occlusion of %d vertices for %d", i, len(p.Occlusion), len(p.Mesh.Positions))
		}
	}
	if err := NewModel(builtIn(t, "Eider")).Use(sky); err == nil {
		t.Error("another hull's light is taken")
	}
	ended, end := context.WithCancel(context.Background())
	end()
	if _, err := m.Bake(ended, render.BakeSettings{}); err == nil {
		t.Error("baking goes on after its end")
	}
}
