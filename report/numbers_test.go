package report

// What stands on paper is what estimate and plan say, and what is attached gives
// it again.

import (
	"bytes"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/plan"
	"aligner/kinematics/why"
	"aligner/report/say"
)

// early is a built-in visit as it stood before anything was moved.
func early(t testing.TB, name string) Input {
	d := document(t, name)
	return worked(t, Until(d, BeforeMoving(&d.Visit)))
}

// TestBayCardSaysThePlan reads the card with pdftotext: every step's expected
// gaps in their order, and every mount's turn with its direction.
func TestBayCardSaysThePlan(t *testing.T) {
	for _, name := range assets.VisitNames() {
		in := early(t, name)
		if in.Plan.Status != plan.Found && in.Plan.Status != plan.Unsure {
			t.Logf("%s: nothing planned before the first move (%s)", name, in.Plan.Status)
			continue
		}
		for _, metric := range []bool{false, true} {
			o := Options{Kind: Bay, Units: say.Units{Metric: metric}}
			said := strings.Join(strings.Fields(tool(t, made(t, in, o), "pdftotext", "FILE", "-")), " ")
			d := begin(in, o)
			for i := range in.Plan.Steps {
				for _, deg := range d.positions() {
					want := d.leaf(in.Plan.Steps[i].GapAtMM(deg))
					if !strings.Contains(said, want) {
						t.Errorf("%s: no %s of step %d on the card", name, want, i+1)
					}
				}
				if want := d.stopText(&in.Plan.Steps[i]); !strings.Contains(said, want) {
					t.Errorf("%s: no %q on the card", name, want)
				}
			}
			for i, n := range in.Plan.NutFlats {
				m := &in.Document.Hull.Mounts[i]
				if n != 0 && !strings.Contains(said, d.turnText(m, n)) {
					t.Errorf("%s: no turn of %s on the card", name, m.Name)
				}
			}
		}
	}
}

// TestExpectedGapsStandUnderTheirPositions reads the table's rows as they lie on
// the page, all steps below each other.
func TestExpectedGapsStandUnderTheirPositions(t *testing.T) {
	in := early(t, "low-to-port")
	d := begin(in, Options{Kind: Bay})
	d.AddPage()
	d.bayCard(0.6, 1)
	pdf, err := d.Bytes()
	if err != nil {
		t.Fatal(err)
	}
	rows := regexp.MustCompile(`(?m)^ *expect, thou +(.*)$`).FindAllStringSubmatch(text(t, pdf), -1)
	if len(rows) != len(in.Plan.Steps) {
		t.Fatalf("%d rows for %d steps", len(rows), len(in.Plan.Steps))
	}
	for i, row := range rows {
		got := strings.Fields(row[1])
		if len(got) != len(in.Estimate.ClockDeg) {
			t.Fatalf("step %d: %q", i+1, row[1])
		}
		for j, deg := range in.Estimate.ClockDeg {
			v, err := strconv.ParseFloat(got[j], 64)
			if err != nil || math.Abs(v*0.0254-in.Plan.Steps[i].GapAtMM(deg)) > 0.0254/4+1e-9 {
				t.Errorf("step %d at %v: %s, want %v mm", i+1, deg, got[j], in.Plan.Steps[i].GapAtMM(deg))
			}
		}
	}
}

// TestRaisingIsAgainstTheClock: a nut on a standing right-hand thread goes up
// when turned anticlockwise seen from above.
func TestRaisingIsAgainstTheClock(t *testing.T) {
	d := begin(early(t, "low-to-port"), Options{Kind: Bay})
	for flats, want := range map[int]string{7: "1 turn + 1 flat, anticlockwise", -7: "1 turn + 1 flat, clockwise",
		12: "2 turns, anticlockwise", -3: "clockwise", 14: "2 turns + 2 flats, anticlockwise"} {
		if got := d.turns(flats); got != want {
			t.Errorf("%d flats: %q, want %q", flats, got, want)
		}
	}
}

// TestLeavesForAGap brackets it by what the set can make.
func TestLeavesForAGap(t *testing.T) {
	d := begin(early(t, "first-job"), Options{Kind: Bay})
	for gap := 0.0; gap < 1.2; gap += 0.0071 {
		goes, stops := d.leavesFor(gap)
		if goes > gap || stops != 0 && stops <= gap {
			t.Fatalf("%v mm: goes %v, stops %v", gap, goes, stops)
		}
	}
}

// TestLookingAftTurnsTheClockRound: the same gap stands at the mirrored hour, on
// the same side of the boat.
func TestLookingAftTurnsTheClockRound(t *testing.T) {
	in := early(t, "low-to-port")
	forward, aft := begin(in, Options{Kind: Bay}), begin(in, Options{Kind: Bay, Seen: visit.LookingAft})
	if f, a := forward.place(90), aft.place(90); f != "3 o'clock (starboard)" || a != "9 o'clock (starboard)" {
		t.Errorf("%q and %q", f, a)
	}
	got := aft.positions()
	if len(got) != len(forward.positions()) || aft.clock(got[0]) != "12" || aft.clock(got[1]) != "1:30" {
		t.Errorf("looking aft the positions are %v", got)
	}
	pdf := made(t, in, Options{Kind: Bay, Seen: visit.LookingAft})
	if said := text(t, pdf); !strings.Contains(said, "looking aft") || strings.Contains(said, "looking forward") {
		t.Error("it does not say which way")
	}
}

