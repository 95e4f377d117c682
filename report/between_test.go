package report

// The record says what stood between the halves in each gauging, and the bay card
// when the job is done.

import (
	"strings"
	"testing"

	"aligner/hulls/visit"
)

func TestTheRecordTellsOfADummy(t *testing.T) {
	d := begin(worked(t, document(t, "dummy")), Options{Kind: Record})
	gaugings := 0
	for _, e := range d.v.Events {
		if e.Gauging == nil {
			continue
		}
		gaugings++
		if how := d.gaugedHow(e.Gauging); !strings.Contains(how, "through a rigid dummy (3 thou uneven, thinnest at 3 o'clock") {
			t.Errorf("told %q", how)
		}
	}
	if gaugings == 0 {
		t.Error("no gaugings")
	}
}

// A card of a job handed over sends nobody to tighten again.
func TestACardOfAJobHandedOver(t *testing.T) {
	doc := document(t, "dummy")
	before := bayText(t, doc)
	if !strings.Contains(before, "tighten, gauge again") {
		t.Errorf("before: %q", before)
	}
	doc.Visit.HandedOver.Date = "2026-05-21"
	after := bayText(t, doc)
	if strings.Contains(after, "tighten, gauge again") || strings.Contains(after, "Fasten, and gauge") || !strings.Contains(after, "handed over on 2026-05-21") {
		t.Errorf("after: %q", after)
	}
}

// bayText is what stands on a bay card.
func bayText(t *testing.T, doc visit.Document) string {
	t.Helper()
	pdf := made(t, worked(t, doc), Options{Kind: Bay})
	return strings.Join(strings.Fields(tool(t, pdf, "pdftotext", "FILE", "-")), " ")
}
