package window

// This file is the pages that fill the window in place of picture and sheet: one
// at a time, left by Escape.

import (
	"fyne.io/fyne/v2"

	"aligner/cmd/aligner/page"
)

// opener makes a page in the language and looks of the moment.
type opener func(page.Desk) page.Page

// pageKeys turn to a page wherever the keyboard is, from another page too.
var pageKeys map[fyne.KeyName]func(*Window)

func init() { // a variable would refer to itself by way of keyEverywhere
	pageKeys = map[fyne.KeyName]func(*Window){
		boatsFunctionKey: (*Window).allBoats,
		pastKey:          (*Window).seePast,
		troublesKey:      (*Window).seeTroubles,
		whysKey:          (*Window).seeWhys,
	}
}

// turnTo shows a page. It is made anew when language or looks change while it
// stands.
func (w *Window) turnTo(open opener) {
	w.leavePage()
	w.openPage = open
	w.page = open(w.desk())
	w.win.SetContent(w.page.Content())
	if f := w.page.Focus(); f != nil {
		w.win.Canvas().Focus(f)
	} else {
		w.win.Canvas().Unfocus()
	}
}

// back leaves the page for the boat.
func (w *Window) back() {
	if w.page == nil {
		return
	}
	w.leavePage()
	w.win.SetContent(w.whole)
	w.update()
	w.win.Canvas().Focus(w.picture)
}

func (w *Window) leavePage() {
	if w.page != nil {
		w.page.Close()
		w.page, w.openPage = nil, nil
	}
}

// desk is what a page is lent.
func (w *Window) desk() page.Desk {
	return page.Desk{Speaker: w.speaker, Looks: w.looks(), Window: w.win, Back: w.back, Key: w.keyEverywhere, Aside: func(work, rest func()) { w.mind.aside(work, rest) }}
}

// keyEverywhere takes the keys that mean the same wherever the keyboard is.
func (w *Window) keyEverywhere(k *fyne.KeyEvent) bool {
	if w.over != nil {
		if k.Name == fyne.KeyEscape {
			w.over()
		}
		return k.Name == fyne.KeyEscape
	}
	if k.Name == fyne.KeyEscape && w.page != nil {
		w.back()
		return true
	}
	if turn, ok := pageKeys[k.Name]; ok {
		turn(w)
		return true
	}
	if w.page != nil {
		return false
	}
	if k.Name == fyne.KeyF1 {
		w.showHelp()
		return true
	}
	if to, ok := stageFunctionKeys[k.Name]; ok {
		w.enter(to)
		return true
	}
	if k.Name == fyne.KeyEscape && w.win.Canvas().Focused() != fyne.Focusable(w.picture) {
		w.win.Canvas().Focus(w.picture)
		return true
	}
	switch k.Name {
	case fyne.KeyPageDown:
		w.scroll(1)
	case fyne.KeyPageUp:
		w.scroll(-1)
	default:
		return false
	}
	return true
}

// keysUnfocused hands keys that no widget has to the page that stands, or to the
// picture.
func (w *Window) keysUnfocused() {
	c := w.win.Canvas()
	c.SetOnTypedKey(func(k *fyne.KeyEvent) {
		switch {
		case w.keyEverywhere(k):
		case w.page != nil:
			w.page.TypedKey(k)
		default:
			w.PictureKey(k)
		}
	})
	c.SetOnTypedRune(func(r rune) {
		if w.page != nil {
			w.page.TypedRune(r)
		} else {
			w.PictureRune(r)
		}
	})
}
