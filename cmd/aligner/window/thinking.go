package window

// This file keeps what the readings come to: the estimate at once, the plan in
// the background, for whatever the document says now.
//
// Once something was moved nothing tells where the engine stands but the gauging
// before and what the moves are expected to have done. So the plan is made of the
// visit as it was gauged last, and moves made since are held against its steps:
//
//	events:  ... gauging | move move ...
//	            base     |    since
//
// As long as they are its first steps, the plan stands and the next one is next;
// when something else was done it is planned anew from there.

import (
	"math"
	"reflect"

	"fyne.io/fyne/v2"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
	"aligner/kinematics/response"
)

// thinking is prepared once for a hull, dry or afloat, and asked again after
// each edit of the visit.
type thinking struct {
	hull    *hulls.Hull
	afloat  bool
	model   *gauge.Model
	planner *plan.Planner
	err     error

	estimate *gauge.Estimate // of the visit as it is
	base     visit.Visit     // as it was gauged last
	basis    *gauge.Estimate // of base; the same as estimate where nothing was moved since
	since    []visit.Move    // made after base

	of      string     // the visit all this is of, as written
	whole   *plan.Plan // of base, and of whatever base was as written
	wholeOf string

	liftMM, slideMM []float64 // the engine as found, and as moved since; nil: not known
	plan            *plan.Plan
	stepsDone       int  // of the plan's steps
	anew            bool // the plan was made after something else was done than planned
	asked           int  // plans asked for; an older answer is dropped
	// aside does work off the window's goroutine, then the rest back on it.
	aside func(work, rest func())
}

// inBackground is the usual aside.
func (w *Window) inBackground(work, rest func()) {
	go func() {
		if w.Faults != nil {
			defer w.Faults.Panic()
		}
		work()
		fyne.Do(rest)
	}()
}

// readyFor prepares for a document's hull.
func (t *thinking) readyFor(d *visit.Document) bool {
	afloat := d.Visit.State.Afloat()
	if t.hull != nil && t.afloat == afloat && reflect.DeepEqual(*t.hull, d.Hull) {
		return t.model != nil && t.planner != nil // what failed of another visit is over
	}
	h := d.Hull
	*t = thinking{hull: &h, afloat: afloat, asked: t.asked, aside: t.aside}
	if t.model, t.err = gauge.NewModel(&h, afloat); t.err == nil {
		t.planner, t.err = plan.NewPlanner(&h, afloat)
	}
	return t.err == nil
}

// forget drops what the readings came to.
func (t *thinking) forget() {
	t.of = ""
	t.liftMM, t.slideMM, t.plan, t.since, t.stepsDone, t.anew = nil, nil, nil, nil, 0, false
}

// think estimates, and says where the engine stands. A visit thought of already
// is left at that: what is tried beside it changes nothing of it.
func (t *thinking) think(d *visit.Document) {
	of := string(visit.Encode(d.Visit))
	if t.hull != nil && of == t.of && t.readyFor(d) {
		return
	}
	t.forget()
	t.estimate, t.basis = nil, nil
	t.asked++
	if !t.readyFor(d) {
		return
	}
	t.of = of
	if t.estimate, t.err = t.model.Estimate(&d.Visit); t.err != nil {
		t.estimate = nil
		return
	}
	t.base, t.basis = d.Visit, t.estimate
	if t.estimate.Status == gauge.Moved {
		t.gaugedLast(d)
	}
	if e := t.basis; e != nil && e.Status == gauge.Ready && e.Flat && e.GapCount >= 3 {
		lift, slide, err := t.planner.AsFound(&t.base, e)
		if err == nil {
			t.liftMM, t.slideMM = lift, slide
			t.addSince(d)
		}
	}
}

