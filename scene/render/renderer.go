// This file holds the renderer: the phases of one picture, in order.

package render

import (
	"fmt"
	"image"
	"runtime"

	"github.com/go-gl/mathgl/mgl64"
)

// Settings are chosen once.
type Settings struct {
	// Workers is how many goroutines draw, the caller's among them; 0 means one
	// for each processor. The picture does not depend on it.
	Workers int
}

// Renderer draws scenes into pictures. It is not safe for use by several
// goroutines at once.
type Renderer struct {
	pool   *pool
	tilers []*tiler

	// The picture being drawn.
	view           view
	tilesX, tilesY int
	pix            []uint8  // the caller's
	front          []uint32 // nearest solid triangle of each pixel plus one, 0 for none
	parts          []Part
	frames         []partFrame
	materials      []material
	lamp           lamp
	line           lineStyle
	ground         []groundRow
	groundOf       Background
	slack          float32 // see oneSurface: half a pixel's depth, in keys
	slackOfKey     float32 // the same as a share of the key

	// What the phases hand on.
	vertices      []vertex
	shades        []shadeTriangle
	still, moving binSet
	cache         cache
	vertexWork    []span
	dirty         []dirtyTile
	painter       painter

	runVertices, runSetUp, runTiles func(worker int)
}

// New makes a renderer and starts its workers.
func New(s Settings) *Renderer {
	n := s.Workers
	if n <= 0 {
		n = runtime.GOMAXPROCS(0)
	}
	r := &Renderer{pool: newPool(n)}
	for range n {
		r.tilers = append(r.tilers, newTiler(r))
	}
	// Kept as values: a method value made for each picture would be garbage.
	r.runVertices, r.runSetUp, r.runTiles = r.vertexPhase, r.setUpPhase, r.tilePhase
	return r
}

// Close ends the workers. The renderer must not be used afterwards.
func (r *Renderer) Close() { r.pool.close() }

// Draw draws the scene into dst, which must be tight: bounds from (0, 0) and
// Stride 4 times the width. Given the same dst again, unchanged by others, it
// redoes only what changed; see Part.Moving.
func (r *Renderer) Draw(dst *image.RGBA, s *Scene) {
	width, height := dst.Rect.Dx(), dst.Rect.Dy()
	if dst.Rect.Min != (image.Point{}) || dst.Stride != 4*width || width < 1 || height < 1 || width > guardPx || height > guardPx {
		panic(fmt.Sprintf("render: picture %v with stride %d; want bounds from (0, 0), at most %d a side, and stride 4 x width", dst.Rect, dst.Stride, guardPx))
	}
	r.begin(dst, s)
	r.painter.restore(r.pix, !r.cache.full)
	if r.cache.full || r.cache.moved {
		r.listWork()
		r.pool.run(r.runVertices)
		r.pool.run(r.runSetUp)
		r.listDirty()
		r.pool.run(r.runTiles)
	}
	r.overlay(&s.Overlay)
	r.parts = nil
}

// begin takes in the scene and finds out how much must be redone.
func (r *Renderer) begin(dst *image.RGBA, s *Scene) {
	width, height := dst.Rect.Dx(), dst.Rect.Dy()
	r.view = s.Camera.ready(width, height)
	r.tilesX, r.tilesY = (width+tileSize-1)>>tileBits, (height+tileSize-1)>>tileBits
	r.pix = dst.Pix[:4*width*height]
	r.parts = s.Parts
	r.front = resize(r.front, width*height)
	up := s.Camera.Up
	if up == (mgl64.Vec3{}) {
		up = mgl64.Vec3{0, 0, 1}
	}
	r.lamp = newLamp(s.Light, &r.view, up)
	r.line = newLineStyle(s.Outline)
	if r.groundOf != s.Background || len(r.ground) != height {
		r.ground, r.groundOf = s.Background.rows(r.ground, height), s.Background
	}
	r.slack, r.slackOfKey = 0, float32(0.5/r.view.scale)
	if !r.view.perspective {
		r.slack, r.slackOfKey = float32(0.5*r.view.depthPerUnit/r.view.scale), 0
	}
	r.listParts()
	r.cache.renew(r, dst, s)
}

// listParts makes the parts ready and gives every triangle its number.
func (r *Renderer) listParts() {
	r.frames = resize(r.frames, len(r.parts))
	r.materials = resize(r.materials, len(r.parts))
	if len(r.parts) > maxParts {
		panic(fmt.Sprintf("render: %d parts; at most %d", len(r.parts), maxParts))
	}
	vertices, triangles := 0, 0
	for i := range r.parts {
		p, f := &r.parts[i], &r.frames[i]
		*f = partFrame{index: i, vertexBase: vertices, triBase: triangles, drawn: p.Mesh != nil && !p.Hidden && p.Colour.A > 0}
		if p.Mesh == nil {
			continue
		}
		p.Mesh.ready()
		if p.Occlusion != nil && len(p.Occlusion) != len(p.Mesh.Positions) {
			panic(fmt.Sprintf("render: part %d has %d occlusions for %d vertices", i, len(p.Occlusion), len(p.Mesh.Positions)))
		}
		f.ready(&r.view, p)
		if p.Colour.A < 255 {
			f.layer = 1 + 2*int(p.Shell&1)
		}
		r.materials[i] = newMaterial(p)
		vertices += len(p.Mesh.Positions)
		triangles += len(p.Mesh.Triangles)
	}
	if triangles >= idMask {
		panic(fmt.Sprintf("render: %d triangles; at most %d", triangles, idMask-1))
	}
	r.vertices = resize(r.vertices, vertices)
	r.shades = resize(r.shades, triangles)
}

// maxParts is what fits above the smooth surface in a surface id, less one so
// that an id of all ones stays free.
const maxParts = 1<<16 - 1

// resize returns a slice of n elements, keeping the memory if it suffices.
func resize[T any](s []T, n int) []T {
	if cap(s) < n {
		return make([]T, n)
	}
	return s[:n]
}
