package faces

// Numbers and times as people read them.

import (
	"math"
	"testing"
)

func TestOpensAt(t *testing.T) {
	for _, c := range []struct {
		deg  float64
		want string
	}{
		{0, "12"}, {45, "1:30"}, {90, "3"}, {180, "6"}, {270, "9"}, {-90, "9"}, {-45, "10:30"},
		{3.7, "12"}, {3.8, "12:15"}, {-3.7, "12"}, {-3.8, "11:45"}, {356, "11:45"}, {357, "12"},
		{360, "12"}, {405, "1:30"}, {127.4, "4:15"}, {-315, "1:30"},
	} {
		if got := OpensAt(c.deg * math.Pi / 180); got != c.want {
			t.Errorf("%g degrees: %q, want %q", c.deg, got, c.want)
		}
	}
}

func TestHourText(t *testing.T) {
	for hour, want := range map[int]string{0: "12", 1: "1", 11: "11", 12: "12", 13: "1", -1: "11", -12: "12"} {
		if got := HourText(hour); got != want {
			t.Errorf("hour %d: %q, want %q", hour, got, want)
		}
	}
}

func TestGapsAreWritten(t *testing.T) {
	thou, comma := Units{}, Units{DecimalComma: true}
	metric := Units{Metric: true, DecimalComma: true}
	for _, c := range []struct {
		u    Units
		mm   float64
		want string
	}{
		{thou, 0.2159, "8.5"}, {comma, 0.2159, "8,5"}, {metric, 0.2159, "0,216"},
		{thou, 0, "0.0"}, {thou, -0.001, "0.0"}, {thou, -0.0254, "-1.0"}, {metric, -0.0004, "0,000"},
		{thou, 1.016, "40.0"}, {thou, 0.00508, "0.2"},
	} {
		if got := c.u.gap(c.mm); got != c.want {
			t.Errorf("%g mm in %+v: %q, want %q", c.mm, c.u, got, c.want)
		}
	}
}

// The full scale holds the gap, is round, and never makes a small gap look large.
func TestFullScale(t *testing.T) {
	for _, c := range []struct {
		u              Units
		largest, want  float64 // mm
		written, which string
	}{
		{Units{}, 0, 0.127, "5", "nothing"},
		{Units{}, 0.00508, 0.127, "5", "0.2 thou"},
		{Units{}, 0.127, 0.127, "5", "5 thou"},
		{Units{}, 0.128, 0.254, "10", "a little more"},
		{Units{}, 1.016, 1.27, "50", "40 thou"},
		{Units{Metric: true}, 0.216, 0.3, "0.3", "0.216 mm"},
		{Units{Metric: true, DecimalComma: true}, 0.7, 0.75, "0,75", "0.7 mm"},
		{Units{Metric: true}, 30, 30, "30", "beyond all"},
	} {
		got := c.u.fullMM(c.largest)
		if math.Abs(got-c.want) > 1e-9 || c.u.round(got) != c.written {
			t.Errorf("%s: %g mm, %q; want %g, %q", c.which, got, c.u.round(got), c.want, c.written)
		}
	}
}
