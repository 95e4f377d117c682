package window

// This file is how the shaft is held: asked before the first reading, shown with
// what it means and with the lift that brings the shaft to its middle, and put
// right in the gauging that goes on.

import (
	"math"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/kinematics"
	"aligner/report/say"
)

// holdForm is that.
type holdForm struct {
	s            *gaugeSheet
	box          *fyne.Container
	held, by     *page.Choice
	bolts, lever *page.Choice
	seat         *page.Choice
	apart, push  *field
	hook, note   *field
	means        *widget.Label
	hookBox      fyne.CanvasObject
	seatBox      fyne.CanvasObject
	next         visit.Gauging // as the next one will be begun, unless it goes on
	chosen       bool          // something was chosen for it
	hookMM       float64       // aft of the face; 0: the middle of the coupling half
	lift         liftKnown
	between      *betweenForm
}

// liftKnown is the lift last worked out, and of what.
type liftKnown struct {
	line     *kinematics.DriveLine
	afloat   bool
	hookMM   float64
	centring kinematics.Centring
	hangMM   float64
	err      error
}

// holders in the order of their choice, after "not said".
var holders = []string{"hand", "block", "scale", "jack"}

func newHoldForm(s *gaugeSheet) *holdForm {
	w := s.w
	f := &holdForm{s: s, means: wrapped("")}
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	options := func(kind string, all []string) (list []string) {
		for _, word := range all {
			list = append(list, say(words.Of(kind, word)))
		}
		return list
	}
	f.held = newChoice(w, options("held", visit.GaugedWays), func(i int) { f.change(func(g *visit.Gauging) { g.Held = visit.GaugedWays[i] }) })
	f.by = newChoice(w, append([]string{say(words.BeginUnsaid)}, options("by", holders)...), func(i int) {
		f.change(func(g *visit.Gauging) { g.HeldBy = append([]string{""}, holders...)[i] })
	})
	f.bolts = newChoice(w, []string{say(words.HoldBoltsOut), say(words.HoldBoltsIn)}, func(i int) { f.change(func(g *visit.Gauging) { g.BoltsIn = i == 1 }) })
	f.lever = newChoice(w, []string{say(words.HoldLeverOff), say(words.HoldLeverOn)}, func(i int) { f.change(func(g *visit.Gauging) { g.LeverOn = i == 1 }) })
	f.seat = newChoice(w, []string{say(words.SeatAnew), say(words.SeatSame)}, f.seated)
	f.seatBox = captioned(say(words.SeatCaption), f.seat)
	f.apart = newField(w, func(text string) {
		if l, ok := w.parseLength(text); ok {
			f.change(func(g *visit.Gauging) { g.Apart = l })
			return
		}
		w.tell(w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
	})
	f.push = f.number(func(g *visit.Gauging, v float64) { g.PushN = v })
	f.note = newField(w, func(text string) { f.change(func(g *visit.Gauging) { g.Note = text }) })
	f.hook = newField(w, func(text string) {
		v, ok := number(text)
		if !ok || v < 0 {
			w.tell(w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
			return
		}
		f.hookMM = v
		w.update()
	})
	f.between = newBetweenForm(f)
	f.hookBox = captioned(say(words.HoldHook), f.hook)
	f.box = container.NewVBox(w.heading(words.HoldTitle),
		pair(captioned(say(words.HoldHow), f.held), captioned(say(words.HoldBy), f.by)),
		f.means, f.hookBox,
		pair(captioned(say(words.HoldBolts), f.bolts), captioned(say(words.HoldLever), f.lever)),
		pair(captioned(say(words.HoldApart), f.apart), captioned(say(words.HoldPush), f.push)),
		f.between.box,
		f.seatBox, captioned(say(words.BeginStateNote), f.note))
	return f
}

// before is the gauging before event, with nothing moved or tightened between, or
// -1.
func before(v *visit.Visit, event int) int {
	for i := event - 1; i >= 0; i-- {
		switch e := v.Events[i]; {
		case e.Gauging != nil && !onlyStrips(e.Gauging):
			return i
		case e.Move != nil, e.Fasten != nil:
			return -1
		}
	}
	return -1
}

// sameSeating reports whether two gaugings are of one seating.
func sameSeating(v *visit.Visit, i, j int) bool {
	return i >= 0 && j >= 0 && v.Events[i].Gauging.Seating > 0 && v.Events[i].Gauging.Seating == v.Events[j].Gauging.Seating
}

// seated says that the shaft's end was not moved since the gauging before (1), or
// was seated anew (0). One seating has one number, so the one before may have to
// be given one too.
func (f *holdForm) seated(i int) {
	v := f.s.w.history.Now().Visit
	event := lastGauging(&v)
	was := before(&v, event)
	if event < 0 || was < 0 {
		return
	}
	number := 0
	if i == 1 {
		if number = v.Events[was].Gauging.Seating; number == 0 {
			for _, e := range v.Events {
				if e.Gauging != nil {
					number = max(number, e.Gauging.Seating)
				}
			}
			number++
			g := *v.Events[was].Gauging
			g.Readings, g.Seating = nil, number
			if !f.s.w.try(&visit.ChangeGauging{Event: was, Gauging: g}) {
				return
			}
		}
	}
	f.change(func(g *visit.Gauging) { g.Seating = number })
}

func (f *holdForm) number(put func(*visit.Gauging, float64)) *field {
	return newField(f.s.w, func(text string) {
		v, ok := number(text)
		if text == "" {
			v, ok = 0, true
		}
		if !ok {
			f.s.w.tell(f.s.w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
			return
		}
		f.change(func(g *visit.Gauging) { put(g, v) })
	})
}

// change puts the gauging that goes on right, or the one to be begun.
func (f *holdForm) change(how func(*visit.Gauging)) {
	w := f.s.w
	d := w.history.Now()
	if event := lastGauging(&d.Visit); event >= 0 {
		g := *d.Visit.Events[event].Gauging
		g.Readings = nil
		how(&g)
		w.try(&visit.ChangeGauging{Event: event, Gauging: g})
		return
	}
	g := f.asked()
	how(&g)
	f.next, f.chosen = g, true
	w.update()
}

// asked is how the next gauging is begun: as chosen, else held and turned as the
// one before it, else as the screen shows the shaft.
func (f *holdForm) asked() visit.Gauging {
	d := f.s.w.history.Now()
	if f.chosen {
		g := f.next
		g.Readings = nil
		if g.Held != "seated" || d.Hull.Coupling.HasPilot() {
			return g
		}
	}
	for _, e := range slices.Backward(d.Visit.Events) {
		if e.Gauging != nil && !onlyStrips(e.Gauging) {
			g := visit.Gauging{Held: e.Gauging.Held, HeldBy: e.Gauging.HeldBy,
				ShaftTurnDeg: e.Gauging.ShaftTurnDeg, FlangeTurnDeg: e.Gauging.FlangeTurnDeg, Between: e.Gauging.Between}
			if e.Gauging.Apart.MM() > visit.WideMM { // what keeps them so far apart stays
				g.Apart = e.Gauging.Apart
			}
			return g
		}
	}
	g := visit.Gauging{Held: heldToGauge(&d), HeldBy: "hand"}
	if g.Held == "centred" {
		g.HeldBy = "block"
	}
	return g
}

// heldToGauge is how the shaft is taken to be held: as on the screen, where
// that can be gauged.
func heldToGauge(d *visit.Document) string {
	if d.Trial.Held == "centred" || !d.Hull.Coupling.HasPilot() {
		return "centred"
	}
	return "seated"
}

func (f *holdForm) show(d *visit.Document, event int) {
	g := f.asked()
	if event >= 0 {
		g = *d.Visit.Events[event].Gauging
		f.chosen = false
	}
	f.held.Put(max(0, slices.Index(visit.GaugedWays, g.Held)))
	f.by.Put(slices.Index(holders, g.HeldBy) + 1)
	f.bolts.Put(map[bool]int{true: 1}[g.BoltsIn])
	f.lever.Put(map[bool]int{true: 1}[g.LeverOn])
	was := before(&d.Visit, event)
	showIf(f.seatBox, was >= 0)
	f.seat.Put(map[bool]int{true: 1}[sameSeating(&d.Visit, was, event)])
	f.apart.show(f.s.w.writeLength(g.Apart))
	push := ""
	if g.PushN != 0 {
		push = f.s.w.units().Plain(g.PushN, 1)
	}
	f.push.show(push)
	f.note.show(g.Note)
	f.between.show(d, &g)
	hook := f.hookMM
	if hook == 0 {
		hook = d.Hull.Coupling.ShaftHalfLengthMM / 2
	}
	f.hook.show(f.s.w.units().Plain(hook, 0))
	lifted := g.Held == "centred" || g.Held == "hanging"
	showIf(f.hookBox, lifted)
	lines := []string{say.Held(f.s.w.speaker, g.Held)}
	if g.LeverOn {
		lines = append(lines, f.s.w.speaker.Say(words.HoldLeverNot, nil))
	}
	if lifted {
		lines = append(lines, f.lifts(d, hook)...)
	}
	f.means.SetText(strings.Join(lines, "\n"))
}

// lifts say how to bring the shaft to its middle, worked out once for a hull, its
// state and a hook.
func (f *holdForm) lifts(d *visit.Document, hookMM float64) []string {
	w := f.s.w
	afloat := d.Visit.State.Afloat()
	if k := &f.lift; k.line != w.boat.line || k.afloat != afloat || math.Abs(k.hookMM-hookMM) > 1e-9 {
		*k = liftKnown{line: w.boat.line, afloat: afloat, hookMM: hookMM}
		line := w.boat.line.Clone() // the picture's own goes on from where it was
		k.centring, k.err = line.CentringAt(afloat, -hookMM)
		var r kinematics.Result
		if k.err == nil {
			k.err = line.Solve(&kinematics.State{Held: kinematics.Hanging, Afloat: afloat}, &r)
			k.hangMM = r.FrontEndMM[1]
		}
	}
	if f.lift.err != nil {
		return []string{w.told(f.lift.err)}
	}
	return say.Lift(w.speaker, w.units(), &f.lift.centring, f.lift.hangMM, hookMM)
}
