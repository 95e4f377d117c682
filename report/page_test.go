package report

// Pages hold what they must and are drawn in grey; hard cases still make sheets.

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/report/paper"
	"aligner/report/say"
)

// TestContentsLead: as many links as sections (qpdf), each section's title on the
// page that the contents name.
func TestContentsLead(t *testing.T) {
	pdf := made(t, worked(t, document(t, "hogging")), Options{Kind: Record})
	open := tool(t, pdf, "qpdf", "--qdf", "--object-streams=disable", "FILE", "-")
	if n := strings.Count(open, "/Subtype /Link"); n != 12 {
		t.Errorf("%d links, want 12", n)
	}
	pages := strings.Split(text(t, pdf), "\f")
	lines := regexp.MustCompile(`(?m)^ *(\d+ +\S.*\S) {3,}(\d+)$`).FindAllStringSubmatch(pages[0], -1)
	found := 0
	for _, l := range lines {
		page := 0
		fmt.Sscan(l[2], &page)
		if page >= 1 && page <= len(pages) && strings.Contains(pages[page-1], l[1]) {
			found++
		}
	}
	if found < 12 {
		t.Errorf("only %d of 12 sections are on the page the contents say: %q", found, lines)
	}
}

// TestInkIsGrey reads the drawing itself (qpdf --qdf): no colour but in pictures.
func TestInkIsGrey(t *testing.T) {
	for _, kind := range Kinds {
		open := tool(t, made(t, early(t, "hogging"), Options{Kind: kind, Quick: true}), "qpdf", "--qdf", "FILE", "-")
		colours := regexp.MustCompile(`(?m)^([0-9.]+) ([0-9.]+) ([0-9.]+) (rg|RG)$`).FindAllStringSubmatch(open, -1)
		for _, c := range colours {
			if c[1] != c[2] || c[2] != c[3] {
				t.Fatalf("%s: ink of %v", kind, c[1:])
			}
		}
		if !regexp.MustCompile(`PORT`).MatchString(text(t, made(t, early(t, "hogging"), Options{Kind: kind, Quick: true}))) && kind != Customer {
			t.Errorf("%s: PORT is not written", kind)
		}
	}
}

// hard are visits that are hard to lay out.
func hard(t testing.TB) map[string]visit.Document {
	base := document(t, "low-to-port")
	gauging := func(a, b float64, places int) visit.Event {
		g := visit.Gauging{Held: "seated", Note: strings.Repeat("a note that goes on ", 12)}
		for i := range places {
			at := float64(i) * 360 / float64(places)
			sin, cos := math.Sincos(at * math.Pi / 180)
			thou := (math.Hypot(a, b) + a*cos + b*sin) / 0.0254
			goes := math.Floor(thou)
			r := visit.Leaf{ClockDeg: at, Stops: visit.Thou(goes + 1)}
			if goes >= 1 {
				r.Goes = visit.Thou(goes)
			}
			g.Readings = append(g.Readings, r)
		}
		return visit.Event{Gauging: &g}
	}
	out := map[string]visit.Document{}
	with := func(name string, change func(*visit.Document)) {
		d := base
		d.Visit.Events = nil
		d.Hull.Mounts = append(d.Hull.Mounts[:0:0], base.Hull.Mounts...)
		change(&d)
		out[name] = d
	}
	with("no readings", func(*visit.Document) {})
	with("a gauging without readings", func(d *visit.Document) { d.Visit.Events = []visit.Event{{Gauging: &visit.Gauging{Held: "seated"}}} })
	with("forty readings", func(d *visit.Document) { d.Visit.Events = []visit.Event{gauging(-0.09, -0.17, 40)} })
	with("ten moves", func(d *visit.Document) {
		for i := range 11 {
			size := math.Pow(0.85, float64(i))
			d.Visit.Events = append(d.Visit.Events, gauging(-0.09*size, -0.17*size, 8))
			if i < 10 {
				d.Visit.Events = append(d.Visit.Events, visit.Event{Move: &visit.Move{NutFlats: map[string]float64{"aft port": 1}}})
			}
		}
	})
	with("long names", func(d *visit.Document) {
		d.Hull.Name = "Great Ölüfßkormoran of the Outer Skerries and Sounds, Second"
		d.Hull.HIN = "XX-ABC12345D606"
		d.Hull.Mounts[0].Name = "forward port mount under the bracket of the alternator"
		d.Hull.Mounts[3].Name = "Donaudampfschifffahrtsgesellschaftsmotorenlagerfußschraube"
		d.Visit.Rule.Named = strings.Repeat("the rule of the yard ", 5)
		d.Visit.LookOver = []visit.Finding{{Check: "strut firm", Finding: "failed", Note: strings.Repeat("it rocks on two bolts of four ", 8)}}
		d.Visit.Events = []visit.Event{gauging(-0.3, 0.4, 24)}
	})
	with("nothing can be turned", func(d *visit.Document) {
		d.Visit.Mounts = nil
		for _, m := range d.Hull.Mounts {
			d.Visit.Mounts = append(d.Visit.Mounts, visit.MountFound{Mount: m.Name, Nut: visit.Stuck, Slide: visit.Forbidden})
		}
		d.Visit.Events = []visit.Event{gauging(-0.09, -0.17, 8)}
	})
	with("dry, no date, no rule", func(d *visit.Document) {
		d.Visit.Date, d.Visit.Rule, d.Visit.State = "", visit.Rule{}, visit.State{}
		d.Visit.Events = []visit.Event{gauging(-0.09, -0.17, 3)}
	})
	solid := document(t, "solid-feet")
	with("six solid feet", func(d *visit.Document) {
		*d = visit.Document{Hull: solid.Hull, Visit: solid.Visit}
		d.Visit.Events = []visit.Event{gauging(-0.2, 0.3, 40)}
	})
	return out
}

