package faces

// This file holds the colours, by day and by night. Blue and orange are told
// apart by all common kinds of colour blindness (Okabe and Ito, "Color universal
// design", 2008).

import "image/color"

// ink names a colour by its use.
type ink int

const (
	inkBack     ink = iota // behind everything
	inkText                // numbers and words
	inkQuiet               // what may be overlooked
	inkLine                // outlines
	inkTrack               // where the band could be
	inkGrid                // rings on the track
	inkFace                // the face inside the rim
	inkMetal               // the halves edge-on
	inkOpen                // the gap where open
	inkTight               // the gap where tight
	inkOpenText            // words of that colour, darker or lighter to be read
	inkTightText
	inkOnOpen  // words on inkOpen
	inkOnTight // words on inkTight
	inkOverlay // as gauged, planned
	inkCount
)

func rgb(r, g, b uint8) color.RGBA { return color.RGBA{r, g, b, 255} }

// palettes are light and dark.
var palettes = [2][inkCount]color.RGBA{
	{
		inkBack: rgb(243, 243, 240), inkText: rgb(28, 30, 32), inkQuiet: rgb(96, 99, 102),
		inkLine: rgb(70, 74, 78), inkTrack: rgb(226, 228, 229), inkGrid: rgb(186, 190, 193),
		inkFace: rgb(251, 251, 249), inkMetal: rgb(196, 200, 203),
		inkOpen: rgb(31, 105, 178), inkTight: rgb(224, 122, 32),
		inkOpenText: rgb(20, 82, 146), inkTightText: rgb(158, 74, 0),
		inkOnOpen: rgb(255, 255, 255), inkOnTight: rgb(20, 20, 20),
		inkOverlay: rgb(28, 30, 32),
	},
	{
		inkBack: rgb(30, 32, 34), inkText: rgb(232, 232, 228), inkQuiet: rgb(164, 167, 169),
		inkLine: rgb(168, 172, 175), inkTrack: rgb(53, 57, 61), inkGrid: rgb(92, 97, 102),
		inkFace: rgb(38, 41, 44), inkMetal: rgb(98, 103, 108),
		inkOpen: rgb(74, 150, 220), inkTight: rgb(240, 150, 60),
		inkOpenText: rgb(128, 188, 240), inkTightText: rgb(248, 176, 100),
		inkOnOpen: rgb(10, 20, 30), inkOnTight: rgb(20, 12, 0),
		inkOverlay: rgb(240, 240, 236),
	},
}
