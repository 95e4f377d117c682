package window

// This file is the window's own look: embedded fonts, quiet colours, large
// targets, and text at the size wanted.

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"aligner/assets"
)

// look is a fyne.Theme of one person's settings.
type look struct {
	dark     bool
	textSize float32
}

var _ fyne.Theme = look{}

var (
	regular = fyne.NewStaticResource("regular.ttf", assets.Font("regular"))
	bold    = fyne.NewStaticResource("bold.ttf", assets.Font("bold"))
)

func grey(v uint8) color.Color { return color.NRGBA{v, v, v, 255} }

// paint is a colour by day and by night.
type paint struct{ day, night color.Color }

// paints are this program's own; whatever is not named comes from the library.
var paints = map[fyne.ThemeColorName]paint{
	theme.ColorNameBackground:        {color.NRGBA{243, 243, 240, 255}, color.NRGBA{30, 32, 34, 255}},
	theme.ColorNameForeground:        {color.NRGBA{28, 30, 32, 255}, color.NRGBA{232, 232, 228, 255}},
	theme.ColorNamePrimary:           {color.NRGBA{28, 92, 140, 255}, color.NRGBA{112, 176, 222, 255}},
	theme.ColorNameHyperlink:         {color.NRGBA{28, 92, 140, 255}, color.NRGBA{112, 176, 222, 255}},
	theme.ColorNameFocus:             {color.NRGBA{28, 92, 140, 90}, color.NRGBA{112, 176, 222, 110}},
	theme.ColorNameButton:            {color.NRGBA{228, 228, 223, 255}, color.NRGBA{52, 55, 58, 255}},
	theme.ColorNameDisabled:          {grey(150), grey(120)},
	theme.ColorNameDisabledButton:    {color.NRGBA{236, 236, 232, 255}, color.NRGBA{42, 44, 46, 255}},
	theme.ColorNameInputBackground:   {grey(255), color.NRGBA{44, 47, 50, 255}},
	theme.ColorNameInputBorder:       {grey(176), grey(92)},
	theme.ColorNamePlaceHolder:       {grey(120), grey(150)},
	theme.ColorNameSeparator:         {grey(206), grey(66)},
	theme.ColorNameOverlayBackground: {color.NRGBA{250, 250, 248, 255}, color.NRGBA{40, 42, 45, 255}},
	theme.ColorNameMenuBackground:    {color.NRGBA{250, 250, 248, 255}, color.NRGBA{40, 42, 45, 255}},
	theme.ColorNameHover:             {color.NRGBA{0, 0, 0, 18}, color.NRGBA{255, 255, 255, 24}},
	theme.ColorNamePressed:           {color.NRGBA{0, 0, 0, 40}, color.NRGBA{255, 255, 255, 48}},
	theme.ColorNameSelection:         {color.NRGBA{28, 92, 140, 70}, color.NRGBA{112, 176, 222, 90}},
	theme.ColorNameScrollBar:         {color.NRGBA{0, 0, 0, 110}, color.NRGBA{255, 255, 255, 110}},
}

// Color gives a colour by name; the system's own light or dark is not asked,
// the person's is.
func (l look) Color(name fyne.ThemeColorName, _ fyne.ThemeVariant) color.Color {
	variant := theme.VariantLight
	if l.dark {
		variant = theme.VariantDark
	}
	p, ok := paints[name]
	switch {
	case !ok:
		return theme.DefaultTheme().Color(name, variant)
	case l.dark:
		return p.night
	}
	return p.day
}

// Font is the embedded one, so that a picture is the same on every machine.
func (look) Font(style fyne.TextStyle) fyne.Resource {
	switch {
	case style.Symbol:
		return theme.DefaultTheme().Font(style)
	case style.Bold:
		return bold
	}
	return regular
}

// Icon is the library's.
func (look) Icon(name fyne.ThemeIconName) fyne.Resource { return theme.DefaultTheme().Icon(name) }

// Size grows with the text.
func (l look) Size(name fyne.ThemeSizeName) float32 {
	switch name {
	case theme.SizeNameText:
		return 14 * l.textSize
	case theme.SizeNameCaptionText:
		return 12 * l.textSize
	case theme.SizeNameSubHeadingText:
		return 16 * l.textSize
	case theme.SizeNameHeadingText:
		return 20 * l.textSize
	case theme.SizeNameInlineIcon:
		return 20 * l.textSize
	case theme.SizeNamePadding:
		return 4
	case theme.SizeNameInnerPadding:
		return 6
	}
	return theme.DefaultTheme().Size(name)
}
