package window

// This file is what makes a job other than the usual: something between the halves
// when they are gauged, the gap under power, two jobs that hang together.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/hulls/visit/called"
	"aligner/report/job"
	"aligner/report/say"
)

// betweenForm is what stands between the halves.
type betweenForm struct {
	hold         *holdForm
	box          *fyne.Container
	what         *page.Choice
	uneven, thin *field
	dummy        fyne.CanvasObject
	told         *widget.Label
}

func newBetweenForm(hold *holdForm) *betweenForm {
	w := hold.s.w
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	f := &betweenForm{hold: hold, told: wrapped("")}
	options := []string{say(words.BetweenNone)}
	for _, kind := range visit.BetweenKinds {
		options = append(options, say(words.Of("between", kind)))
	}
	f.what = newChoice(w, options, func(i int) {
		what := append([]string{""}, visit.BetweenKinds...)[i]
		hold.change(func(g *visit.Gauging) { g.Between = visit.Between{What: what} })
	})
	f.uneven = w.lengthField(func(l visit.Length) { hold.change(func(g *visit.Gauging) { g.Between.Uneven = l }) })
	f.thin = w.placeField(func(deg float64) { hold.change(func(g *visit.Gauging) { g.Between.ThinAtDeg = deg }) })
	f.dummy = pair(captioned(say(words.HoldUneven), f.uneven), captioned(say(words.HoldThinAt), f.thin))
	f.box = container.NewVBox(captioned(say(words.HoldBetween), f.what), f.dummy, f.told)
	return f
}

func (f *betweenForm) show(d *visit.Document, g *visit.Gauging) {
	w, soft := f.hold.s.w, d.Hull.Coupling.Soft
	f.what.Put(placeOf(g.Between.What, visit.BetweenKinds))
	f.uneven.show(w.writeLength(g.Between.Uneven))
	f.thin.show(w.writePlace(g.Between.ThinAtDeg))
	showIf(f.dummy, g.Between.What == visit.Dummy)
	var lines []string
	if d.Hull.Coupling.IsSoft() {
		allowed := ""
		if soft.InPlaceMM > 0 {
			allowed = w.units().LeafWithUnit(soft.InPlaceMM)
		}
		lines = append(lines, w.speaker.Say(words.HoldBetweenSoft, words.Args{"Hull": d.Hull.Name,
			"Thickness": w.units().MM(soft.ThicknessMM), "InPlace": allowed}))
	}
	if apart := g.Apart.MM(); apart > visit.WideMM {
		lines = append(lines, w.speaker.Say(words.HoldWide, words.Args{"Apart": w.units().MM(apart)}))
	}
	f.told.SetText(strings.Join(lines, "\n"))
	showIf(f.told, len(lines) > 0)
}

// branchForm is the gap under power and the other of two jobs.
type branchForm struct {
	w              *Window
	box            *fyne.Container
	thrust, torque *field
	units          [2]*widget.Label // over them
	said           *widget.Label
	shift, at      *field
	job            *page.Choice
	other          *field
	moved          *page.Choice
	linked         fyne.CanvasObject
}

