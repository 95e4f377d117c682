package scene

// This file bakes how much of the sky each vertex sees, off the first picture's
// path.

import (
	"context"
	"errors"

	"aligner/kinematics"
	"aligner/scene/render"
)

// Occlusion is what Bake found, for Use.
type Occlusion [][]float32

// Bake works the model's occlusion out, as drawn and on its stands, but for the
// coupling, which is parted and without bolts: faces that touched while light
// was baked would be black when they open. It takes some tenths of a second,
// builds meshes of its own and touches nothing of m but its hull, so it may run
// while m is being posed and drawn.
func (m *Model) Bake(ctx context.Context, s render.BakeSettings) (Occlusion, error) {
	own := NewModel(m.hull)
	var sc render.Scene
	parted := *own.movement(nil)
	parted.Held = kinematics.Hanging
	own.Pose(&State{Now: &parted, Show: ShowHull | ShowBed}, &sc)
	sky, err := render.Bake(ctx, sc.Parts[:len(own.pieces)], s)
	if err != nil {
		return nil, err
	}
	return sky, nil
}

// Use lights the model with a baked occlusion from the next Pose on.
func (m *Model) Use(sky Occlusion) error {
	if len(sky) != len(m.pieces) {
		return errors.New("occlusion baked for another hull")
	}
	for i := range sky {
		if n := len(m.pieces[i].mesh.Positions); len(sky[i]) != n && len(sky[i]) != 0 {
			return errors.New("occlusion baked for another hull")
		}
	}
	m.sky = sky
	return nil
}
