package window

// This file is the strips across the top and the bottom.

import (
	"math"
	"slices"
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/scene"
)

// topStrip says which boat and in what state.
type topStrip struct {
	box    *fyne.Container
	boats  *page.Choice
	visits *page.Choice
	state  *widget.Hyperlink // of the boat; to where it is said
	afloat *widget.Check     // of what is tried: on the sheet for trying
	lever  *widget.Check
	undo   *page.Button
	redo   *page.Button
	more   *page.Button
	quiet  bool // being filled, not touched

	speaker words.Speaker
}

func newTopStrip(w *Window) *topStrip {
	s := w.speaker
	t := &topStrip{}
	t.boats = newChoice(w, assets.HullNames(), func(i int) {
		if !t.quiet {
			w.openBoat(assets.HullNames()[i])
		}
	})
	t.afloat = widget.NewCheck(s.Say(words.Afloat, nil), func(on bool) {
		if !t.quiet {
			w.do(&visit.Float{Afloat: on})
		}
	})
	t.lever = widget.NewCheck(s.Say(words.LeverCheck, nil), func(on bool) {
		if !t.quiet {
			w.do(&visit.Lever{On: on})
		}
	})
	t.undo = newPress(w, s.Say(words.Undo, nil), w.undo)
	t.redo = newPress(w, s.Say(words.Redo, nil), w.redo)
	t.more = newPress(w, s.Say(words.MoreMenu, nil), func() { w.showMore(t.more) })
	t.visits = newChoice(w, assets.VisitNames(), func(i int) {
		if !t.quiet {
			w.openVisit(assets.VisitNames()[i])
		}
	})
	all := newPress(w, s.Say(words.BoatsTitle, nil), w.allBoats)
	t.state = widget.NewHyperlink("", nil)
	t.state.OnTapped = func() { w.enter(stageBegin) }
	t.state.TextStyle.Bold, t.state.Truncation = true, fyne.TextTruncateEllipsis // the strip is no wider for it
	t.speaker = s
	t.visits.PlaceHolder = s.Say(words.VisitChoose, nil)
	t.box = container.NewBorder(nil, nil, container.NewHBox(all, t.boats, t.visits), container.NewHBox(newPress(w, "?", w.showHelp), t.more, t.undo, t.redo),
		container.NewVBox(layout.NewSpacer(), t.state, layout.NewSpacer()))
	return t
}

func (t *topStrip) show(d *visit.Document) {
	t.quiet = true
	defer func() { t.quiet = false }()
	t.boats.PlaceHolder = d.Hull.Name
	if slices.Contains(t.boats.Options, d.Hull.Name) {
		t.boats.SetSelected(d.Hull.Name)
	} else { // of the logbook, or a file
		t.boats.ClearSelected()
	}
	t.afloat.SetChecked(d.Trial.Afloat)
	t.lever.SetChecked(d.Trial.LeverOn)
	if text := t.stateOf(d.Visit.State); text != t.state.Text {
		t.state.SetText(text)
	}
}

// stateOf is the boat's state in a few words.
func (t *topStrip) stateOf(s visit.State) string {
	if s.Boat == "" {
		return t.speaker.Say(words.StateUnsaid, nil)
	}
	whole := func(m visit.Maybe) string {
		if !m.Known {
			return ""
		}
		return strconv.Itoa(int(math.Round(m.Value)))
	}
	return t.speaker.Say(words.StateButton, words.Args{"Boat": t.speaker.Say(words.Of("boat", s.Boat), nil),
		"Hours": whole(s.HoursSinceLaunch), "Fuel": whole(s.FuelPercent)})
}

// bottomStrip holds what changes the picture.
type bottomStrip struct {
	box     *fyne.Container
	held    *page.Choice
	times   *widget.Label
	slider  *widget.Slider
	metric  *page.Choice
	views   *page.Button
	quiet   bool
	speaker words.Speaker
	win     fyne.Window
}

// roomyFrom is how wide a window has room for the whole of how the shaft is held.
const roomyFrom = 1100

func newBottomStrip(w *Window) *bottomStrip {
	s := w.speaker
	b := &bottomStrip{speaker: s, win: w.win}
	var ways []string
	for _, held := range visit.HeldWays {
		ways = append(ways, s.Say(words.Of("held", held), nil))
	}
	b.held = newChoice(w, ways, func(i int) {
		if !b.quiet {
			w.do(&visit.HoldShaft{Held: visit.HeldWays[i]})
		}
	})
	b.times = widget.NewLabel("")
	b.slider = widget.NewSlider(0, math.Log(MostExaggeration))
	b.slider.Step = math.Log(MostExaggeration) / 60
	b.slider.OnChanged = func(v float64) {
		if !b.quiet {
			w.change(func(s *Settings) { s.Exaggeration = math.Exp(v) })
		}
	}
	b.metric = newChoice(w, []string{"thou", "mm"}, func(i int) {
		if !b.quiet {
			w.change(func(s *Settings) { s.Metric = i == 1 })
		}
	})
	b.metric.PlaceHolder = "thou" // no wider than its words
	button := func(id words.ID, do func()) *page.Button { return newPress(w, s.Say(id, nil), do) }
	b.views = newPress(w, s.Say(words.ViewMenu, nil), func() { w.showViews(b.views) })
	views := container.NewHBox(
		b.views,
		button(words.ViewWhole, func() { w.look(scene.ViewWhole) }),
		button(words.ViewCoupling, func() { w.look(scene.ViewCoupling) }),
		button(words.FlipClock, func() { w.change(func(s *Settings) { s.LookingAft = !s.LookingAft }) }),
		b.metric)
	b.box = container.NewBorder(nil, nil, container.NewHBox(widget.NewLabel(s.Say(words.ShaftHeld, nil)), b.held, b.times), views, page.Track(b.slider))
	return b
}

// larger steps the text size up and round again.
func larger(s *Settings) {
	if s.TextSize += 0.2; s.TextSize > MostTextSize-0.39 {
		s.TextSize = LeastTextSize + 0.2
	}
}

func (b *bottomStrip) show(d *visit.Document) {
	b.quiet = true
	defer func() { b.quiet = false }()
	b.held.SetSelectedIndex(slices.Index(visit.HeldWays, d.Trial.Held))
	short := b.held.Selected
	if b.win.Canvas().Size().Width < roomyFrom {
		short = "0000000000" // ten letters of it, for the slider's sake
	}
	if b.held.PlaceHolder != short { // a choice is as wide as that, whatever it shows
		b.held.PlaceHolder = short
		b.held.Refresh()
		b.box.Refresh()
	}
}

// write says how much movement is exaggerated.
func (b *bottomStrip) write(times float64) {
	id := words.Exaggerated
	if times < 1.005 {
		id = words.TrueScale
	}
	b.times.SetText(b.speaker.Say(id, words.Args{"Times": math.Round(times)}))
}

// useTheme puts colours, fonts and text size on.
func (w *Window) useTheme() {
	fyne.CurrentApp().Settings().SetTheme(look{dark: w.settings.Dark, textSize: float32(w.settings.TextSize)})
}

// useSettings puts the settings on every part.
func (w *Window) useSettings() {
	s := &w.settings
	w.useTheme()
	w.picture.State.Dark = s.Dark
	w.picture.State.Show = scene.ShowUsual
	w.picture.SetTextSize(s.TextSize)
	b := w.bottom
	b.quiet = true
	defer func() { b.quiet = false }()
	b.slider.SetValue(math.Log(s.Exaggeration))
	unit := "thou"
	if s.Metric {
		unit = "mm"
	}
	b.metric.SetSelected(unit)
}
