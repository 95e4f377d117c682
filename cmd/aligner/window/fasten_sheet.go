package window

// This file is the sheet for fastening: the step that is next and how it is
// ticked, the order for this boat or three mounts and then the fourth, the
// bolts' torque, and what tightening moved.

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/report/job"
)

// fastenSheet is the order of fastening.
type fastenSheet struct {
	w   *Window
	box *fyne.Container

	pulled             *pulledSheet
	title, next, from  *widget.Label
	done, heavy, gauge *page.Button
	tight              *tightForm
	method             *page.Button
	order              *rows
	afterAll           *widget.Label
	torque             *torqueSheet
	safety             *widget.Label
	way                fastenWay
	passed             map[int]bool // steps of it that leave nothing in the visit, ticked
	steps              []job.FastenStep
	progress           []job.Progress
}

func newFastenSheet(w *Window) *fastenSheet {
	s := &fastenSheet{w: w, title: heading(""), next: heading(""), from: small(""), order: newRows(), afterAll: running(), safety: running(),
		pulled: newPulledSheet(w), torque: newTorqueSheet(w), passed: map[int]bool{}}
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	s.done = newPress(w, say(words.FastenStepDone), s.tick)
	s.done.Importance = widget.HighImportance
	s.heavy = newPress(w, say(words.FastenHeavy), func() { s.turned("heavy") })
	s.tight = newTightForm(w, func(at visit.Maybe) {
		h := w.history.Now().Visit.HandedOver
		h.TightAtDeg = at
		w.do(&visit.HandOver{HandedOver: h})
	})
	s.gauge = newPress(w, say(words.FastenGaugeHere), s.gaugeAgain)
	s.method = newPress(w, say(words.FastenFourth), s.otherMethod)
	s.box = container.NewVBox(s.title, s.next, container.NewGridWithColumns(2, s.done, s.gauge), s.heavy, s.tight.box, s.from,
		s.pulled.box, s.order.box, s.afterAll, s.method, s.torque.box, s.safety)
	return s
}

// at is the step that is next, or -1.
func (s *fastenSheet) at() int {
	for i, p := range s.progress {
		if p == job.Next {
			return i
		}
	}
	return -1
}

// tick takes the next step as done.
func (s *fastenSheet) tick() {
	i := s.at()
	if i < 0 {
		return
	}
	d := s.w.history.Now()
	step := &s.steps[i]
	if f, ok := step.Record(&d.Hull); ok {
		s.w.do(&visit.RecordFastening{Fasten: f})
		return
	}
	switch step.Kind {
	case job.Regauge, job.Slacken:
		s.gaugeAgain()
	case job.TurnHand:
		s.turned("smooth")
	case job.SetSealBack:
		seal := d.Visit.Seal
		seal.SetBack = true
		s.w.do(&visit.SetSeal{Seal: seal})
	case job.MarkNuts:
		h := d.Visit.HandedOver
		h.NutsMarked = true
		s.w.do(&visit.HandOver{HandedOver: h})
	default:
		s.passed[i] = true
		s.w.update()
	}
}

// turned records how the shaft turned by hand, bolted up.
func (s *fastenSheet) turned(how string) {
	h := s.w.history.Now().Visit.HandedOver
	if h.TurnedByHand = how; how == "smooth" {
		h.TightAtDeg = visit.Maybe{}
	}
	s.w.do(&visit.HandOver{HandedOver: h})
}

// gaugeAgain begins a gauging here and goes to it.
func (s *fastenSheet) gaugeAgain() {
	s.w.do(&visit.BeginGauging{Gauging: s.w.gauging.hold.asked()})
	s.w.enter(stageGauge)
}

// fastenWay is an order of fastening.
type fastenWay int

const (
	usualWay  fastenWay = iota
	fourthWay           // three mounts, then the fourth
	oneByOne            // one mount at a time
	fastenWays
)

