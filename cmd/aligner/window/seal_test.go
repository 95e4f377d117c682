package window

// This file enters, by keys, a seal that is turned free and a heavy place of the
// turn, and follows both to the hand-over.

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"aligner/hulls/visit"
	"aligner/report/job"
)

// toCheck opens a check of the look-over.
func (h *hands) toCheck(id string) {
	h.t.Helper()
	h.w.enter(stageLook)
	for i, c := range h.w.looking.checks() {
		if c.ID == id {
			h.w.looking.open(i)
			return
		}
	}
	h.t.Fatalf("no check %q", id)
}

func TestASealIsTurnedFreeAndSetBackByKeys(t *testing.T) {
	w := opened(t, "Kittiwake")
	h := handsOn(t, w)
	h.toCheck(job.BoxSound)
	seal := w.looking.seal
	h.choose("seal", seal.kind, h.wordOf("seal", visit.SealFace))
	h.fill("pressed", seal.pressed, "19")
	h.tabTo("freed", seal.freed)
	h.key(fyne.KeyReturn)
	want := visit.Seal{Kind: visit.SealFace, PressedMM: visit.Known(19), Freed: true}
	if got := w.history.Now().Visit.Seal; got != want {
		t.Fatalf("entered %+v, wanted %+v", got, want)
	}
	w.enter(stageFasten)
	for range 40 {
		if i := w.fastening.at(); i < 0 || w.fastening.steps[i].Kind == job.SetSealBack {
			break
		}
		i := w.fastening.at()
		if w.fastening.steps[i].Kind == job.Regauge { // left out
			d := w.history.Now()
			for _, s := range w.fastening.steps[i+1:] {
				if f, ok := s.Record(&d.Hull); ok {
					w.do(&visit.RecordFastening{Fasten: f})
					break
				}
			}
			continue
		}
		h.letters("y")
	}
	if text := w.fastening.next.Text; !strings.Contains(text, "19 mm") {
		t.Fatalf("the step says %q", text)
	}
	h.letters("y")
	if !w.history.Now().Visit.Seal.SetBack {
		t.Error("not set back")
	}
}

func TestAHeavyPlaceIsEnteredBeforeAndAfterByKeys(t *testing.T) {
	w := opened(t, "Kittiwake")
	h := handsOn(t, w)
	h.toCheck(job.ShaftFree)
	h.fill("tight", w.looking.tight.at, "90")
	v := w.history.Now().Visit
	if len(v.LookOver) != 1 || v.LookOver[0] != (visit.Finding{Check: job.ShaftFree, Finding: "failed", TightAtDeg: visit.Known(90)}) {
		t.Fatalf("entered %+v", v.LookOver)
	}
	w.fastening.turned("heavy")
	w.enter(stageFasten)
	h.fill("tight", w.fastening.tight.at, "100")
	if got := w.history.Now().Visit.HandedOver.TightAtDeg; got != visit.Known(100) {
		t.Fatalf("entered %+v", got)
	}
	w.enter(stageHandOver)
	if text := w.handing.done.Text; !strings.Contains(text, "same place") {
		t.Errorf("the hand-over says %q", text)
	}
}
