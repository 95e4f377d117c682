package window

// This file measures what a picture costs while a mount is dragged, the
// library's own repainting left out: go test -bench Frame ./cmd/aligner/window

import (
	"testing"

	"fyne.io/fyne/v2/test"

	"aligner/assets"
	"aligner/scene"
)

// BenchmarkDragFrame is one frame of a drag: mechanics, sentence, fields, faces
// and an 814 x 720 picture.
func BenchmarkDragFrame(b *testing.B) {
	for _, name := range assets.HullNames() {
		b.Run(name, func(b *testing.B) {
			app := test.NewApp()
			defer app.Quit()
			_, h, err := openHull(name)
			if err != nil {
				b.Fatal(err)
			}
			w, err := New(test.NewWindow(nil), app.Preferences(), name, h, openHull)
			if err != nil {
				b.Fatal(err)
			}
			w.picture.Paint(814, 720)
			w.TakeHandle(scene.HandleOf(0, scene.Vertical))
			for i := 0; b.Loop(); i++ {
				w.preview = w.moveTo(0, scene.Vertical, 0.01*float64(i%200))
				w.update()
				w.picture.Paint(814, 720)
			}
		})
	}
}
