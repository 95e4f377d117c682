package rounds

// This file holds the lever rule against moves worked out by hand: from the
// lever itself, in exact fractions. They count thou and inches.

import (
	"math"
	"testing"

	"aligner/hulls"
)

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: %g, want %g", what, got, want)
	}
}

func TestLeverMovesWorkedOut(t *testing.T) {
	for _, c := range []struct {
		name                         string
		diameter, top, bottom, high  float64
		aft, fore                    float64
		slope, wantedAft, wantedFore float64
	}{
		{"M1", 5, 0.013, 0.003, +0.006, 10, 34, +0.0020, +0.014, +0.062},
		{"M2", 5, 0.003, 0.009, -0.004, 8, 30, -0.0012, -0.0056, -0.032},
		{"M3", 4, 0.005, 0.005, +0.012, 9, 28, 0, -0.012, -0.012},
		{"M4", 6, 0.0105, 0.0045, 0, 12, 40, +0.0010, +0.012, +0.040},
	} {
		s := SlopesOf((c.top-c.bottom)/2, 0, c.diameter)
		near(t, c.name+" slope", s.Up, c.slope, 1e-15)
		near(t, c.name+" aft", LeverMove(s.Up, c.aft, c.high), c.wantedAft, 1e-15)
		near(t, c.name+" fore", LeverMove(s.Up, c.fore, c.high), c.wantedFore, 1e-15)
	}
}

// Twelve stations of g0 10, cos 4, sin -2 thou, to a thousandth of a thou.
func TestLeverFromTwelveStations(t *testing.T) {
	gaps := []float64{14.000, 12.464, 10.268, 8.000, 6.268, 5.536, 6.000, 7.536, 9.732, 12.000, 13.732, 14.464}
	var clock []float64
	for i := range gaps {
		clock = append(clock, float64(30*i))
	}
	g0, cos, sin, ok := FitGap(clock, gaps)
	if !ok {
		t.Fatal("no fit")
	}
	near(t, "g0", g0, 10, 5e-4)
	near(t, "cos", cos, 4, 5e-4)
	near(t, "sin", sin, -2, 5e-4)
	s := SlopesOf(cos, sin, 5)
	near(t, "aft up", LeverMove(s.Up, 9, 5), 9.4, 0.01)
	near(t, "fore up", LeverMove(s.Up, 31, 5), 44.6, 0.01)
	near(t, "aft to starboard", LeverMove(s.Starboard, 9, -3), -4.2, 0.01)
	near(t, "fore to starboard", LeverMove(s.Starboard, 31, -3), -21.8, 0.01)
}

func TestFitGapNeedsThreePlaces(t *testing.T) {
	if _, _, _, ok := FitGap([]float64{0, 90}, []float64{1, 2}); ok {
		t.Error("a plane through two places")
	}
	if _, _, _, ok := FitGap([]float64{30, 30, 30}, []float64{1, 2, 3}); ok {
		t.Error("a plane through one place")
	}
}

// On a hull: open at the top, the fore pair goes up most; open to starboard, it
// goes to starboard. Rounded to what a spanner and a lever can do.
func TestLeverPlanOnAHull(t *testing.T) {
	h := hulls.Hull{Mounts: []hulls.Mount{
		{AtMM: [3]float64{800, 250, 0}, ThreadPitchMM: 1.5},
		{AtMM: [3]float64{-200, -250, 0}, ThreadPitchMM: 1.5},
	}}
	flats, slides := LeverPlan(&h, SlopesOf(0.1, 0.05, 100), 0.25)
	// 0.2/100 x 800 = 1.6 mm = 6.4 flats; x -200 = -0.4 mm = -1.6 flats.
	if flats[0] != 6 || flats[1] != -2 {
		t.Errorf("flats %v, want 6 and -2", flats)
	}
	// 0.1/100 x 800 = 0.8 to starboard; x -200 = 0.2 to port.
	if slides[0] != -0.75 || slides[1] != 0.25 {
		t.Errorf("slides %v, want -0.75 and 0.25", slides)
	}
	h.Engine.DownAngleDeg = 10
	h.Mounts[0].AtMM = [3]float64{0, 250, 1000}
	flats, _ = LeverPlan(&h, SlopesOf(5, 0, 100), 0.25)
	// sin 10 deg x 1000 x 0.1 = 17.365 mm; over cos 10 deg 17.633 mm, 70.5 flats.
	if flats[0] != 71 {
		t.Errorf("%d flats on a leaning stud, want 71", flats[0])
	}
}
