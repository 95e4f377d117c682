package kinematics

// This file makes a hull's shaft into a line that package shaftline can bend.

import (
	"fmt"
	"math"

	"aligner/hulls"
	"aligner/kinematics/shaftline"
)

// seaWaterKgPerM3 is the density of sea water.
const seaWaterKgPerM3 = 1025

// lipNPerMM is the stiffness of the log at each lip.
const lipNPerMM = 1e5

// Stations a bearing is laid out as. A shaft that hangs or is bolted to a
// crooked engine leans on the very edge of its bearing and wants more; tests
// hold both against finer ones.
const (
	stationsCoarse = 17
	stationsFine   = 65
	stationsFinest = 129
)

// Line is a hull's shaft as a beam, dry or afloat. Afloat, buoyancy acts on
// the shaft aft of the log's aft end and on the propeller.
func Line(h *hulls.Hull, afloat bool) (shaftline.Line, error) {
	metal, err := hulls.MaterialOf(h.Shaft.Material, h.Shaft.Condition)
	if err != nil {
		return shaftline.Line{}, err
	}
	d := h.Shaft.DiameterMM
	across := gravityMPerS2 * math.Cos(h.ShaftAngleDeg*math.Pi/180)
	areaM2 := math.Pi / 4 * d * d * 1e-6
	dry := metal.DensityGPerCM3 * 1000 * areaM2 * across / 1000
	wet, propeller := dry, h.Propeller.MassKg
	if afloat {
		wet -= seaWaterKgPerM3 * areaM2 * across / 1000
		propeller -= seaWaterKgPerM3 * h.Propeller.MassKg / h.Propeller.DensityKgM3
	}
	line := shaftline.Line{
		LengthMM:             h.Shaft.LengthMM,
		DiameterMM:           d,
		BendingStiffnessNMM2: shaftline.CircularBendingStiffness(metal.YoungGPa*1000, d),
		WeightNPerMM:         dry,
		AftWeightNPerMM:      wet,
		AftFromMM:            h.Log.AtMM - h.Log.LengthMM/2,
		HookAtMM:             -h.Coupling.ShaftHalfLengthMM / 2,
		Points: []shaftline.Point{
			{AtMM: -h.Coupling.ShaftHalfLengthMM / 2, WeightN: h.Coupling.ShaftHalfMassKg * across, MassKg: h.Coupling.ShaftHalfMassKg},
			{AtMM: h.Propeller.AtMM, WeightN: propeller * across, MassKg: h.Propeller.MassKg},
		},
	}
	for _, b := range h.Bearings {
		line.Bearings = append(line.Bearings, shaftline.Bearing{Name: b.Name, AtMM: b.AtMM, LengthMM: b.LengthMM,
			StiffnessNPerMM: b.RadialStiffnessNPerMM, ClearanceMM: b.DiametralClearanceMM, OffsetMM: b.OffsetMM})
	}
	for _, end := range [...]float64{-0.5, 0.5} {
		line.Lips = append(line.Lips, shaftline.Lip{AtMM: h.Log.AtMM + end*h.Log.LengthMM,
			StiffnessNPerMM: lipNPerMM, ClearanceMM: h.Log.BoreMM - d, OffsetMM: h.Log.OffsetMM})
	}
	if s := h.StuffingBox; s != nil {
		line.Points = append(line.Points, shaftline.Point{AtMM: s.AtMM, WeightN: s.MassKg * across, MassKg: s.MassKg})
		if s.RadialStiffnessNPerMM > 0 {
			line.Springs = append(line.Springs, shaftline.Spring{AtMM: s.AtMM,
				StiffnessNPerMM: s.RadialStiffnessNPerMM, OffsetMM: s.OffsetMM})
		}
	}
	if why := line.Invalid(); why != "" {
		return line, fmt.Errorf("%s: %s", h.Name, why)
	}
	return line, nil
}
