package window

// This file is where a mechanic is chosen or entered, and where his leaves and
// rule are kept for every visit to come.

import (
	"reflect"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
)

// mechanicForm is the names there are and a line for a new one.
type mechanicForm struct {
	w     *Window
	names []string
	who   *page.Choice
	other *field
	leave func()
}

// askMechanic shows the form.
func (w *Window) askMechanic() {
	f := &mechanicForm{w: w, names: append([]string{""}, w.mechanics()...)}
	say := func(id words.ID) string { return w.speaker.Say(id, nil) }
	options := append([]string{say(words.MechanicNobody)}, f.names[1:]...)
	f.who = newChoice(w, options, func(i int) { f.use(f.names[i]) })
	for i, name := range f.names {
		if name == w.who.name {
			f.who.Put(i)
		}
	}
	f.other = newField(w, func(string) {})
	f.other.OnSubmitted = func(text string) { f.use(strings.TrimSpace(text)) }
	text := wrapped(say(words.MechanicWhat))
	if w.ownBook() == nil {
		text.SetText(say(words.MechanicNoBook))
		f.other.Disable()
	}
	box := container.NewVBox(text, captioned(say(words.MechanicChoose), f.who), captioned(say(words.MechanicNew), f.other))
	window := dialog.NewCustom(say(words.MechanicTitle), say(words.PageBack), box, w.win)
	f.leave = window.Hide
	w.over = window.Hide
	window.SetOnClosed(func() { w.over = nil })
	size := w.win.Canvas().Size()
	window.Resize(fyne.NewSize(min(size.Width*0.85, 560), min(size.Height*0.85, 320)))
	window.Show()
	w.win.Canvas().Focus(f.who)
}

// use takes a mechanic's settings and leaves the form.
func (f *mechanicForm) use(name string) {
	f.leave()
	if f.other.Text != "" && name == "" {
		return
	}
	f.w.useMechanic(name)
	f.w.tell(f.w.speaker.Say(words.MechanicNow, words.Args{"Name": f.w.mechanicName()}))
}

// ownForm keeps the leaves and the rule of the visit for every visit to come.
type ownForm struct {
	w    *Window
	box  *fyne.Container
	take *page.Button
	told *widget.Label
}

func newOwnForm(w *Window) *ownForm {
	f := &ownForm{w: w, told: small("")}
	f.take = newPress(w, w.speaker.Say(words.MechanicTake, nil), w.takeAsOwn)
	f.box = container.NewVBox(f.take, f.told)
	return f
}

func (f *ownForm) show(d *visit.Document) {
	same := reflect.DeepEqual(d.Visit.Leaves, f.w.who.leaves) && d.Visit.Rule == f.w.who.rule
	showIf(f.take, !same)
	showIf(f.told, same && (len(d.Visit.Leaves.Leaves) > 0 || d.Visit.Rule != visit.Rule{}))
	f.told.SetText(f.w.speaker.Say(words.MechanicTaken, words.Args{"Name": f.w.mechanicName()}))
}
