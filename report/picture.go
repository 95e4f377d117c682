package report

// This file draws the boat in several states at one exaggeration, at the
// resolution of paper.

import (
	"context"
	"image"
	"image/color"
	"math"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/kinematics"
	"aligner/scene"
	"aligner/scene/render"
)

// dotsPerInch is the resolution of pictures on paper.
const dotsPerInch = 200

// mostTimes is the largest exaggeration used on paper, and widestDrawn how wide the
// widest gap may be drawn by it, as a part of the face's diameter: enough to be seen
// at a glance, too little to look like a wreck.
const mostTimes, widestDrawn = 200, 1.0 / 3

// What a mark on the boat is drawn in, and what its word stands on.
var ringInk, plateInk = color.NRGBA{20, 20, 20, 255}, color.NRGBA{255, 255, 255, 235}

// drawn is a boat ready to be drawn in some states.
type drawn struct {
	model *scene.Model
	moves []scene.Movement
	times float64
}

// drawable works states out, and how much their movement may be exaggerated
// alike.
func (d *drawer) drawable(states []*stood) (*drawn, error) {
	line, err := kinematics.Prepare(*d.h)
	if err != nil {
		return nil, err
	}
	out := &drawn{model: scene.NewModel(*d.h), moves: make([]scene.Movement, len(states)), times: mostTimes}
	for i, s := range states {
		var r kinematics.Result
		if err := line.Solve(&s.state, &r); err != nil {
			return nil, err
		}
		out.model.Read(line, &s.state, &r, &out.moves[i])
		out.times = min(out.times, out.model.MaxExaggeration(&out.moves[i]))
		if gap := 2 * amplitude([2]float64{r.Gap.CosMM, r.Gap.SinMM}); gap > 0 {
			out.times = min(out.times, max(1, widestDrawn*d.h.Coupling.OuterDiameterMM/gap))
		}
	}
	if out.times > 10 {
		out.times = math.Floor(out.times/10) * 10
	}
	if d.o.Quick {
		return out, nil
	}
	sky, err := out.model.Bake(context.Background(), render.BakeSettings{})
	if err != nil {
		return nil, err
	}
	return out, out.model.Use(sky)
}

// picture draws one state close by its coupling, for a room of so many mm. The hull
// is left out: it would stand before what is to be seen.
func (d *drawer) picture(of *drawn, state int, wMM, hMM float64) (image.Image, error) {
	asked := d.asked(of, state)
	asked.Exaggeration, asked.Show = of.times, scene.ShowBed|scene.ShowTrueLine
	return d.render(of, &asked, scene.ViewCoupling, wMM, hMM, nil)
}

// whole draws a boat as a whole and as she is, with a ring and a word at the
// coupling, so that who has never seen one finds it.
func (d *drawer) whole(of *drawn, state int, wMM, hMM float64) (image.Image, error) {
	asked := d.asked(of, state)
	asked.Exaggeration, asked.Show = 1, scene.ShowHull|scene.ShowBed|scene.ShowDirections
	return d.render(of, &asked, scene.ViewWhole, wMM, hMM, func(o *render.Overlay) {
		mm := float32(dotsPerInch / 25.4)
		for _, ring := range []render.Dot{{Radius: 3.6 * mm, Ring: plateInk, Width: 1.4 * mm}, {Radius: 3.2 * mm, Ring: ringInk, Width: 0.7 * mm}} {
			ring.Behind = render.ShowBehind
			o.Dots = append(o.Dots, ring)
		}
		// First, so that the directions give way to it.
		o.Labels = append([]render.Label{{Text: d.say(words.SheetHere, nil), Font: asked.Font, Pivot: [2]float32{0, 1},
			Offset: [2]float32{16 * mm, -8 * mm}, Colour: ringInk, Plate: plateInk, Leader: ringInk, Keep: true, Behind: render.ShowBehind}}, o.Labels...)
	})
}

// asked is what every picture asks of the scene.
func (d *drawer) asked(of *drawn, state int) scene.State {
	return scene.State{Now: &of.moves[state], Afloat: d.v.State.Afloat(),
		Words: scene.Words{Port: d.say(words.PaperPort, nil), Starboard: d.say(words.PaperStarboard, nil),
			Fore: d.say(words.PaperFore, nil), Aft: d.say(words.PaperAft, nil)}}
}

// render draws a scene from a named view, with what mark adds over it.
func (d *drawer) render(of *drawn, asked *scene.State, name string, wMM, hMM float64, mark func(*render.Overlay)) (image.Image, error) {
	w, h := int(math.Round(wMM/25.4*dotsPerInch)), int(math.Round(hMM/25.4*dotsPerInch))
	face, err := render.ParseFace(assets.Font("regular"), 8.0/72*dotsPerInch)
	if err != nil {
		return nil, err
	}
	asked.Font = render.NewFont(face)
	var out render.Scene
	of.model.Pose(asked, &out)
	asked.View, _ = of.model.FitView(name, float64(w)/float64(h))
	of.model.Pose(asked, &out)
	if mark != nil {
		mark(&out.Overlay)
	}
	picture := image.NewRGBA(image.Rect(0, 0, w, h))
	renderer := render.New(render.Settings{})
	defer renderer.Close()
	renderer.Draw(picture, &out)
	return picture, nil
}
