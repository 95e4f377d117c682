package scene

// This file holds the colours: neutral castings, bright metal where it is
// machined, bronze below the water. Meaning is never carried by colour alone.

import "image/color"

// paint is a piece's material.
type paint uint8

const (
	casting   paint = iota // iron block
	coverCast              // light alloy covers
	gearCast               // gearbox casing
	darkSteel              // brackets, pan, pulleys
	blackened              // hoses, belts, filters
	rubberMix
	machined   // coupling, engine side
	machinedB  // coupling, shaft side
	stainless  // shaft, studs, bolts
	platedNut  // adjusting and jam nuts
	nutMark    // the stripe on a nut's flat
	bronze     // propeller, strut, log
	bearingMix // bearing lining
	moulded    // bed rails
	timber     // stands
	shell      // the hull
	water
	ghost
)

type coat struct {
	colour color.NRGBA
	gloss  float32
}

var coats = [...]coat{
	casting:    {color.NRGBA{142, 146, 150, 255}, 0.12},
	coverCast:  {color.NRGBA{186, 189, 192, 255}, 0.3},
	gearCast:   {color.NRGBA{116, 122, 129, 255}, 0.18},
	darkSteel:  {color.NRGBA{92, 96, 102, 255}, 0.25},
	blackened:  {color.NRGBA{58, 60, 64, 255}, 0.2},
	rubberMix:  {color.NRGBA{44, 44, 46, 255}, 0.08},
	machined:   {color.NRGBA{196, 201, 208, 255}, 0.6},
	machinedB:  {color.NRGBA{206, 198, 182, 255}, 0.6},
	stainless:  {color.NRGBA{206, 209, 213, 255}, 0.8},
	platedNut:  {color.NRGBA{205, 176, 100, 255}, 0.5},
	nutMark:    {color.NRGBA{250, 250, 246, 255}, 0.1},
	bronze:     {color.NRGBA{184, 144, 88, 255}, 0.5},
	bearingMix: {color.NRGBA{64, 66, 72, 255}, 0.1},
	moulded:    {color.NRGBA{214, 209, 198, 255}, 0.08},
	timber:     {color.NRGBA{170, 142, 106, 255}, 0.05},
	shell:      {color.NRGBA{108, 140, 168, 62}, 0.3},
	water:      {color.NRGBA{70, 132, 170, 56}, 0.4},
	ghost:      {color.NRGBA{90, 110, 140, 80}, 0.2},
}
