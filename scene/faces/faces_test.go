package faces

// The picture's laws, held over many sizes, text factors, states and views.

import (
	"fmt"
	"image"
	"math"
	"math/rand/v2"
	"testing"

	"aligner/assets"
)

func testFonts(t testing.TB) *Fonts {
	t.Helper()
	fonts, err := NewFonts(assets.Font("regular"), assets.Font("bold"))
	if err != nil {
		t.Fatal(err)
	}
	return fonts
}

// gapThou is a gap by its spread, the clock angle where it opens and its least.
func gapThou(spread, opensDeg, least float64) Gap {
	half := spread / 2 * MMPerThou
	sin, cos := math.Sincos(opensDeg * math.Pi / 180)
	return Gap{G0MM: half + least*MMPerThou, CosMM: half * cos, SinMM: half * sin}
}

func long() *Words {
	w := DefaultWords()
	w.Port, w.Starboard, w.Top, w.Bottom = "BACKBORD", "STEUERBORD", "OBEN", "UNTEN"
	w.SeenForward, w.SeenAft = "in Fahrtrichtung gesehen, vom Propeller aus", "gegen die Fahrtrichtung gesehen, vom Getriebe aus"
	w.OpensAt, w.OpensHere, w.Touches, w.Tightest = "offen bei %s Uhr", "hier am weitesten", "berührt", "hier am engsten"
	w.Parallel, w.TouchAllRound, w.AllRound = "Flächen parallel", "ringsum in Berührung", "ringsum %s"
	w.Hanging, w.NoGap, w.DrawnFlat = "Welle hängt frei durch", "kein Spalt zu nennen", "Flächen zusammengezogen"
	w.EngineSide, w.ShaftSide = "Getriebeseite", "Wellenseite"
	w.AsGauged, w.Planned = "wie gemessen: %s, offen bei %s Uhr", "geplant: %s, offen bei %s Uhr"
	return &w
}

// cases are many pictures: every state and view at sizes and factors drawn at
// random, and the corners of what is promised.
func cases(t *testing.T, each func(name string, w, h float64, f Faces, s Style)) {
	fonts := testFonts(t)
	random := rand.New(rand.NewPCG(1, 2))
	sizes := [][2]float64{{240, 240}, {240, 1200}, {1600, 240}, {1600, 1200}, {420, 640}, {460, 375}}
	for range 60 {
		sizes = append(sizes, [2]float64{math.Floor(240 + 1360*random.Float64()), math.Floor(240 + 960*random.Float64())})
	}
	for _, size := range sizes {
		for _, text := range []float64{0.8, 1, 1.5, 2.5} {
			least := 0.0
			if random.IntN(3) == 0 {
				least = 20 * random.Float64()
			}
			f := Faces{Now: gapThou(60*random.Float64()*random.Float64(), 360*random.Float64(), least), DiameterMM: 102}
			s := Style{Fonts: fonts, Text: text, LookingAft: random.IntN(2) == 0}
			s.Units = Units{random.IntN(2) == 0, random.IntN(2) == 0}
			if random.IntN(3) == 0 {
				s.Words = long()
			}
			switch random.IntN(6) {
			case 0:
				f.State = Hanging
			case 1:
				f.State, f.Moment = Bolted, "112.4 lb-ft"
			case 2:
				f.Now = gapThou(0, 0, least)
			}
			if random.IntN(3) == 0 {
				gauged, planned, runOut := gapThou(12, 45, 0), gapThou(2, 120, 0), gapThou(3, 250, 0)
				f.AsGauged, f.Planned, f.RunOut = &gauged, &planned, &runOut
			}
			if random.IntN(3) == 0 {
				for range 2 + random.IntN(11) {
					f.PositionsRad = append(f.PositionsRad, 2*math.Pi*random.Float64())
				}
			}
			s.fill()
			name := fmt.Sprintf("%g x %g, text %g, metric %v, aft %v, state %d, %d positions, long words %v",
				size[0], size[1], text, s.Units.Metric, s.LookingAft, f.State, len(f.PositionsRad), s.Words.Port != "PORT")
			each(name, size[0], size[1], f, s)
		}
	}
}

func TestNoTwoLabelsOverlap(t *testing.T) {
	cases(t, func(name string, w, h float64, f Faces, s Style) {
		l := plan(w, h, &f, &s)
		for i, a := range l.labels {
			if !(rect{0, 0, w, h}).holds(a.box) {
				t.Errorf("%s: %q leaves the picture: %.1f", name, a.text, a.box)
			}
			for _, b := range l.labels[:i] {
				if a.box.overlaps(b.box) {
					t.Errorf("%s: %q and %q overlap", name, a.text, b.text)
				}
			}
		}
		if !l.fits {
			t.Errorf("%s: nothing fits, text of %.1f pixels tried last", name, l.textPx)
		}
	})
}

// The words along the track are opposite each other; numbers stand outside the
// outer ring, the words of the middle inside the rim.
func TestNumbersOutsideWordsInside(t *testing.T) {
	cases(t, func(name string, w, h float64, f Faces, s Style) {
		l := plan(w, h, &f, &s)
		c := &l.clock
		circle := rect{c.centre.x, c.centre.y, c.centre.x, c.centre.y}.grown(c.outer)
		for _, n := range l.labels {
			nearest := point{min(max(c.centre.x, n.box.x0), n.box.x1), min(max(c.centre.y, n.box.y0), n.box.y1)}
			switch {
			case n.number && nearest.sub(c.centre).length() < c.outer:
				t.Errorf("%s: %q stands on the track", name, n.text)
			case !n.number && circle.overlaps(n.box):
				for _, corner := range n.box.shape()[0] {
					if d := corner.sub(c.centre).length(); d > c.inner && nearest.sub(c.centre).length() < c.outer {
						t.Errorf("%s: %q crosses the rim", name, n.text)
					}
				}
			}
		}
		for _, a := range []arcWord{c.widest, c.narrowest} {
			if half := s.Fonts.width(a.text, true) * a.sizePx / 2; a.text != "" && half/a.radius > 1 {
				t.Errorf("%s: %q takes too much of the track", name, a.text)
			}
		}
	})
}

