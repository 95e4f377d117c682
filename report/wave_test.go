package report

// The wave on the record goes through the bars of the readings it was fitted to.

import (
	"math"
	"testing"

	"aligner/assets"
)

// TestWavesGoThroughTheirBars: in every built-in visit, no reading that counts is
// missed by more than three times the feel of the leaves, and most by nothing.
func TestWavesGoThroughTheirBars(t *testing.T) {
	for _, name := range assets.VisitNames() {
		in := worked(t, document(t, name))
		d := begin(in, Options{Kind: Record})
		bars, missed := 0, 0
		for event, e := range d.v.Events {
			if e.Gauging == nil {
				continue
			}
			w, ok := d.waveOf(event)
			if !ok {
				continue
			}
			for _, b := range d.bars(event) {
				if b.aside {
					continue
				}
				bars++
				gap := w.at(b.deg)
				off := max(b.goesMM-gap, 0)
				if b.stopsMM > 0 {
					off = max(off, gap-b.stopsMM)
				}
				if off > d.e.FeelMM {
					missed++
				}
				if off > 3*d.e.FeelMM {
					t.Errorf("%s, event %d, %g degrees: the wave is at %.4f mm, the bar from %.4f to %.4f", name, event+1, b.deg, gap, b.goesMM, b.stopsMM)
				}
			}
		}
		if told := d.told(); told && bars == 0 {
			t.Errorf("%s: no bars to plot", name)
		}
		if missed*5 > bars {
			t.Errorf("%s: %d of %d bars are missed", name, missed, bars)
		}
	}
}

// Faces held far apart are plotted from a little under the least gap: a plot from
// nothing would show a straight line.
func TestAPlotOfFacesFarApartShowsTheWave(t *testing.T) {
	for _, name := range assets.VisitNames() {
		d := begin(worked(t, document(t, name)), Options{Kind: Record})
		for event, e := range d.v.Events {
			w, ok := wave{}, false
			if e.Gauging != nil {
				w, ok = d.waveOf(event)
			}
			if !ok {
				continue
			}
			spread := 2 * math.Hypot(w.cosMM, w.sinMM)
			foot, tall := d.footMM(event), d.tallestOf(event)
			if (foot > 0) != (name == "far-apart") {
				t.Errorf("%s, event %d: plotted from %g mm", name, event+1, foot)
			}
			if foot > 0 && (tall > spread+0.4 || w.g0MM-spread/2 < foot) {
				t.Errorf("%s, event %d: %.3f mm tall for a wave of %.3f", name, event+1, tall, spread)
			}
		}
	}
}
