package gauge

// This file holds each kind of reading to what it must say.

import (
	"math"
	"testing"

	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
)

func gauging(held string, readings ...visit.Reading) visit.Event {
	return visit.Event{Gauging: &visit.Gauging{Held: held, Readings: readings}}
}

// TestBracketSag is the worked example of a dial whose bracket droops: -14 read
// at 6 with nought at 12, -6 of it sag (a straight bar shows that), leaves -8:
// the half the dial touches stands 4 thou high. Worked out from the geometry; a
// minus at the bottom meaning high is common practice.
func TestBracketSag(t *testing.T) {
	m := model(t, "kittiwake")
	e := estimate(t, m, gauging("centred",
		visit.Dial{On: "rim", ClockDeg: 180, Reads: visit.Thou(-14), Sag: visit.Thou(-6)},
		visit.Dial{On: "rim", ClockDeg: 90, Reads: visit.Thou(-7), Sag: visit.Thou(-6)}))
	near(t, "height", (e.OffsetMM[1]-m.middleMM[1])/thouMM, 4, 0.02)
	// At 3: -7 + 3 of sag is -4; of height alone it would be -4 as well.
	near(t, "to port", (e.OffsetMM[0]-m.middleMM[0])/thouMM, 0, 0.02)
}

// TestRimSteps: engine side high at the top, and to port.
func TestRimSteps(t *testing.T) {
	m := model(t, "kittiwake")
	e := estimate(t, m, gauging("centred",
		visit.RimStep{ClockDeg: 0, High: visit.EngineSide, Goes: visit.Thou(5), Stops: visit.Thou(6)},
		visit.RimStep{ClockDeg: 180, High: visit.ShaftSide, Goes: visit.Thou(5), Stops: visit.Thou(6)},
		visit.RimStep{ClockDeg: 270, High: visit.EngineSide, Goes: visit.Thou(2), Stops: visit.Thou(3)}))
	near(t, "height", (e.OffsetMM[1]-m.middleMM[1])/thouMM, 5.5, 0.1)
	near(t, "to port", (e.OffsetMM[0]-m.middleMM[0])/thouMM, 2.5, 0.2)
	seated := estimate(t, m, gauging("seated",
		visit.RimStep{ClockDeg: 0, High: visit.EngineSide, Goes: visit.Thou(5), Stops: visit.Thou(6)}))
	if len(seated.SetAside) != 1 || seated.SetAside[0].Why != PilotIn {
		t.Errorf("a step beside an engaged pilot: %v", seated.SetAside)
	}
}

// truth is a boat thrown off and held in one way, as the mechanics have it.
func truth(t *testing.T, held kinematics.Held) (kinematics.Result, [4][2]float64) {
	t.Helper()
	d, err := kinematics.Prepare(builtin.Hull(t, "kittiwake"))
	if err != nil {
		t.Fatal(err)
	}
	var r kinematics.Result
	s := kinematics.State{Held: held, LiftMM: []float64{0.3, 0.3, 0.6, 0.6}, SlideMM: []float64{0.1, 0.1, -0.3, -0.3}}
	if err := d.Solve(&s, &r); err != nil {
		t.Fatal(err)
	}
	var at [4][2]float64
	for i, room := range model(t, "kittiwake").rooms {
		at[i] = front(d, room.xMM)
	}
	return r, at
}

// leaves reads a gap at every second hour with leaves a tenth of a thou apart.
func leaves(g kinematics.Gap, above float64) []visit.Reading {
	var all []visit.Reading
	for hour := 0; hour < 12; hour += 2 {
		thou := math.Floor((g.AtHourMM(hour)/thouMM+above)*10) / 10
		all = append(all, visit.Leaf{ClockDeg: float64(30 * hour), Goes: visit.Thou(math.Max(thou, 0.01)), Stops: visit.Thou(math.Max(thou, 0.01) + 0.1)})
	}
	return all
}

// TestCentredAndSeatedAgree: the same engine gauged centred, with its offset by
// rim steps, and seated gives the same seated gap.
func TestCentredAndSeatedAgree(t *testing.T) {
	m := model(t, "kittiwake")
	centred, _ := truth(t, kinematics.Centred)
	seated, _ := truth(t, kinematics.Seated)
	readings := leaves(centred.Gap, 0)
	for hour := 0; hour < 12; hour += 3 {
		d := direction(float64(30 * hour))
		step := -(centred.OffsetMM[0]*d[0] + centred.OffsetMM[1]*d[1]) // engine over shaft
		high := visit.EngineSide
		if step < 0 {
			high = visit.ShaftSide
		}
		readings = append(readings, visit.RimStep{ClockDeg: float64(30 * hour), High: high,
			Goes: visit.MM(math.Max(0.0001, math.Abs(step)-0.001)), Stops: visit.MM(math.Abs(step) + 0.001)})
	}
	g := gauging("centred", readings...)
	g.Gauging.Apart = visit.Thou(20)
	e := estimate(t, m, g)
	near(t, "A", e.Gap.MeanMM[0]/thouMM, seated.Gap.CosMM/thouMM, 0.1)
	near(t, "B", e.Gap.MeanMM[1]/thouMM, seated.Gap.SinMM/thouMM, 0.1)
	near(t, "height", e.OffsetMM[1], centred.TranslationMM[2], 0.02)
}

