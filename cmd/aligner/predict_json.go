package main

// This file is a prediction for programs: one JSON object, units in its keys.

import "aligner/kinematics"

// predictionJSON is what predict --json prints. Gap keys are null for a
// hanging shaft.
type predictionJSON struct {
	Hull       string  `json:"hull"`
	Held       string  `json:"held"`
	Afloat     bool    `json:"afloat"`
	Status     string  `json:"status"`
	Iterations int     `json:"iterations"`
	ResidualN  float64 `json:"residual_n"`

	GapAtClockMM *[12]float64 `json:"gap_at_clock_mm"`
	CosMM        *float64     `json:"cos_mm"`
	SinMM        *float64     `json:"sin_mm"`
	SpreadMM     *float64     `json:"spread_mm"`
	OpensAtDeg   *float64     `json:"opens_at_deg"`
	Parts        *partsJSON   `json:"parts"`

	EngineTranslationMM [3]float64 `json:"engine_translation_mm"`
	EngineRotationRad   [3]float64 `json:"engine_rotation_rad"`
	FrontEndMM          [2]float64 `json:"front_end_mm"`
	FrontEndSlope       [2]float64 `json:"front_end_slope"`
	OffsetMM            [2]float64 `json:"offset_mm"`
	EndForceN           [2]float64 `json:"end_force_n"`

	MountLoadN         map[string]float64    `json:"mount_load_n"`
	BearingForceN      map[string][2]float64 `json:"bearing_force_n"`
	BearingClearanceMM map[string]float64    `json:"bearing_clearance_mm"`
	LogClearanceMM     float64               `json:"log_clearance_mm"`
	CouplingMomentNMM  float64               `json:"coupling_moment_nmm"`
	BendingStressMPa   float64               `json:"bending_stress_mpa"`
	BendingStressAtMM  float64               `json:"bending_stress_at_mm"`

	Centring *centringJSON `json:"centring,omitempty"`
}

// partsJSON are the parts of a gap, each [cos, sin]; they add up to it.
type partsJSON struct {
	TiltMM   [2]float64 `json:"tilt_mm"`
	SwingMM  [2]float64 `json:"swing_mm"`
	SagMM    [2]float64 `json:"sag_mm"`
	RunOutMM [2]float64 `json:"run_out_mm"`
}

// centringJSON is how a hanging shaft is brought to the middle of its travel.
type centringJSON struct {
	PullN              float64 `json:"pull_n"`
	RisePerNewtonMM    float64 `json:"rise_per_newton_mm"`
	HalfWeightRuleN    float64 `json:"half_weight_rule_n"`
	HalfWeightErrorMM  float64 `json:"half_weight_error_mm"`
	GapAcrossMMPerMM   float64 `json:"gap_across_mm_per_mm"`
	SteadyEnoughToPull bool    `json:"steady_enough_to_pull"`
}

func (p *prediction) json() predictionJSON {
	r := &p.result
	out := predictionJSON{
		Hull: p.hull.Name, Held: string(r.Held), Afloat: p.state.Afloat,
		Status: r.Status.Status.String(), Iterations: r.Status.Iterations, ResidualN: r.Status.ResidualN,
		EngineTranslationMM: r.TranslationMM, EngineRotationRad: r.RotationRad,
		FrontEndMM: r.FrontEndMM, FrontEndSlope: r.FrontEndSlope, OffsetMM: r.OffsetMM, EndForceN: r.EndForceN,
		MountLoadN: map[string]float64{}, BearingForceN: map[string][2]float64{"log": r.LogForceN},
		BearingClearanceMM: map[string]float64{}, LogClearanceMM: r.LogClearanceMM,
		CouplingMomentNMM: r.CouplingMomentNMM, BendingStressMPa: p.stressMPa, BendingStressAtMM: p.stressAtMM,
	}
	for i, m := range p.hull.Mounts {
		out.MountLoadN[m.Name] = r.MountLoadN[i]
	}
	for i, b := range p.hull.Bearings {
		out.BearingForceN[b.Name] = r.BearingForceN[i]
		out.BearingClearanceMM[b.Name] = r.BearingClearanceMM[i]
	}
	if r.Gap.Known {
		out.gap(r)
	}
	if c := p.centring; c != nil {
		out.Centring = &centringJSON{PullN: c.HookN, RisePerNewtonMM: c.MMPerN, HalfWeightRuleN: c.RuleN,
			HalfWeightErrorMM: c.RuleErrorMM, GapAcrossMMPerMM: c.GapPerHeight, SteadyEnoughToPull: c.ByForce()}
	}
	return out
}

// gap fills the keys that tell of the gap.
func (out *predictionJSON) gap(r *kinematics.Result) {
	g := r.Gap
	var clock [12]float64
	for hour := range clock {
		clock[hour] = g.AtHourMM(hour)
	}
	spread, opens := g.SpreadMM(), g.OpensAtDeg()
	out.GapAtClockMM, out.CosMM, out.SinMM, out.SpreadMM, out.OpensAtDeg = &clock, &g.CosMM, &g.SinMM, &spread, &opens
	out.Parts = &partsJSON{r.Parts.Tilt, r.Parts.Swing, r.Parts.Sag, r.Parts.RunOut}
}
