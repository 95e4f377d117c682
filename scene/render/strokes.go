// This file holds lines. Like all marks they are anti-aliased by the distance of a
// pixel's centre from the mark's edge.

package render

import "math"

// cover turns a signed distance inside the edge, in pixels, into coverage.
func cover(inside float32) float32 { return min(max(inside+0.5, 0), 1) }

// stroke is how a line is drawn.
type stroke struct {
	radius    float32 // half the width
	strength  float32 // below 1 for lines thinner than a pixel
	dash, gap float32
	behind    Behind
}

func newStroke(width, dash, gap float32, behind Behind) stroke {
	s := stroke{width / 2, 1, dash, gap, behind}
	if width < 1 {
		s.radius, s.strength = 0.5, max(width, 0)
	}
	return s
}

func (p *painter) line(l *Line) {
	s := newStroke(l.Width, l.Dash, l.Gap, l.Behind)
	var along float32 // length so far, so that dashes run on over joints
	for i := 1; i < len(l.Points); i++ {
		a, b, ok := p.projectPiece(l.Points[i-1], l.Points[i], l.Flat)
		if !ok {
			continue
		}
		p.piece(a, b, along, &s)
		along += hypot32(b.x-a.x, b.y-a.y)
	}
	p.blend(l.Colour)
}

// piece covers one straight piece; along is the dash pattern's length at a.
func (p *painter) piece(a, b place, along float32, s *stroke) {
	width, height := float32(p.r.view.width), float32(p.r.view.height)
	a, b, cut, ok := clipPiece(a, b, s.radius+1, width, height)
	if !ok {
		return
	}
	along += cut
	reach := s.radius + 0.5
	dx, dy := b.x-a.x, b.y-a.y
	length := hypot32(dx, dy)
	var ux, uy float32
	if length > 0 {
		ux, uy = dx/length, dy/length
	}
	y0, y1 := pixelRange(min(a.y, b.y)-reach, max(a.y, b.y)+reach, p.r.view.height)
	for y := y0; y < y1; y++ {
		cy := float32(y) + 0.5
		left, right := min(a.x, b.x)-reach, max(a.x, b.x)+reach
		if abs32(dy) > 0.01 {
			// The strip within reach crosses this row about here.
			middle, half := a.x+(cy-a.y)*dx/dy, reach*length/abs32(dy)+0.5
			left, right = max(left, middle-half), min(right, middle+half)
		}
		x0, x1 := pixelRange(left, right, p.r.view.width)
		if x0 >= x1 {
			continue
		}
		mask := p.row(x0, x1, y)
		for i := range mask {
			rx, ry := float32(x0+i)+0.5-a.x, cy-a.y
			t := min(max(rx*ux+ry*uy, 0), length)
			c := cover(s.radius-hypot32(rx-t*ux, ry-t*uy)) * s.strength
			if s.gap > 0 {
				c *= s.dashed(along + rx*ux + ry*uy)
			}
			if c == 0 {
				continue
			}
			key := a.key
			if length > 0 {
				key += (b.key - a.key) * t / length
			}
			p.put(&mask[i], c, x0+i, y, key, s)
		}
	}
}

// dashed is the dash pattern's coverage at a length along the line.
func (s *stroke) dashed(along float32) float32 {
	period := s.dash + s.gap
	at := along - period*float32(math.Floor(float64(along/period)))
	return max(cover(s.dash/2-abs32(at-s.dash/2)), cover(s.dash/2-abs32(at-period-s.dash/2)))
}

// put raises the mask at a pixel, less where a solid hides the mark. A line on a
// sloping surface must not sink into it by its own width.
func (p *painter) put(m *uint8, c float32, x, y int, key float32, s *stroke) {
	if s.behind != ShowBehind && key <= 1 && p.r.hides(x, y, key, min(s.radius+1, 3)) {
		c *= s.behind.share()
	}
	*m = max(*m, uint8(c*255+0.5))
}

// clipPiece cuts a piece to the picture grown by margin (Liang and Barsky, A new
// concept and method for line clipping, 1984). cut is the length lost at a.
func clipPiece(a, b place, margin, width, height float32) (ca, cb place, cut float32, ok bool) {
	t0, t1 := float32(0), float32(1)
	dx, dy := b.x-a.x, b.y-a.y
	for _, e := range [4][2]float32{
		{-dx, a.x + margin}, {dx, width + margin - a.x},
		{-dy, a.y + margin}, {dy, height + margin - a.y},
	} {
		switch {
		case e[0] == 0:
			if !(e[1] >= 0) {
				return a, b, 0, false
			}
		case e[0] < 0:
			t0 = max(t0, e[1]/e[0])
		default:
			t1 = min(t1, e[1]/e[0])
		}
	}
	if !(t0 <= t1) {
		return a, b, 0, false
	}
	return between2(a, b, t0), between2(a, b, t1), t0 * hypot32(dx, dy), true
}

// pixelRange is the pixels with centres between two positions, within 0 to n-1.
func pixelRange(from, to float32, n int) (i, j int) {
	if !(from < float32(n)) || !(to > 0) {
		return 0, 0
	}
	return int(max(from, 0)), min(int(to)+1, n)
}

func hypot32(x, y float32) float32 { return sqrt32(x*x + y*y) }
