package scene

// These tests hold every solid of every built-in hull to the laws of a solid.

import (
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
)

// builtIn reads a built-in hull.
func builtIn(t testing.TB, name string) hulls.Hull {
	t.Helper()
	return builtin.Hull(t, name)
}

// leastShape is the height of a triangle over its longest side under which it
// counts as a sliver.
const leastShape = 1.0 / 75

// mostTriangles is what the renderer is to draw in time.
const mostTriangles = 48000

func TestEverySolidIsClosedAndOutward(t *testing.T) {
	for _, name := range assets.HullNames() {
		m := NewModel(builtIn(t, name))
		for i := range m.pieces {
			p := &m.pieces[i]
			if why := p.solid.Fault(leastShape); why != "" {
				t.Errorf("%s: piece %d (kind %d, %d), %v: %s", name, i, p.kind, p.index, p.paint, why)
			}
		}
		for _, afloat := range []bool{false, true} {
			n := 0
			for i := range m.pieces {
				if p := &m.pieces[i]; !p.hidden(&State{Show: ShowUsual, Afloat: afloat}, &Movement{Held: "seated"}, false) {
					n += len(p.mesh.Triangles)
				}
			}
			if n > mostTriangles {
				t.Errorf("%s, afloat %v: %d triangles shown, at most %d", name, afloat, n, mostTriangles)
			}
		}
	}
}
