package main

// This file is the verb picture: the drive line drawn without a window.

import (
	"fmt"
	"image"
	"image/color"
	"image/png"
	"math"
	"os"
	"strings"

	"golang.org/x/image/font"
	"golang.org/x/image/math/fixed"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/scene"
	"aligner/scene/render"
)

type pictureCmd struct {
	Hull string `arg:"" help:"${help_hull}"`
	moveFlags
	Out    string  `name:"out" short:"o" required:"" placeholder:"FILE.png" help:"${help_picture_out}"`
	Held   string  `enum:"hanging,centred,seated,bolted" default:"seated" help:"${help_predict_held}"`
	Afloat bool    `help:"${help_predict_afloat}"`
	View   string  `default:"whole" help:"${help_picture_view}"`
	Times  float64 `default:"100" help:"${help_picture_times}"`
	Width  int     `default:"1280" help:"${help_picture_width}"`
	Height int     `default:"800" help:"${help_picture_height}"`
	Dark   bool    `help:"${help_picture_dark}"`
}

// The sizes a picture may have.
const leastPixels, mostPixels = 64, 8192

// Run draws it.
func (c *pictureCmd) Run(e *env) error {
	h, doubts, err := openHull(c.Hull)
	if err != nil {
		return err
	}
	e.warnDoubts(doubts)
	if err := c.refuse(); err != nil {
		return err
	}
	s := kinematics.State{Held: kinematics.Held(c.Held), Afloat: c.Afloat}
	nuts, slidesMM, err := c.steps(&h)
	if err != nil {
		return err
	}
	apply(e, &h, nuts, slidesMM, &s)
	if why := s.Invalid(&h); why != "" {
		return usageError{plain(why)}
	}
	picture, times, err := c.draw(h, &s)
	if err != nil {
		return err
	}
	if err := writePNG(c.Out, picture); err != nil {
		return err
	}
	e.say(words.PictureDone, words.Args{"File": c.Out, "Times": number(times)})
	return nil
}

// refuse says what about the picture asked for cannot be.
func (c *pictureCmd) refuse() error {
	switch {
	case c.Width < leastPixels || c.Width > mostPixels || c.Height < leastPixels || c.Height > mostPixels:
		return moveFault("", fmt.Sprintf("a picture of %d x %d", c.Width, c.Height),
			fmt.Sprintf("%d to %d pixels each way", leastPixels, mostPixels), "change --width or --height")
	case !(c.Times >= scene.LeastExaggeration && c.Times <= scene.MostExaggeration):
		return moveFault("", "movement x "+number(c.Times), "1 (true scale) to 500", "change --times")
	case !strings.HasSuffix(strings.ToLower(c.Out), ".png"):
		return moveFault("", fmt.Sprintf("%q", c.Out), "a file name that ends in .png", "change --out")
	}
	return nil
}

// draw makes the picture and says how much movement is exaggerated in it: no
// more than keeps it in the picture.
func (c *pictureCmd) draw(h hulls.Hull, s *kinematics.State) (*image.RGBA, float64, error) {
	d, err := kinematics.Prepare(h)
	if err != nil {
		return nil, 0, err
	}
	var r kinematics.Result
	if err := d.Solve(s, &r); err != nil {
		return nil, 0, err
	}
	m := scene.NewModel(h)
	var now scene.Movement
	m.Read(d, s, &r, &now)
	state := scene.State{Now: &now, Exaggeration: min(c.Times, m.MaxExaggeration(&now)), Afloat: c.Afloat, Dark: c.Dark,
		Show: scene.ShowUsual &^ scene.ShowHandles, Font: markFont()}
	var out render.Scene
	m.Pose(&state, &out)
	view, ok := m.FitView(c.View, float64(c.Width)/float64(c.Height))
	if !ok {
		return nil, 0, moveFault("", fmt.Sprintf("view %q", c.View), "one of "+strings.Join(m.ViewNames(), ", "), "change --view")
	}
	state.View = view
	m.Pose(&state, &out)
	picture := image.NewRGBA(image.Rect(0, 0, c.Width, c.Height))
	renderer := render.New(render.Settings{})
	defer renderer.Close()
	renderer.Draw(picture, &out)
	c.caption(picture, words.Say(words.Exaggerated, words.Args{"Times": math.Round(state.Exaggeration)}))
	return picture, state.Exaggeration, nil
}

// caption writes into the corner how much movement is exaggerated: a picture
// is shown without its command line.
func (c *pictureCmd) caption(picture *image.RGBA, text string) {
	face, err := render.ParseFace(assets.Font("regular"), 16)
	if err != nil {
		return // embedded, so only ever damaged by hand
	}
	ink := color.Color(color.Black)
	if c.Dark {
		ink = color.White
	}
	d := font.Drawer{Dst: picture, Src: image.NewUniform(ink), Face: face, Dot: fixed.P(16, c.Height-16)}
	d.DrawString(text)
}

// markFont is the font of the marks; nil, and so no words, were the embedded
// one ever damaged.
func markFont() *render.Font {
	face, err := render.ParseFace(assets.Font("regular"), 15)
	if err != nil {
		return nil
	}
	return render.NewFont(face)
}

// writePNG writes beside the file first, so that a failure leaves what was
// there.
func writePNG(path string, picture image.Image) error {
	fault := func(err error) error {
		return &hulls.Fault{File: path, Value: fmt.Sprint("a file that cannot be written (", err, ")"),
			Limit: "a place to write to", Mend: "check the folder and its permissions"}
	}
	f, err := os.Create(path + ".part")
	if err != nil {
		return fault(err)
	}
	if err := png.Encode(f, picture); err != nil {
		f.Close()
		os.Remove(f.Name())
		return fault(err)
	}
	if err := f.Close(); err != nil {
		return fault(err)
	}
	if err := os.Rename(f.Name(), path); err != nil {
		return fault(err)
	}
	return nil
}