// TestStripsInTheLog show the engine's height on a boat with one bearing.
func TestStripsInTheLog(t *testing.T) {
	m := model(t, "kittiwake")
	seated, at := truth(t, kinematics.Seated)
	readings := leaves(seated.Gap, 0)
	room := m.rooms[0] // the log's fore lip
	for hour := 0; hour < 12; hour += 3 {
		d := direction(float64(30 * hour))
		c := room.halfMM + d[0]*(room.boreMM[0]-at[0][0]) + d[1]*(room.boreMM[1]-at[0][1])
		readings = append(readings, visit.Clearance{Where: "log", End: "fore", ClockDeg: float64(30 * hour), Goes: visit.MM(c - 0.02), Stops: visit.MM(c + 0.02)})
	}
	e := estimate(t, m, gauging("seated", readings...))
	apart, _ := truth(t, kinematics.Centred)
	near(t, "height", e.OffsetMM[1], apart.TranslationMM[2], 0.05)
	near(t, "to port", e.OffsetMM[0], apart.TranslationMM[1], 0.05)
	if e.OffsetSD[1] > 0.3 {
		t.Errorf("height known to %.2f mm", e.OffsetSD[1])
	}
}

// TestDialAgreesWithLeaves: a dial carried round the face by the shaft half.
func TestDialAgreesWithLeaves(t *testing.T) {
	m := model(t, "kittiwake")
	g := kinematics.Gap{Known: true, G0MM: 0.3, CosMM: 0.08, SinMM: -0.05}
	var dial []visit.Reading
	for hour := 1; hour < 12; hour++ {
		dial = append(dial, visit.Dial{On: "face", ClockDeg: float64(30 * hour), Reads: visit.MM(g.AtHourMM(0) - g.AtHourMM(hour))})
	}
	a := estimate(t, m, gauging("seated", dial...))
	near(t, "A", a.Gap.MeanMM[0], g.CosMM, 0.001)
	near(t, "B", a.Gap.MeanMM[1], g.SinMM, 0.001)
}

// TestLeafRoundAgrees: one leaf of 6 thou enters above the line where the gap
// is 6.
func TestLeafRoundAgrees(t *testing.T) {
	m := model(t, "kittiwake")
	// 5 + 5 cos t: 6 thou where cos t = 0.2.
	at := math.Acos(0.2) * 180 / math.Pi
	e := estimate(t, m, gauging("seated",
		visit.LeafRound{Leaf: visit.Thou(6), Enters: []visit.Arc{{FromDeg: 360 - at, ToDeg: at}}, Stops: []visit.Arc{{FromDeg: at, ToDeg: 360 - at}}},
		visit.Leaf{ClockDeg: 0, Goes: visit.Thou(9.5), Stops: visit.Thou(10.5)}))
	near(t, "A", e.Gap.MeanMM[0]/thouMM, 5, 0.3)
	near(t, "B", e.Gap.MeanMM[1]/thouMM, 0, 0.3)
}

// TestMirrorAndUnits: port for starboard turns the sign of B and nothing else;
// millimetres say the same as thou.
func TestMirrorAndUnits(t *testing.T) {
	m := model(t, "kittiwake")
	build := func(sign float64, mm bool) *Estimate {
		g := &visit.Gauging{Held: "seated"}
		for hour, thou := range [12]float64{9, 8, 6, 4, 2, 1, 1, 2, 4, 6, 8, 9} {
			unit := func(v float64) visit.Length {
				if mm {
					return visit.MM(v * thouMM)
				}
				return visit.Thou(v)
			}
			g.Readings = append(g.Readings, visit.Leaf{ClockDeg: math.Mod(360+sign*float64(30*hour+10), 360), Goes: unit(thou), Stops: unit(thou + 1)})
		}
		return estimate(t, m, visit.Event{Gauging: g})
	}
	one, other, metric := build(1, false), build(-1, false), build(1, true)
	near(t, "A mirrored", other.Gap.MeanMM[0], one.Gap.MeanMM[0], 1e-9)
	near(t, "B mirrored", other.Gap.MeanMM[1], -one.Gap.MeanMM[1], 1e-9)
	near(t, "A in mm", metric.Gap.MeanMM[0], one.Gap.MeanMM[0], 1e-12)
	near(t, "p mirrored", other.Within, one.Within, 1e-9)
}

// TestNotForMoves: hanging, bolted, levered, bolts in: kept, not used.
func TestNotForMoves(t *testing.T) {
	m := model(t, "kittiwake")
	leaf := visit.Leaf{ClockDeg: 0, Goes: visit.Thou(3), Stops: visit.Thou(4)}
	for held, why := range map[string]Reason{"hanging": NotHeld, "snug": BoltsIn, "bolted": BoltsIn} {
		e := estimate(t, m, gauging(held, leaf))
		if e.Status != Nothing || len(e.SetAside) != 1 || e.SetAside[0].Why != why {
			t.Errorf("%s: %v %v", held, e.Status, e.SetAside)
		}
	}
	levered := gauging("seated", leaf)
	levered.Gauging.LeverOn = true
	if e := estimate(t, m, levered); e.Status != Nothing || e.SetAside[0].Why != LeverOn {
		t.Errorf("levered: %v", e.SetAside)
	}
}

// TestAllowances are those in print (2 thou: US Army TM 55-1905-220-14; 3 thou
// and 1 thou per inch of face, 4 thou across: common practice, no source).
func TestAllowances(t *testing.T) {
	for _, c := range []struct {
		rule       visit.Rule
		faceMM, mm float64
	}{
		{visit.Rule{Limits: visit.LargestGap, Limit: visit.Thou(2)}, 101.6, 0.0508},
		{visit.Rule{Limits: visit.LargestGap, Limit: visit.Thou(3)}, 127, 0.0762},
		{visit.Rule{Limits: visit.DifferenceAcross, Limit: visit.Thou(4)}, 101.6, 0.1016},
		{visit.Rule{Limits: visit.PerInch, Limit: visit.Thou(1)}, 76.2, 0.0762},
	} {
		near(t, c.rule.Limits, c.rule.LimitMM(c.faceMM), c.mm, 1e-12)
	}
}
