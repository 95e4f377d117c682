package main

// This file is the verb picture: the drive line drawn without a window, as a
// picture or as a model.

import (
	"fmt"
	"path/filepath"
	"strings"

	"aligner/assets/words"
	"aligner/scene"
)

type pictureCmd struct {
	Hull string `arg:"" name:"hull-or-visit" help:"${help_picture_of}"`
	moveFlags
	Out    string  `name:"out" short:"o" required:"" placeholder:"FILE" help:"${help_picture_out}"`
	Held   string  `enum:"hanging,centred,seated,bolted" default:"seated" help:"${help_predict_held}"`
	Afloat bool    `help:"${help_predict_afloat}"`
	View   string  `default:"whole" help:"${help_picture_view}"`
	Times  float64 `default:"100" help:"${help_picture_times}"`
	Width  int     `default:"1280" help:"${help_picture_width}"`
	Height int     `default:"800" help:"${help_picture_height}"`
	Dark   bool    `help:"${help_picture_dark}"`
	Quick  bool    `help:"${help_picture_quick}"`

	AsGauged    bool     `help:"${help_picture_as_gauged}"`
	GaugedNut   []string `sep:"none" placeholder:"MOUNT=FLATS" help:"${help_picture_gauged_nut}"`
	GaugedSlide []string `sep:"none" placeholder:"MOUNT=MM" help:"${help_picture_gauged_slide}"`
	PlanNut     []string `sep:"none" placeholder:"MOUNT=FLATS" help:"${help_picture_plan_nut}"`
	PlanSlide   []string `sep:"none" placeholder:"MOUNT=MM" help:"${help_picture_plan_slide}"`

	Metric  bool   `help:"${help_metric}"`
	Looking string `enum:"forward,aft" default:"forward" help:"${help_picture_looking}"`
}

// viewFaces is the view of the coupling faces close up, which is no view of the
// scene.
const viewFaces = "faces"

// The sizes a picture may have.
const leastPixels, mostPixels = 64, 8192

// Run draws it.
func (c *pictureCmd) Run(e *env) error {
	if err := c.refuse(); err != nil {
		return err
	}
	what, err := c.subject(e)
	if err != nil {
		return err
	}
	d, err := c.solve(e, what)
	if err != nil {
		return err
	}
	switch {
	case c.extension() == ".glb":
		err = c.writeModel(d)
		e.sayUnless(err, words.PictureModel, words.Args{"File": c.Out, "Times": number(d.times)})
	case c.View == viewFaces:
		err = writePNG(c.Out, c.drawFaces(d))
		e.sayUnless(err, words.PictureFaces, words.Args{"File": c.Out})
	default:
		picture, fault := c.drawScene(d)
		if fault != nil {
			return fault
		}
		err = writePNG(c.Out, picture)
		e.sayUnless(err, words.PictureDone, words.Args{"File": c.Out, "Times": number(d.times)})
	}
	return err
}

func (e *env) sayUnless(err error, id words.ID, args words.Args) {
	if err == nil {
		e.say(id, args)
	}
}

// extension is the written file's, in small letters.
func (c *pictureCmd) extension() string { return strings.ToLower(filepath.Ext(c.Out)) }

// refuse says what about the picture asked for cannot be.
func (c *pictureCmd) refuse() error {
	switch {
	case c.Width < leastPixels || c.Width > mostPixels || c.Height < leastPixels || c.Height > mostPixels:
		return moveFault("", fmt.Sprintf("a picture of %d x %d", c.Width, c.Height),
			fmt.Sprintf("%d to %d pixels each way", leastPixels, mostPixels), "change --width or --height")
	case !(c.Times >= scene.LeastExaggeration && c.Times <= scene.MostExaggeration):
		return moveFault("", "movement x "+number(c.Times), "1 (true scale) to 500", "change --times")
	case c.extension() != ".png" && c.extension() != ".glb":
		return moveFault("", fmt.Sprintf("%q", c.Out), "a file name that ends in .png or .glb", "change --out")
	case c.extension() == ".glb" && c.View == viewFaces:
		return moveFault("", "the faces as a model", "a picture", "let --out end in .png, or choose another --view")
	}
	return nil
}
