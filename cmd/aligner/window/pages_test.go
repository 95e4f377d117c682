package window

// This file turns to a page and back by keys, and changes looks while it stands.

import (
	"testing"

	"fyne.io/fyne/v2"

	"aligner/cmd/aligner/page"
)

// leaf is the least page: a line to type into.
type leaf struct {
	entry  *page.Entry
	closed *int
	dark   bool
	keys   []fyne.KeyName
}

func (p *leaf) Content() fyne.CanvasObject { return p.entry }
func (p *leaf) Focus() fyne.Focusable      { return p.entry }
func (p *leaf) TypedKey(k *fyne.KeyEvent)  { p.keys = append(p.keys, k.Name) }
func (p *leaf) TypedRune(rune)             {}
func (p *leaf) Close()                     { *p.closed++ }

func TestAPageIsMadeAnewInOtherLooksAndLeftByEscape(t *testing.T) {
	w := opened(t, "Kittiwake")
	made, closed := 0, 0
	var last *leaf
	w.turnTo(func(d page.Desk) page.Page {
		made++
		last = &leaf{entry: page.NewEntry(d.Key), closed: &closed, dark: d.Looks.Dark}
		return last
	})
	if w.win.Canvas().Focused() != fyne.Focusable(last.entry) {
		t.Fatal("the page has not the keyboard")
	}
	dark := w.settings.Dark
	w.change(func(s *Settings) { s.Dark = !s.Dark })
	if made != 2 || closed != 1 || last.dark == dark {
		t.Errorf("made %d, closed %d, dark %v", made, closed, last.dark)
	}
	w.speak("de")
	if made != 3 || closed != 2 || w.win.Content() != fyne.CanvasObject(last.entry) {
		t.Errorf("made %d, closed %d in another language", made, closed)
	}
	w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if closed != 3 || w.page != nil || w.win.Content() != w.whole || w.win.Canvas().Focused() != fyne.Focusable(w.picture) {
		t.Errorf("closed %d, page %v", closed, w.page)
	}
}
