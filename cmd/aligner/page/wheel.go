package page

// This file lets the wheel scroll a sheet wherever the pointer stands: a line to
// type into takes the wheel for its own text, though it has but one line.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// wheel lies over a sheet, unseen, and takes nothing but the wheel.
type wheel struct {
	widget.BaseWidget
	of *container.Scroll
}

// Scrolled is a sheet that scrolls wherever the pointer stands on it.
func Scrolled(sheet fyne.CanvasObject) *container.Scroll {
	over := &wheel{}
	over.ExtendBaseWidget(over)
	over.of = container.NewVScroll(container.NewStack(sheet, over))
	return over.of
}

// Scrolled hands the wheel to the sheet.
func (o *wheel) Scrolled(e *fyne.ScrollEvent) { o.of.Scrolled(e) }

// CreateRenderer draws nothing.
func (o *wheel) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(canvas.NewRectangle(nil))
}
