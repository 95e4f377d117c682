package main

// This file makes the window no larger than the screen it is on: at a large
// scale its usual size is more than many screens have.

import (
	"fyne.io/fyne/v2"
	"github.com/go-gl/glfw/v3.3/glfw"
)

// fitOnScreen shrinks a window that has just been shown.
func fitOnScreen(win fyne.Window) {
	monitor := glfw.GetPrimaryMonitor()
	if monitor == nil {
		return
	}
	_, _, width, height := monitor.GetWorkarea()
	if to, larger := within(win.Canvas().Size(), win.Canvas().Scale(), width, height); larger {
		win.Resize(to)
		win.CenterOnScreen()
	}
}

// within is a size no larger than a screen of so many pixels, and whether that
// is less than was asked for.
func within(size fyne.Size, scale float32, width, height int) (to fyne.Size, larger bool) {
	to = fyne.NewSize(min(size.Width, float32(width)/scale), min(size.Height, float32(height)/scale))
	return to, to != size
}
