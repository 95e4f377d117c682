package whys

// This file builds the picture up step by step: first the nut, then the engine tipped
// about its line, then its face, then the coupling carried along, then a straight
// shaft swung with it, then the bent one; each with arrows for what is new.

import (
	"math"

	"fyne.io/fyne/v2"
	"github.com/go-gl/mathgl/mgl64"

	"aligner/assets/words"
	"aligner/kinematics/why"
	"aligner/report/say"
	"aligner/scene"
)

// views are where each kind of step is looked at.
var views = map[say.WhyKind]string{say.WhyIsLift: scene.ViewEngine, say.WhyIsLine: scene.ViewEngine, say.WhyIsTilt: scene.ViewCoupling,
	say.WhyIsFace: scene.ViewCoupling, say.WhyIsStick: scene.ViewWhole, say.WhyIsBend: scene.ViewWhole, say.WhyIsBlock: scene.ViewWhole,
	say.WhyIsRest: scene.ViewCoupling, say.WhyIsTotal: scene.ViewCoupling}

// draw shows the boat after so many steps.
func (s *side) draw(steps int) {
	st := &s.picture.State
	st.Now, st.Axis, st.Turns, st.Pointers = nil, nil, nil, nil
	st.Show |= scene.ShowNames
	view := scene.ViewWhole
	if steps > 0 && len(s.steps) > 0 {
		step := &s.steps[min(steps, len(s.steps))-1]
		view = views[step.Kind]
		s.build(step.Kind)
		st.Now = &s.stage
		s.mark(step)
	}
	s.picture.Refresh()
	s.picture.Fit(view, !s.p.desk.Looks.NoMotion && fyne.CurrentApp().Settings().ShowAnimations())
}

// build makes the boat as far as a step has come.
func (s *side) build(kind say.WhyKind) {
	shaft := append(s.stage.Shaft[:0], s.before.Shaft...)
	if kind == say.WhyIsLift { // nothing has moved yet
		s.stage = s.before
		s.stage.Shaft = shaft
		return
	}
	gap := [2]float64{s.why.Before.Gap.CosMM, s.why.Before.Gap.SinMM}
	add := func(part [2]float64) { gap[0], gap[1] = gap[0]+part[0], gap[1]+part[1] }
	s.stage = s.after
	switch kind {
	case say.WhyIsLine, say.WhyIsTilt, say.WhyIsFace, say.WhyIsBlock:
		add(s.why.Tilt)
	case say.WhyIsStick:
		add(s.why.Tilt)
		add(s.why.Stick)
		s.swing(shaft)
	default:
		return
	}
	s.stage.Shaft = shaft
	// The faces are drawn touching where they would.
	s.stage.AxialMM = s.stage.TranslationMM[0] - math.Hypot(gap[0], gap[1])
}

// swing turns a shaft about its first bearing like a stick, its end going with the
// coupling.
func (s *side) swing(shaft []scene.Section) {
	end := s.endMM()
	for i, x := range s.model.StationsMM() {
		share := 1 + x/s.why.FirstBearingMM
		shaft[i].Y += share * end[0]
		shaft[i].Z += share * end[1]
		shaft[i].DY += end[0] / s.why.FirstBearingMM
		shaft[i].DZ += end[1] / s.why.FirstBearingMM
	}
}

// endMM is how far the shaft's end was carried.
func (s *side) endMM() [2]float64 {
	a, b := s.why.After.FrontEndMM, s.why.Before.FrontEndMM
	return [2]float64{a[0] - b[0], a[1] - b[1]}
}

// mark puts a step's arrows on the picture.
func (s *side) mark(step *say.WhyStep) {
	st := &s.picture.State
	switch step.Kind {
	case say.WhyIsLift:
		s.markLift()
	case say.WhyIsLine:
		st.Show &^= scene.ShowNames
		s.markLine()
	case say.WhyIsTilt:
		s.markGap(step.AddMM, true, false)
	case say.WhyIsFace:
		s.markCoupling(say.WhyCoupling(s.p.desk.Speaker, s.p.desk.Looks.Units, s.why))
	case say.WhyIsStick:
		st.Show &^= scene.ShowNames
		end := s.endMM()
		front := mgl64.Vec3{0, end[0], end[1]}.Mul(timesLarger)
		st.Pointers = append(st.Pointers, scene.Pointer{Points: []mgl64.Vec3{{-s.why.FirstBearingMM}, front}, Plain: true})
		s.markCoupling(say.WhyPart(s.p.desk.Speaker, s.p.desk.Looks.Units, say.WhyHour(s.why), step.AddMM))
	case say.WhyIsBend, say.WhyIsRest:
		st.Show &^= scene.ShowNames
		s.markGap(step.AddMM, false, true)
	case say.WhyIsTotal:
		s.markGap(step.AddMM, true, true)
	}
}

// markLift is the nut as it is turned, and an arrow at each mount for how it will go.
func (s *side) markLift() {
	st, w, u := &s.picture.State, s.why, s.p.desk.Looks.Units
	st.Show &^= scene.ShowNames
	for _, i := range w.Mounts {
		t := scene.Turn{Mount: i, Steps: w.Steps, Next: true}
		if w.Slide {
			t.Steps, t.SlideMM = 0, w.Steps
		}
		st.Turns = append(st.Turns, t)
	}
	most := 0.0
	for _, rise := range w.RiseMM {
		most = max(most, math.Abs(rise))
	}
	if w.Slide || most == 0 {
		st.Show |= scene.ShowNames
		return
	}
	for i, rise := range w.RiseMM {
		foot := s.onBed(mgl64.Vec3(s.hull.Mounts[i].AtMM).Add(mgl64.Vec3{0, 0, mountHighMM}))
		way := s.onBed(mgl64.Vec3{0, 0, math.Copysign(leastArrowMM+arrowMM*math.Abs(rise)/most, rise)})
		from := foot
		if rise < 0 { // it ends over the foot
			from = foot.Sub(way)
		}
		st.Pointers = append(st.Pointers, scene.Pointer{Points: []mgl64.Vec3{from, from.Add(way)}, Text: s.p.desk.Speaker.Part(s.hull.Mounts[i].Name) + " " + say.WhyRise(u, rise)})
	}
}

