package paper

// Type fits its room, words are not lost, arrows turn the way they say.

import (
	"math"
	"strings"
	"testing"
	"time"

	"aligner/assets"
)

func blank() *Sheet {
	s := New(Head{Title: "a test", Date: time.Date(2026, 5, 14, 0, 0, 0, 0, time.UTC), Regular: assets.Font("regular"), Bold: assets.Font("bold")})
	s.AddPage()
	return s
}

func TestWrapLosesNothingAndFits(t *testing.T) {
	s := blank()
	text := "Slacken the jam nuts, turn, nip them up: Donaudampfschifffahrtsgesellschaftsmotorenlagerfußschraube, 12° and ±½ → done"
	for _, points := range []float64{5, 9.5, 17} {
		for _, w := range []float64{3, 12, 40, 180} {
			type_ := Type{Points: points}
			lines := s.Wrap(w, type_, text)
			joined := strings.Join(lines, "")
			if got, want := strings.ReplaceAll(joined, " ", ""), strings.ReplaceAll(text, " ", ""); got != want {
				t.Errorf("%v pt in %v mm: %q", points, w, got)
			}
			for _, line := range lines {
				if wide := s.WidthMM(type_, line); wide > w+1e-9 && len([]rune(line)) > 1 {
					t.Errorf("%v pt in %v mm: %q is %v wide", points, w, line, wide)
				}
			}
		}
	}
	if got := s.Wrap(20, Type{Points: 9}, "  "); len(got) != 0 {
		t.Errorf("nothing wraps to %q", got)
	}
}

func TestALineFitsItsRoom(t *testing.T) {
	s := blank()
	for _, w := range []float64{2, 8, 30, 150} {
		shrunk, text := s.fitted(w, Type{Points: 12, Bold: true}, "Great Ölüfßkormoran of the Outer Skerries")
		if s.WidthMM(shrunk, text) > w || shrunk.Points > 12 || shrunk.Points < leastPoints-1e-9 {
			t.Errorf("%v mm: %v pt, %q", w, shrunk.Points, text)
		}
	}
	if small, text := s.fitted(100, Type{Points: 4}, "short"); small.Points != 4 || text != "short" {
		t.Errorf("what fits became %v, %q", small, text)
	}
}

// TestAnglesRunClockwise: around the page from its top, as a clock.
func TestAnglesRunClockwise(t *testing.T) {
	c := Point{100, 100}
	for rad, want := range map[float64]Point{0: {100, 90}, math.Pi / 2: {110, 100}, math.Pi: {100, 110}, 3 * math.Pi / 2: {90, 100}} {
		if got := Around(c, 10, rad); math.Hypot(got.X-want.X, got.Y-want.Y) > 1e-9 {
			t.Errorf("%v: %v, want %v", rad, got, want)
		}
	}
	arc := Arc(c, 10, 0, math.Pi/2)
	if last := arc[len(arc)-1]; math.Hypot(last.X-110, last.Y-100) > 1e-9 {
		t.Errorf("the arc ends at %v", last)
	}
}
