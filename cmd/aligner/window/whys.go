package window

// This file turns to the page of why.

import (
	"fyne.io/fyne/v2"

	"aligner/cmd/aligner/page"
	"aligner/cmd/aligner/whys"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
)

// whysKey turns to the page of why wherever the keyboard is.
const whysKey = fyne.KeyF11

// seeWhys turns to the page of why: the boat shown, beside one whose gearbox stands
// the other way about.
func (w *Window) seeWhys() {
	d := w.history.Now()
	other := "Avocet"
	if d.Hull.Layout == hulls.VDrive {
		other = "Kittiwake"
	}
	beside, err := builtin.Find(other)
	if err != nil {
		w.tell(w.told(err))
		return
	}
	w.turnTo(func(desk page.Desk) page.Page { return whys.New(desk, d.Hull, beside, d.Visit.State.Afloat()) })
}
