package gltf

// These tests hold that a file read back is what was drawn.

import (
	"bytes"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/kinematics"
	"aligner/scene"
	"aligner/scene/render"
	"aligner/scene/solid"

	"aligner/hulls/visit/builtin"
	"github.com/go-gl/mathgl/mgl64"
)

// posed is a built-in hull with a nut turned, and with what is planned and what
// was gauged laid over it.
func posed(t *testing.T, hull string, n float64, afloat bool) (*scene.Model, *render.Scene) {
	t.Helper()
	h := builtin.Hull(t, hull)
	line, err := kinematics.Prepare(h)
	if err != nil {
		t.Fatal(err)
	}
	m := scene.NewModel(h)
	var moved [3]scene.Movement
	for i := range moved {
		s := kinematics.State{Held: kinematics.Seated, Afloat: afloat, LiftMM: make([]float64, len(h.Mounts))}
		s.LiftMM[0] = 0.2 * float64(i)
		var r kinematics.Result
		if err := line.Solve(&s, &r); err != nil {
			t.Fatal(err)
		}
		m.Read(line, &s, &r, &moved[i])
	}
	view, _ := m.FitView(scene.ViewWhole, 1.6)
	out := &render.Scene{}
	m.Pose(&scene.State{Gauged: &moved[0], Now: &moved[1], Planned: &moved[2], Exaggeration: n, Afloat: afloat,
		Show: scene.ShowHull | scene.ShowBed, View: view}, out)
	return m, out
}

// plain names things by number.
func plain(of scene.Pointed, planned bool) string {
	return fmt.Sprintf("thing %d of %d, planned %v", of.Index, of.Kind, planned)
}

// whole is everything a posed scene can say.
func whole(m *scene.Model, drawn *render.Scene) Scene {
	s := Of(m, drawn, plain)
	for _, l := range drawn.Overlay.Lines {
		s.Lines = append(s.Lines, Line{Name: "as gauged", Points: l.Points, Colour: l.Colour})
	}
	s.Camera = &Camera{Name: "view", View: drawn.Camera, Aspect: 1.6}
	s.Extras = map[string]any{"exaggeration": 100.0, "hull": s.Name}
	return s
}

func written(t *testing.T, s Scene) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := s.Write(&out); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// back takes a point of a file to S, mm.
func back(v mgl64.Vec3) mgl64.Vec3 { return mgl64.Vec3{v[2], v[0], v[1]}.Mul(1000) }

// sameM is how near a point read back must be to the drawn one, in metres.
const sameM = 1e-6

// TestWhatIsReadBackIsWhatWasDrawn compares every point and triangle of every
// built-in hull with the posed scene, and holds each piece to be closed and, at
// true scale, right side out: drawn a hundred times its travel, a mount's hat
// may sink through its rubber.
func TestWhatIsReadBackIsWhatWasDrawn(t *testing.T) {
	for _, hull := range assets.HullNames() {
		for _, n := range []float64{1, 100} {
			m, drawn := posed(t, hull, n, n > 1)
			s := whole(m, drawn)
			r := readable(t, written(t, s))
			pieces := 0
			for i, thing := range s.Things {
				if r.Meshes[i].Name != thing.Name || len(r.Meshes[i].Primitives) != len(thing.Parts) {
					t.Fatalf("%s: %q has %d pieces, read back as %q with %d", hull, thing.Name, len(thing.Parts), r.Meshes[i].Name, len(r.Meshes[i].Primitives))
				}
				for k := range thing.Parts {
					pieces++
					if why := r.differs(r.Meshes[i].Primitives[k], &thing.Parts[k], n == 1); why != "" {
						t.Errorf("%s x %g, %s, piece %d: %s", hull, n, thing.Name, k, why)
					}
				}
			}
			shown := 0
			for i := range drawn.Parts {
				if !drawn.Parts[i].Hidden {
					shown++
				}
			}
			if pieces != shown || shown < 30 {
				t.Errorf("%s: %d pieces written, %d drawn", hull, pieces, shown)
			}
		}
	}
}

