package scene

// This file names what can be pointed at.

// Kind is what a piece is part of.
type Kind uint8

// The kinds, as far as one would point at them.
const (
	Nothing Kind = iota
	EngineKind
	GearboxKind
	CouplingKind // either half
	MountKind
	NutKind // the adjusting nut of a mount
	ShaftKind
	LogKind
	StuffingBoxKind
	BearingKind
	PropellerKind
	BedKind
	HullKind
	StandKind
	WaterKind
)

// Pointed is what stands at a place of the picture.
type Pointed struct {
	Kind  Kind
	Index int // of the mount or bearing
}

// id packs it for render.Part.ID.
func (p Pointed) id() uint16 { return uint16(p.Kind)<<8 | uint16(p.Index&0xff) }

// PartOf says what part i of a posed scene is a piece of, and whether it is
// drawn where it is planned to stand.
func (m *Model) PartOf(i int) (of Pointed, planned bool) {
	if planned = i >= len(m.pieces); planned {
		i = m.ghosts[i-len(m.pieces)].of
	}
	return Pointed{m.pieces[i].kind, m.pieces[i].index}, planned
}
