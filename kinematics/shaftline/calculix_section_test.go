package shaftline_test

// This file is why the decks are of square bars: what CalculiX makes of a round
// and of a square section, on two cantilevers under their own weight.

import (
	"math"
	"testing"

	"aligner/kinematics/shaftline"
)

// quad8 is area and second moment of a round section of radius 1 drawn as one
// eight-node quadrilateral, corners and middles of sides on the circle, by the
// nine-point rule of a 20-node brick.
func quad8() (area, second float64) {
	const c = math.Sqrt2 / 2
	px := [8]float64{-c, c, c, -c, 0, 1, 0, -1}
	py := [8]float64{-c, -c, c, c, -1, 0, 1, 0}
	r := math.Sqrt(0.6)
	points, weights := [3]float64{-r, 0, r}, [3]float64{5. / 9, 8. / 9, 5. / 9}
	at := func(u, v float64) (x, y float64) {
		for i := range 8 {
			// Serendipity functions, written with the node's own corner or side.
			cu, cv := [8]float64{-1, 1, 1, -1, 0, 1, 0, -1}[i], [8]float64{-1, -1, 1, 1, -1, 0, 1, 0}[i]
			var n float64
			switch {
			case cu == 0:
				n = (1 - u*u) * (1 + cv*v) / 2
			case cv == 0:
				n = (1 + cu*u) * (1 - v*v) / 2
			default:
				n = (1 + cu*u) * (1 + cv*v) * (cu*u + cv*v - 1) / 4
			}
			x, y = x+n*px[i], y+n*py[i]
		}
		return x, y
	}
	for i, u := range points {
		for j, v := range points {
			const h = 1e-6
			x1, y1 := at(u+h, v)
			x0, y0 := at(u-h, v)
			x3, y3 := at(u, v+h)
			x2, y2 := at(u, v-h)
			jacobian := ((x1-x0)*(y3-y2) - (x3-x2)*(y1-y0)) / (4 * h * h)
			_, y := at(u, v)
			area += weights[i] * weights[j] * jacobian
			second += weights[i] * weights[j] * jacobian * y * y
		}
	}
	return area, second
}

// TestSectionsOfTheDecks measures area and second moment of CalculiX's sections
// by the weight a cantilever's clamp carries and by how far its tip sags, less
// the sag w L^2 / 2GA of shear.
func TestSectionsOfTheDecks(t *testing.T) {
	area, second := quad8()
	for _, c := range []struct {
		name         string
		kind         string
		area, second float64 // of the circle's, or the square's
	}{
		{"section-round", "CIRC", area / math.Pi, second / (math.Pi / 4)},
		{"section-square", "RECT", 1, 1},
	} {
		const l, w = 1000.0, 0.04
		line := shaftline.Line{LengthMM: l, DiameterMM: 25, WeightNPerMM: w,
			BendingStiffnessNMM2: shaftline.CircularBendingStiffness(200e3, 25)}
		d := &deck{line: line, clamped: true, shear: 1, nodes: meshNodes(line)}
		d.printf("** Cantilever under its own weight, section %s\n", c.kind)
		d.mesh()
		sizeMM, areaMM2 := d.sideMM(), d.sideMM()*d.sideMM()
		young := d.youngMPa()
		if c.kind == "CIRC" {
			sizeMM, areaMM2, young = 25, math.Pi/4*25*25, 200e3
		}
		d.section(c.kind, sizeMM, young)
		d.holds()
		d.loads(areaMM2)
		a, ok := d.current(t, c.name)
		if !ok {
			continue
		}
		gotArea := (a.frontN[1] + c.area*w*(d.nodes[2]-d.nodes[0])/6) / (w * l)
		bending := w * l * l * l * l / 8 / line.BendingStiffnessNMM2
		shear := w * l * l / 2 / (young / 2 * areaMM2)
		gotSecond := gotArea * bending / (-a.z[0] - shear)
		for _, v := range []struct {
			what      string
			got, want float64
		}{{"area", gotArea, c.area}, {"second moment", gotSecond, c.second}} {
			t.Logf("%s: %s %.5f of the drawn section's, reckoned %.5f", c.kind, v.what, v.got, v.want)
			if !(math.Abs(v.got-v.want) < 2e-4) {
				t.Errorf("%s: %s %.5f of the drawn section's, want %.5f", c.kind, v.what, v.got, v.want)
			}
		}
	}
	if area > 0.99*math.Pi || second > 0.98*math.Pi/4 {
		t.Errorf("a round section is drawn nearly round (%g, %g): let the decks be round", area, second)
	}
}
