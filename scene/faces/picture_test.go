package faces

// What is seen on the picture: hatching, states, edge-on views, and pictures
// kept in testdata, so that a change of look is seen and meant:
//
//	go test ./scene/faces -run Golden -update
//
// makes them anew; look at them before committing. Tolerance: at most one pixel in
// two hundred may differ by more than 6 of 255 in a channel. That allows for
// processors that fuse multiplications and additions.

import (
	"bytes"
	"flag"
	"image"
	"image/color"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
)

var update = flag.Bool("update", false, "make the golden pictures anew")

func drawn(w, h int, f Faces, s Style) *image.RGBA {
	m := image.NewRGBA(image.Rect(0, 0, w, h))
	Draw(m, f, s)
	return m
}

func TestGolden(t *testing.T) {
	fonts := testFonts(t)
	next := 225 * math.Pi / 180
	read := gapThou(5, 20, 0)
	read.G0MM = 5 * MMPerThou / 2
	gauged, planned := gapThou(12, 45, 0), gapThou(2, 120, 0)
	for name, m := range map[string]*image.RGBA{
		"forward": drawn(260, 400, Faces{Now: gapThou(6, 135, 1.2), DiameterMM: 102}, Style{Fonts: fonts}),
		"aft": drawn(380, 280, Faces{Now: gapThou(8.5, 186, 0), AsGauged: &gauged, Planned: &planned, DiameterMM: 102},
			Style{Fonts: fonts, LookingAft: true, Dark: true, Units: Units{Metric: true}}),
		"readings": drawn(320, 420, Faces{Now: read, DiameterMM: 102, Marks: testMarks(), NextRad: &next}, Style{Fonts: fonts}),
	} {
		path := filepath.Join("testdata", name+".png")
		var data bytes.Buffer
		if err := (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&data, m); err != nil {
			t.Fatal(err)
		}
		if *update {
			if err := os.WriteFile(path, data.Bytes(), 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		if off, of := differ(t, path, m); off > of/200 {
			failed := filepath.Join(t.ArtifactDir(), name+".png")
			if err := os.WriteFile(failed, data.Bytes(), 0o644); err != nil {
				t.Error(err)
			}
			t.Errorf("%s: %d of %d pixels differ; the new picture is in %s (kept with -artifacts)", path, off, of, failed)
		}
	}
}

// testMarks are readings of a gap of 5 thou that opens at 12:40, but for an odd
// one, and of every form.
func testMarks() []Mark {
	thou := func(deg, least, most float64) Mark {
		return Mark{ClockRad: deg * math.Pi / 180, LeastMM: least * MMPerThou, MostMM: most * MMPerThou}
	}
	odd, unused := thou(90, 6, 8), thou(270, 1, 2)
	odd.Odd, unused.Unused = true, true
	below, above := thou(180, 0, 1), thou(0, 4, 0)
	below.LeastMM, above.MostMM = math.Inf(-1), math.Inf(1)
	return []Mark{above, thou(45, 4, 5), odd, thou(135, 1, 1.5), below, unused}
}

// differ counts the pixels that are not as kept.
func differ(t *testing.T, path string, got *image.RGBA) (off, of int) {
	t.Helper()
	file, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	want, err := png.Decode(file)
	if err != nil {
		t.Fatal(err)
	}
	if want.Bounds() != got.Bounds() {
		t.Fatalf("%s: %v, want %v", path, got.Bounds(), want.Bounds())
	}
	for y := range got.Rect.Dy() {
		for x := range got.Rect.Dx() {
			a, b := color.RGBAModel.Convert(want.At(x, y)).(color.RGBA), got.RGBAAt(x, y)
			for _, d := range []int{int(a.R) - int(b.R), int(a.G) - int(b.G), int(a.B) - int(b.B)} {
				if d > 6 || d < -6 {
					off++
					break
				}
			}
		}
	}
	return off, got.Rect.Dx() * got.Rect.Dy()
}

// Hatching lies where the gap is tight and nowhere else.
func TestHatchingOnlyWhereTight(t *testing.T) {
	for _, aft := range []bool{false, true} {
		f, s := Faces{Now: gapThou(8, 130, 1)}, Style{Fonts: testFonts(t), LookingAft: aft, NoStrips: true}
		s.fill()
		m := image.NewRGBA(image.Rect(0, 0, 600, 600))
		l := plan(600, 600, &f, &s)
		newPen(m, s.Fonts, false).tight(&l, &f, &s)
		for deg := range 360 {
			clock, inked := float64(deg)*math.Pi/180, false
			for off := -3.0; off <= 3; off++ { // a ray along the lines may run between two
				for r := l.clock.inner + 2; r < l.clock.outer-2; r++ {
					at := l.clock.centre.plus(r, ray(s.turn(clock)+off*math.Pi/180))
					inked = inked || m.RGBAAt(int(at.x), int(at.y)).A > 128
				}
			}
			fromTightest := math.Abs(math.Remainder(clock-f.Now.OpensAtRad()-math.Pi, 2*math.Pi)) * 180 / math.Pi
			if math.Abs(fromTightest-60) > 4 && inked != (fromTightest < 60) {
				t.Errorf("aft %v, %d degrees, %.0f from the tightest: hatched %v", aft, deg, fromTightest, inked)
			}
		}
	}
}

// Edge-on, the gap at both ends and the middle is N times itself at the scale of
// the face, and N is the number written.
func TestEdgeOnGapIsTimesTheGap(t *testing.T) {
	fonts := testFonts(t)
	for _, c := range []struct {
		gap   Gap
		times string
	}{{gapThou(0.2, 70, 0), "200"}, {gapThou(8.5, 190, 0), "100"}, {gapThou(40, 300, 2), "20"}} {
		f, s := Faces{Now: c.gap, DiameterMM: 102}, Style{Fonts: fonts}
		s.fill()
		l := plan(420, 640, &f, &s)
		if len(l.strips) != 2 {
			t.Fatalf("%d edge-on views", len(l.strips))
		}
		written := false
		for _, n := range l.labels {
			written = written || strings.HasSuffix(n.text, "from above, gap × "+c.times)
		}
		n := l.strips[0].pxPerMM / (l.strips[0].facePx / f.DiameterMM)
		if want := map[string]float64{"200": 200, "100": 100, "20": 20}[c.times]; !written || math.Abs(n-want) > 1e-9*want {
			t.Errorf("gap %.3f: drawn %g times, want %s; written so %v", c.gap, n, c.times, written)
		}
		for i, ends := range [2][2]float64{{-math.Pi / 2, math.Pi / 2}, {0, math.Pi}} {
			v := &l.strips[i]
			for k, clock := range ends {
				r := float64(2*k-1) * v.facePx / 2
				d := v.engine(&f, r, 0).sub(v.place(r, 0))
				if want := c.gap.AtMM(clock) * v.pxPerMM; math.Abs(d.length()-want) > 1e-9 {
					t.Errorf("gap %.3f, view %d, end %d: %.2f pixels apart, want %.2f", c.gap, i, k, d.length(), want)
				}
			}
		}
	}
}

// Port is at the same hand from above as on the clock; from port, forward is at
// the left in both views.
func TestEdgeOnHands(t *testing.T) {
	for _, aft := range []bool{false, true} {
		f, s := Faces{Now: gapThou(8, 0, 0), DiameterMM: 102}, Style{Fonts: testFonts(t), LookingAft: aft}
		s.fill()
		l := plan(420, 640, &f, &s)
		above, port := l.strips[0], l.strips[1]
		if portEnd := above.place(-1, 0).sub(above.centre); (portEnd.x < 0) == aft {
			t.Errorf("aft %v: port lies %.1f from above", aft, portEnd)
		}
		if (above.ahead.y < 0) == aft || port.ahead.x >= 0 || port.place(-1, 0).y >= port.centre.y {
			t.Errorf("aft %v: ahead is %v from above, %v from port", aft, above.ahead, port.ahead)
		}
	}
}

// What has no gap shows none, and says so.
func TestStatesWithoutAGap(t *testing.T) {
	fonts := testFonts(t)
	for _, c := range []struct {
		f    Faces
		says []string
	}{
		{Faces{State: Hanging}, []string{"shaft hanging", "no gap to tell"}},
		{Faces{Now: Gap{math.NaN(), 0, 0}}, []string{"shaft hanging"}},
		{Faces{Now: Gap{math.Inf(1), 0, 0}}, []string{"shaft hanging"}},
		{Faces{State: Bolted, Now: gapThou(9, 0, 0), Moment: "12.3 lb-ft"}, []string{"bolted", "faces drawn flat", "12.3 lb-ft"}},
		{Faces{}, []string{"faces parallel", "touching all round"}},
		{Faces{Now: gapThou(0, 0, 5)}, []string{"faces parallel", "5.0 thou all round"}},
	} {
		s := Style{Fonts: fonts}
		s.fill()
		l := plan(420, 640, &c.f, &s)
		var all []string
		for _, n := range l.labels {
			all = append(all, n.text)
		}
		for _, want := range append(c.says, "PORT", "STBD", "seen looking forward from the propeller") {
			if !strings.Contains(strings.Join(all, "|"), want) {
				t.Errorf("%+v does not say %q: %q", c.f, want, all)
			}
		}
		if l.clock.widest.text != "" {
			t.Errorf("%+v opens somewhere", c.f)
		}
	}
}

// A drawing is a pure function, in a part of a larger picture as alone, and by
// several at once.
func TestDrawIsPure(t *testing.T) {
	f, s := Faces{Now: gapThou(8, 130, 1), DiameterMM: 102}, Style{Fonts: testFonts(t)}
	want := drawn(300, 400, f, s)
	page := image.NewRGBA(image.Rect(-20, 10, 400, 500))
	part := page.SubImage(image.Rect(15, 40, 315, 440)).(*image.RGBA)
	Draw(part, f, s)
	for y := page.Rect.Min.Y; y < page.Rect.Max.Y; y++ {
		for x := page.Rect.Min.X; x < page.Rect.Max.X; x++ {
			if got, own := page.RGBAAt(x, y), want.RGBAAt(x-15, y-40); got != own {
				t.Fatalf("%d, %d: %v in a part of a picture, %v alone", x, y, got, own)
			}
		}
	}
	var group sync.WaitGroup
	for range 4 {
		group.Go(func() {
			if !bytes.Equal(drawn(300, 400, f, s).Pix, want.Pix) {
				t.Error("drawn differently beside others")
			}
		})
	}
	group.Wait()
}

// Whatever the size, nothing breaks.
func TestDrawAnySize(t *testing.T) {
	fonts := testFonts(t)
	extreme := Faces{Now: Gap{25, 1e6, -3}, DiameterMM: 1e-3, FullMM: 1e-9, PositionsRad: []float64{0, 0, 0, 1e9}}
	for _, w := range []int{0, 1, 7, 60, 239, 2000} {
		for _, h := range []int{0, 1, 7, 60, 239} {
			for _, f := range []Faces{{Now: gapThou(8, 30, 0), DiameterMM: 102}, {State: Bolted}, {State: Hanging}, extreme} {
				drawn(w, h, f, Style{Fonts: fonts, Text: 1.3, Scale: 1.5})
			}
		}
	}
}
