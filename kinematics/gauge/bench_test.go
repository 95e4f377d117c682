package gauge

// This file measures the estimate of every worked visit.

import (
	"testing"

	"aligner/assets"
	"aligner/hulls/visit/builtin"
)

func BenchmarkWorkedVisits(b *testing.B) {
	for _, name := range assets.VisitNames() {
		d := builtin.Visit(b, name)
		m, err := NewModel(&d.Hull, d.Visit.State.Afloat())
		if err != nil {
			b.Fatal(err)
		}
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				if _, err := m.Estimate(&d.Visit); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
