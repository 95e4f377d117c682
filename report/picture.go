package report

// This file draws the boat in several states at one exaggeration, at the
// resolution of paper.

import (
	"context"
	"image"
	"math"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/kinematics"
	"aligner/scene"
	"aligner/scene/render"
)

// dotsPerInch is the resolution of pictures on paper.
const dotsPerInch = 200

// mostTimes is the largest exaggeration used on paper.
const mostTimes = 200

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

// fit is the view of a state. The boat as a whole is seen from one place in
// every state, from far enough away for all of them, so that before and after
// can be held against each other.
func (of *drawn) fit(asked *scene.State, name string, aspect float64, state int, out *render.Scene) scene.View {
	var seen []scene.View
	for i := range of.moves {
		if name != scene.ViewWhole && i != state {
			continue
		}
		asked.Now = &of.moves[i]
		of.model.Pose(asked, out)
		v, _ := of.model.FitView(name, aspect)
		seen = append(seen, v)
	}
	asked.Now = &of.moves[state]
	best := seen[0]
	for _, v := range seen[1:] {
		best.Target = best.Target.Add(v.Target)
		best.DistanceMM = max(best.DistanceMM, v.DistanceMM)
	}
	best.Target = best.Target.Mul(1 / float64(len(seen)))
	if name == scene.ViewWhole {
		best.DistanceMM *= wholeRoom
	}
	return best
}

// wholeRoom is how much further away than fitted the whole is seen.
const wholeRoom = 1.12

// picture draws one state from a fitted view, for a room of so many mm.
func (d *drawer) picture(of *drawn, state int, v view, wMM float64) (image.Image, error) {
	w, h := int(math.Round(wMM/25.4*dotsPerInch)), int(math.Round(v.tall/25.4*dotsPerInch))
	asked := scene.State{Now: &of.moves[state], Exaggeration: of.times, Afloat: d.v.State.Afloat(),
		Show: scene.ShowHull | scene.ShowBed | scene.ShowDirections | scene.ShowTrueLine,
		Words: scene.Words{Port: d.say(words.PaperPort, nil), Starboard: d.say(words.PaperStarboard, nil),
			Fore: d.say(words.PaperFore, nil), Aft: d.say(words.PaperAft, nil)}}
	face, err := render.ParseFace(assets.Font("regular"), 8.0/72*dotsPerInch)
	if err != nil {
		return nil, err
	}
	asked.Font = render.NewFont(face)
	var out render.Scene
	asked.View = of.fit(&asked, v.name, float64(w)/float64(h), state, &out)
	of.model.Pose(&asked, &out)
	picture := image.NewRGBA(image.Rect(0, 0, w, h))
	renderer := render.New(render.Settings{})
	defer renderer.Close()
	renderer.Draw(picture, &out)
	return picture, nil
}
