package kinematics

import (
	"fmt"
	"testing"

	"aligner/hulls"
)

func kittiwake() hulls.Hull {
	h := hulls.Hull{Name: "Kittiwake", Layout: hulls.InLine, ShaftAngleDeg: 12,
		Engine:   hulls.Engine{MassKg: 430, CentreOfMassMM: [3]float64{520, 0, 160}},
		Coupling: hulls.Coupling{OuterDiameterMM: 101.6, PilotDiameterMM: 63.5, ShaftHalfMassKg: 2.9, ShaftHalfLengthMM: 64},
		Shaft:    hulls.Shaft{DiameterMM: 25.4, LengthMM: 1680, Material: "UNS S20910"},
		Bearings: []hulls.Bearing{{Name: "strut", AtMM: -1400, LengthMM: 102, RadialStiffnessNPerMM: 6000, DiametralClearanceMM: 0.2}},
		Log:      hulls.Log{AtMM: -600, LengthMM: 240, BoreMM: 38}, Propeller: hulls.Propeller{MassKg: 4.6, AtMM: -1590, DiameterMM: 330, DensityKgM3: 7600}}
	for _, x := range []float64{820, 260} {
		for _, y := range []float64{290, -290} {
			h.Mounts = append(h.Mounts, hulls.Mount{Name: fmt.Sprint(x, y), AtMM: [3]float64{x, y, 40}, Kind: hulls.Rubber, ThreadPitchMM: 1.41111, StiffnessNPerMM: hulls.Stiffness{Along: 420, ForeAft: 460, Athwart: 230}})
		}
	}
	return h
}

func TestTry(t *testing.T) {
	d, err := Prepare(kittiwake())
	if err != nil {
		t.Fatal(err)
	}
	for _, held := range HeldWays {
		for _, lift := range [][]float64{nil, {1, 0, 0, 0}, {1, 1, 0, 0}, {0, 0, 1, 1}} {
			var r Result
			if err := d.Solve(&State{Held: held, LiftMM: lift}, &r); err != nil {
				t.Error(err)
				continue
			}
			fmt.Printf("%s %v it %d res %.2g t %.4f rot %.6f\n gap %.5f %.5f front %.4f slope %.6f end %.3f moment %.1f loads %.1f bearing %.2f log %.2f clear %.3f %.3f\n parts %.4f\n", held, lift, r.Status.Iterations, r.Status.ResidualN, r.TranslationMM, r.RotationRad, r.Gap.CosMM, r.Gap.SinMM, r.FrontEndMM, r.FrontEndSlope, r.EndForceN, r.CouplingMomentNMM, r.MountLoadN, r.BearingForceN, r.LogForceN, r.BearingClearanceMM, r.LogClearanceMM, r.Parts)
		}
	}
}

func BenchmarkDrag(b *testing.B) {
	d, _ := Prepare(kittiwake())
	var r Result
	s := State{Held: Seated, LiftMM: make([]float64, 4)}
	n := 0
	for i := 0; b.Loop(); i++ {
		s.LiftMM[0] = 0.01 * float64(i%100)
		d.Solve(&s, &r)
		n += r.Status.Iterations
	}
	b.ReportMetric(float64(n)/float64(b.N), "its")
}

func BenchmarkCold(b *testing.B) {
	d, _ := Prepare(kittiwake())
	var r Result
	s := State{Held: Seated, LiftMM: make([]float64, 4)}
	n := 0
	for i := 0; b.Loop(); i++ {
		d.Forget()
		s.LiftMM[0] = 0.01 * float64(i%100)
		d.Solve(&s, &r)
		n += r.Status.Iterations
	}
	b.ReportMetric(float64(n)/float64(b.N), "its")
}

func BenchmarkPrepare(b *testing.B) {
	h := kittiwake()
	for b.Loop() {
		Prepare(h)
	}
}

func TestStations(t *testing.T) {
	for _, held := range []Held{Hanging, Centred, Seated, Bolted} {
		for _, lift := range [][]float64{{0, 0, 0, 0}, {2, 0, 0, 0}, {0, 0, 3, 3}} {
			var ref Result
			for _, n := range []int{2049, 9, 17, 25, 33, 65, 129} {
				h := kittiwake()
				d, _ := Prepare(h)
				for a := range d.shafts {
					line, _ := Line(&h, a == 1)
					d.shafts[a][0], _ = newBent(line, n)
					d.shafts[a][1], _ = newBent(line, n)
				}
				var r Result
				if err := d.Solve(&State{Held: held, LiftMM: lift}, &r); err != nil {
					t.Fatal(err)
				}
				if n == 2049 {
					ref = r
					fmt.Printf("%s %v gap %.6f %.6f front %.5f brg %.5f clear %.5f\n", held, lift, r.Gap.CosMM, r.Gap.SinMM, r.FrontEndMM, r.BearingForceN, r.BearingClearanceMM)
					continue
				}
				fmt.Printf("   %4d it %d gap %+.2e %+.2e front %+.2e %+.2e brg %+.2e clr %+.2e mom %+.2e\n", n, r.Status.Iterations, r.Gap.CosMM-ref.Gap.CosMM, r.Gap.SinMM-ref.Gap.SinMM, r.FrontEndMM[0]-ref.FrontEndMM[0], r.FrontEndMM[1]-ref.FrontEndMM[1], r.BearingForceN[0][1]-ref.BearingForceN[0][1], r.BearingClearanceMM[0]-ref.BearingClearanceMM[0], r.CouplingMomentNMM-ref.CouplingMomentNMM)
			}
		}
	}
}
