package window

// This file is the views that can be looked at, each with its key and its line
// in the menu, and whether the picture turns to them or jumps.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/hulls/visit"
	"aligner/scene"
)

// namedViews are the views every boat has.
var namedViews = []struct {
	view string
	id   words.ID
	key  rune
}{
	{scene.ViewWhole, words.ViewWhole, 'w'},
	{scene.ViewFromPort, words.ViewFromPort, 'p'},
	{scene.ViewFromStarboard, words.ViewFromStarboard, 't'},
	{scene.ViewFromAft, words.ViewFromAft, 'b'},
	{scene.ViewFromAhead, words.ViewFromAhead, 'h'},
	{scene.ViewFromAbove, words.ViewFromAbove, 'v'},
	{scene.ViewEngine, words.ViewEngine, 'e'},
	{scene.ViewCoupling, words.ViewCoupling, 'c'},
}

// Keys of the views that a boat has several of: the chosen mount, the next
// bearing forward; and of jumping.
const (
	mountViewKey   = 'm'
	bearingViewKey = 's'
	noMotionKey    = 'x'
)

// look turns to a view; without motion it jumps.
func (w *Window) look(view string) {
	w.picture.Fit(view, !w.settings.NoMotion && fyne.CurrentApp().Settings().ShowAnimations())
}

// lookByKey does what a view's key asks for.
func (w *Window) lookByKey(key rune) {
	switch key {
	case mountViewKey:
		w.look(w.boat.hull.Mounts[w.chosen].Name)
	case bearingViewKey:
		w.look(w.nextBearing())
	case noMotionKey:
		w.change(func(s *Settings) { s.NoMotion = !s.NoMotion })
	}
	for _, v := range namedViews {
		if v.key == key {
			w.look(v.view)
		}
	}
}

// bearings are the views of the bearings, aft first; the first is the strut's.
func (w *Window) bearings() []string {
	b := w.boat.hull.Bearings
	order := make([]int, 0, len(b))
	for i := range b {
		at := len(order)
		for ; at > 0 && b[order[at-1]].AtMM > b[i].AtMM; at-- {
		}
		order = append(order[:at], append([]int{i}, order[at:]...)...)
	}
	names := make([]string, len(b))
	for i, k := range order {
		names[i] = b[k].Name
	}
	if len(names) > 0 {
		names[0] = scene.ViewStrut
	}
	return names
}

// nextBearing is the one forward of the bearing looked at, or the aftmost.
func (w *Window) nextBearing() string {
	names := w.bearings()
	for i, name := range names {
		if name == w.picture.Fitted() {
			return names[(i+1)%len(names)]
		}
	}
	return scene.ViewStrut
}

// viewMenu lists every view with its key.
func (w *Window) viewMenu() *fyne.Menu {
	line := func(name string, key rune, do func()) *fyne.MenuItem {
		return fyne.NewMenuItem(w.speaker.Say(words.WithKey, words.Args{"What": name, "Key": string(key)}), do)
	}
	menu := fyne.NewMenu("")
	for _, v := range namedViews {
		menu.Items = append(menu.Items, line(w.speaker.Say(v.id, nil), v.key, func() { w.look(v.view) }))
	}
	for i, name := range w.bearings() {
		text := w.speaker.Say(words.ViewStrut, nil)
		if i > 0 {
			text = w.speaker.Say(words.PartBearing, words.Args{"Name": w.speaker.Part(name)})
		}
		menu.Items = append(menu.Items, line(text, bearingViewKey, func() { w.look(name) }))
	}
	for i, m := range w.boat.hull.Mounts {
		text := w.speaker.Say(words.PartMount, words.Args{"Name": w.speaker.Part(m.Name)})
		menu.Items = append(menu.Items, fyne.NewMenuItem(w.speaker.Say(words.WithTwoKeys,
			words.Args{"What": text, "First": i + 1, "Key": string(mountViewKey)}), func() { w.look(m.Name) }))
	}
	still := line(w.speaker.Say(words.NoMotion, nil), noMotionKey, func() { w.lookByKey(noMotionKey) })
	still.Checked = w.settings.NoMotion
	menu.Items = append(menu.Items, fyne.NewMenuItemSeparator(), still)
	return menu
}

// showViews drops the menu from the button that asks for it, upwards.
func (w *Window) showViews(from fyne.CanvasObject) {
	menu := widget.NewPopUpMenu(w.viewMenu(), w.win.Canvas())
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(from)
	menu.ShowAtPosition(at.SubtractXY(0, menu.MinSize().Height))
}

// showMore drops the menu of what is seldom wanted: colours, text, language.
func (w *Window) showMore(from fyne.CanvasObject) {
	item := func(id words.ID, do func()) *fyne.MenuItem { return fyne.NewMenuItem(w.speaker.Say(id, nil), do) }
	menu := fyne.NewMenu("",
		fyne.NewMenuItem(w.speaker.Say(words.WithKey, words.Args{"What": w.speaker.Say(words.BoatsTitle, nil), "Key": string(boatsFunctionKey)}), w.allBoats),
		fyne.NewMenuItem(w.speaker.Say(words.WithKey, words.Args{"What": w.speaker.Say(words.PastMenu, nil), "Key": string(pastKey)}), w.seePast),
		fyne.NewMenuItem(w.speaker.Say(words.WithKey, words.Args{"What": w.speaker.Say(words.TroubleTitle, nil), "Key": string(troublesKey)}), w.seeTroubles),
		fyne.NewMenuItem(w.speaker.Say(words.WithKey, words.Args{"What": w.speaker.Say(words.WhyTitle, nil), "Key": string(whysKey)}), w.seeWhys),
		fyne.NewMenuItem(w.speaker.Say(words.WithKey, words.Args{"What": w.speaker.Say(words.CounterTitle, nil), "Key": keyName(w.speaker, "Ctrl+"+string(counterKey))}), w.seeCounter),
		fyne.NewMenuItem(w.speaker.Say(words.WithKey, words.Args{"What": w.speaker.Say(words.LessonTitle, nil), "Key": keyName(w.speaker, "Ctrl+"+string(lessonsKey))}), w.seeLessons),
		fyne.NewMenuItem(w.speaker.Say(words.WithKey, words.Args{"What": w.speaker.Say(words.PracticeTitle, nil), "Key": keyName(w.speaker, "Ctrl+"+string(practiceKey))}), w.seePractice),
		item(words.HelpButton, w.showHelp),
		item(words.LookBringPage, w.showBring),
		item(words.CopyText, func() { w.copyResults(false) }),
		item(words.CopyRows, func() { w.copyResults(true) }),
		fyne.NewMenuItemSeparator(),
		item(words.FormMenuNew, w.newBoat),
		item(words.FormMenuEdit, w.measureAgain),
		item(words.BackToDrawn, func() { w.do(&visit.BackToDrawn{}) }),
		fyne.NewMenuItemSeparator(),
		w.mechanicItem(),
		item(words.LightDark, func() { w.change(func(s *Settings) { s.Dark = !s.Dark }) }),
		item(words.LargerText, func() { w.change(larger) }),
		fyne.NewMenuItemSeparator(),
		item(words.ProblemMenu, w.askProblem),
		fyne.NewMenuItemSeparator())
	for _, tag := range words.Languages() {
		line := fyne.NewMenuItem(words.In(tag).Say(words.LanguageName, nil), func() { w.speak(tag) })
		line.Checked = tag == w.settings.Language
		menu.Items = append(menu.Items, line)
	}
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(from)
	widget.NewPopUpMenu(menu, w.win.Canvas()).ShowAtPosition(at.AddXY(0, from.Size().Height))
}
