package window

// This file keeps what the readings come to: the estimate at once, the plan in
// the background, for whatever the document says now.

import (
	"reflect"

	"fyne.io/fyne/v2"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/kinematics/plan"
)

// thinking is prepared once for a hull, dry or afloat, and asked again after
// each edit of the visit.
type thinking struct {
	hull    *hulls.Hull
	afloat  bool
	model   *gauge.Model
	planner *plan.Planner
	err     error

	estimate        *gauge.Estimate
	liftMM, slideMM []float64 // the engine as found; nil: not known
	plan            *plan.Plan
	asked           int // plans asked for; an older answer is dropped
	// aside does work off the window's goroutine, then the rest back on it.
	aside func(work, rest func())
}

// inBackground is the usual aside.
func inBackground(work, rest func()) {
	go func() {
		work()
		fyne.Do(rest)
	}()
}

// readyFor prepares for a document's hull.
func (t *thinking) readyFor(d *visit.Document) bool {
	afloat := d.Visit.State.Afloat()
	if t.hull != nil && t.afloat == afloat && reflect.DeepEqual(*t.hull, d.Hull) {
		return t.err == nil
	}
	h := d.Hull
	*t = thinking{hull: &h, afloat: afloat, asked: t.asked, aside: t.aside}
	if t.model, t.err = gauge.NewModel(&h, afloat); t.err == nil {
		t.planner, t.err = plan.NewPlanner(&h, afloat)
	}
	return t.err == nil
}

// think estimates, and says where the engine stands.
func (t *thinking) think(d *visit.Document) {
	t.estimate, t.liftMM, t.slideMM, t.plan = nil, nil, nil, nil
	t.asked++
	if !t.readyFor(d) {
		return
	}
	if t.estimate, t.err = t.model.Estimate(&d.Visit); t.err != nil {
		t.estimate = nil
		return
	}
	if t.estimate.Status == gauge.Ready && t.estimate.Flat && t.estimate.GapCount >= 3 {
		lift, slide, err := t.planner.AsFound(&d.Visit, t.estimate)
		if err == nil {
			t.liftMM, t.slideMM = lift, slide
		}
	}
}

// planAhead plans in the background and calls back on the window's goroutine,
// unless something else was asked meanwhile.
func (t *thinking) planAhead(d visit.Document, then func()) {
	if t.estimate == nil || t.planner == nil {
		return
	}
	t.asked++
	asked, planner, estimate := t.asked, t.planner, t.estimate
	var p *plan.Plan
	var err error
	t.aside(func() { p, err = planner.Plan(&d.Visit, estimate, plan.Settings{}) }, func() {
		if t.asked == asked {
			t.plan, t.err = p, err
			then()
		}
	})
}
