package page

// This file is a slider whose track is seen: the library draws it in the colour
// of a field, which is the sheet's own by day.

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
)

// Track is a slider with its track in the colour of the borders of fields.
func Track(s fyne.CanvasObject) fyne.CanvasObject {
	return container.NewThemeOverride(s, seenTrack{})
}

// seenTrack is the program's look but for that.
type seenTrack struct{ look }

var _ fyne.Theme = seenTrack{}

// Color gives a field's colour as that of its border.
func (seenTrack) Color(name fyne.ThemeColorName, v fyne.ThemeVariant) color.Color {
	if name == theme.ColorNameInputBackground {
		name = theme.ColorNameInputBorder
	}
	return inUse().Color(name, v)
}

// look is the program's, as it is at each moment.
type look struct{}

// Color is the program's.
func (look) Color(name fyne.ThemeColorName, v fyne.ThemeVariant) color.Color {
	return inUse().Color(name, v)
}

// Font is the program's.
func (look) Font(style fyne.TextStyle) fyne.Resource { return inUse().Font(style) }

// Icon is the program's.
func (look) Icon(name fyne.ThemeIconName) fyne.Resource { return inUse().Icon(name) }

// Size is the program's.
func (look) Size(name fyne.ThemeSizeName) float32 { return inUse().Size(name) }

// inUse is asked anew each time: light and dark change while running.
func inUse() fyne.Theme { return fyne.CurrentApp().Settings().Theme() }
