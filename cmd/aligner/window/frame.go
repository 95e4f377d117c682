package window

// This file makes one picture a frame out of however many events there were.

import (
	"time"

	"fyne.io/fyne/v2"
)

// frames runs an update at most once a frame while a hand is on something,
// and not at all otherwise.
type frames struct {
	update  func()
	dirty   bool
	ticking *fyne.Animation
}

// start begins ticking. The library calls an animation once before each frame
// it paints, on the goroutine that handles events.
func (f *frames) start() {
	if f.ticking != nil {
		return
	}
	f.ticking = fyne.NewAnimation(time.Hour, func(float32) { f.flush() })
	f.ticking.Start()
}

// stop ends ticking with a last update, so that nothing noted is lost.
func (f *frames) stop() {
	if f.ticking != nil {
		f.ticking.Stop()
		f.ticking = nil
	}
	f.flush()
}

// note says that something changed.
func (f *frames) note() {
	f.dirty = true
	if f.ticking == nil {
		f.flush()
	}
}

func (f *frames) flush() {
	if f.dirty {
		f.dirty = false
		f.update()
	}
}