// TestRecordGivesTheEstimate: A and B to a ten-thousandth of a mm, as
// estimate --json has them.
func TestRecordGivesTheEstimate(t *testing.T) {
	for _, name := range assets.VisitNames() {
		in := worked(t, document(t, name))
		said := text(t, made(t, in, Options{Kind: Record}))
		for i, label := range []string{"A: half of top less bottom", "B: half of starboard less port"} {
			found := regexp.MustCompile(label + ` +(-?[0-9.]+) mm ± ([0-9.]+) mm`).FindStringSubmatch(said)
			if found == nil {
				t.Errorf("%s: no %s", name, label)
				continue
			}
			mean, _ := strconv.ParseFloat(found[1], 64)
			sd, _ := strconv.ParseFloat(found[2], 64)
			if math.Abs(mean-in.Estimate.Gap.MeanMM[i]) > 5.1e-5 || math.Abs(sd-math.Sqrt(in.Estimate.Gap.CovMM2[i][i])) > 5.1e-5 {
				t.Errorf("%s: %s is %v ± %v on paper; %v", name, label, mean, sd, in.Estimate.Gap)
			}
		}
	}
}

// TestRecordHoldsTheVisit takes the attached files out with pdfdetach (poppler)
// and works the same estimate out of them.
func TestRecordHoldsTheVisit(t *testing.T) {
	d := document(t, "v-drive")
	in := worked(t, d)
	file, _ := assets.Visit("v-drive")
	for _, given := range [][]byte{file, nil} {
		pdf := made(t, in, Options{Kind: Record, File: given, FileName: "v-drive.visit.json"})
		into := t.TempDir()
		tool(t, pdf, "pdfdetach", "-saveall", "-o", into, "FILE")
		data, err := os.ReadFile(filepath.Join(into, "v-drive.visit.json"))
		if err != nil {
			t.Fatal(err)
		}
		if given != nil && !bytes.Equal(data, given) {
			t.Error("the visit file is not the one given")
		}
		hull, err := os.ReadFile(filepath.Join(into, "avocet.hull.json"))
		if err != nil {
			t.Fatal(err)
		}
		again, report := visit.Open(data, "v-drive", func(string) (hulls.Hull, error) { return hulls.Parse(hull, "avocet") })
		if err := report.Err(); err != nil {
			t.Fatal(err)
		}
		if got := worked(t, again).Estimate.Gap; got != in.Estimate.Gap {
			t.Errorf("worked out again it is %v, was %v", got, in.Estimate.Gap)
		}
	}
}

// TestStepTableIsTheTableOfNuts: the record and the exercise have the numbers of
// why.Table (aligner why HULL), half a spread at the hour where it opens, a row each.
func TestStepTableIsTheTableOfNuts(t *testing.T) {
	for _, name := range []string{"low-to-port", "v-drive", "solid-feet"} {
		in := early(t, name)
		rows, err := why.Table(&in.Document.Hull, in.Estimate.Aim, in.Document.Visit.State.Afloat())
		if err != nil {
			t.Fatal(err)
		}
		for _, kind := range []Kind{Record, Class} {
			said := strings.ReplaceAll(text(t, made(t, in, Options{Kind: kind, Quick: true})), "\u2212", "-")
			found := regexp.MustCompile(`(?m)^ *(\S.*?) {2,}([-+]?\d+\.\d\d) +([-+]?\d+\.\d\d) +([-+]?\d+\.\d\d) +([-+]?\d+\.\d\d) +(\d+\.\d\d)$`).FindAllStringSubmatch(said, -1)
			if len(found) != len(rows) {
				t.Fatalf("%s, %s: %d rows, want %d:\n%s", name, kind, len(found), len(rows), said)
			}
			for i, r := range rows {
				at := [4]float64{r.Change[0], r.Change[1], -r.Change[0], -r.Change[1]}
				for j, mm := range at {
					got, _ := strconv.ParseFloat(found[i][2+j], 64)
					if math.Abs(got*0.0254-mm) > 0.0254*0.00501 {
						t.Errorf("%s, %s, %s: %v at column %d, want %v mm", name, kind, found[i][1], got, j, mm)
					}
				}
				if starred := strings.HasSuffix(found[i][1], "*"); starred != r.Hardly {
					t.Errorf("%s, %s: %q, hardly %v", name, kind, found[i][1], r.Hardly)
				}
			}
		}
	}
}

// TestMetricLeavesAreNamedAsMarked: whoever reads in thou with a metric set looks for
// the leaf of 0.05 mm, not for one of 1.97 thou; and solid feet have no nuts.
func TestMetricLeavesAreNamedAsMarked(t *testing.T) {
	in := early(t, "solid-feet")
	for _, kind := range []Kind{Bay, Class, Record} {
		said := strings.Join(strings.Fields(text(t, made(t, in, Options{Kind: kind, Quick: true}))), " ")
		for _, never := range []string{"1.97", "Jam nuts and clamps", "right-hand threads"} {
			if strings.Contains(said, never) {
				t.Errorf("%s: %q", kind, never)
			}
		}
		if want := map[Kind]string{Bay: "goes, mm", Class: "goes / stops, mm", Record: "0.05, 0.1, 0.15"}[kind]; !strings.Contains(said, want) {
			t.Errorf("%s: no %q", kind, want)
		}
	}
	if said := text(t, made(t, in, Options{Kind: Bay, Quick: true})); !strings.Contains(said, "Foot bolts pair by pair") {
		t.Error("the feet's bolts are not on the card")
	}
}