// differs says how a primitive is not the part, or "".
func (r *readBack) differs(p primitive, part *render.Part, trueScale bool) string {
	points, indices := r.vectors(p.Attributes.Position), r.indices(*p.Indices)
	if len(points) != len(part.Mesh.Positions) || len(indices) != 3*len(part.Mesh.Triangles) {
		return fmt.Sprintf("%d points, %d indices", len(points), len(indices))
	}
	for i, x := range part.Mesh.Positions {
		if want := part.Transform.Apply(double(x)); back(points[i]).Sub(want).Len() > 1000*sameM {
			return fmt.Sprintf("a point at %v, drawn at %v", back(points[i]), want)
		}
	}
	for i, t := range part.Mesh.Triangles {
		for k, v := range t {
			if indices[3*i+k] != int(v) {
				return fmt.Sprintf("triangle %d is %v", i, indices[3*i:3*i+3])
			}
		}
	}
	material := r.Materials[p.Material]
	if blend := material.AlphaMode == "BLEND"; blend != (part.Colour.A < 255) || math.Abs(material.PBR.BaseColor[3]*255-float64(part.Colour.A)) > 1e-9 {
		return fmt.Sprintf("alpha %d written as %+v", part.Colour.A, material)
	}
	s := welded(points, indices)
	if open := unbalanced(s); open != 0 {
		return fmt.Sprintf("%d edges are open", open)
	}
	if v := s.VolumeMM3(); !(v > 0) && trueScale {
		return fmt.Sprintf("volume %g m3", v)
	}
	return ""
}

// unbalanced counts the edges that do not run as often one way as the other: a
// closed solid has none, even where two of its surfaces touch.
func unbalanced(s *solid.Solid) int {
	runs := map[[2]int]int{}
	for _, t := range s.Triangles {
		for i := range 3 {
			runs[[2]int{t[i], t[(i+1)%3]}]++
			runs[[2]int{t[(i+1)%3], t[i]}]--
		}
	}
	n := 0
	for _, more := range runs {
		if more != 0 {
			n++
		}
	}
	return n
}

// welded makes points one that a crease holds twice.
func welded(points []mgl64.Vec3, indices []int) *solid.Solid {
	s, seen := &solid.Solid{}, map[mgl64.Vec3]int{}
	index := func(i int) int {
		p := points[i]
		if _, ok := seen[p]; !ok {
			seen[p] = len(s.Points)
			s.Points = append(s.Points, p)
		}
		return seen[p]
	}
	for i := 0; i < len(indices); i += 3 {
		t := [3]int{index(indices[i]), index(indices[i+1]), index(indices[i+2])}
		if t[0] != t[1] && t[1] != t[2] && t[2] != t[0] {
			s.Triangles = append(s.Triangles, t)
		}
	}
	return s
}

// TestTheBoatStandsLevel: the boat's node turns the world's up onto +Y, ahead
// onto +Z and port onto +X.
func TestTheBoatStandsLevel(t *testing.T) {
	m, drawn := posed(t, "Eider", 1, false)
	r := readable(t, written(t, whole(m, drawn)))
	q := r.Nodes[0].Rotation
	level := mgl64.Quat{W: q[3], V: mgl64.Vec3{q[0], q[1], q[2]}}
	up, port := m.Up(), mgl64.Vec3{0, 1, 0}
	for i, c := range []struct{ of, want mgl64.Vec3 }{
		{port, mgl64.Vec3{1, 0, 0}}, {up, mgl64.Vec3{0, 1, 0}}, {port.Cross(up), mgl64.Vec3{0, 0, 1}},
	} {
		if got := level.Rotate(turned(c.of)); got.Sub(c.want).Len() > 1e-12 {
			t.Errorf("axis %d is shown as %v, not %v", i, got, c.want)
		}
	}
	// The camera stands where the picture's eye is and looks its way.
	eye := r.Nodes[len(r.Nodes)-1]
	c := drawn.Camera
	if got := back(mgl64.Vec3(*eye.Translation)); got.Sub(c.Eye).Len() > 1e-6 {
		t.Errorf("the eye is at %v, not %v", got, c.Eye)
	}
	look := mgl64.Quat{W: eye.Rotation[3], V: mgl64.Vec3{eye.Rotation[0], eye.Rotation[1], eye.Rotation[2]}}.Rotate(mgl64.Vec3{0, 0, -1})
	if want := turned(c.Target.Sub(c.Eye).Normalize()); look.Sub(want).Len() > 1e-9 {
		t.Errorf("the camera looks along %v, not %v", look, want)
	}
}

