package job

// This file says everything there is to say, and sees that it is said whole.

import (
	"encoding/json"
	"os"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/response"
	"aligner/report/say"
)

// collector remembers which sentences were said.
type collector struct {
	t    *testing.T
	said map[words.ID]bool
}

func (c *collector) say(texts ...Text) {
	for _, x := range texts {
		c.note(x)
		for _, u := range []say.Units{{}, {Metric: true}, {Metric: true, DecimalComma: true}} {
			line := x.Say(words.In("en"), u)
			if line == "" || strings.Contains(line, "<no value>") || strings.HasPrefix(line, "[") || strings.Contains(line, "  ") || strings.Contains(line, "[job_") {
				c.t.Errorf("%s is said as %q", x.ID, line)
			}
			if u.Metric && (strings.Contains(line, "thou ") || strings.Contains(line, "lb-ft")) {
				c.t.Errorf("%s speaks of inches to a metric reader: %q", x.ID, line)
			}
		}
	}
}

// note marks a text and those within it.
func (c *collector) note(x Text) {
	c.said[x.ID] = true
	for _, arg := range x.Args {
		switch arg := arg.(type) {
		case Text:
			c.note(arg)
		case []Text:
			for _, inner := range arg {
				c.note(inner)
			}
		}
	}
}

// states of boats and their checks, from nothing known to all bad.
func visits(h *hulls.Hull) []*visit.Visit {
	none := &visit.Visit{}
	trailer := &visit.Visit{Date: "2026-05-14", State: visit.State{Boat: "trailer", MountAgeMonths: visit.Known(0), MountHoursStanding: visit.Known(1)}}
	fresh := &visit.Visit{State: visit.State{Boat: "afloat", HoursSinceLaunch: visit.Known(2), Rig: "slack", MountHoursStanding: visit.Known(1)},
		Mounts: []visit.MountFound{{Mount: h.Mounts[0].Name, Slide: visit.Stuck}}}
	dated := &visit.Visit{Date: "2026-05-14", State: fresh.State}
	bad := allGood(h)
	for i := range bad.LookOver {
		bad.LookOver[i].Finding = []string{"failed", "skipped"}[i%2]
		bad.LookOver[i].Note = "a note"
	}
	list := []*visit.Visit{none, trailer, fresh, dated, bad, allGood(h)}
	for _, events := range [][]visit.Event{{aMove, gauged("seated", 0)}, {gauged("seated", 0), aMove}, {aMove, gauged("seated", 0), aFasten, aFasten},
		{aMove, gauged("snug", 0)}, {aMove, {Gauging: &visit.Gauging{Held: "centred"}}}} {
		v := *none
		v.Events = events
		list = append(list, &v)
	}
	return list
}

func (c *collector) hull(h *hulls.Hull) {
	for _, v := range visits(h) {
		for _, check := range LookOver(h, v) {
			c.say(check.Title, check.How, check.Looks, check.Means, check.State.Name())
		}
		for _, it := range Bring(h, v, 0) {
			c.say(it.Text)
		}
		for _, r := range Provisional(h, v) {
			c.say(r.Text)
		}
		for _, d := range Due(h, v) {
			c.say(d.Text)
		}
	}
	for _, lubricated := range []bool{false, true} {
		for _, makerNM := range []float64{0, 30, 1000} {
			steps, _ := FastenOrder(h, lubricated, makerNM)
			for _, s := range append(steps, OneAtATime(h, steps)...) {
				c.say(s.Text)
			}
			torque, err := hulls.Tighten(h.Coupling.Bolts, lubricated, makerNM)
			c.say(TorqueText(h.Coupling.Bolts, lubricated, torque, err)...)
			c.say(Torque(h, lubricated, makerNM)...)
		}
	}
	if f, ok := ThreeThenFourth(h); ok {
		c.say(f.Steps...)
	}
}

// oddHulls are built-in ones changed to what no built-in one is.
func oddHulls(t *testing.T) []*hulls.Hull {
	noPilot, solid, open, stainless := *hull(t, "Kittiwake"), *hull(t, "Bench"), *hull(t, "Avocet"), *hull(t, "Eider")
	noPilot.Coupling.PilotDiameterMM = 0
	noPilot.Coupling.Bolts = hulls.Bolts{Count: 4, Thread: "#10-24 UNC", Grade: "none"}
	solid.Mounts, open.Mounts = append([]hulls.Mount(nil), solid.Mounts...), append([]hulls.Mount(nil), open.Mounts...)
	for i := range solid.Mounts {
		solid.Mounts[i].Kind, solid.Mounts[i].ShimStepMM = hulls.Solid, 0.1
		open.Mounts[i].Reach = hulls.Open
	}
	stainless.Coupling.Bolts.Grade = "ISO 3506-1 A4-70"
	stainless.Engine.CentreOfMassMM[1] = 100 // stands on three by itself
	return []*hulls.Hull{&noPilot, &solid, &open, &stainless}
}

