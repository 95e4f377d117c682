package hulls

// This file holds hexagons and spanners against published tables.

import (
	"math"
	"slices"
	"testing"
)

// As printed, in inches to three places: widths of hex cap screws by ASME
// B18.2.1, of hex nuts by ASME B18.2.2, heights of head and nut, and jam nuts.
// Jam nuts above 9/16 are held to the limits of lock nuts by BS 1768, the
// tables at hand disagreeing.
var inchHexagonTable = []struct {
	thread           string
	head, nut        string
	headMin, headMax float64
	nutMin, nutMax   float64
	headH, nutH      [2]float64
	jamMin, jamMax   float64
}{
	{"1/4-20 UNC", "7/16 in", "7/16 in", .428, .438, .428, .438, [2]float64{.150, .163}, [2]float64{.212, .226}, 5. / 32, 5. / 32},
	{"5/16-18 UNC", "1/2 in", "1/2 in", .489, .500, .489, .500, [2]float64{.195, .211}, [2]float64{.258, .273}, 3. / 16, 3. / 16},
	{"3/8-16 UNC", "9/16 in", "9/16 in", .551, .562, .551, .563, [2]float64{.226, .243}, [2]float64{.320, .337}, 7. / 32, 7. / 32},
	{"7/16-14 UNC", "5/8 in", "11/16 in", .612, .625, .675, .688, [2]float64{.272, .291}, [2]float64{.365, .385}, 1. / 4, 1. / 4},
	{"1/2-13 UNC", "3/4 in", "3/4 in", .736, .750, .736, .750, [2]float64{.302, .323}, [2]float64{.427, .448}, 5. / 16, 5. / 16},
	{"9/16-12 UNC", "13/16 in", "7/8 in", .798, .812, .861, .875, [2]float64{.348, .371}, [2]float64{.473, .496}, 5. / 16, 5. / 16},
	{"5/8-18 UNF", "15/16 in", "15/16 in", .922, .938, .922, .938, [2]float64{.378, .403}, [2]float64{.535, .559}, .370, .380},
	{"3/4-16 UNF", "1 1/8 in", "1 1/8 in", 1.100, 1.125, 1.088, 1.125, [2]float64{.455, .483}, [2]float64{.617, .665}, .412, .432},
	{"7/8-14 UNF", "1 5/16 in", "1 5/16 in", 1.285, 1.312, 1.269, 1.312, [2]float64{.531, .563}, [2]float64{.724, .776}, .474, .494},
	{"1-14 UNS", "1 1/2 in", "1 1/2 in", 1.469, 1.500, 1.450, 1.500, [2]float64{.591, .627}, [2]float64{.831, .887}, .532, .562},
}

func TestInchHexagons(t *testing.T) {
	const half = 0.0005 // half a printed unit
	for _, row := range inchHexagonTable {
		x := hexagonOf(t, row.thread)
		if x.Head.String() != row.head || x.Nut.String() != row.nut {
			t.Errorf("%s: head %s, nut %s; want %s, %s", row.thread, x.Head, x.Nut, row.head, row.nut)
		}
		for _, c := range []struct {
			what          string
			mm, low, high float64
		}{
			{"head across flats", x.Head.AcrossMM(), row.headMax, row.headMax}, // the basic width is the largest
			{"nut across flats", x.Nut.AcrossMM(), row.nutMax, row.nutMax},
			{"head", x.HeadHeightMM, row.headH[0], row.headH[1]},
			{"nut", x.NutHeightMM, row.nutH[0], row.nutH[1]},
			{"jam nut", x.JamHeightMM, row.jamMin, row.jamMax},
		} {
			if in := c.mm / 25.4; in < c.low-half || in > c.high+half {
				t.Errorf("%s: %s %.4f in, want %.3f to %.3f", row.thread, c.what, in, c.low, c.high)
			}
		}
		if row.headMin >= row.headMax || row.nutMin >= row.nutMax {
			t.Errorf("%s: the printed row contradicts itself", row.thread)
		}
		// The next smaller sixteenth must not go on: it is below the least width.
		if smaller := (x.Nut.AcrossMM() - 25.4/16) / 25.4; smaller > row.nutMin {
			t.Errorf("%s: a spanner of %.3f in goes on too", row.thread, smaller)
		}
		if x.WidthFromMemory {
			t.Errorf("%s: compared with tables, yet marked as from memory", row.thread)
		}
	}
}

