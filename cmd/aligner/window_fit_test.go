package main

// This file tests that a window is never made larger than its screen.

import (
	"testing"

	"fyne.io/fyne/v2"
)

func TestWindowWithinScreen(t *testing.T) {
	for _, c := range []struct {
		size          fyne.Size
		scale         float32
		width, height int
		want          fyne.Size
	}{
		{fyne.NewSize(1280, 800), 1, 1280, 800, fyne.NewSize(1280, 800)},
		{fyne.NewSize(900, 700), 1, 1920, 1080, fyne.NewSize(900, 700)},
		{fyne.NewSize(1280, 800), 2, 1280, 800, fyne.NewSize(640, 400)},
		{fyne.NewSize(1280, 800), 1.25, 1600, 900, fyne.NewSize(1280, 720)},
	} {
		if got, larger := within(c.size, c.scale, c.width, c.height); got != c.want || larger != (got != c.size) {
			t.Errorf("%v at %v on %d x %d: %v, %v", c.size, c.scale, c.width, c.height, got, larger)
		}
	}
}