func (c *collector) pulls() {
	thou := 0.0254
	for _, h := range []*hulls.Hull{hull(c.t, "Eider"), hull(c.t, "Cormorant")} {
		r := &response.Response{}
		for i := range h.Mounts {
			r.Items = append(r.Items, response.Item{Mounts: []int{i}})
		}
		for _, p := range []Pulled{{Status: Unmoved}, {Status: NotOne},
			{Status: Named, Alike: []Pull{{Mounts: []int{0}, Steps: -1, Ease: 1, ResidualMM: thou}}},
			{Status: CannotTell, Alike: []Pull{{Mounts: []int{0}, Ease: 2}, {Mounts: []int{1}, Ease: -1}, {Mounts: []int{1}}}},
			{Status: Slipped, Alike: []Pull{{Mounts: []int{0, 1}, Slide: true, Steps: 1}, {Mounts: []int{0, 1}, Slide: true, Steps: -1}}}} {
			c.say(p.Text(h)...)
		}
	}
}

// TestEverythingIsSaid: each sentence of the file is said by something, whole,
// and nothing else is.
func TestEverythingIsSaid(t *testing.T) {
	c := &collector{t: t, said: map[words.ID]bool{}}
	for _, name := range assets.HullNames() {
		c.hull(hull(t, name))
	}
	for _, h := range oddHulls(t) {
		c.hull(h)
	}
	for _, s := range Stages {
		c.say(s.Name())
		for _, caution := range Cautions(s, true) {
			c.say(caution.Text)
		}
	}
	for _, s := range Sources {
		c.say(s.Name())
	}
	for _, w := range []Wear{Even, Worn, Crooked, WornCrooked, NotTold} {
		b := BearingRoom{Bearing: "strut", Wear: w}
		c.say(b.Text())
	}
	c.said["job_provisional_bearing"] = true // see TestProvisional
	c.pulls()

	data, err := os.ReadFile("../../assets/words/job.en.json")
	if err != nil {
		t.Fatal(err)
	}
	var sentences map[words.ID]any
	if err := json.Unmarshal(data, &sentences); err != nil {
		t.Fatal(err)
	}
	for id := range sentences {
		if !c.said[id] {
			t.Errorf("nothing says %s", id)
		}
	}
}

func TestQuantitiesAreWritten(t *testing.T) {
	inch, metric, comma := say.Units{}, say.Units{Metric: true}, say.Units{Metric: true, DecimalComma: true}
	for _, c := range []struct {
		u    say.Units
		v    any
		want string
	}{
		{inch, GapMM(0.0762), "3 thou"}, {metric, GapMM(0.0762), "0.08 mm"}, {comma, GapMM(0.0762), "0,08 mm"},
		{inch, ThicknessMM(0.0381), "1.5 thou"}, {metric, ThicknessMM(0.05), "0.05 mm"},
		{inch, LengthMM(1.25), "1.2 mm"}, {comma, LengthMM(1.26), "1,3 mm"},
		{inch, TorqueNM(47.4536), "35 lb-ft"}, {metric, TorqueNM(47.4536), "47 N m"}, {comma, TorqueNM(8.5), "8,5 N m"},
		{inch, TorqueNM(12), "8.9 lb-ft"}, {metric, Number(2.5), "2.5"}, {comma, Number(2.5), "2,5"}, {inch, Number(3), "3"},
		{inch, []string{"a"}, "a"}, {inch, []string{"a", "b", "c"}, "a, b and c"}, {inch, []string(nil), ""},
		{inch, hulls.Spanner{Sixteenths: 15}, "15/16 in"}, {inch, "as it is", "as it is"},
	} {
		if got := written(words.In("en"), c.u, c.v); got != c.want {
			t.Errorf("%v in %+v is written %q, want %q", c.v, c.u, got, c.want)
		}
	}
	if got := (Text{}).Say(words.In("en"), inch); got != "" {
		t.Errorf("no text says %q", got)
	}
}
