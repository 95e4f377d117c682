// This file holds arrows and dots.

package render

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