// At two sizes head and nut take different spanners, and at no other up to 1.
func TestHeadAndNutDiffer(t *testing.T) {
	for _, row := range inchHexagonTable {
		th, err := ThreadOf(row.thread)
		if err != nil {
			t.Fatal(err)
		}
		trap := near(th.MajorMM, 0.4375*25.4) || near(th.MajorMM, 0.5625*25.4)
		if x := hexagonOf(t, row.thread); (x.Head != x.Nut) != trap {
			t.Errorf("%s: head %s, nut %s", row.thread, x.Head, x.Nut)
		}
	}
}

// ISO 272 and ISO 4014, 4032 and 4035, and the widths of DIN 931 and 934; all
// from memory, so that this holds the tables to one reading of them only. The
// laws below hold of any.
func TestMetricHexagons(t *testing.T) {
	for _, row := range []struct {
		thread         string
		across, older  int
		nut, thin, top float64
	}{
		{"M6", 10, 10, 5.2, 3.2, 4}, {"M8", 13, 13, 6.8, 4, 5.3}, {"M10", 16, 17, 8.4, 5, 6.4}, {"M12", 18, 19, 10.8, 6, 7.5},
		{"M14", 21, 22, 12.8, 7, 8.8}, {"M16", 24, 24, 14.8, 8, 10}, {"M18", 27, 27, 15.8, 9, 11.5},
		{"M20", 30, 30, 18, 10, 12.5}, {"M22", 34, 32, 19.4, 11, 14}, {"M24", 36, 36, 21.5, 12, 15},
	} {
		x := hexagonOf(t, row.thread)
		older := x.Older.MM
		if older == 0 {
			older = x.Nut.MM
		}
		if x.Head.MM != row.across || x.Nut.MM != row.across || older != row.older {
			t.Errorf("%s: head %s, nut %s, older %s", row.thread, x.Head, x.Nut, x.Older)
		}
		for _, pair := range [][2]float64{{x.NutHeightMM, row.nut}, {x.JamHeightMM, row.thin}, {x.HeadHeightMM, row.top}} {
			if math.Abs(pair[0]-pair[1]) > 0.05 {
				t.Errorf("%s: height %g, want %g", row.thread, pair[0], pair[1])
			}
		}
		if !x.WidthFromMemory {
			t.Errorf("%s: not marked as from memory", row.thread)
		}
	}
}

// Laws of every thread a hull may name: a hexagon is 1.4 to 1.8 times its
// thread, grows with it, and a jam nut is thinner than its nut, about half its
// thread.
func TestHexagonsGrowWithTheirThread(t *testing.T) {
	check := func(threads []string) {
		before := Hexagon{}
		for _, thread := range threads {
			x := hexagonOf(t, thread)
			d := x.Thread.MajorMM
			for _, s := range []Spanner{x.Head, x.Nut} {
				if r := s.AcrossMM() / d; r < 1.4 || r > 1.8 {
					t.Errorf("%s: %s is %.2f times the thread", thread, s, r)
				}
			}
			if x.Nut.AcrossMM() < x.Head.AcrossMM() || x.Nut.AcrossMM() <= before.Nut.AcrossMM() {
				t.Errorf("%s: head %s, nut %s after %s", thread, x.Head, x.Nut, before.Nut)
			}
			if x.JamHeightMM > 0 && !(x.JamHeightMM < x.NutHeightMM && x.JamHeightMM > 0.45*d && x.JamHeightMM < 0.65*d) {
				t.Errorf("%s: jam nut %.2f mm, nut %.2f mm", thread, x.JamHeightMM, x.NutHeightMM)
			}
			before = x
		}
	}
	var inch, metric []string
	for _, s := range inchSizes[3:] {
		inch = append(inch, s.name+"-"+itoa(s.unc)+" UNC")
	}
	for d := range metricPitches {
		metric = append(metric, "M"+itoa(d))
	}
	slices.SortFunc(metric, func(a, b string) int {
		if len(a) != len(b) {
			return len(a) - len(b)
		}
		return slices.Compare([]byte(a), []byte(b))
	})
	check(inch)
	check(metric)
}

