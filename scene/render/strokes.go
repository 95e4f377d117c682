// This file holds the marks made of strokes: lines, arrows and dots. All are
// anti-aliased by the distance of a pixel's centre from the mark's edge.

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

func (p *painter) arrow(l *Arrow) {
	a, b, ok := p.projectPiece(l.From, l.To, l.Flat)
	if !ok {
		return
	}
	length := hypot32(b.x-a.x, b.y-a.y)
	if !(length > 0) {
		return
	}
	s := newStroke(l.Width, 0, 0, l.Behind)
	head := l.Head
	if head <= 0 {
		head = 4 * l.Width
	}
	heads := float32(1)
	if l.BothEnds {
		heads = 2
	}
	head = min(head, length/heads)
	from, to := a, between2(b, a, 0.7*head/length)
	p.head(a, b, head, &s)
	if l.BothEnds {
		from = between2(a, b, 0.7*head/length)
		p.head(b, a, head, &s)
	}
	p.piece(from, to, 0, &s)
	p.blend(l.Colour)
}

// between2 is a place on the way from a to b.
func between2(a, b place, t float32) place {
	return place{a.x + t*(b.x-a.x), a.y + t*(b.y-a.y), a.key + t*(b.key-a.key)}
}

// head covers an arrow's head: the tip at b, as long as given, and four fifths
// as wide.
func (p *painter) head(a, b place, long float32, s *stroke) {
	length := hypot32(b.x-a.x, b.y-a.y)
	ux, uy := (b.x-a.x)/length, (b.y-a.y)/length
	const slope = 0.4
	side := 1 / hypot32(1, slope)
	y0, y1 := pixelRange(b.y-long-1, b.y+long+1, p.r.view.height)
	x0, x1 := pixelRange(b.x-long-1, b.x+long+1, p.r.view.width)
	for y := y0; y < y1 && x0 < x1; y++ {
		mask := p.row(x0, x1, y)
		for i := range mask {
			rx, ry := b.x-float32(x0+i)-0.5, b.y-float32(y)-0.5
			back, across := rx*ux+ry*uy, abs32(rx*uy-ry*ux)
			c := cover(min((slope*back-across)*side, long-back))
			if c > 0 {
				p.put(&mask[i], c, x0+i, y, b.key, s)
			}
		}
	}
}

func (p *painter) dot(d *Dot) {
	at, ok := p.project(d.At, d.Flat)
	if !ok {
		return
	}
	share := p.shareAt(at, d.Behind)
	if share == 0 {
		return
	}
	if d.Width > 0 && d.Ring.A > 0 {
		p.disc(at, d.Radius, max(d.Radius-d.Width, 0))
		p.blend(faded(d.Ring, share))
	}
	if d.Fill.A > 0 {
		p.disc(at, max(d.Radius-d.Width, 0), -1)
		p.blend(faded(d.Fill, share))
	}
}

// shareAt is how much of a mark shows that is judged as a whole at one place.
func (p *painter) shareAt(at place, b Behind) float32 {
	inside := at.x >= 0 && at.y >= 0 && at.x < float32(p.r.view.width) && at.y < float32(p.r.view.height)
	if b == ShowBehind || at.key > 1 || !inside || !p.r.hides(int(at.x), int(at.y), at.key, 2) {
		return 1
	}
	return b.share()
}

// disc covers the ring between two radii; inner below 0 makes it whole.
func (p *painter) disc(at place, outer, inner float32) {
	y0, y1 := pixelRange(at.y-outer-1, at.y+outer+1, p.r.view.height)
	x0, x1 := pixelRange(at.x-outer-1, at.x+outer+1, p.r.view.width)
	for y := y0; y < y1 && x0 < x1; y++ {
		mask := p.row(x0, x1, y)
		for i := range mask {
			d := hypot32(float32(x0+i)+0.5-at.x, float32(y)+0.5-at.y)
			c := cover(outer - d)
			if inner >= 0 {
				c *= cover(d - inner)
			}
			mask[i] = max(mask[i], uint8(c*255+0.5))
		}
	}
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
