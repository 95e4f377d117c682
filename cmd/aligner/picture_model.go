package main

// This file writes the scene as a model: binary glTF, its nodes named as a
// mechanic would.

import (
	"io"

	"aligner/assets/words"
	"aligner/cmd/aligner/outfile"
	"aligner/hulls"
	"aligner/scene"
	"aligner/scene/gltf"
	"aligner/scene/render"
)

// writeModel writes what the picture would show, from all sides.
func (c *pictureCmd) writeModel(d *drawing) error {
	state := c.sceneState(d)
	state.Show = scene.ShowHull | scene.ShowBed
	// Seen as a whole nothing is left out as standing in the way.
	state.View, _ = d.model.FitView(scene.ViewWhole, 1)
	var posed render.Scene
	d.model.Pose(&state, &posed)
	view, err := c.view(d)
	if err != nil {
		return err
	}
	m := gltf.Of(d.model, &posed, func(of scene.Pointed, planned bool) string {
		name := partName(&d.hull, of)
		if planned {
			name = speaker.Say(words.PartPlanned, words.Args{"What": name})
		}
		return name
	})
	for _, l := range posed.Overlay.Lines { // the gauged state's, where shown
		m.Lines = append(m.Lines, gltf.Line{Name: speaker.Say(words.PartAsGauged, nil), Points: l.Points, Colour: l.Colour})
	}
	m.Camera = &gltf.Camera{Name: speaker.Say(words.ViewNamed, words.Args{"View": c.View}),
		View: d.model.Camera(view), Aspect: float64(c.Width) / float64(c.Height)}
	m.Extras = map[string]any{
		"exaggeration": d.times, "hull": d.hull.Name, "shaft_held": string(d.now.state.Held), "afloat": c.Afloat,
		"shaft_angle_deg": d.hull.ShaftAngleDeg, "caption": c.captionText(d),
	}
	return outfile.Write(c.Out, func(w io.Writer) error { return m.Write(w) })
}

// partNames are the names of what there is once.
var partNames = map[scene.Kind]words.ID{
	scene.EngineKind: words.PartEngine, scene.GearboxKind: words.PartGearbox, scene.ShaftKind: words.PartShaft,
	scene.LogKind: words.PartLog, scene.StuffingBoxKind: words.PartStuffingBox, scene.PropellerKind: words.PartPropeller,
	scene.BedKind: words.PartBed, scene.HullKind: words.PartHull, scene.StandKind: words.PartStands, scene.WaterKind: words.PartWater,
}

// partName is what a piece of the scene is called.
func partName(h *hulls.Hull, of scene.Pointed) string {
	switch of.Kind {
	case scene.CouplingKind:
		if of.Index == 0 {
			return speaker.Say(words.PartEngineHalf, nil)
		}
		return speaker.Say(words.PartShaftHalf, nil)
	case scene.MountKind:
		return speaker.Say(words.PartMount, words.Args{"Name": speaker.Part(h.Mounts[of.Index].Name)})
	case scene.NutKind:
		id := words.PartNut
		if h.Mounts[of.Index].Kind == hulls.Solid {
			id = words.PartShims
		}
		return speaker.Say(id, words.Args{"Name": speaker.Part(h.Mounts[of.Index].Name)})
	case scene.BearingKind:
		return speaker.Say(words.PartBearing, words.Args{"Name": speaker.Part(h.Bearings[of.Index].Name)})
	}
	return speaker.Say(partNames[of.Kind], nil)
}