// How high over its foot a mount's arrow begins, and how long arrows are.
const (
	mountHighMM           = 60
	leastArrowMM, arrowMM = 40, 140
)

// onBed carries a direction or place of the engine frame E into S.
func (s *side) onBed(p mgl64.Vec3) mgl64.Vec3 {
	sin, cos := math.Sincos(s.hull.Engine.DownAngleDeg * math.Pi / 180)
	return mgl64.Vec3{cos*p[0] + sin*p[2], p[1], cos*p[2] - sin*p[0]}
}

// axisHalfMM is how far the line is drawn to either side; arcs reach so far past the
// engine's middle, as part of its distance from the line, and are no longer than so
// many mm to either side.
const (
	axisHalfMM = 450
	arcPast    = 1.25
	arcHalfMM  = 170
	arcPieces  = 16
	crossing   = 0.3 // athwart part of its direction from which a line crosses the boat
)

// markLine is the line the engine tips about, and an arc for which way round.
func (s *side) markLine() {
	line := &s.why.Line
	if line.Turned == 0 {
		return
	}
	along := mgl64.Vec3(line.Along)
	// The middle of what is drawn of it is where it crosses the boat's middle; of one
	// that stands or runs along it, where it passes nearest to the engine.
	middle := s.onBed(mgl64.Vec3(s.hull.Engine.CentreOfMassMM))
	at := mgl64.Vec3(line.At)
	if math.Abs(along[1]) > crossing {
		at = at.Sub(along.Mul(at[1] / along[1]))
	} else {
		at = at.Add(along.Mul(middle.Sub(at).Dot(along)))
	}
	st := &s.picture.State
	st.Axis = &scene.Axis{At: at, Along: along, HalfMM: axisHalfMM, Text: s.p.say(words.WhyThisLine, nil)}
	foot := at.Add(along.Mul(middle.Sub(at).Dot(along)))
	arm := middle.Sub(foot).Mul(arcPast)
	if arm.Len() < 1 {
		return
	}
	half := min(arcHalfMM/arm.Len(), 0.9)
	var arc []mgl64.Vec3
	for k := range arcPieces + 1 {
		turn := half * (2*float64(k)/arcPieces - 1)
		arc = append(arc, foot.Add(mgl64.QuatRotate(turn, along).Rotate(arm)))
	}
	st.Pointers = append(st.Pointers, scene.Pointer{Points: arc})
}

// markGap is what a part does to the gap at the hour where all of it is told: arrows
// on the engine's face or the shaft's, or both, at that hour and the one opposite.
func (s *side) markGap(mm float64, engine, shaft bool) {
	hour := say.WhyHour(s.why)
	text := say.WhyPart(s.p.desk.Speaker, s.p.desk.Looks.Units, hour, mm)
	r := s.hull.Coupling.OuterDiameterMM / 2
	for k, h := range []int{hour, hour + 6} {
		sin, cos := math.Sincos(float64(h) * math.Pi / 6)
		rim := mgl64.Vec3{0, -sin * rimPast * r, cos * rimPast * r}
		way := mgl64.Vec3{math.Copysign(gapArrow*r, mm)}
		if k == 1 {
			way, text = way.Mul(-1), ""
		}
		put := func(on scene.Carrier, way mgl64.Vec3) {
			from := rim
			if way[0]*awayFrom(on) < 0 { // it points at the gap: it ends there
				from = rim.Sub(way)
			}
			s.picture.State.Pointers = append(s.picture.State.Pointers, scene.Pointer{Points: []mgl64.Vec3{from, from.Add(way)}, On: on, Text: text})
			text = ""
		}
		if engine {
			put(scene.OnEngine, way)
		}
		if shaft {
			put(scene.OnHalf, way.Mul(-1))
		}
	}
}

// awayFrom is which way along x leads away from the gap.
func awayFrom(on scene.Carrier) float64 {
	if on == scene.OnEngine {
		return 1
	}
	return -1
}

// Arrows at the rim stand so far out, and are so long, in radii of the face.
const rimPast, gapArrow = 1.1, 0.5

// markCoupling is which way the coupling was carried.
func (s *side) markCoupling(text string) {
	went := mgl64.Vec3{0, s.why.FaceMM[0], s.why.FaceMM[1]}
	if went.Len() == 0 {
		return
	}
	r := s.hull.Coupling.OuterDiameterMM / 2
	from := went.Normalize().Mul(rimPast * r)
	s.picture.State.Pointers = append(s.picture.State.Pointers,
		scene.Pointer{Points: []mgl64.Vec3{from, from.Add(went.Normalize().Mul(gapArrow * r))}, On: scene.OnEngine, Text: text})
}

// hours are those of the table, and where they stand.
var hours = [4]float64{0, 90, 180, 270}

// atHour is what a step does there, the middle of the faces staying as far apart.
func atHour(r *why.Row, deg float64) float64 {
	sin, cos := math.Sincos(deg * math.Pi / 180)
	return r.Change[0]*cos + r.Change[1]*sin
}
