package history

// This file writes the plots to a file: pixels, or lines for paper.

import (
	"fmt"
	"image/png"
	"io"
	"slices"
	"strings"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgpdf"
	"gonum.org/v1/plot/vg/vgsvg"
)

// Formats are the endings of files the plots can be written to.
var Formats = []string{"png", "pdf", "svg"}

// The size of a drawing in a file, and how fine its pixels are.
const (
	widthMM, heightMM = 200, 140
	fileDPI           = 150
)

// Write writes the plots in one of Formats.
func (d *Drawing) Write(w io.Writer, format string) error {
	width, height := vg.Length(widthMM*vg.Millimeter), vg.Length(heightMM*vg.Millimeter)
	var c vg.CanvasWriterTo
	switch format = strings.ToLower(format); {
	case !slices.Contains(Formats, format):
		return fmt.Errorf("plots as %q; must be one of %q", format, Formats)
	case format == "png":
		img, err := d.Image(int(width.Dots(fileDPI)), int(height.Dots(fileDPI)), fileDPI)
		if err != nil {
			return err
		}
		return png.Encode(w, img)
	case format == "pdf":
		c = vgpdf.New(width, height)
	default:
		c = vgsvg.New(width, height)
	}
	if err := d.Draw(draw.New(c)); err != nil {
		return err
	}
	_, err := c.WriteTo(w)
	return err
}
