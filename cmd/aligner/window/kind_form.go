package window

// This file is which kind of reading is being called, and what need not be said
// with each: where a dial stands, which half is turned, which bearing is tried.

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/hulls/visit/called"
)

// kindForm is that.
type kindForm struct {
	s         *gaugeSheet
	box       *fyne.Container
	which     *page.Choice
	on, half  *page.Choice
	where     *page.Choice
	end       *page.Choice
	zero, sag *field
	parts     map[string]fyne.CanvasObject // beside the kind's choice, by kind
	names     []string                     // of where
	halfSays  *widget.Label                // the words over half
	zeroDeg   float64
	sagOf     visit.Length
}

// sidesOfCoupling and surfaces in the order of their choices.
var (
	sidesOfCoupling = []string{visit.ShaftSide, visit.EngineSide}
	surfaces        = []string{"face", "rim"}
)

func newKindForm(s *gaugeSheet) *kindForm {
	w := s.w
	f := &kindForm{s: s}
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	var kinds []string
	for _, k := range visit.ReadingKinds {
		kinds = append(kinds, say(words.Of("kind", k)))
	}
	again := func(int) {
		d := w.document()
		s.show(&d)
	}
	f.which = newChoice(w, kinds, again)
	f.on = newChoice(w, []string{say(words.ReadOnFace), say(words.ReadOnRim)}, again)
	f.half = newChoice(w, []string{say(words.KindShaftSide), say(words.KindEngineSide)}, again)
	f.where = newChoice(w, nil, again)
	f.end = newChoice(w, []string{say(words.EndFore), say(words.EndAft)}, again)
	for _, c := range []*page.Choice{f.which, f.on, f.half, f.end} {
		c.Put(0)
	}
	f.zero = newField(w, func(text string) {
		deg, ok := called.Place(text, w.seen())
		if !ok {
			w.tell(w.speaker.Say(words.BeginBadPlace, words.Args{"Text": text}))
			return
		}
		f.zeroDeg = deg
		again(0)
	})
	f.sag = newField(w, func(text string) {
		l, ok := w.parseLength(text)
		if !ok {
			w.tell(w.speaker.Say(words.BeginBadNumber, words.Args{"Text": text}))
			return
		}
		if l.Value == 0 {
			l = visit.Length{}
		}
		f.sagOf = l
		again(0)
	})
	f.box = container.NewVBox(captioned(say(words.KindCaption), f.which))
	f.build()
	return f
}

// build makes the parts that go with some kinds only. A choice stands in one
// place at a time, so a dial and a run-out share a row.
func (f *kindForm) build() {
	say := func(id words.ID) string { return f.s.w.speaker.Say(id, nil) }
	f.halfSays = smallCaption("")
	surface := pair(captioned(say(words.KindOn), f.on), container.NewBorder(f.halfSays, nil, nil, nil, f.half))
	dial := pair(captioned(say(words.KindZero), f.zero), captioned(say(words.KindSag), f.sag))
	room := pair(captioned(say(words.KindWhere), f.where), captioned(say(words.KindEnd), f.end))
	f.parts = map[string]fyne.CanvasObject{"surface": surface, "dial": dial, "room": room}
	for _, name := range []string{"surface", "dial", "room"} {
		f.parts[name].Hide()
		f.box.Add(f.parts[name])
	}
}

func (f *kindForm) kind() string { return visit.ReadingKinds[max(0, f.which.SelectedIndex())] }

// placeless reports whether the kind has no clock position to ask for.
func (f *kindForm) placeless() bool {
	return f.kind() == "leaf round" || f.kind() == "run-out" || f.kind() == "pilot"
}

// step goes to the kind before or after.
func (f *kindForm) step(by int) {
	n := len(visit.ReadingKinds)
	f.which.SetSelectedIndex((f.which.SelectedIndex() + by + n) % n)
}

// fill puts what need not be said into a setting.
func (f *kindForm) fill(set *called.Setting) {
	set.On = surfaces[max(0, f.on.SelectedIndex())]
	set.Half = sidesOfCoupling[max(0, f.half.SelectedIndex())]
	set.CarriedBy = set.Half
	set.ZeroDeg, set.Sag = f.zeroDeg, f.sagOf
	set.End = shaftEnds[max(0, f.end.SelectedIndex())]
	if i := f.where.SelectedIndex(); i >= 0 && i < len(f.names) {
		set.Where = f.names[i]
	}
}

// use is the setting a picked reading was called in.
func (f *kindForm) use(set called.Setting) {
	f.which.Put(slices.Index(visit.ReadingKinds, set.Kind))
	f.on.Put(max(0, slices.Index(surfaces, set.On)))
	half := set.Half
	if set.Kind == "dial" {
		half = set.CarriedBy
	}
	f.half.Put(max(0, slices.Index(sidesOfCoupling, half)))
	f.end.Put(max(0, slices.Index(shaftEnds, set.End)))
	if i := slices.Index(f.names, set.Where); i >= 0 {
		f.where.Put(i)
	}
	f.zeroDeg, f.sagOf = set.ZeroDeg, set.Sag
}

// askedFor is the place a kind other than the leaf is asked at: the four sides
// in turn, those already read of the same sort left out.
func (f *kindForm) askedFor(v *visit.Visit) (deg float64, then []float64) {
	var now []float64
	if event := lastGauging(v); event >= 0 {
		for _, r := range v.Events[event].Gauging.Readings {
			at, ok := visit.ClockOf(r)
			if ok && r.Kind() == f.kind() && f.same(r) {
				now = append(now, at)
			}
		}
	}
	var all []float64
	for _, deg := range stripPlaces {
		if !slices.Contains(now, deg) {
			all = append(all, deg)
		}
	}
	if len(all) == 0 {
		return 0, nil
	}
	return all[0], all[1:]
}

// same reports whether a reading was made where the next one is to be.
func (f *kindForm) same(r visit.Reading) bool {
	set := called.Setting{}
	f.fill(&set)
	switch r := r.(type) {
	case visit.Clearance:
		return r.Where == set.Where && r.End == set.End
	case visit.Dial:
		return r.On == set.On && r.CarriedBy == set.CarriedBy
	}
	return true
}

func (f *kindForm) show(d *visit.Document) {
	f.names = []string{"log"}
	options := []string{f.s.w.speaker.Say(words.ReadLog, nil)}
	for _, b := range d.Hull.Bearings {
		f.names, options = append(f.names, b.Name), append(options, f.s.w.speaker.Part(b.Name))
	}
	f.where.Options = options
	if i := f.where.SelectedIndex(); i < 0 || i >= len(options) {
		f.where.Put(0)
	}
	k := f.kind()
	f.halfSays.SetText(f.s.w.speaker.Say(map[bool]words.ID{true: words.KindCarried, false: words.KindTurned}[k == "dial"], nil))
	showIf(f.parts["surface"], k == "dial" || k == "run-out")
	showIf(f.parts["dial"], k == "dial")
	showIf(f.parts["room"], k == "clearance")
	f.zero.show(f.s.w.writePlace(f.zeroDeg))
	sag := f.s.w.writeLength(f.sagOf)
	if sag == "" {
		sag = "0"
	}
	f.sag.show(sag)
	hint := f.s.w.speaker.Say(words.Of("hint", strings.ReplaceAll(k, "-", " ")), nil)
	if f.s.entry.PlaceHolder != hint {
		f.s.entry.SetPlaceHolder(hint)
	}
}
