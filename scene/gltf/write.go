package gltf

// This file puts a file together: nodes, then the container of chapter 4.

import (
	"encoding/binary"
	"encoding/json"
	"io"
	"math"

	"aligner/scene/render"

	"github.com/go-gl/mathgl/mgl64"
)

// perMetre is how many of S's millimetres a metre has.
const perMetre = 1000.0

// turned is a direction of S in the file's axes.
func turned(v mgl64.Vec3) mgl64.Vec3 { return mgl64.Vec3{v[1], v[2], v[0]} }

// Write writes the scene as one binary file.
func (s *Scene) Write(w io.Writer) error {
	f := &file{}
	f.out.Asset = asset{Version: "2.0", Generator: "aligner", Extras: s.Extras}
	f.out.Scenes = []sceneNodes{{Name: s.Name, Nodes: []int{0}, Extras: s.Extras}}
	level := mgl64.QuatBetweenVectors(turned(s.Up).Normalize(), mgl64.Vec3{0, 1, 0})
	f.out.Nodes = []node{{Name: s.Name, Rotation: quaternion(level)}}
	for i := range s.Things {
		f.thing(&s.Things[i])
	}
	for i := range s.Lines {
		f.line(&s.Lines[i])
	}
	if s.Camera != nil {
		f.camera(s.Camera)
	}
	f.share()
	return f.write(w)
}

// hang puts a node under the boat's.
func (f *file) hang(n node) {
	boat := &f.out.Nodes[0]
	boat.Children = append(boat.Children, len(f.out.Nodes))
	f.out.Nodes = append(f.out.Nodes, n)
}

// meshNode hangs a mesh up under its name.
func (f *file) meshNode(name string, primitives []primitive) {
	at := len(f.out.Meshes)
	f.out.Meshes = append(f.out.Meshes, mesh{Name: name, Primitives: primitives})
	f.hang(node{Name: name, Mesh: &at})
}

// camera looks along -Z with +Y up, as glTF has it.
func (f *file) camera(c *Camera) {
	back := c.View.Eye.Sub(c.View.Target).Normalize()
	right := c.View.Up.Cross(back).Normalize()
	up := back.Cross(right)
	axes := mgl64.Mat3FromCols(turned(right), turned(up), turned(back))
	eye := turned(c.View.Eye).Mul(1 / perMetre)
	at := 0
	f.out.Cameras = []camera{{Type: "perspective", Perspective: perspective{
		AspectRatio: c.Aspect, YFov: c.View.FieldOfViewDeg * math.Pi / 180, ZNear: c.View.Near / perMetre,
	}}}
	f.hang(node{Name: c.Name, Camera: &at, Translation: (*[3]float64)(&eye),
		Rotation: quaternion(mgl64.Mat4ToQuat(axes.Mat4()))})
}

func quaternion(q mgl64.Quat) *[4]float64 {
	q = q.Normalize()
	return &[4]float64{q.V[0], q.V[1], q.V[2], q.W}
}

// line is a thing of lines.
func (f *file) line(l *Line) {
	points := make([]mgl64.Vec3, len(l.Points))
	for i, p := range l.Points {
		points[i] = turned(p).Mul(1 / perMetre)
	}
	mode := lineStrip
	f.meshNode(l.Name, []primitive{{
		Attributes: attributes{Position: f.vectors(&f.positions, viewPositions, points, true)},
		Material:   f.material(&render.Part{Colour: l.Colour, Gloss: 0}), Mode: &mode,
	}})
}

// The container's words.
const (
	magic     = 0x46546c67 // "glTF"
	version   = 2
	chunkJSON = 0x4e4f534a // "JSON"
	chunkBin  = 0x004e4942 // "BIN"
)

// write puts both chunks out, each padded to a multiple of four bytes.
func (f *file) write(w io.Writer) error {
	text, err := json.Marshal(&f.out)
	if err != nil {
		return err
	}
	for len(text)%4 != 0 {
		text = append(text, ' ')
	}
	bin := f.bytes()
	head := []uint32{magic, version, uint32(12 + 8 + len(text) + 8 + len(bin)), uint32(len(text)), chunkJSON}
	for _, part := range []any{head, text, []uint32{uint32(len(bin)), chunkBin}, bin} {
		if err := binary.Write(w, binary.LittleEndian, part); err != nil {
			return err
		}
	}
	return nil
}
