package say_test

// This file holds what is said in German: whole sentences of a built-in visit,
// which sentences made of parts have to come out right in. (The wording is our
// own; no source.)

import (
	"slices"
	"strings"
	"testing"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/report/job"
	"aligner/report/say"
)

var (
	german = words.In("de")
	metric = say.Units{Metric: true, DecimalComma: true}
)

// begun is a built-in visit as it stood before anything was moved, with what
// its readings mean and what to do about it.
func begun(t *testing.T, name string) (visit.Document, *gauge.Estimate, *plan.Plan) {
	t.Helper()
	d := builtin.Visit(t, name)
	moved := slices.IndexFunc(d.Visit.Events, func(e visit.Event) bool { return e.Move != nil })
	d.Visit.Events = d.Visit.Events[:moved]
	m, err := gauge.NewModel(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		t.Fatal(err)
	}
	e, err := m.Estimate(&d.Visit)
	if err != nil {
		t.Fatal(err)
	}
	planner, err := plan.NewPlanner(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		t.Fatal(err)
	}
	p, err := planner.Plan(&d.Visit, e, plan.Settings{Wanted: 0.9})
	if err != nil {
		t.Fatal(err)
	}
	return d, e, p
}

func TestEstimateAndPlanInGerman(t *testing.T) {
	d, e, p := begun(t, "first-job")
	lines := append(say.Estimate(german, metric, &d.Visit, e), say.Plan(german, metric, &d.Hull, e, p, true)...)
	for _, want := range []string{
		"So wie der Motor steht, klaffen die Flächen bei 12 Uhr (oben) um 0,53 mm (± 0,01 mm) weiter als gegenüber.",
		"Regel: üblicher Brauch, 3 thou (größter Spalt 0,076 mm).",
		"Urteil: außerhalb. Aussicht, dass der Spalt die Regel einhält: unter 1 von 100.",
		"Verstellen: BB vorn 6 Sechstel höher, STB vorn 6 Sechstel höher. Etwa 10 Minuten.",
		"Die Welle um 1 mm zurückziehen, damit unterwegs nichts anstößt.",
		"   Kontermuttern lösen, drehen, leicht beiziehen.",
		"   Danach zu erwarten, Welle in der Zentrierung (mm): 12 Uhr 0,02; 3 Uhr 0,01; 6 Uhr 0; 9 Uhr 0,01.",
		"   Aufhören, wenn bei 12 Uhr (oben) mehr als 0,07 mm gemessen wird.",
	} {
		if !slices.Contains(lines, want) {
			t.Errorf("not said: %s", want)
		}
	}
	if t.Failed() {
		t.Log("said:\n" + strings.Join(lines, "\n"))
	}
}

// A failed check is named in the reader's language, and so is each part of the
// sentence on what a nut did.
func TestPartsOfSentencesInGerman(t *testing.T) {
	d, e, _ := begun(t, "bent-shaft")
	want := "Bei der Durchsicht nicht bestanden: Welle dreht leicht. Alles Weitere ist vorläufig, bis das behoben ist."
	if got := say.Estimate(german, metric, &d.Visit, e)[0]; got != want {
		t.Errorf("%s; want %s", got, want)
	}
	for _, c := range []struct {
		effect kinematics.Effect
		want   string
	}{
		{kinematics.Effect{TotalMM: -0.03, TiltMM: -0.06, SwingMM: 0.03, CouplingMM: [2]float64{0, 0.1}},
			"BB vorn 2 Sechstel höher: oben kippt gegen unten um 0,060 mm zu, aber die Kupplung hebt sich; dadurch geht es wieder um 0,030 mm auf: zusammen um 0,030 mm zu."},
		{kinematics.Effect{Hour: 9, TotalMM: 0.08, TiltMM: 0.05, SwingMM: 0.03, CouplingMM: [2]float64{-0.1, 0}},
			"BB vorn 2 Sechstel höher: backbord kippt gegen steuerbord um 0,050 mm auf, und die Kupplung wandert nach Steuerbord; dadurch geht es nochmals um 0,030 mm auf: zusammen um 0,080 mm auf."},
		{kinematics.Effect{Hour: 1, TotalMM: 0.08, RestMM: 0.08},
			"BB vorn 2 Sechstel höher: 1 Uhr geht gegen 7 Uhr um 0,080 mm auf."},
	} {
		move := say.Move(german, metric, &d.Hull, []float64{2}, nil)
		if got := say.Effect(german, metric, move, c.effect); got != c.want {
			t.Errorf("%s\nwant %s", got, c.want)
		}
	}
}

// Every word that other packages hand to a sentence has its own, and the
// English one is the word as files have it.
func TestOtherPackagesWordsAreSaid(t *testing.T) {
	d, _, _ := begun(t, "v-drive")
	known := map[string][]string{
		"held":    visit.GaugedWays,
		"by":      {"block", "hand", "jack", "scale"},
		"layout":  {string(hulls.InLine), string(hulls.DownAngle), string(hulls.VDrive)},
		"finding": {"good", "failed", "skipped"},
		"rule":    {visit.DefaultRule.Named},
	}
	for _, w := range kinematics.HeldWays {
		known["held"] = append(known["held"], string(w))
	}
	for _, r := range []visit.Reading{visit.Leaf{}, visit.LeafRound{}, visit.RimStep{}, visit.Dial{}, visit.RunOut{}, visit.Clearance{}, visit.Pilot{}} {
		known["kind"] = append(known["kind"], r.Kind())
	}
	solid := d.Hull
	solid.Mounts = append(slices.Clone(solid.Mounts), hulls.Mount{Kind: hulls.Solid})
	for _, c := range job.LookOver(&solid, &d.Visit) {
		known["check"] = append(known["check"], c.ID)
	}
	if n := len(known["check"]); n < 18 {
		t.Errorf("only %d checks", n)
	}
	for kind, all := range known {
		for _, word := range all {
			id := words.Of(kind, word)
			if got := words.Say(id, nil); got != word {
				t.Errorf("%s is said in English as %q", id, got)
			}
			if got := german.Say(id, nil); got == "" || got == word || strings.HasPrefix(got, "[") {
				t.Errorf("%s is said in German as %q", id, got)
			}
		}
	}
}