func TestTheSameSceneIsTheSameBytes(t *testing.T) {
	m, drawn := posed(t, "Wren", 50, true)
	other, again := posed(t, "Wren", 50, true)
	if !bytes.Equal(written(t, whole(m, drawn)), written(t, whole(other, again))) {
		t.Error("written twice, the bytes differ")
	}
}

func TestExtrasStandInAssetAndScene(t *testing.T) {
	m, drawn := posed(t, "Wren", 100, false)
	r := readable(t, written(t, whole(m, drawn)))
	for _, e := range []map[string]any{r.Asset.Extras, r.Scenes[0].Extras} {
		if e["exaggeration"] != 100.0 || e["hull"] != "Wren" {
			t.Errorf("extras are %v", e)
		}
	}
}

// TestMirroredAndFlattenedParts: a mirror image stays right side out, and what
// is pressed flat keeps normals of length one.
func TestMirroredAndFlattenedParts(t *testing.T) {
	block := solid.Block{High: mgl64.Vec3{100, 40, 30}}.Solid().Mesh()
	mirror := render.Affine{-1, 0, 0, 5, 0, 1, 0, 0, 0, 0, 1, 0}
	s := Scene{Name: "blocks", Up: mgl64.Vec3{0, 0, 1}, Things: []Thing{
		{Name: "mirrored", Parts: []render.Part{{Mesh: block, Transform: mirror}}},
		{Name: "flat", Parts: []render.Part{{Mesh: block, Transform: render.Affine{1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0}}}},
	}}
	r := readable(t, written(t, s))
	p := r.Meshes[0].Primitives[0]
	points, indices := r.vectors(p.Attributes.Position), r.indices(*p.Indices)
	if v := welded(points, indices).VolumeMM3(); math.Abs(v-120000e-9) > 1e-9 {
		t.Errorf("the mirrored block has volume %g m3", v)
	}
	for i := 0; i < len(indices); i += 3 {
		a, b, c := points[indices[i]], points[indices[i+1]], points[indices[i+2]]
		face, n := b.Sub(a).Cross(c.Sub(a)), r.vectors(*p.Attributes.Normal)[indices[i]]
		if face.Dot(n) <= 0 {
			t.Fatalf("triangle %d looks along %v, its normal along %v", i/3, face, n)
		}
	}
}

// TestTheReaderFindsWhatIsWrong spoils files that the reader must refuse.
func TestTheReaderFindsWhatIsWrong(t *testing.T) {
	m, drawn := posed(t, "Bench", 1, false)
	good := written(t, whole(m, drawn))
	for name, spoil := range map[string]func(r *readBack){
		"bounds":   func(r *readBack) { i := r.Meshes[0].Primitives[0].Attributes.Position; r.Accessors[i].Max[1] *= 1.01 },
		"normal":   func(r *readBack) { r.bin[r.BufferViews[viewNormals].ByteOffset+3] ^= 1 },
		"index":    func(r *readBack) { r.bin[r.BufferViews[viewIndices].ByteOffset+2] = 1 },
		"length":   func(r *readBack) { r.Buffers[0].ByteLength-- },
		"rotation": func(r *readBack) { r.Nodes[0].Rotation[3] *= 1.1 },
		"loose":    func(r *readBack) { r.Nodes[0].Children = slices.Delete(r.Nodes[0].Children, 0, 1) },
	} {
		r := readable(t, bytes.Clone(good))
		spoil(r)
		if why := r.fault(); why == "" || strings.Contains(why, "%!") {
			t.Errorf("%s: fault %q", name, why)
		}
	}
}
