package page

// This file is type that grows with the window, for people who stand back from it.

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
)

// Grow is a fyne.Layout of one object that fills the page but for a margin, and the
// size of type in what was given to Over.
type Grow struct {
	PerWidth    float32 // times the usual size in a window one wide
	Least, Most float32
	Headline    float32 // headings are larger still by so much, where there is room
	Changed     func()  // what else depends on the size is made anew; may be nil

	times float32
	over  []*container.ThemeOverride
}

// growMargin is left free round the page; roomy is how large type is where headings
// may be larger still.
const growMargin, roomy = 4, 1.3

// Times is how many times its usual size type is.
func (g *Grow) Times() float32 { return max(g.times, g.Least) }

// Over puts a thing in type of this size. What is put into it later is made so by the
// override's Refresh.
func (g *Grow) Over(o fyne.CanvasObject) *container.ThemeOverride {
	t := container.NewThemeOverride(o, grown{g: g})
	g.over = append(g.over, t)
	return t
}

// MinSize is the object's.
func (g *Grow) MinSize(o []fyne.CanvasObject) fyne.Size { return o[0].MinSize() }

// Layout fills the page, in type that is right for its width.
func (g *Grow) Layout(o []fyne.CanvasObject, size fyne.Size) {
	const steps = 20 // of one: not every pixel makes all anew
	times := min(max(float32(math.Round(float64(steps*g.PerWidth*size.Width)))/steps, g.Least), g.Most)
	if times != g.times {
		g.times = times
		for _, t := range g.over {
			t.Refresh()
		}
		if g.Changed != nil {
			g.Changed()
		}
	}
	o[0].Move(fyne.NewPos(growMargin, growMargin))
	o[0].Resize(size.Subtract(fyne.NewSize(2*growMargin, 2*growMargin)))
}

// grown is the program's look with larger type.
type grown struct {
	look
	g *Grow
}

var _ fyne.Theme = grown{}

// Size is larger for all that is read.
func (l grown) Size(name fyne.ThemeSizeName) float32 {
	size, times := inUse().Size(name), l.g.Times()
	switch name {
	case theme.SizeNameText, theme.SizeNameCaptionText, theme.SizeNameSubHeadingText, theme.SizeNameInlineIcon:
		return size * times
	case theme.SizeNameHeadingText:
		if times < roomy || l.g.Headline == 0 {
			return size * times
		}
		return size * times * l.g.Headline
	}
	return size
}
