package history

// This file tests the plots: something is drawn where it belongs, in black and
// white, and into a PDF too.

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"math/rand/v2"
	"os"
	"testing"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgpdf"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/report/say"
)

// longPast is four years of one boat: lined up, settled, a nut backed off.
func longPast(t testing.TB) *Past {
	t.Helper()
	return worked(t, longVisits(t))
}

func longVisits(t testing.TB) []Visit {
	t.Helper()
	h := hullNamed(t, "Kittiwake")
	r := rand.New(rand.NewPCG(8, 8))
	settled := still(&h)
	all(settled.lift, -1)
	backed := still(&h)
	backed.lift[1], backed.stud[1] = -2, 2
	var list []Visit
	list = append(list, twice(t, h, settled, r)...)
	list = append(list, twice(t, h, backed, r)...)
	for i, date := range []string{"2023-05-10", "2023-06-20", "2025-05-02", "2026-04-11"} {
		v := &list[i].Document.Visit
		list[i].Number, v.Date, v.HandedOver.Date = int64(i+1), date, date
		v.State.EngineHours = visit.Known(float64(100 + 75*i*i))
		v.Events = append(v.Events, visit.Event{Move: &visit.Move{NutFlats: map[string]float64{"fore port": float64(i), "aft starboard": 2 - float64(i)}}}, v.Events[0])
	}
	return list
}

func drawnPast(t testing.TB, d Drawing, w, h int) image.Image {
	t.Helper()
	img, err := d.Image(w, h, 96)
	if err != nil {
		t.Fatal(err)
	}
	if out := os.Getenv("PLOT_OUT"); out != "" {
		f, _ := os.Create(out)
		png.Encode(f, img)
		f.Close()
	}
	return img
}

func TestPlotsAreDrawnInBlackAndWhite(t *testing.T) {
	p := longPast(t)
	for _, language := range words.Languages() {
		for _, byHours := range []bool{false, true} {
			d := Drawing{Past: p, Speaker: words.In(language), Units: say.Units{DecimalComma: language == "de"}, ByHours: byHours}
			img := drawnPast(t, d, 900, 600)
			if img.Bounds().Dx() != 900 || img.Bounds().Dy() != 600 {
				t.Fatalf("%v", img.Bounds())
			}
			var dark [2][2]int
			for y := range 600 {
				for x := range 900 {
					r, g, b, _ := img.At(x, y).RGBA()
					if r != g || g != b {
						t.Fatalf("a colour %v at %d, %d", img.At(x, y), x, y)
					}
					if r < 0x4000 {
						dark[y/300][x/450]++
					}
				}
			}
			for i := range dark {
				for j, n := range dark[i] {
					if n < 400 {
						t.Errorf("%s, by hours %v: plot %d, %d has %d dark pixels", language, byHours, i, j, n)
					}
				}
			}
		}
	}
}

func TestPlotsGoIntoAPDF(t *testing.T) {
	c := vgpdf.New(170*vg.Millimeter, 120*vg.Millimeter)
	d := Drawing{Past: longPast(t), Speaker: words.In("de"), Units: say.Units{Metric: true, DecimalComma: true}}
	if err := d.Draw(draw.New(c)); err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	if _, err := c.WriteTo(&out); err != nil || !bytes.HasPrefix(out.Bytes(), []byte("%PDF-")) {
		t.Errorf("%d bytes, %v", out.Len(), err)
	}
}

func TestPlotsOfLittle(t *testing.T) {
	h := hullNamed(t, "Kittiwake")
	for _, list := range [][]Visit{nil, twice(t, h, still(&h), rand.New(rand.NewPCG(1, 1)))[:1]} {
		d := Drawing{Past: worked(t, list), Speaker: words.In("en"), Dark: true}
		img := drawnPast(t, d, 500, 700)
		if img.At(0, 0) == color.White {
			t.Error("light ground on a dark screen")
		}
	}
}

// TestNoDaysWithoutVisits: where there is no visit the axis names no day.
func TestNoDaysWithoutVisits(t *testing.T) {
	h, err := letters()
	if err != nil {
		t.Fatal(err)
	}
	hull := hullNamed(t, "Kittiwake")
	for _, byHours := range []bool{false, true} {
		d := Drawing{Past: &Past{Hull: hull}, Speaker: words.In("en"), ByHours: byHours}
		for i, g := range (pen{d: &d, text: style(h, 9)}).all() {
			if ticks := g.X.Tick.Marker.Ticks(g.X.Min, g.X.Max); len(ticks) > 0 {
				t.Errorf("plot %d, by hours %v: marked %v", i, byHours, ticks)
			}
		}
	}
}
