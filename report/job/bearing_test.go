package job

// This file holds worn bearings apart from crooked shafts.

import (
	"math"
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// strips are what a careful hand finds in steps of a twentieth of a millimetre:
// room and offset [y, z] by end, at some clock positions.
func strips(room [2]float64, off [2][2]float64, clocks ...float64) []visit.Clearance {
	const step = 0.05
	var list []visit.Clearance
	for i, end := range []string{"fore", "aft"} {
		for _, deg := range clocks {
			sin, cos := math.Sincos(deg * math.Pi / 180)
			c := math.Max(0, room[i]/2+off[i][0]*sin-off[i][1]*cos)
			goes := math.Floor(c/step+1e-9) * step
			s := visit.Clearance{Where: "strut", End: end, ClockDeg: deg, Stops: visit.MM(goes + step)}
			if goes > 0 {
				s.Goes = visit.MM(goes)
			}
			list = append(list, s)
		}
	}
	return list
}

var allRound = []float64{0, 90, 180, 270}

// On a shaft of 25.4 mm a new bearing has up to 0.2 mm, worn is 0.4 mm, crooked
// 0.1 mm from end to end.
var wearTable = []struct {
	name   string
	room   [2]float64
	off    [2][2]float64
	clocks []float64
	want   Wear
}{
	{"new, shaft in the middle", [2]float64{.2, .2}, [2][2]float64{}, allRound, Even},
	{"new, shaft at the bottom", [2]float64{.2, .2}, [2][2]float64{{0, -.1}, {0, -.1}}, allRound, Even},
	{"new, shaft to port", [2]float64{.2, .2}, [2][2]float64{{.1, 0}, {.1, 0}}, allRound, Even},
	{"half worn, at the bottom", [2]float64{.28, .28}, [2][2]float64{{0, -.14}, {0, -.14}}, allRound, Even},
	{"near the limit, too near to tell", [2]float64{.39, .39}, [2][2]float64{{0, -.19}, {0, -.19}}, allRound, NotTold},
	{"worn below", [2]float64{1, 1}, [2][2]float64{{0, -.5}, {0, -.5}}, allRound, Worn},
	{"worn to starboard", [2]float64{.8, .8}, [2][2]float64{{-.4, 0}, {-.4, 0}}, allRound, Worn},
	{"worn at the aft end only", [2]float64{.3, .7}, [2][2]float64{}, allRound, Worn},
	{"crooked up and down", [2]float64{.25, .25}, [2][2]float64{{0, .12}, {0, -.12}}, allRound, Crooked},
	{"crooked athwart", [2]float64{.25, .25}, [2][2]float64{{.12, 0}, {-.12, 0}}, allRound, Crooked},
	{"worn and crooked", [2]float64{1, 1}, [2][2]float64{{.3, .4}, {-.3, -.4}}, allRound, WornCrooked},
	{"worn below, a little crooked", [2]float64{1, 1}, [2][2]float64{{0, -.5}, {.02, -.5}}, allRound, Worn},
	{"top and bottom only, worn", [2]float64{1, 1}, [2][2]float64{{0, -.5}, {0, -.5}}, []float64{0, 180}, Worn},
	{"top and bottom only, crooked", [2]float64{.3, .3}, [2][2]float64{{0, .15}, {0, -.15}}, []float64{0, 180}, Crooked},
	{"top and bottom only, good so far", [2]float64{.2, .2}, [2][2]float64{}, []float64{0, 180}, NotTold},
	{"top only", [2]float64{1, 1}, [2][2]float64{{0, -.5}, {0, -.5}}, []float64{0}, NotTold},
	{"three places", [2]float64{1, 1}, [2][2]float64{{0, -.5}, {0, -.5}}, []float64{0, 120, 240}, Worn},
}

func TestWear(t *testing.T) {
	h := hull(t, "Kittiwake")
	for _, c := range wearTable {
		got := TellWear(h, "strut", strips(c.room, c.off, c.clocks...))
		if got.Wear != c.want {
			t.Errorf("%s: %s, want %s (%+v)", c.name, got.Wear, c.want, got)
		}
		if len(c.clocks) < 4 {
			continue
		}
		for i := range 2 {
			if math.Abs(got.RoomMM[i]-c.room[i]) > 0.05 {
				t.Errorf("%s: room %.3f, want %.3f", c.name, got.RoomMM[i], c.room[i])
			}
			for k := range 2 {
				if math.Abs(got.OffMM[i][k]-c.off[i][k]) > 0.04 {
					t.Errorf("%s: off %.3f, want %.3f", c.name, got.OffMM[i][k], c.off[i][k])
				}
			}
		}
	}
}

// Laws: port and starboard exchanged, or fore and aft, the answer is the same.
func TestWearMirrors(t *testing.T) {
	h := hull(t, "Kittiwake")
	for _, c := range wearTable {
		given := strips(c.room, c.off, c.clocks...)
		plain := TellWear(h, "strut", given)
		mirrored, turned := make([]visit.Clearance, len(given)), make([]visit.Clearance, len(given))
		for i, r := range given {
			mirrored[i], turned[i] = r, r
			mirrored[i].ClockDeg = math.Mod(360-r.ClockDeg, 360)
			turned[i].End = map[string]string{"fore": "aft", "aft": "fore"}[r.End]
		}
		m, e := TellWear(h, "strut", mirrored), TellWear(h, "strut", turned)
		if m.Wear != plain.Wear || e.Wear != plain.Wear {
			t.Errorf("%s: %s, mirrored %s, ends exchanged %s", c.name, plain.Wear, m.Wear, e.Wear)
		}
		if math.Abs(m.CrookMM[0]+plain.CrookMM[0]) > 1e-9 || math.Abs(e.CrookMM[1]+plain.CrookMM[1]) > 1e-9 {
			t.Errorf("%s: crook %v, mirrored %v, ends exchanged %v", c.name, plain.CrookMM, m.CrookMM, e.CrookMM)
		}
	}
}

// Strips of other places say nothing of this bearing, and one end says nothing
// of the other.
func TestWearWantsBothEnds(t *testing.T) {
	h := hull(t, "Kittiwake")
	all := strips([2]float64{1, 1}, [2][2]float64{{0, -.5}, {0, -.5}}, allRound...)
	if got := TellWear(h, "log", all); got.Wear != NotTold {
		t.Errorf("another bearing's strips: %s", got.Wear)
	}
	if got := TellWear(h, "strut", all[:4]); got.Wear != NotTold {
		t.Errorf("the fore end only: %s", got.Wear)
	}
	// Nothing tried thicker than what goes: the room is not known upward.
	open := strips([2]float64{1, 1}, [2][2]float64{}, allRound...)
	for i := range open {
		open[i].Goes, open[i].Stops = visit.MM(0.1), visit.Length{}
	}
	if got := TellWear(h, "strut", open); got.Wear != NotTold {
		t.Errorf("open upward: %s (%+v)", got.Wear, got)
	}
}

// The limits grow with the shaft.
func TestNewRoom(t *testing.T) {
	// 3 to 8 thou on a shaft of 1 in, to 10 on larger ones (from memory).
	for d, want := range map[float64][2]float64{25.4: {7.5, 8.5}, 38.1: {9.5, 10.5}} {
		if thou := NewRoomMM(d) / 0.0254; thou < want[0] || thou > want[1] {
			t.Errorf("a new bearing of %g mm has %.1f thou, want %g to %g", d, thou, want[0], want[1])
		}
	}
	small, large := TellWear(&hulls.Hull{Shaft: hulls.Shaft{DiameterMM: 20}}, "", nil), TellWear(&hulls.Hull{Shaft: hulls.Shaft{DiameterMM: 60}}, "", nil)
	if small.LimitMM >= large.LimitMM || small.CrookLimitMM >= large.CrookLimitMM {
		t.Errorf("limits %.3f and %.3f do not grow", small.LimitMM, large.LimitMM)
	}
}

// Wears takes the latest gauging that has strips at both ends.
func TestWearsTakesTheLatest(t *testing.T) {
	h := hull(t, "Kittiwake")
	gauging := func(list []visit.Clearance) visit.Event {
		g := &visit.Gauging{Held: "seated"}
		for _, c := range list {
			g.Readings = append(g.Readings, c)
		}
		return visit.Event{Gauging: g}
	}
	worn := strips([2]float64{1, 1}, [2][2]float64{{0, -.5}, {0, -.5}}, allRound...)
	renewed := strips([2]float64{.2, .2}, [2][2]float64{}, allRound...)
	for _, c := range []struct {
		name   string
		events []visit.Event
		want   []Wear
	}{
		{"none", nil, nil},
		{"one", []visit.Event{gauging(worn)}, []Wear{Worn}},
		{"renewed", []visit.Event{gauging(worn), gauging(renewed)}, []Wear{Even}},
		{"one end later", []visit.Event{gauging(worn), gauging(renewed[:4])}, []Wear{Worn}},
		{"ends apart", []visit.Event{gauging(worn[:4]), gauging(worn[4:])}, []Wear{Worn}},
	} {
		var got []Wear
		for _, b := range Wears(h, &visit.Visit{Events: c.events}) {
			got = append(got, b.Wear)
		}
		if len(got) != len(c.want) || len(got) > 0 && got[0] != c.want[0] {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}
