// This file holds the light: from a normal to a colour.

package render

import (
	"image/color"
	"math"
)

// material is a part's colour, made linear.
type material struct {
	rgb     [3]float32
	gloss   float32
	opacity float32
	id      uint16
}

func newMaterial(p *Part) material {
	return material{linearRGB(p.Colour), p.Gloss, float32(p.Colour.A) / 255, p.ID}
}

// lamp is the lighting made ready: all directions in frame V, unit length.
type lamp struct {
	up, key, half    [3]float32
	keyStrength      float32
	middle, halfSpan float32 // light from the side, and what above adds to it
	rim              float32
}

// newLamp places the lights. half is half way between the key light and the
// viewer (Blinn, Models of light reflection for computer synthesized pictures,
// 1977), the viewer being taken far away.
func newLamp(l Light, v *view, up [3]float64) lamp {
	m := &v.m
	var u [3]float64
	for i := range u {
		u[i] = m[4*i]*up[0] + m[4*i+1]*up[1] + m[4*i+2]*up[2]
	}
	key := [3]float64{float64(l.KeyDirection[0]), float64(l.KeyDirection[1]), float64(l.KeyDirection[2])}
	k := unit(key)
	return lamp{
		up:          unit(u),
		key:         k,
		half:        unit([3]float64{float64(k[0]), float64(k[1]), float64(k[2]) + 1}),
		keyStrength: l.Key,
		middle:      (l.Sky + l.Ground) / 2,
		halfSpan:    (l.Sky - l.Ground) / 2,
		rim:         l.Rim,
	}
}

func unit(a [3]float64) [3]float32 {
	n := math.Sqrt(a[0]*a[0] + a[1]*a[1] + a[2]*a[2])
	if n == 0 {
		return [3]float32{0, 0, 1}
	}
	return [3]float32{float32(a[0] / n), float32(a[1] / n), float32(a[2] / n)}
}

// solid shades a solid's surface. n is a normal of any length, sky the open sky
// times that length.
//
// Open sky darkens light from the sky and the rim fully and the key light by
// two thirds, as a soft stand-in for its shadow.
//
// The products with the light directions are taken before the length is known,
// so that the processor can work on both at once and branches are decided early.
func (l *lamp) solid(m *material, nx, ny, nz, sky float32) (r, g, b float32) {
	square := nx*nx + ny*ny + nz*nz + 1e-30
	up := nx*l.up[0] + ny*l.up[1] + nz*l.up[2]
	key := nx*l.key[0] + ny*l.key[1] + nz*l.key[2]
	inv := 1 / sqrt32(square)
	sky *= inv
	rim := 1 - nz*inv
	rim *= rim
	rim *= rim * l.rim
	light := (l.middle + l.halfSpan*up*inv + rim) * sky
	if key <= 0 {
		return m.rgb[0] * light, m.rgb[1] * light, m.rgb[2] * light
	}
	light += l.keyStrength * key * inv * (0.35 + 0.65*sky)
	half := nx*l.half[0] + ny*l.half[1] + nz*l.half[2]
	if half*half < 0.64*square {
		return m.rgb[0] * light, m.rgb[1] * light, m.rgb[2] * light
	}
	h := half * inv
	h *= h
	h *= h
	h *= h
	h *= h
	shine := h * h * m.gloss * sky
	return m.rgb[0]*light + shine, m.rgb[1]*light + shine, m.rgb[2]*light + shine
}

// translucent shades a corner of a translucent part: premultiplied colour and
// opacity. Like glass it is denser where it is seen at a slant.
func (l *lamp) translucent(m *material, n [3]float32, sky float32) [4]float32 {
	up := n[0]*l.up[0] + n[1]*l.up[1] + n[2]*l.up[2]
	key := max(n[0]*l.key[0]+n[1]*l.key[1]+n[2]*l.key[2], 0)
	slant := 1 - abs32(n[2])
	slant *= slant
	light := l.middle + l.halfSpan*up + 0.6*l.keyStrength*key + slant*slant*l.rim
	alpha := m.opacity * min(0.6+1.1*slant, 1/max(m.opacity, 0.01))
	light *= alpha
	return [4]float32{m.rgb[0] * light, m.rgb[1] * light, m.rgb[2] * light, alpha}
}

// Colours are added and averaged as light. toneSteps is fine enough that one
// step is under one of 255 even at black, where the curve is steepest.
const (
	toneSteps = 8192
	toneTop   = 2 // light at which the picture is white
	toneScale = toneSteps / toneTop
)

// tone turns light into sRGB bytes (IEC 61966-2-1). Up to a half it is that
// curve; above, highlights are rolled off so that they keep their shape.
var tone, toneFine = func() (t [toneSteps]uint8, fine [toneSteps]uint16) {
	for i := range t {
		x := (float64(i) + 0.5) / toneScale
		level := encodeSRGB(rollOff(x)) * 255
		t[i], fine[i] = uint8(level+0.5), uint16(level*256+0.5)
	}
	return t, fine
}()

// toneLevel is toneByte with a fraction.
func toneLevel(x float32) float32 {
	return float32(toneFine[min(uint32(int32(x*toneScale)), toneSteps-1)]) * (1.0 / 256)
}

// rollOff is the identity up to the knee and then bends towards 1 with
// continuous slope.
func rollOff(x float64) float64 {
	const knee = 0.6
	if x <= knee {
		return x
	}
	return knee + (1-knee)*(1-math.Exp(-(x-knee)/(1-knee)))
}

// toneByte turns light into a byte. What rounding leaves below nothing is cut off
// by the conversion.
func toneByte(x float32) uint8 { return tone[min(uint32(int32(x*toneScale)), toneSteps-1)] }

// tonePixel is a pixel as it lies in an image.RGBA, read little-endian.
func tonePixel(r, g, b float32) uint32 {
	return uint32(toneByte(r)) | uint32(toneByte(g))<<8 | uint32(toneByte(b))<<16 | 0xff000000
}

func encodeSRGB(x float64) float64 {
	if x <= 0.0031308 {
		return 12.92 * x
	}
	return 1.055*math.Pow(x, 1/2.4) - 0.055
}

func decodeSRGB(x float64) float64 {
	if x <= 0.04045 {
		return x / 12.92
	}
	return math.Pow((x+0.055)/1.055, 2.4)
}

// linearRGB is the light that tone turns back into the colour.
func linearRGB(c color.NRGBA) [3]float32 {
	return [3]float32{linearByte(c.R), linearByte(c.G), linearByte(c.B)}
}

func linearByte(b uint8) float32 { return float32(decodeSRGB(float64(b) / 255)) }

func sqrt32(x float32) float32 { return float32(math.Sqrt(float64(x))) }
