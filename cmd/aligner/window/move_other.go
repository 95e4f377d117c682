package window

// This file is the form for what was really done, where that is not what the
// step said: flats and mm of each mount.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
)

// otherForm is a row a mount; hidden until it is asked for.
type otherForm struct {
	w     *Window
	box   *fyne.Container
	grid  *fyne.Container
	flats []*page.Entry
	slide []*page.Entry
}

func newOtherForm(w *Window) *otherForm {
	f := &otherForm{w: w, grid: container.NewVBox()}
	record := newPress(w, w.speaker.Say(words.MoveOtherRecord, nil), f.record)
	f.box = container.NewVBox(heading(w.speaker.Say(words.MoveOtherTitle, nil)), f.grid, record)
	f.box.Hide()
	return f
}

// otherShares are a mount's name, its flats and its slide.
var otherShares = shares{0.5, 0.25, 0.25}

// open shows the form, filled with what the step says.
func (f *otherForm) open() {
	step := f.w.mind.step()
	if step == nil {
		return
	}
	h, u := &f.w.boat.hull, f.w.units()
	f.grid.Objects, f.flats, f.slide = nil, nil, nil
	for i, m := range h.Mounts {
		flats, slide := f.entry(u.Plain(float64(step.NutFlats[i]), 2)), f.entry(u.Plain(step.SlideMM[i], 2))
		f.flats, f.slide = append(f.flats, flats), append(f.slide, slide)
		name := widget.NewLabel(f.w.speaker.Part(m.Name))
		name.Truncation = fyne.TextTruncateEllipsis
		f.grid.Add(container.New(otherShares, name, flats, slide))
	}
	f.box.Show()
	f.w.win.Canvas().Focus(f.flats[0])
	f.w.openPart(f.box)
}

// entry is one field: Enter records all, Escape gives up.
func (f *otherForm) entry(text string) *page.Entry {
	e := page.NewEntry(func(k *fyne.KeyEvent) bool {
		if k.Name == fyne.KeyEscape {
			f.close()
			f.w.win.Canvas().Focus(f.w.picture)
			return true
		}
		return false
	})
	e.SetText(text)
	e.OnSubmitted = func(string) { f.record() }
	return e
}

func (f *otherForm) close() { seen(f.box, false) }

// record takes the form as done.
func (f *otherForm) record() {
	h := &f.w.boat.hull
	n := len(h.Mounts)
	flats, slides := make([]float64, n), make([]float64, n)
	for i := range h.Mounts {
		var ok [2]bool
		flats[i], ok[0] = number(f.flats[i].Text)
		slides[i], ok[1] = number(f.slide[i].Text)
		for k, e := range [2]*page.Entry{f.flats[i], f.slide[i]} {
			if !ok[k] {
				f.w.tell(f.w.speaker.Say(words.NotANumber, words.Args{"Text": e.Text}))
				f.w.win.Canvas().Focus(e)
				return
			}
		}
	}
	f.close()
	f.w.win.Canvas().Focus(f.w.picture)
	f.w.do(&visit.RecordMove{Move: asMove(h, flats, slides)})
}
