package main

// This file draws the coupling faces close up into a picture.

import (
	"image"
	"math"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/kinematics"
	"aligner/scene/faces"
)

// drawFaces makes the picture.
func (c *pictureCmd) drawFaces(d *drawing) *image.RGBA {
	picture := image.NewRGBA(image.Rect(0, 0, c.Width, c.Height))
	fonts, err := faces.NewFonts(assets.Font("regular"), assets.Font("bold"))
	if err != nil {
		return picture // embedded, so only ever damaged by hand
	}
	said := faces.DefaultWords()
	said.SeenForward, said.SeenAft = speaker.Say(words.SeenForward, nil), speaker.Say(words.SeenAft, nil)
	f := faces.Faces{Now: *gapOf(d.now), DiameterMM: d.hull.Coupling.OuterDiameterMM,
		AsGauged: gapOf(d.gauged), Planned: gapOf(d.planned)}
	switch d.now.result.Held {
	case kinematics.Hanging:
		f.State = faces.Hanging
	case kinematics.Bolted:
		f.State, f.Moment = faces.Bolted, c.units().Moment(d.now.result.CouplingMomentNMM)
	}
	faces.Draw(picture, f, faces.Style{Fonts: fonts, Words: &said, Units: faces.Units(c.units()),
		LookingAft: c.Looking == "aft", Dark: c.Dark, Scale: c.textPx() / 15})
	return picture
}

// gapOf is a state's gap; one that is not known is no number.
func gapOf(p *pictured) *faces.Gap {
	if p == nil {
		return nil
	}
	g := p.result.Gap
	if !g.Known {
		g.G0MM = math.NaN()
	}
	return &faces.Gap{G0MM: g.G0MM, CosMM: g.CosMM, SinMM: g.SinMM}
}
