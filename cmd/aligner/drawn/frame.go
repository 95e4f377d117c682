package drawn

// This file makes one picture a frame out of however many events there were.

import (
	"time"

	"fyne.io/fyne/v2"
)

// Frames runs an update at most once a frame while a hand is on something,
// and not at all otherwise.
type Frames struct {
	Update  func()
	dirty   bool
	ticking *fyne.Animation
}

// Start begins ticking. The library calls an animation once before each frame
// it paints, on the goroutine that handles events.
func (f *Frames) Start() {
	if f.ticking != nil {
		return
	}
	f.ticking = fyne.NewAnimation(time.Hour, func(float32) { f.flush() })
	f.ticking.Start()
}

// Stop ends ticking with a last update, so that nothing noted is lost.
func (f *Frames) Stop() {
	if f.ticking != nil {
		f.ticking.Stop()
		f.ticking = nil
	}
	f.flush()
}

// Note says that something changed.
func (f *Frames) Note() {
	f.dirty = true
	if f.ticking == nil {
		f.flush()
	}
}

// Drop forgets what was noted and not yet shown.
func (f *Frames) Drop() { f.dirty = false }

func (f *Frames) flush() {
	if f.dirty {
		f.dirty = false
		f.Update()
	}
}
