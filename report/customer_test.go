package report

// What the customer sees and is told is neither more nor less than what is.

import (
	"strings"
	"testing"

	"aligner/assets"
	"aligner/kinematics"
)

// TestGapsAreNotDrawnLikeAWreck: at the exaggeration that is stated no gap is drawn
// wider than a third of the faces' diameter, on any built-in visit.
func TestGapsAreNotDrawnLikeAWreck(t *testing.T) {
	for _, name := range assets.VisitNames() {
		d := begin(worked(t, document(t, name)), Options{Kind: Customer, Quick: true})
		before, after, err := d.beforeAfter()
		if err != nil || before == nil || after == nil {
			t.Fatalf("%s: %v, %v, %v", name, before, after, err)
		}
		of, err := d.drawable([]*stood{before, after})
		if err != nil {
			t.Fatal(err)
		}
		line, err := kinematics.Prepare(*d.h)
		if err != nil {
			t.Fatal(err)
		}
		widest := 0.0
		for _, s := range []*stood{before, after} {
			var r kinematics.Result
			if err := line.Solve(&s.state, &r); err != nil {
				t.Fatal(err)
			}
			widest = max(widest, r.Gap.SpreadMM())
		}
		if wide := of.times * widest; wide > d.h.Coupling.OuterDiameterMM/3+1e-9 || of.times < 20 {
			t.Errorf("%s: at %v times a gap of %v mm is %v mm wide on faces of %v mm", name, of.times, widest, wide, d.h.Coupling.OuterDiameterMM)
		}
	}
}

// TestWhatIsLeftIsInTheHeadline: a flange that runs out is left to put right, however
// well the engine stands.
func TestWhatIsLeftIsInTheHeadline(t *testing.T) {
	for name, left := range map[string]bool{"crooked-flange": true, "bent-shaft": true, "low-to-port": false} {
		said := strings.Join(strings.Fields(text(t, made(t, worked(t, document(t, name)), Options{Kind: Customer, Quick: true}))), " ")
		if got := strings.Contains(said, "something else is left to put right"); got != left {
			t.Errorf("%s: something left: %v", name, got)
		}
	}
}

// TestToldWhatIsMeant: a gap left on purpose, for load or for the push of the
// propeller, is told as meant, with the reason.
func TestToldWhatIsMeant(t *testing.T) {
	for name, want := range map[string]string{"hogging": "on purpose (hogs when loaded)", "under-power": "on purpose, so that it is right when the propeller pushes"} {
		said := strings.Join(strings.Fields(text(t, made(t, worked(t, document(t, name)), Options{Kind: Customer, Quick: true}))), " ")
		if !strings.Contains(said, want) {
			t.Errorf("%s: no %q in %q", name, want, said)
		}
	}
}