func newBranchForm(w *Window) *branchForm {
	f := &branchForm{w: w}
	said := func(id words.ID) string { return w.speaker.Say(id, nil) }
	f.thrust = f.load(say.Units.ForceUnit, func(p *visit.UnderPower, v float64) { p.ThrustN = v })
	f.torque = f.load(say.Units.TorqueUnit, func(p *visit.UnderPower, v float64) { p.TorqueNM = v })
	f.units, f.said = [2]*widget.Label{smallCaption(""), smallCaption("")}, wrapped("")
	f.shift = w.lengthField(func(l visit.Length) { f.power(func(p *visit.UnderPower) { p.Shift = l }) })
	f.at = w.placeField(func(deg float64) { f.power(func(p *visit.UnderPower) { p.ShiftOpensAtDeg = deg }) })
	options := []string{said(words.LinkedNone)}
	for _, job := range visit.LinkedJobs {
		options = append(options, said(words.Of("linked", job)))
	}
	f.job = newChoice(w, options, func(i int) {
		f.link(func(l *visit.Linked) { l.Job = append([]string{""}, visit.LinkedJobs...)[i] })
	})
	f.other = newField(w, func(text string) { f.link(func(l *visit.Linked) { l.Other = text }) })
	f.moved = newChoice(w, []string{said(words.LinkedStands), said(words.LinkedWasMoved)}, func(i int) { f.link(func(l *visit.Linked) { l.OtherMoved = i == 1 }) })
	f.linked = container.NewVBox(captioned(said(words.BeginLinkedOther), f.other), captioned(said(words.BeginLinkedMoved), f.moved))
	f.box = container.NewVBox(w.heading(words.BeginPower), f.said,
		pair(container.NewBorder(f.units[0], nil, nil, nil, f.thrust), container.NewBorder(f.units[1], nil, nil, nil, f.torque)),
		pair(captioned(said(words.BeginShift), f.shift), captioned(said(words.BeginShiftAt), f.at)),
		w.heading(words.BeginLinked), captioned(said(words.BeginLinkedJob), f.job), f.linked)
	return f
}

func (f *branchForm) power(change func(*visit.UnderPower)) {
	p := f.w.history.Now().Visit.UnderPower
	change(&p)
	f.w.do(&visit.SetUnderPower{UnderPower: p})
}

// load is thrust or torque, in the unit on the screen unless it names one; an empty
// line is none.
func (f *branchForm) load(unit func(say.Units) (string, float64), put func(*visit.UnderPower, float64)) *field {
	return newField(f.w, func(text string) {
		body := strings.TrimSpace(text)
		_, per := unit(f.w.units())
		for _, u := range []say.Units{{Metric: true}, {}} {
			name, own := unit(u)
			if rest, named := strings.CutSuffix(body, name); named {
				body, per = rest, own
			}
		}
		v, ok := number(body)
		if !ok && body != "" {
			f.w.tell(f.w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
			return
		}
		f.power(func(p *visit.UnderPower) { put(p, v*per) })
	})
}

func (f *branchForm) link(change func(*visit.Linked)) {
	l := f.w.history.Now().Visit.Linked
	change(&l)
	if l.Job == "" {
		l = visit.Linked{}
	}
	f.w.do(visit.NewSetLinked(l))
}

func (f *branchForm) show(d *visit.Document) {
	p, l, u := &d.Visit.UnderPower, &d.Visit.Linked, f.w.units()
	load := func(v float64) string {
		if v == 0 {
			return ""
		}
		return u.Plain(v, 1)
	}
	force, n := u.ForceUnit()
	torque, nm := u.TorqueUnit()
	f.units[0].SetText(f.w.speaker.Say(words.BeginThrust, words.Args{"Unit": force}))
	f.units[1].SetText(f.w.speaker.Say(words.BeginTorque, words.Args{"Unit": torque}))
	f.said.SetText(f.w.speaker.Say(words.BeginPowerSaid, words.Args{"Thrust": u.Force(1000), "Torque": job.TorqueOf(u, 300)}))
	f.thrust.show(load(p.ThrustN / n))
	f.torque.show(load(p.TorqueNM / nm))
	f.shift.show(f.w.writeLength(p.Shift))
	f.at.show(f.w.writePlace(p.ShiftOpensAtDeg))
	f.job.Put(placeOf(l.Job, visit.LinkedJobs))
	f.other.show(l.Other)
	f.moved.Put(map[bool]int{true: 1}[l.OtherMoved])
	showIf(f.linked, l.Job != "")
}

// lengthField is a thickness or gap that need not be given.
func (w *Window) lengthField(take func(visit.Length)) *field {
	return newField(w, func(text string) {
		if l, ok := w.parseLength(text); ok {
			take(l)
			return
		}
		w.tell(w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
	})
}

// placeField is a place on the clock.
func (w *Window) placeField(take func(deg float64)) *field {
	return newField(w, func(text string) {
		deg, ok := called.Place(text, w.seen())
		if !ok {
			w.tell(w.speaker.Say(words.BeginBadPlace, words.Args{"Text": text}))
			return
		}
		take(deg)
	})
}
