package window

// This file is the part of the beginning for the acceptance rule and the gap
// aimed at.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/hulls/visit/called"
	"aligner/report/job"
)

// ruleForm is the acceptance rule, one in use or one's own.
type ruleForm struct {
	w            *Window
	box          *fyne.Container
	rule, limits *page.Choice
	limit, named *field
	from         *widget.Label
}

func newRuleForm(w *Window) *ruleForm {
	f := &ruleForm{w: w, from: small("")}
	options := []string{w.speaker.Say(words.BeginUnsaid, nil)}
	for _, r := range job.Rules() {
		options = append(options, w.speaker.Say(words.Of("rule", r.Named), nil))
	}
	f.rule = newChoice(w, append(options, w.speaker.Say(words.BeginOwnRule, nil)), func(i int) {
		switch rules := job.Rules(); {
		case i == 0:
			w.do(&visit.SetRule{})
		case i <= len(rules):
			w.do(&visit.SetRule{Rule: rules[i-1].Rule})
		default:
			f.own(func(*visit.Rule) {})
			w.win.Canvas().Focus(f.limit)
		}
	})
	var limits []string
	for _, l := range visit.RuleLimits {
		limits = append(limits, w.speaker.Say(words.Of("limits", l), nil))
	}
	f.limits = newChoice(w, limits, func(i int) { f.own(func(r *visit.Rule) { r.Limits = visit.RuleLimits[i] }) })
	f.limit = newField(w, func(text string) {
		l, ok := w.parseLength(text)
		if !ok || !l.Given() {
			w.tell(w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
			return
		}
		f.own(func(r *visit.Rule) { r.Limit = l })
	})
	f.named = newField(w, func(text string) {
		f.own(func(r *visit.Rule) { r.Named = text })
	})
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	f.box = container.NewVBox(w.heading(words.BeginRule), f.rule,
		container.New(shares{0.3, 0.7}, captioned(say(words.BeginLimit), f.limit), captioned(say(words.BeginLimits), f.limits)),
		captioned(say(words.BeginNamed), f.named), f.from)
	return f
}

// own changes the rule; one in use that was changed is no longer called so.
func (f *ruleForm) own(change func(*visit.Rule)) {
	r, _ := f.w.history.Now().Visit.Rule.Chosen()
	was := r
	change(&r)
	if r.Named == was.Named && inUse(was) >= 0 {
		r.Named = f.w.speaker.Say(words.BeginOwnRule, nil)
	}
	f.w.do(&visit.SetRule{Rule: r})
}

// inUse is a rule's place among those in use, or -1.
func inUse(r visit.Rule) int {
	for i, known := range job.Rules() {
		if known.Rule == r {
			return i
		}
	}
	return -1
}

func (f *ruleForm) show(d *visit.Document) {
	r, chosen := d.Visit.Rule.Chosen()
	i := inUse(r)
	switch {
	case !chosen:
		f.rule.Put(0)
		f.from.SetText(f.w.defaultSaid(words.DefaultRuleSaid))
	case i >= 0:
		f.rule.Put(i + 1)
		f.from.SetText(f.w.from(job.Rules()[i].Sources))
	default:
		f.rule.Put(len(job.Rules()) + 1)
	}
	showIf(f.from, !chosen || i >= 0)
	f.limit.show(f.w.writeLength(r.Limit))
	for i, l := range visit.RuleLimits {
		if l == r.Limits {
			f.limits.Put(i)
		}
	}
	name := r.Named
	if i >= 0 {
		name = f.w.speaker.Say(words.Of("rule", r.Named), nil)
	}
	f.named.show(name)
}

// targetForm is the gap left on purpose.
type targetForm struct {
	w                     *Window
	box                   *fyne.Container
	which                 *page.Choice
	spread, place, reason *field
	from                  *widget.Label
}

func newTargetForm(w *Window) *targetForm {
	f := &targetForm{w: w, from: small("")}
	options := []string{w.speaker.Say(words.BeginNoTarget, nil)}
	for _, t := range job.Targets() {
		options = append(options, t.Name.Say(w.speaker, w.units()))
	}
	f.which = newChoice(w, append(options, w.speaker.Say(words.BeginOwnTarget, nil)), func(i int) {
		switch all := job.Targets(); {
		case i == 0:
			w.do(&visit.SetTarget{})
		case i <= len(all):
			w.do(&visit.SetTarget{Target: all[i-1].Target})
		default:
			f.change(func(*visit.Target) {})
			w.win.Canvas().Focus(f.spread)
		}
	})
	f.spread = newField(w, func(text string) {
		l, ok := w.parseLength(text)
		switch {
		case !ok:
			w.tell(w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
		case !l.Given() || l.Value == 0:
			w.do(&visit.SetTarget{})
		default:
			f.change(func(t *visit.Target) { t.Spread = l })
		}
	})
	f.place = newField(w, func(text string) {
		deg, ok := called.Place(text, w.seen())
		if !ok {
			w.tell(w.speaker.Say(words.BeginBadPlace, words.Args{"Text": text}))
			return
		}
		f.change(func(t *visit.Target) { t.OpensAtDeg = deg })
	})
	f.reason = newField(w, func(text string) { f.change(func(t *visit.Target) { t.Reason = text }) })
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	f.box = container.NewVBox(w.heading(words.BeginTarget), f.which,
		pair(captioned(say(words.BeginSpread), f.spread), captioned(say(words.BeginOpensAt), f.place)),
		captioned(say(words.BeginReason), f.reason), f.from)
	return f
}

// change begins from the target there is, or a thou at the bottom.
func (f *targetForm) change(how func(*visit.Target)) {
	t := f.w.history.Now().Visit.Target
	if t == (visit.Target{}) {
		t = visit.Target{Spread: visit.Thou(1), OpensAtDeg: 180, Reason: f.w.speaker.Say(words.BeginOwnTarget, nil)}
	}
	how(&t)
	f.w.do(&visit.SetTarget{Target: t})
}

func (f *targetForm) show(d *visit.Document) {
	t := d.Visit.Target
	all := job.Targets()
	at, from := len(all)+1, ""
	for i := range all {
		if all[i].Target == t {
			at, from = i+1, f.w.from(all[i].Sources)
		}
	}
	if t == (visit.Target{}) {
		at, from = 0, f.w.defaultSaid(words.DefaultTarget)
	}
	f.which.Put(at)
	f.from.SetText(from)
	showIf(f.from, from != "")
	f.spread.show(f.w.writeLength(t.Spread))
	place := ""
	if t.Spread.Given() {
		place = f.w.writePlace(t.OpensAtDeg)
	}
	f.place.show(place)
	f.reason.show(t.Reason)
}
