package drawn

// This file bakes the picture's soft shadows beside it: the first picture does
// not wait for them.

import (
	"context"

	"fyne.io/fyne/v2"

	"aligner/scene/render"
)

// shadeOnce begins the shadows once the first picture stands.
func (p *Picture) shadeOnce() {
	if !p.drawn {
		p.drawn = true
		p.shade()
	}
}

// shade bakes the present model's shadows in the background, dropping those of
// one no longer shown.
func (p *Picture) shade() {
	if p.stopShade != nil {
		p.stopShade()
	}
	ctx, stop := context.WithCancel(context.Background())
	p.stopShade = stop
	model := p.model
	go func() {
		sky, err := model.Bake(ctx, render.BakeSettings{Workers: 1})
		if err != nil {
			return // another boat, or the window is closing
		}
		fyne.Do(func() {
			if ctx.Err() == nil && model.Use(sky) == nil {
				p.Refresh()
			}
		})
	}()
}
