package window

// This file is hands on keyboard and mouse: what they press goes to what has the
// keyboard, fields are reached by Tab, and what they did can be done again on a
// real screen.

import (
	"testing"

	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
)

// hands are on keyboard and mouse, and remember what they did.
type hands struct {
	t    *testing.T
	w    *Window
	keys int
	did  []deed

	mouse bool // findings are pressed, not typed
}

// deed is one thing hands did: keys pressed, text typed, a place pressed, or a
// while waited for.
type deed struct {
	keys []string // as X names them
	text string
	at   *fyne.Position
	wait bool
}

// xNames are the keys X calls otherwise than the window's library.
var xNames = map[fyne.KeyName]string{fyne.KeyBackspace: "BackSpace", fyne.KeyPageDown: "Next", fyne.KeyPageUp: "Prior"}

func (h *hands) pressed(name string) {
	if n := len(h.did); n > 0 && h.did[n-1].keys != nil {
		h.did[n-1].keys = append(h.did[n-1].keys, name)
		return
	}
	h.did = append(h.did, deed{keys: []string{name}})
}

// click presses a button with the mouse.
func (h *hands) click(b *page.Button) {
	h.t.Helper()
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(b).AddXY(b.Size().Width/2, b.Size().Height/2)
	h.did = append(h.did, deed{at: &at})
	b.OnTapped()
}

func (h *hands) key(names ...fyne.KeyName) {
	h.t.Helper()
	for _, name := range names {
		h.keys++
		if x, ok := xNames[name]; ok {
			h.pressed(x)
		} else {
			h.pressed(string(name))
		}
		k := &fyne.KeyEvent{Name: name}
		if f := h.w.win.Canvas().Focused(); f != nil {
			f.TypedKey(k)
		} else {
			h.w.win.Canvas().OnTypedKey()(k)
		}
	}
}

func (h *hands) letters(text string) {
	h.t.Helper()
	h.did = append(h.did, deed{text: text})
	for _, r := range text {
		h.keys++
		f := h.w.win.Canvas().Focused()
		if f == nil {
			h.t.Fatalf("nothing has the keyboard for %q", text)
		}
		f.TypedRune(r)
	}
}

// tabTo presses Tab until the wanted thing has the keyboard.
func (h *hands) tabTo(what string, wanted fyne.Focusable) {
	h.t.Helper()
	for range 150 {
		if h.w.win.Canvas().Focused() == wanted {
			return
		}
		h.keys++
		h.pressed("Tab")
		h.w.win.Canvas().FocusNext()
	}
	h.t.Fatalf("%s cannot be reached by Tab", what)
}

// fill types into a field what it does not hold yet.
func (h *hands) fill(what string, f *field, text string) {
	h.t.Helper()
	if f.Text == text {
		return
	}
	h.tabTo(what, f)
	h.all(f)
	if text == "" {
		h.key(fyne.KeyDelete)
	}
	h.letters(text)
	h.key(fyne.KeyReturn)
}

// all selects what a line holds.
func (h *hands) all(f fyne.Shortcutable) {
	h.pressed("ctrl+a")
	f.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// choose goes through a choice until it says so.
func (h *hands) choose(what string, c *page.Choice, option string) {
	h.t.Helper()
	for range len(c.Options) + 1 {
		if c.Selected == option {
			return
		}
		h.tabTo(what, c)
		h.key(fyne.KeyRight)
	}
	h.t.Fatalf("%s: no %q among %q", what, option, c.Options)
}

func (h *hands) say(id words.ID) string { return h.w.speaker.Say(id, nil) }

// wordOf is a choice's word, or what is not said.
func (h *hands) wordOf(kind, word string) string {
	if word == "" {
		return h.say(words.BeginUnsaid)
	}
	return h.say(words.Of(kind, word))
}
