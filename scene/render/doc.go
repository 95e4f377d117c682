// Package render draws triangles into pixels on the CPU. It knows nothing of
// boats and nothing of windows: a caller hands over a Scene and a picture.
//
//	r := render.New(render.Settings{})
//	defer r.Close()
//	picture := image.NewRGBA(image.Rect(0, 0, 1280, 800))
//	scene := &render.Scene{
//		Parts:      []render.Part{{Mesh: mesh, Colour: grey, ID: 1}},
//		Camera:     render.Camera{Eye: eye, Target: target, Up: up},
//		Light:      render.DefaultLight(),
//		Background: render.DaylightBackground,
//		Outline:    render.DaylightOutline,
//	}
//	r.Draw(picture, scene)     // again and again, with the same picture
//	id := r.Pick(x, y)
//
// # One picture
//
//	Mesh, Transform ──> vertices ──> triangles ──> tiles ──> pixels ──> marks
//	  mesh frame        pixels,       planes,      samples,   sRGB      overlay.go
//	                    vertex.go     setup.go     raster.go  resolve.go
//
// Vertices are taken through the part's transform and the camera, and snapped
// to 1/256 pixel. Triangles that face away, lie outside or hold no sample are
// dropped; those that reach before Near are cut (clip.go). What is left gets
// planes over the picture for depth, normal and occlusion, and is noted in the
// bins of the 64 x 64 pixel tiles it touches. Each tile is then finished alone:
// samples first, colours last, so that what is hidden is never shaded. Workers
// take pieces of work from a counter, with a barrier after each of the three
// stages. All memory is kept for the next picture.
//
// # Spaces
//
// The scene is right-handed; its unit is the caller's. Frame V, the view: x
// right, y up, z towards the viewer, origin at the eye. Picture: x right, y
// down, (0, 0) the top left corner, pixel centres at halves. Triangles run
// anticlockwise seen from outside. A transform may be any affine map, also a
// mirror image; normals follow by the inverse transpose.
//
// # Depth
//
// The depth key is Near / distance in perspective: 1 at Near, towards 0 far
// away, and affine over the picture. In an orthographic picture it falls
// linearly from 1 to 0 over ten thousand picture heights. A sample is one
// number,
//
//	bits 63 .. 24   key x 2^39
//	bits 23 ..  0   triangle number + 1
//
// so that the larger is the nearer, the inner loop is row[i] = max(row[i], v),
// and at equal depth the higher triangle number wins whoever comes first. The
// step is about distance^2 / Near x 2^-39: with Near 4 mm, six millionths of a
// millimetre at 3.5 m. Single precision vertices are the coarser limit there,
// 0.0002 mm.
//
// # Samples and coverage
//
//	0   1/4  1/2  3/4   1
//	+----+----+----+----+
//	|      0            |   1/8
//	|                1  |   3/8    the standard pattern of four of the
//	| 2                 |   5/8    Vulkan specification
//	|           3       |   7/8
//	+----+----+----+----+
//
// The four samples of a pixel lie on four equally spaced rows, so a triangle is
// scan converted as in a picture of four times the height. A sample belongs to
// a triangle when left <= x < right and top <= y < bottom. An edge's x on a row
// is worked out in 32.32 fixed point from its upper end alone, so two triangles
// that share an edge (the same two snapped ends) agree on it everywhere: no
// cracks and no double hits.
//
// # Colour
//
// A pixel is shaded once where all its samples show one triangle or one smooth
// surface; otherwise once for each surface, at a sample it covers. Light is a
// key light with a highlight, sky light from above, ground light from below and
// a rim light round the edges, all fixed to the view, dimmed by baked occlusion
// (Bake). Colours are added as light and turned into sRGB at the end. Outlines
// come from comparing a pixel's samples with those of the three pixels on its left
// and above.
// Translucent parts have layers of their own, the nearest back face and front
// face of each of two shells (hull and ghosts), tested against the solids and laid
// over them from far to near: no triangle is sorted.
//
// Where a triangle is so flat, or so small, that nobody could tell, its light is
// worked out at its corners and the finished colour interpolated (ink.go).
//
// # Standing still and moving
//
// Parts marked Moving are drawn into samples kept from the others. The picture
// never depends on that mark; it equals a full redraw to the last bit. See
// cache.go. A Draw in which nothing has changed redraws only the marks.
//
// # What it leaves out
//
// Shadows other than occlusion, textures, reflections. Of a shell only the
// nearest two faces show. A triangle thinner than a quarter pixel may fall
// between samples: a gap that must be seen needs a line too, or the close-up.
package render
