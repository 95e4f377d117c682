package gltf

// This file holds the JSON of a file, under the names of the specification's
// chapter 5, as far as it is used.

type document struct {
	Asset       asset        `json:"asset"`
	Scene       int          `json:"scene"`
	Scenes      []sceneNodes `json:"scenes"`
	Nodes       []node       `json:"nodes"`
	Cameras     []camera     `json:"cameras,omitempty"`
	Meshes      []mesh       `json:"meshes,omitempty"`
	Materials   []material   `json:"materials,omitempty"`
	Accessors   []accessor   `json:"accessors,omitempty"`
	BufferViews []bufferView `json:"bufferViews,omitempty"`
	Buffers     []buffer     `json:"buffers,omitempty"`
}

type asset struct {
	Version   string         `json:"version"`
	Generator string         `json:"generator"`
	Extras    map[string]any `json:"extras,omitempty"`
}

type sceneNodes struct {
	Name   string         `json:"name"`
	Nodes  []int          `json:"nodes"`
	Extras map[string]any `json:"extras,omitempty"`
}

type node struct {
	Name        string      `json:"name"`
	Children    []int       `json:"children,omitempty"`
	Mesh        *int        `json:"mesh,omitempty"`
	Camera      *int        `json:"camera,omitempty"`
	Rotation    *[4]float64 `json:"rotation,omitempty"` // quaternion x, y, z, w
	Translation *[3]float64 `json:"translation,omitempty"`
}

type camera struct {
	Type        string      `json:"type"`
	Perspective perspective `json:"perspective"`
}

type perspective struct {
	AspectRatio float64 `json:"aspectRatio"`
	YFov        float64 `json:"yfov"` // rad
	ZNear       float64 `json:"znear"`
}

type mesh struct {
	Name       string      `json:"name"`
	Primitives []primitive `json:"primitives"`
}

type primitive struct {
	Attributes attributes `json:"attributes"`
	Indices    *int       `json:"indices,omitempty"`
	Material   int        `json:"material"`
	Mode       *int       `json:"mode,omitempty"` // triangles where missing
}

type attributes struct {
	Position int  `json:"POSITION"`
	Normal   *int `json:"NORMAL,omitempty"`
}

type material struct {
	PBR         metallicRoughness `json:"pbrMetallicRoughness"`
	AlphaMode   string            `json:"alphaMode,omitempty"`
	DoubleSided bool              `json:"doubleSided,omitempty"`
}

type metallicRoughness struct {
	BaseColor [4]float64 `json:"baseColorFactor"` // linear
	Metallic  float64    `json:"metallicFactor"`
	Roughness float64    `json:"roughnessFactor"`
}

type accessor struct {
	BufferView    int       `json:"bufferView"`
	ByteOffset    int       `json:"byteOffset"`
	ComponentType int       `json:"componentType"`
	Count         int       `json:"count"`
	Type          string    `json:"type"`
	Min           []float64 `json:"min,omitempty"`
	Max           []float64 `json:"max,omitempty"`
}

type bufferView struct {
	Buffer     int `json:"buffer"`
	ByteOffset int `json:"byteOffset"`
	ByteLength int `json:"byteLength"`
	ByteStride int `json:"byteStride,omitempty"`
	Target     int `json:"target"`
}

type buffer struct {
	ByteLength int `json:"byteLength"`
}

// Numbers of the specification.
const (
	float       = 5126
	unsignedInt = 5125

	arrayBuffer        = 34962
	elementArrayBuffer = 34963

	lineStrip = 3
)
