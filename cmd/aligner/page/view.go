package page

// This file brings what has the keyboard into view on a sheet that scrolls.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// IntoView scrolls a sheet as little as it takes to show something on it, with room
// for the words over it.
func IntoView(s *container.Scroll, o fyne.CanvasObject) {
	driver := fyne.CurrentApp().Driver()
	top := driver.AbsolutePositionForObject(o).Y - driver.AbsolutePositionForObject(s).Y
	const room, below = 24, 4
	switch bottom := top + o.Size().Height; {
	case top < room:
		s.ScrollToOffset(fyne.NewPos(0, max(0, s.Offset.Y+top-room)))
	case bottom > s.Size().Height:
		s.ScrollToOffset(fyne.NewPos(0, s.Offset.Y+bottom-s.Size().Height+below))
	}
}
