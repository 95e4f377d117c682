package window

// This file bakes the picture's soft shadows beside it: the first picture does
// not wait for them.

import (
	"context"

	"fyne.io/fyne/v2"

	"aligner/scene/render"
)

// shade bakes the present boat's shadows in the background, dropping those of
// a boat no longer shown.
func (w *Window) shade() {
	if w.stopShade != nil {
		w.stopShade()
	}
	ctx, stop := context.WithCancel(context.Background())
	w.stopShade = stop
	model := w.boat.model
	go func() {
		sky, err := model.Bake(ctx, render.BakeSettings{Workers: 1})
		if err != nil {
			return // another boat, or the window is closing
		}
		fyne.Do(func() {
			if ctx.Err() == nil && model.Use(sky) == nil {
				w.picture.Refresh()
			}
		})
	}()
}
