package page

// This file holds the table's layout: no cell is laid over another.

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"
)

func TestCellsDoNotOverlap(t *testing.T) {
	test.NewTempApp(t)
	cells := &Cells{Columns: 3}
	var objects []fyne.CanvasObject
	for _, text := range []string{"a long name that has to go on below where its column ends", "+1.25", "rises", "short", "−0.5", "sinks a little"} {
		l := widget.NewLabel(text)
		if len(objects)%3 == 0 {
			cells.First = max(cells.First, l.MinSize().Width)
			l.Wrapping = fyne.TextWrapWord
			l.Refresh()
		}
		objects = append(objects, l)
	}
	for _, width := range []float32{300, 400, 900} {
		c := container.New(cells, objects...)
		w := test.NewTempWindow(t, c)
		w.Resize(fyne.NewSize(width, 300))
		for i, a := range objects {
			if m := a.MinSize(); a.Size().Height < m.Height || i%3 > 0 && a.Size().Width < m.Width {
				t.Errorf("at %v: cell %d has %v of %v", width, i, a.Size(), m)
			}
			for _, b := range objects[i+1:] {
				pa, pb, sa, sb := a.Position(), b.Position(), a.Size(), b.Size()
				if pa.X < pb.X+sb.Width && pb.X < pa.X+sa.Width && pa.Y < pb.Y+sb.Height && pb.Y < pa.Y+sa.Height {
					t.Errorf("at %v: %v %v over %v %v", width, pa, sa, pb, sb)
				}
			}
		}
	}
	if h := objects[0].Size().Height; h > 60 {
		t.Errorf("at 900 the name takes %v", h)
	}
}