// TestHardCases: one page stays one, nothing fails, no sentence is missing.
func TestHardCases(t *testing.T) {
	for name, d := range hard(t) {
		in := worked(t, d)
		for i, kind := range Kinds {
			o := Options{Kind: kind, Size: paper.Letter, Today: "2026-05-14", Quick: true}
			if i%2 == len(name)%2 {
				o.Speaker, o.Units = words.In("de"), say.Units{Metric: true, DecimalComma: true}
			}
			pdf := made(t, in, o)
			sound(t, pdf, paper.Letter)
			if want := map[Kind]int{Bay: 1, Customer: 1, Class: 2}[kind]; want > 0 && Pages(pdf) != want {
				t.Errorf("%s, %s: %d pages, want %d", name, kind, Pages(pdf), want)
			}
			if said := text(t, pdf); hole.MatchString(said) || strings.Contains(said, "<no value>") {
				t.Errorf("%s, %s: a sentence is missing:\n%s", name, kind, said)
			}
		}
		if len(d.Visit.LookOver) == 1 { // a failed check stays in sight
			for _, kind := range []Kind{Bay, Record, Customer} {
				if said := text(t, made(t, in, Options{Kind: kind, Quick: true})); !strings.Contains(strings.ToLower(said), "strut firm") {
					t.Errorf("%s: the failed check is not on it", kind)
				}
			}
		}
	}
}

// TestNothingRunsOffThePage reads every word's box with pdftotext -bbox.
func TestNothingRunsOffThePage(t *testing.T) {
	word := regexp.MustCompile(`<word xMin="([-0-9.]+)" yMin="([-0-9.]+)" xMax="([-0-9.]+)" yMax="([-0-9.]+)">(.*)</word>`)
	all := hard(t)
	for _, name := range []string{"solid-feet", "v-drive"} {
		d := document(t, name)
		all[name] = Until(d, BeforeMoving(&d.Visit))
	}
	for name, d := range all {
		in := worked(t, d)
		for i, kind := range Kinds {
			o := Options{Kind: kind, Quick: true}
			if i == len(name)%len(Kinds) { // German words are longer
				o.Speaker = words.In("de")
			}
			out := tool(t, made(t, in, o), "pdftotext", "-bbox", "FILE", "-")
			for _, w := range word.FindAllStringSubmatch(out, -1) {
				var box [4]float64
				for i := range box {
					fmt.Sscan(w[i+1], &box[i])
				}
				const edge = 8 / 25.4 * 72 // less than the margin: round a clock numbers may stand a little in it
				if box[0] < edge || box[2] > 595.28-edge || box[1] < edge || box[3] > 841.89-10 {
					t.Errorf("%s, %s: %q stands at %v", name, kind, w[5], box)
				}
			}
		}
	}
}

// BenchmarkRecord is a long record; its pages a second are told.
func BenchmarkRecord(b *testing.B) {
	d := hard(b)["ten moves"]
	events := d.Visit.Events
	in := worked(b, d)
	for range 19 { // the same again, for paper's sake
		in.Document.Visit.Events = append(in.Document.Visit.Events, events...)
	}
	pages := 0
	for b.Loop() {
		pages += Pages(made(b, in, Options{Kind: Record}))
	}
	b.ReportMetric(float64(pages)/b.Elapsed().Seconds(), "pages/s")
	b.ReportMetric(float64(pages)/float64(b.N), "pages")
}
