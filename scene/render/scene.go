// This file holds what a caller hands over for one picture.

package render

import (
	"image/color"

	"github.com/go-gl/mathgl/mgl32"
)

// Part is one body of the scene.
type Part struct {
	Mesh *Mesh
	// Transform takes the mesh to the scene; zero means identity. It may
	// stretch and shear: normals follow by the inverse transpose.
	Transform Affine
	// Occlusion is how open to the sky each vertex is, 0 to 1, as Bake returns
	// it; nil means fully open. It belongs to the part, not to the mesh,
	// because one mesh may stand in several places. Replace the slice rather
	// than writing into it.
	Occlusion []float32
	// Colour is sRGB, not premultiplied. Alpha below 255 makes the part
	// translucent: it is laid over the solids and cannot be picked.
	Colour color.NRGBA
	// Gloss is the strength of the highlight: 0 dull, 1 polished.
	Gloss float32
	// ID is what Pick returns for this part; 0 means it cannot be picked.
	ID uint16
	// Shell is the translucent layer, 0 or 1. Of each shell a pixel shows the
	// nearest front face and the nearest back face. Shell 0 is for the hull, shell
	// 1 for ghosts: they are seen through the hull and may have outlines.
	Shell uint8
	// Moving parts are expected to change from picture to picture while the
	// others stand still. It never changes the picture, only its cost: setting or
	// clearing it costs one full redraw, so set it when a drag begins.
	Moving bool
	Hidden bool
	// TwoSided draws the inside of an open solid too. Translucent parts always
	// show both sides.
	TwoSided bool
}

// Light is the lighting, in the view's own frame so that a part turned towards
// the viewer reads the same from everywhere: x right, y up, z to the viewer.
type Light struct {
	KeyDirection mgl32.Vec3 // towards the key light
	Key          float32    // strength of the key light
	Sky, Ground  float32    // light from above and from below (scene's Up)
	Rim          float32    // strength of the light round the edges
}

// DefaultLight is a key light over the viewer's left shoulder under a soft sky.
func DefaultLight() Light {
	return Light{KeyDirection: mgl32.Vec3{-0.45, 0.75, 0.6}, Key: 0.8, Sky: 0.8, Ground: 0.34, Rim: 0.3}
}

// Background is a vertical gradient in sRGB.
type Background struct{ Top, Bottom color.NRGBA }

// Outline is the thin line where parts meet. Zero strengths draw none.
type Outline struct {
	Colour color.NRGBA
	// Silhouette is the strength, 0 to 1, where two parts meet or a part meets
	// the background; Crease where two smooth surfaces of one part meet.
	Silhouette, Crease float32
	// Ghost, 0 to 1, draws the same lines for translucent parts of shell 1, in
	// each part's own colour and this share of the strength. With a colour of
	// alpha 1 nothing but the lines shows.
	Ghost float32
}

// Scene is everything that one picture shows. The renderer reads it during Draw
// and keeps no reference to it afterwards but for the meshes.
type Scene struct {
	Parts      []Part
	Camera     Camera
	Light      Light
	Background Background
	Outline    Outline
	Overlay    Overlay
}

// DaylightBackground and NightBackground go with light and dark windows.
var (
	DaylightBackground = Background{Top: color.NRGBA{236, 240, 244, 255}, Bottom: color.NRGBA{205, 212, 219, 255}}
	NightBackground    = Background{Top: color.NRGBA{34, 38, 43, 255}, Bottom: color.NRGBA{20, 22, 26, 255}}
)

// DaylightOutline and NightOutline go with those backgrounds.
var (
	DaylightOutline = Outline{Colour: color.NRGBA{28, 34, 42, 255}, Silhouette: 0.75, Crease: 0.35}
	NightOutline    = Outline{Colour: color.NRGBA{6, 8, 10, 255}, Silhouette: 0.8, Crease: 0.45}
)