// otherMethod turns to the next order that this boat can be fastened in.
func (s *fastenSheet) otherMethod() {
	s.way = s.nextWay()
	s.passed = map[int]bool{}
	s.w.update()
}

// nextWay is the order after this one.
func (s *fastenSheet) nextWay() fastenWay {
	next := (s.way + 1) % fastenWays
	if _, can := job.ThreeThenFourth(&s.w.boat.hull); next == fourthWay && !can {
		next++
	}
	return next
}

// key takes a letter that means something at this stage.
func (s *fastenSheet) key(r rune) bool {
	switch r {
	case 'y':
		s.tick()
	case 'q':
		s.gaugeAgain()
	case 'k':
		s.otherMethod()
	case 'z':
		s.w.win.Canvas().Focus(s.torque.maker)
	default:
		return false
	}
	return true
}

// lay works out the steps of the method chosen and how far they have come.
func (s *fastenSheet) lay(d *visit.Document) {
	oiled, makerNM := job.CouplingBolts(&d.Visit)
	s.steps, _ = job.FastenOrder(&d.Hull, oiled, makerNM)
	f, can := job.ThreeThenFourth(&d.Hull)
	write(s.afterAll)
	switch {
	case s.way == fourthWay && can:
		write(s.afterAll, f.Steps[len(f.Steps)-1].Say(s.w.speaker, s.w.units()))
		s.steps = f.Order
	case s.way == oneByOne:
		s.steps = job.OneAtATime(&d.Hull, s.steps)
	}
	offer := map[fastenWay]words.ID{usualWay: words.FastenUsual, fourthWay: words.FastenFourth, oneByOne: words.FastenOne}[s.nextWay()]
	if text := s.w.speaker.Say(offer, nil); s.method.Text != text {
		s.method.SetText(text)
	}
	s.steps = job.WithSeal(s.steps, &d.Visit)
	s.progress = job.FastenProgress(&d.Hull, &d.Visit, s.steps)
	for i := range s.steps {
		if !s.passed[i] || s.progress[i] != job.Next {
			continue
		}
		s.progress[i] = job.Done
		for k := i + 1; k < len(s.steps); k++ {
			if s.progress[k] == job.ToCome {
				s.progress[k] = job.Next
				break
			}
		}
	}
}

// show fills the sheet.
func (s *fastenSheet) show(d *visit.Document) {
	sp, u := s.w.speaker, s.w.units()
	s.lay(d)
	i := s.at()
	seen(s.done, i >= 0)
	seen(s.heavy, i >= 0 && s.steps[i].Kind == job.TurnHand)
	seen(s.tight.box, d.Visit.HandedOver.TurnedByHand == "heavy")
	s.tight.show(d.Visit.HandedOver.TightAtDeg, job.TightPlaces(&d.Visit))
	write(s.from)
	if i < 0 {
		write(s.title)
		write(s.next, sp.Say(words.FastenAllDone, nil))
	} else {
		write(s.title, sp.Say(words.MoveStepHead, words.Args{"Number": i + 1, "All": len(s.steps)}))
		write(s.next, s.steps[i].Text.Say(sp, u))
		write(s.from, s.w.from(s.steps[i].Sources))
	}
	var list []row
	for k := range s.steps {
		if k == i {
			continue
		}
		args := words.Args{"Number": strconv.Itoa(k + 1), "What": s.steps[k].Text.Say(sp, u)}
		id := map[job.Progress]words.ID{job.Done: words.FastenRowDone, job.LeftOut: words.FastenRowLeft, job.ToCome: words.FastenRowToCome}[s.progress[k]]
		list = append(list, row{sp.Say(id, args), s.progress[k]})
	}
	s.order.show(list)
	s.pulled.show(d)
	s.torque.show(d)
	var lines []string
	for _, c := range job.Cautions(job.Fastening, d.Visit.State.Afloat()) {
		lines = append(lines, c.Text.Say(sp, u))
	}
	write(s.safety, lines...)
}
