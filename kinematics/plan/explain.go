package plan

// This file says what stops a plan and what would free it, by trying: with this
// nut free, with more thread, with more slide, heedless of loads.

import (
	"math"
	"slices"

	"aligner/hulls/visit"
	"aligner/kinematics/plan/search"
)

// farMM is how far ranges are opened to see how much is missing.
const farMM = 40.0

// explainNodes bounds each trial: what it is for is a hint.
const explainNodes = 100_000

// explain fills in Binding and Freeing.
func (j *job) explain(out *Plan) {
	if j.e.RunOut[0].Untrue || j.e.RunOut[1].Untrue {
		out.Binding = append(out.Binding, Binding{What: RunOutLimit})
		out.Freeing = append(out.Freeing, Freeing{How: CureRunOut})
	}
	better := out.Settled // what a trial must beat to count
	if out.Status == None {
		better = 0
	}
	rows := append(append([]search.Row(nil), j.loadRow...), j.cuts...)
	if j.freeOne(out, rows, better) {
		return
	}
	if j.moreRange(out, rows, better, false) || j.moreRange(out, rows, better, true) {
		return
	}
	if r := j.try(out, j.items, nil, better); r.Move != nil {
		what := LoadLimit
		if len(j.cuts) > 0 {
			what = LogLimit
		}
		out.Binding = append(out.Binding, Binding{What: what})
		out.Freeing = append(out.Freeing, Freeing{How: EvenLoads})
	}
}

// try searches at the wanted probability with other limits.
func (j *job) try(out *Plan, items []search.Item, rows []search.Row, better float64) search.Result {
	level := out.Wanted
	surest := j.chance.surest(freeOf(items))
	if p := j.chance.after(surest).Inside(j.chance.target, j.chance.radiusMM); p < level {
		level = p - nearSurest
	}
	if level <= better+nearSurest {
		return search.Result{}
	}
	return j.least(items, rows, surest, level, explainNodes, false)
}

// opened is a copy of the items with one changed.
func opened(items []search.Item, change func(k int, it *search.Item)) []search.Item {
	c := append([]search.Item(nil), items...)
	for k := range c {
		change(k, &c[k])
	}
	return c
}

// freeOne tries each nut and slide that is not free by itself, and where none
// alone would do, all of them.
func (j *job) freeOne(out *Plan, rows []search.Row, better float64) bool {
	var fixed []int
	for k := range j.model.Items {
		if !j.movable(k) {
			fixed = append(fixed, k)
		}
	}
	if len(fixed) == 0 {
		return false
	}
	any := false
	for _, k := range fixed {
		if j.freed(out, rows, better, []int{k}) {
			any = true
		}
	}
	return any || j.freed(out, rows, better, fixed)
}

// freed opens some items as far as they go; those that a plan would then move
// are what binds.
func (j *job) freed(out *Plan, rows []search.Row, better float64, open []int) bool {
	items := opened(j.items, func(k int, item *search.Item) {
		if slices.Contains(open, k) {
			steps := int(farMM / j.model.Items[k].MM)
			item.Least, item.Most = -steps, steps
		}
	})
	r := j.try(out, items, rows, better)
	if r.Move == nil {
		return false
	}
	any := false
	for _, k := range open {
		if r.Move[k] == 0 {
			continue
		}
		any = true
		it, what, how := j.model.Items[k], NutNotFree, FreeTheNut
		if it.Slide {
			what, how = SlideNotFree, FreeSlides
		}
		out.Binding = append(out.Binding, Binding{What: what, Mounts: it.Mounts})
		out.Freeing = append(out.Freeing, Freeing{How: how, Mounts: it.Mounts})
	}
	return any
}

// moreRange opens the range of all free nuts, or slides, and sees who goes past
// his own.
func (j *job) moreRange(out *Plan, rows []search.Row, better float64, slides bool) bool {
	items := opened(j.items, func(k int, item *search.Item) {
		it := j.model.Items[k]
		if it.Slide != slides || !j.movable(k) {
			return
		}
		steps := int(farMM / it.MM)
		item.Least, item.Most = -steps, steps
	})
	r := j.try(out, items, rows, better)
	if r.Move == nil {
		return false
	}
	for k, m := range r.Move {
		it, own := j.model.Items[k], j.items[k]
		past := max(m-own.Most, 0) + min(m-own.Least, 0)
		if past == 0 {
			continue
		}
		mm := float64(past) * it.MM
		b := Binding{What: ThreadUp, Mounts: it.Mounts, MM: mm}
		f := Freeing{How: PlateUnder, Mounts: it.Mounts, MM: math.Copysign(math.Ceil(math.Abs(mm)*2)/2, mm)}
		switch {
		case slides:
			b.What, f = SlideLimit, Freeing{How: NewBrackets, Mounts: it.Mounts, MM: mm}
		case past < 0:
			b.What = ThreadDown
		}
		out.Binding = append(out.Binding, b)
		out.Freeing = append(out.Freeing, f)
	}
	return len(out.Binding) > 0
}

// movable reports whether an item is neither stuck nor forbidden, whatever way
// it has left.
func (j *job) movable(k int) bool {
	for _, i := range j.model.Items[k].Mounts {
		found := j.v.Found(j.hull.Mounts[i].Name)
		f := found.Nut
		if j.model.Items[k].Slide {
			f = found.Slide
		}
		if f == visit.Stuck || f == visit.Forbidden {
			return false
		}
	}
	return true
}
