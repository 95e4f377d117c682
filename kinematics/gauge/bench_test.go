package gauge

// This file measures the estimate of every worked visit.

import (
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit"
)

func BenchmarkWorkedVisits(b *testing.B) {
	for _, name := range assets.VisitNames() {
		data, _ := assets.Visit(name)
		d, report := visit.Open(data, name, func(name string) (hulls.Hull, error) { return hull(b, name), nil })
		if err := report.Err(); err != nil {
			b.Fatal(err)
		}
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
