// This file holds pixels that show several triangles: which of them may share one
// shading.

package render

import "math"

// mixed shades a pixel whose samples belong to different triangles: once for
// each smooth surface among them. It is always shaded at a sample the triangle
// covers, for a plane extended beyond its triangle can have any value.
func (t *tiler) mixed(p *pixel, s *quad, x, y int) {
	r := t.r
	nearest := max(s[0], s[1], s[2], s[3])
	p.nearest = uint32(nearest & idMask)
	if s[0] != 0 && s[1] != 0 && s[2] != 0 && s[3] != 0 && r.oneSurface(s, nearest) {
		own := &r.shades[s[0]&idMask-1]
		p.surface = own.surface + 1
		r.shade(p, own, int32(x)*eighths+sampleX8[0], int32(y)*eighths+sampleY8[0])
		return
	}
	p.surface = surfaceMixed
	var sum [3]float32
	for i, v := range s {
		switch {
		case i > 0 && (s[i-1]^v)&idMask == 0:
			// As the sample before.
		case v == 0:
			ground := &r.ground[y].rgb
			p.r, p.g, p.b = ground[0], ground[1], ground[2]
		default:
			r.shade(p, &r.shades[v&idMask-1], int32(x)*eighths+sampleX8[i], int32(y)*eighths+sampleY8[i])
			p.light()
		}
		sum[0], sum[1], sum[2] = sum[0]+p.r, sum[1]+p.g, sum[2]+p.b
	}
	p.inked = false
	p.r, p.g, p.b = sum[0]*(1.0/samples), sum[1]*(1.0/samples), sum[2]*(1.0/samples)
}

// oneSurface reports whether a pixel's samples, none of them empty, lie on one
// smooth surface that does not pass behind itself: their depths must not differ
// by more than the least steep of their triangles allows over two pixels. A
// wrong no costs a shading; a wrong yes would leave a jagged edge.
func (r *Renderer) oneSurface(s *quad, nearest uint64) bool {
	a, b := &r.shades[s[0]&idMask-1], &r.shades[s[1]&idMask-1]
	c, d := &r.shades[s[2]&idMask-1], &r.shades[s[3]&idMask-1]
	if a.surface != b.surface || a.surface != c.surface || a.surface != d.surface {
		return false
	}
	farthest := min(s[0], s[1], s[2], s[3])
	spread := float32((nearest-farthest)>>idBits) * (1.0 / keyScale)
	slack := r.slack + r.slackOfKey*float32(nearest>>idBits)*(1.0/keyScale)
	least := 0.5 * (spread - slack)
	return a.steepness() >= least && b.steepness() >= least && c.steepness() >= least && d.steepness() >= least
}

// steepness is how much the depth key changes over a pixel, at most.
func (s *shadeTriangle) steepness() float32 { return abs32(s.key.a) + abs32(s.key.b) }

// surfaceOf is the surface a sample shows, plus one; 0 for none.
func (r *Renderer) surfaceOf(v uint64) uint32 {
	if v == 0 {
		return surfaceNone
	}
	return r.shades[v&idMask-1].surface + 1
}

// abs32 clears the sign bit: no branch, no minding of NaN.
func abs32(x float32) float32 { return math.Float32frombits(math.Float32bits(x) &^ (1 << 31)) }