// Twelve numbers, or as many as the user has positions, and none hidden.
func TestEveryPositionHasItsNumber(t *testing.T) {
	cases(t, func(name string, w, h float64, f Faces, s Style) {
		l := plan(w, h, &f, &s)
		want, got := 12, 0
		if len(f.PositionsRad) > 0 {
			want = len(f.PositionsRad)
		}
		if f.state() != Open {
			want = 0
		}
		for _, n := range l.labels {
			if n.number {
				got++
				if n.text != s.Units.gap(f.Now.AtMM(n.clockRad)) {
					t.Errorf("%s: %q at %.2f", name, n.text, n.clockRad)
				}
			}
		}
		if got != want {
			t.Errorf("%s: %d numbers, want %d", name, got, want)
		}
	})
}

// Looking aft, what was at 3 stands at 9 and so on; 12 and 6 stay.
func TestLookingAftSwapsThreeAndNine(t *testing.T) {
	f := Faces{Now: gapThou(9, 70, 1), DiameterMM: 102}
	s := Style{Fonts: testFonts(t)}
	s.fill()
	forward := plan(420, 640, &f, &s)
	s.LookingAft = true
	aft := plan(420, 640, &f, &s)
	at := func(l *layout) (numbers map[int]point, words map[string]point) {
		numbers, words = make(map[int]point), make(map[string]point)
		for _, n := range l.labels {
			if n.number {
				numbers[int(math.Round(n.clockRad*6/math.Pi))] = n.at.sub(l.clock.centre)
			} else if _, ok := words[n.text]; !ok {
				words[n.text] = n.at.sub(l.clock.centre)
			}
		}
		return numbers, words
	}
	was, wasWords := at(&forward)
	is, isWords := at(&aft)
	for hour := range 12 {
		if d := was[hour].sub(is[(12-hour)%12]).length(); d > 0.01 {
			t.Errorf("%d o'clock is %.1f looking aft, %d o'clock was %.1f", (12-hour)%12, is[(12-hour)%12], hour, was[hour])
		}
	}
	if !(wasWords["PORT"].x < 0 && wasWords["STBD"].x > 0 && isWords["PORT"].x > 0 && isWords["STBD"].x < 0) {
		t.Errorf("PORT %.0f, STBD %.0f; looking aft %.0f, %.0f", wasWords["PORT"], wasWords["STBD"], isWords["PORT"], isWords["STBD"])
	}
	for _, word := range []string{"12", "3", "6", "9"} { // the clock as seen keeps its numerals
		if d := wasWords[word].sub(isWords[word]).length(); d > 0.01 {
			t.Errorf("numeral %s moved by %.1f", word, d)
		}
	}
	if _, ok := isWords["opens at 9:45"]; !ok { // 70 degrees is 2:20
		t.Errorf("looking aft it does not say where it opens: %v", isWords)
	}
}

// The drawn band is as wide as the gap times one factor at every clock angle,
// measured on the picture along each ray. Tolerance: 0.7 pixels, half a pixel for
// the grid and what a flat chord lies inside the curve.
func TestBandWidthIsProportionalToGap(t *testing.T) {
	fonts := testFonts(t)
	for _, g := range []Gap{gapThou(8, 0, 0), gapThou(30, 140, 3), gapThou(4, 260, 0.5), gapThou(0, 0, 4), gapThou(0.2, 75, 0)} {
		for _, aft := range []bool{false, true} {
			f, s := Faces{Now: g}, Style{Fonts: fonts, LookingAft: aft, NoStrips: true}
			s.fill()
			const size = 1000
			m := image.NewRGBA(image.Rect(0, 0, size, size)) // clear, so that opacity is cover
			l := plan(size, size, &f, &s)
			newPen(m, fonts, false).band(&l, &f, &s)
			c := &l.clock
			for deg := range 360 {
				clock := float64(deg) * math.Pi / 180
				d, covered := ray(s.turn(clock)), 0.0
				const step = 1.0 / 16
				for r := c.inner - 3; r < c.outer+3; r += step {
					at := c.centre.plus(r, d)
					covered += float64(m.RGBAAt(int(at.x), int(at.y)).A) / 255 * step
				}
				if want := g.AtMM(clock) * c.pxPerMM(); math.Abs(covered-want) > 0.7 {
					t.Errorf("gap %.3f at %d degrees, aft %v: band %.2f pixels, want %.2f", g, deg, aft, covered, want)
				}
			}
		}
	}
}

func BenchmarkDraw(b *testing.B) {
	f, s := Faces{Now: gapThou(8.5, 190, 0), DiameterMM: 102}, Style{Fonts: testFonts(b)}
	m := image.NewRGBA(image.Rect(0, 0, 420, 640))
	for b.Loop() {
		Draw(m, f, s)
	}
}

func BenchmarkDrawWithOverlays(b *testing.B) {
	gauged, planned := gapThou(12, 45, 0), gapThou(2, 120, 0)
	f, s := Faces{Now: gapThou(8.5, 190, 0), AsGauged: &gauged, Planned: &planned, DiameterMM: 102}, Style{Fonts: testFonts(b)}
	m := image.NewRGBA(image.Rect(0, 0, 420, 640))
	for b.Loop() {
		Draw(m, f, s)
	}
}
