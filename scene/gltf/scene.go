package gltf

// This file holds what is written, and how it comes from a posed scene.

import (
	"image/color"

	"aligner/scene"
	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// Scene is what one file holds. Everything is in S, mm.
type Scene struct {
	Name   string
	Up     mgl64.Vec3 // the world's
	Things []Thing
	Lines  []Line
	Camera *Camera // nil: none
	// Extras are written beside asset and scene. Keys carry their units.
	Extras map[string]any
}

// Thing is what one would point at: an engine, a mount's nut.
type Thing struct {
	Name  string
	Parts []render.Part
}

// Line is a line through points.
type Line struct {
	Name   string
	Points []mgl64.Vec3
	Colour color.NRGBA
}

// Camera is a view offered by its name.
type Camera struct {
	Name   string
	View   render.Camera // in perspective
	Aspect float64       // width over height
}

// Of collects what a posed scene shows, pieces of one thing together in the
// order in which they come first. name says what a thing is called; planned
// ones stand where a move would bring them.
func Of(m *scene.Model, posed *render.Scene, name func(of scene.Pointed, planned bool) string) Scene {
	type key struct {
		of      scene.Pointed
		planned bool
	}
	out := Scene{Name: m.Hull().Name, Up: m.Up()}
	place := map[key]int{}
	for i := range posed.Parts {
		p := &posed.Parts[i]
		if p.Hidden || p.Mesh == nil || p.Colour.A == 0 || len(p.Mesh.Triangles) == 0 {
			continue
		}
		var k key
		k.of, k.planned = m.PartOf(i)
		at, ok := place[k]
		if !ok {
			at = len(out.Things)
			place[k] = at
			out.Things = append(out.Things, Thing{Name: name(k.of, k.planned)})
		}
		out.Things[at].Parts = append(out.Things[at].Parts, *p)
	}
	return out
}