func TestNoHexagonIsSaid(t *testing.T) {
	th, err := ThreadOf("#10-24 UNC")
	if err != nil {
		t.Fatal(err)
	}
	if _, err := HexagonOf(th); err == nil {
		t.Error("#10 has a hexagon here; want a refusal, machine screw nuts are of another standard")
	}
}

func TestSpannersOfHulls(t *testing.T) {
	rubber := func(thread string) Mount { return Mount{Kind: Rubber, Thread: thread} }
	for _, c := range []struct {
		name   string
		hull   Hull
		want   []string
		untold []string
	}{
		{"7/16 trap", Hull{Mounts: []Mount{rubber("5/8-18 UNF"), rubber("5/8-18 UNF")}, Coupling: Coupling{Bolts: Bolts{Thread: "7/16-20 UNF"}}},
			[]string{"2 x 15/16 in: mount nut, jam nut", "1 x 5/8 in: bolt head", "1 x 11/16 in: bolt nut"}, nil},
		{"9/16 trap", Hull{Mounts: []Mount{rubber("3/4-16 UNF")}, Coupling: Coupling{Bolts: Bolts{Thread: "9/16-18 UNF"}}},
			[]string{"2 x 1 1/8 in: mount nut, jam nut", "1 x 13/16 in: bolt head", "1 x 7/8 in: bolt nut"}, nil},
		{"one size for all", Hull{Mounts: []Mount{rubber("1/2-20 UNF")}, Coupling: Coupling{Bolts: Bolts{Thread: "1/2-13 UNC"}}},
			[]string{"2 x 3/4 in: mount nut, jam nut, bolt head, bolt nut"}, nil},
		{"older metric", Hull{Mounts: []Mount{rubber("M16"), rubber("M12x1.5")}, Coupling: Coupling{Bolts: Bolts{Thread: "M10"}}},
			[]string{"2 x 24 mm: mount nut, jam nut", "2 x 18 mm: mount nut, jam nut", "2 x 19 mm: mount nut, jam nut, older",
				"2 x 16 mm: bolt head, bolt nut", "2 x 17 mm: bolt head, bolt nut, older"}, nil},
		{"solid feet", Hull{Mounts: []Mount{{Kind: Solid}, {Kind: Solid}}, Coupling: Coupling{Bolts: Bolts{Thread: "M16x2"}}},
			[]string{"2 x 24 mm: bolt head, bolt nut"}, []string{""}},
		{"odd threads", Hull{Mounts: []Mount{rubber("whatever")}, Coupling: Coupling{Bolts: Bolts{Thread: "#10-24 UNC"}}}, nil, []string{"whatever", "#10-24 UNC"}},
	} {
		needed, untold := Spanners(c.hull)
		var got []string
		for _, n := range needed {
			line := itoa(float64(n.Count)) + " x " + n.Spanner.String() + ": "
			for i, u := range n.Uses {
				if i > 0 {
					line += ", "
				}
				line += string(u)
			}
			if n.Older {
				line += ", older"
			}
			got = append(got, line)
		}
		if !slices.Equal(got, c.want) || !slices.Equal(untold, c.untold) {
			t.Errorf("%s:\n got %q, untold %q\nwant %q, untold %q", c.name, got, untold, c.want, c.untold)
		}
	}
}

func TestSpannersAreWritten(t *testing.T) {
	for s, want := range map[Spanner]string{{}: "", {Sixteenths: 8}: "1/2 in", {Sixteenths: 16}: "1 in", {Sixteenths: 24}: "1 1/2 in",
		{Sixteenths: 21}: "1 5/16 in", {Sixteenths: 15}: "15/16 in", {MM: 24}: "24 mm"} {
		if got := s.String(); got != want {
			t.Errorf("%+v is written %q, want %q", s, got, want)
		}
	}
}

func hexagonOf(t *testing.T, thread string) Hexagon {
	t.Helper()
	th, err := ThreadOf(thread)
	if err != nil {
		t.Fatalf("%s: %v", thread, err)
	}
	x, err := HexagonOf(th)
	if err != nil {
		t.Fatalf("%s: %v", thread, err)
	}
	return x
}

func itoa(v float64) string { return listNumbers([]float64{v}) }