// gaugedLast parts the visit at the last gauging that has readings.
func (t *thinking) gaugedLast(d *visit.Document) {
	events := d.Visit.Events
	last := len(events) - 1
	for last >= 0 && (events[last].Gauging == nil || len(events[last].Gauging.Readings) == 0) {
		last--
	}
	if last < 0 {
		return
	}
	t.base.Events = events[:last+1]
	for _, e := range events[last+1:] {
		if e.Move != nil {
			t.since = append(t.since, *e.Move)
		}
	}
	if t.basis, t.err = t.model.Estimate(&t.base); t.err != nil {
		t.basis = nil
	}
}

// addSince moves the engine on by what was moved since it was gauged.
func (t *thinking) addSince(d *visit.Document) {
	items := response.Items(t.hull)
	for _, m := range t.since {
		response.Add(items, response.MovesOf(t.hull, items, m.NutFlats, m.SlideMM), t.liftMM, t.slideMM)
	}
}

// planAhead plans in the background and calls back on the window's goroutine,
// unless something else was asked meanwhile.
func (t *thinking) planAhead(then func()) {
	if t.basis == nil || t.planner == nil || t.plan != nil {
		return
	}
	wholeOf := string(visit.Encode(t.base))
	if t.whole != nil && t.wholeOf == wholeOf { // its steps are being ticked
		if done := stepsOf(t.hull, t.whole, t.since); done >= 0 {
			t.plan, t.stepsDone = t.whole, done
			then()
			return
		}
	}
	t.asked++
	asked, planner, basis, base, since := t.asked, t.planner, t.basis, t.base, t.since
	var p, whole *plan.Plan
	var done int
	var anew bool
	var err error
	t.aside(func() {
		if whole, err = planner.Plan(&base, basis, plan.Settings{}); err != nil || len(since) == 0 {
			p = whole
			return
		}
		p = whole
		if done = stepsOf(t.hull, p, since); done < 0 {
			done, anew = 0, true
			p, err = planner.Plan(&base, basis, plan.Settings{Since: since})
		}
	}, func() {
		if t.asked == asked {
			t.whole, t.wholeOf = whole, wholeOf
			t.plan, t.stepsDone, t.anew, t.err = p, done, anew, err
			then()
		}
	})
}

// stepsOf is how many of a plan's steps some moves are, all together; -1: they
// are something else.
func stepsOf(h *hulls.Hull, p *plan.Plan, since []visit.Move) int {
	n := len(h.Mounts)
	flats, slides := make([]float64, n), make([]float64, n)
	for _, m := range since {
		for i, mount := range h.Mounts {
			flats[i] += m.NutFlats[mount.Name]
			slides[i] += m.SlideMM[mount.Name]
		}
	}
	for k := 0; ; k++ {
		same := true
		for i := range n {
			same = same && flats[i] == 0 && math.Abs(slides[i]) < 1e-9
		}
		switch {
		case same:
			return k
		case k == len(p.Steps):
			return -1
		}
		for i := range n {
			flats[i] -= float64(p.Steps[k].NutFlats[i])
			slides[i] -= p.Steps[k].SlideMM[i]
		}
	}
}

// moves reports whether a plan has something to do.
func moves(p *plan.Plan) bool { return p.Status == plan.Found || p.Status == plan.Unsure }

// step is the plan's next step; nil: none is left.
func (t *thinking) step() *plan.Step {
	if p := t.plan; p != nil && moves(p) && t.stepsDone < len(p.Steps) {
		return &p.Steps[t.stepsDone]
	}
	return nil
}

// left is what the plan has left to do, by mount.
func (t *thinking) left() (flats, slideMM []float64) {
	flats, slideMM = make([]float64, len(t.hull.Mounts)), make([]float64, len(t.hull.Mounts))
	if t.plan == nil || !moves(t.plan) {
		return flats, slideMM
	}
	for _, s := range t.plan.Steps[t.stepsDone:] {
		for i := range flats {
			flats[i] += float64(s.NutFlats[i])
			slideMM[i] += s.SlideMM[i]
		}
	}
	return flats, slideMM
}
