package solid

// This file draws outlines in a plane, and sets them up as rings.

import (
	"math"

	"github.com/go-gl/mathgl/mgl64"
)

// Outline is a closed row of points in a plane, anticlockwise.
type Outline []mgl64.Vec2

// Circle has n points.
func Circle(radius float64, n int) Outline {
	o := make(Outline, n)
	for i := range o {
		s, c := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		o[i] = mgl64.Vec2{radius * c, radius * s}
	}
	return o
}

// Hexagon is the outline of a nut by its width across flats, each flat parted
// into steps pieces. A flat faces +x.
func Hexagon(acrossFlats float64, steps int) Outline {
	var o Outline
	r := acrossFlats / math.Sqrt(3)
	corner := func(i int) mgl64.Vec2 {
		s, c := math.Sincos(math.Pi/6 + float64(i)*math.Pi/3)
		return mgl64.Vec2{r * c, r * s}
	}
	for i := range 6 {
		a, b := corner(i), corner(i+1)
		for k := range steps {
			o = append(o, a.Add(b.Sub(a).Mul(float64(k)/float64(steps))))
		}
	}
	return o
}

// cornerSteps parts each rounded corner.
const cornerSteps = 3

// Oblong is a rectangle of the given width (along the first axis) and height
// with rounded corners. Its sides are parted alike on opposite sides.
func Oblong(width, height, radius, edgeMM float64) Outline {
	radius = min(radius, 0.45*width, 0.45*height)
	parts := func(l float64) int { return max(1, int(math.Ceil((l-2*radius)/edgeMM-0.01))) }
	steps := cornerSteps
	if radius < 16 {
		steps = 2
	}
	if radius < 5 {
		steps = 1
	}
	return OblongOf(width, height, radius, parts(width), parts(height), steps)
}

// OblongOf is an Oblong with its sides and corners parted as told, so that two
// of different sizes have points in pairs.
func OblongOf(width, height, radius float64, alongWidth, alongHeight, cornerSteps int) Outline {
	radius = min(radius, 0.45*width, 0.45*height)
	var o Outline
	corner := func(cx, cy float64, quarter int) {
		for k := range cornerSteps + 1 {
			s, c := math.Sincos((float64(quarter) + float64(k)/float64(cornerSteps)) * math.Pi / 2)
			o = append(o, mgl64.Vec2{cx + radius*c, cy + radius*s})
		}
	}
	side := func(n int) {
		// Points between the last one and where the next corner will begin are
		// filled in afterwards.
		for range n - 1 {
			o = append(o, mgl64.Vec2{math.NaN(), 0})
		}
	}
	x, y := width/2-radius, height/2-radius
	corner(x, y, 0)
	side(alongWidth)
	corner(-x, y, 1)
	side(alongHeight)
	corner(-x, -y, 2)
	side(alongWidth)
	corner(x, -y, 3)
	side(alongHeight)
	fillSides(o)
	return o
}

// fillSides spaces out the points left open between two known ones.
func fillSides(o Outline) {
	n := len(o)
	for i := 0; i < n; i++ {
		if !math.IsNaN(o[i][0]) {
			continue
		}
		j := i
		for j < n && math.IsNaN(o[j][0]) {
			j++
		}
		a, b := o[i-1], o[j%n]
		for k := i; k < j; k++ {
			o[k] = a.Add(b.Sub(a).Mul(float64(k-i+1) / float64(j-i+1)))
		}
		i = j
	}
}

// Inset draws an outline in towards its own middle by a distance, as a bevel
// wants it: exact on straight sides of a figure centred on the origin.
func (o Outline) Inset(by float64) Outline {
	s := make(Outline, len(o))
	var w, h float64
	for _, p := range o {
		w, h = max(w, math.Abs(p[0])), max(h, math.Abs(p[1]))
	}
	for i, p := range o {
		s[i] = mgl64.Vec2{p[0] * max(0.02, 1-by/w), p[1] * max(0.02, 1-by/h)}
	}
	return s
}

// Ring sets an outline up in space: its first axis along u, its second along v.
func (o Outline) Ring(at, u, v mgl64.Vec3) []mgl64.Vec3 {
	r := make([]mgl64.Vec3, len(o))
	for i, p := range o {
		r[i] = at.Add(u.Mul(p[0])).Add(v.Mul(p[1]))
	}
	return r
}

// Axes of the frame a solid is built in.
var (
	AxisX = mgl64.Vec3{1, 0, 0}
	AxisY = mgl64.Vec3{0, 1, 0}
	AxisZ = mgl64.Vec3{0, 0, 1}
)

// Oval has the given width and height and n points evenly along it, starting on
// the first axis. Its corners are as round as radius asks: half the height, or
// more, makes an ellipse, less a curve |x/a|^e + |y/b|^e = 1 with a larger e.
func Oval(width, height, radius float64, n int) Outline {
	e := 2.0
	if k := 2 * radius / min(width, height); k < 1 {
		// The corner of such a curve and of a rounded rectangle of the same
		// radius stand equally far from the sharp corner.
		e = math.Ln2 / -math.Log(1-k*(1-math.Sqrt2/2)/math.Sqrt2*1.2)
		e = min(max(e, 2), 9)
	}
	const fine = 720
	at := func(i int) mgl64.Vec2 {
		s, c := math.Sincos(2 * math.Pi * float64(i) / fine)
		k := math.Pow(math.Pow(math.Abs(c), e)+math.Pow(math.Abs(s), e), -1/e)
		return mgl64.Vec2{width / 2 * c * k, height / 2 * s * k}
	}
	total := 0.0
	for i := range fine {
		total += at(i + 1).Sub(at(i)).Len()
	}
	o := Outline{at(0)}
	gone := 0.0
	for i := range fine {
		gone += at(i + 1).Sub(at(i)).Len()
		if len(o) < n && gone >= total*float64(len(o))/float64(n)-1e-9 {
			o = append(o, at(i+1))
		}
	}
	return o
}
