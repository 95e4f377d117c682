package scene

// This file holds that a changed number of the hull changes the shape.

import (
	"testing"

	"aligner/hulls"
	"aligner/scene/solid"

	"github.com/go-gl/mathgl/mgl64"
)

// extent joins the solids of one kind and measures them.
func (m *Model) extent(kind Kind) (low, high mgl64.Vec3, volume float64) {
	var parts []*solid.Solid
	for i := range m.pieces {
		if m.pieces[i].kind == kind {
			parts = append(parts, m.pieces[i].solid)
			volume += m.pieces[i].solid.VolumeMM3()
		}
	}
	low, high = solid.Join(parts...).Bounds()
	return low, high, volume
}

func TestAChangedNumberChangesTheShape(t *testing.T) {
	drawn := NewModel(builtIn(t, "Eider"))
	for _, c := range []struct {
		what   string
		kind   Kind
		change func(*hulls.Hull)
	}{
		{"mass", EngineKind, func(h *hulls.Hull) { h.Engine.MassKg *= 1.3 }},
		{"centre of mass", EngineKind, func(h *hulls.Hull) { h.Engine.CentreOfMassMM[0] += 60 }},
		{"character", EngineKind, func(h *hulls.Hull) { h.Look.Engine = petrolV }},
		{"down angle", GearboxKind, func(h *hulls.Hull) { h.Engine.DownAngleDeg = 12 }},
		{"layout", GearboxKind, func(h *hulls.Hull) { h.Layout = hulls.VDrive }},
		{"face diameter", CouplingKind, func(h *hulls.Hull) { h.Coupling.OuterDiameterMM += 12 }},
		{"pilot", CouplingKind, func(h *hulls.Hull) { h.Coupling.PilotDiameterMM = 0 }},
		{"coupling length", CouplingKind, func(h *hulls.Hull) { h.Coupling.ShaftHalfLengthMM += 10 }},
		{"bolts", CouplingKind, func(h *hulls.Hull) { h.Coupling.Bolts.Count = 6 }},
		{"bolt thread", CouplingKind, func(h *hulls.Hull) { h.Coupling.Bolts.Thread = "M8x1.25" }},
		{"mount height", MountKind, func(h *hulls.Hull) { h.Mounts[0].AtMM[2] += 15 }},
		{"mount place", BedKind, func(h *hulls.Hull) { h.Mounts[0].AtMM[1] += 25 }},
		{"mount thread", NutKind, func(h *hulls.Hull) { h.Mounts[0].Thread = "M20x2.5" }},
		{"nut range", MountKind, func(h *hulls.Hull) { h.Mounts[0].NutRangeMM[1] += 5 }},
		{"slide range", MountKind, func(h *hulls.Hull) { h.Mounts[0].SlideRangeMM[1] += 25 }},
		{"solid feet", MountKind, func(h *hulls.Hull) { h.Mounts[0].Kind, h.Mounts[0].Thread = hulls.Solid, "" }},
		{"shaft diameter", ShaftKind, func(h *hulls.Hull) { h.Shaft.DiameterMM += 5 }},
		{"shaft length", ShaftKind, func(h *hulls.Hull) { h.Shaft.LengthMM += 40 }},
		{"bearing length", BearingKind, func(h *hulls.Hull) { h.Bearings[1].LengthMM += 20 }},
		{"bearing place", BearingKind, func(h *hulls.Hull) { h.Bearings[1].AtMM += 30 }},
		{"log bore", LogKind, func(h *hulls.Hull) { h.Log.BoreMM += 4 }},
		{"log length", LogKind, func(h *hulls.Hull) { h.Log.LengthMM += 30 }},
		{"stuffing box", StuffingBoxKind, func(h *hulls.Hull) { h.StuffingBox.AtMM += 12 }},
		{"hose", StuffingBoxKind, func(h *hulls.Hull) { h.Look.Hose = "bellows" }},
		{"propeller", PropellerKind, func(h *hulls.Hull) { h.Propeller.DiameterMM += 30 }},
		{"hull section", HullKind, func(h *hulls.Hull) { h.Look.HullSection = "vee" }},
		{"shaft angle", HullKind, func(h *hulls.Hull) { h.ShaftAngleDeg += 2 }},
	} {
		h := builtIn(t, "Eider")
		lowA, highA, a := drawn.extent(c.kind)
		c.change(&h)
		changed := NewModel(h)
		lowB, highB, b := changed.extent(c.kind)
		if lowA == lowB && highA == highB && a == b {
			t.Errorf("%s: the shape stays", c.what)
		}
		for i := range changed.pieces {
			if why := changed.pieces[i].solid.Fault(leastShape); why != "" {
				t.Errorf("%s: piece %d (kind %d): %s", c.what, i, changed.pieces[i].kind, why)
			}
		}
	}
}
