package main

// This file draws the scene into a picture, writes under it what it shows, and
// keeps it as a file.

import (
	"context"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"io"
	"math"
	"strings"

	"github.com/go-gl/mathgl/mgl64"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/outfile"
	"aligner/scene"
	"aligner/scene/render"
)

// drawScene makes the picture.
func (c *pictureCmd) drawScene(d *drawing) (*image.RGBA, error) {
	state := c.sceneState(d)
	state.Show = scene.ShowUsual &^ scene.ShowHandles
	state.Font = markFont(c.textPx())
	state.Touches = drawn.Touches(speaker, c.units(), &d.hull, &d.now.result)
	if !c.Quick {
		if err := shade(d.model); err != nil {
			return nil, err
		}
	}
	var out render.Scene
	d.model.Pose(&state, &out)
	var err error
	if state.View, err = c.view(d); err != nil {
		return nil, err
	}
	d.model.Pose(&state, &out)
	picture := image.NewRGBA(image.Rect(0, 0, c.Width, c.Height))
	renderer := render.New(render.Settings{})
	defer renderer.Close()
	out.Overlay.Labels = append(out.Overlay.Labels, c.caption(c.captionText(d), state.Font))
	renderer.Draw(picture, &out)
	return picture, nil
}

// shade works the soft shadows out.
func shade(m *scene.Model) error {
	sky, err := m.Bake(context.Background(), render.BakeSettings{})
	if err != nil {
		return err
	}
	return m.Use(sky)
}

// view is the one asked for; the model must be posed.
func (c *pictureCmd) view(d *drawing) (scene.View, error) {
	view, ok := d.model.FitView(c.View, float64(c.Width)/float64(c.Height))
	if !ok {
		known := append(d.model.ViewNames(), viewFaces)
		return view, moveFault("", fmt.Sprintf("view %q", c.View), "one of "+strings.Join(known, ", "), "change --view")
	}
	return view, nil
}

// textPx is the size of the words: that of a window on a usual screen, larger
// in a larger picture.
func (c *pictureCmd) textPx() float64 {
	return 15 * min(max(min(float64(c.Width)/1280, float64(c.Height)/800), 0.7), 6)
}

// captionText says what a picture shows: it is seen without its command line.
func (c *pictureCmd) captionText(d *drawing) string {
	boat := words.Dry
	if c.Afloat {
		boat = words.Afloat
	}
	text := speaker.Say(words.PredictTitle, words.Args{"Hull": d.hull.Name, "Held": d.now.state.Held, "Boat": speaker.Say(boat, nil)}) +
		", " + speaker.Say(words.Exaggerated, words.Args{"Times": math.Round(d.times)})
	if d.gauged != nil {
		text += "; " + speaker.Say(words.CaptionGauged, nil)
	}
	if d.planned != nil {
		text += "; " + speaker.Say(words.CaptionPlanned, nil)
	}
	return text
}

// caption stands in the lower left corner, on a plate so that it is read over
// anything.
func (c *pictureCmd) caption(text string, font *render.Font) render.Label {
	ink, plate := color.NRGBA{20, 24, 30, 255}, color.NRGBA{250, 251, 252, 215}
	if c.Dark {
		ink, plate = color.NRGBA{236, 238, 240, 255}, color.NRGBA{22, 26, 31, 215}
	}
	edge := 0.8 * c.textPx()
	return render.Label{At: mgl64.Vec3{edge, float64(c.Height) - edge}, Flat: true, Text: text, Font: font,
		Pivot: [2]float32{0, 1}, Colour: ink, Plate: plate}
}

// markFont is the font of the marks; nil, and so no words, were the embedded
// one ever damaged.
func markFont(px float64) *render.Font {
	face, err := render.ParseFace(assets.Font("regular"), px)
	if err != nil {
		return nil
	}
	return render.NewFont(face)
}

// writePNG keeps a picture.
func writePNG(path string, picture image.Image) error {
	return outfile.Write(path, func(w io.Writer) error { return png.Encode(w, picture) })
}
