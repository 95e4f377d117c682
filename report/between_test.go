package report

// The record says what stood between the halves in each gauging.

import (
	"strings"
	"testing"
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
