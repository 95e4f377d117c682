package page

// This file is what window and page know of each other.

import (
	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
)

// Desk is what the window lends a page.
type Desk struct {
	Speaker words.Speaker
	Looks   drawn.Looks
	Window  fyne.Window // for focus, menus and file dialogs
	Back    func()      // leaves the page
	// Key takes a key that means the same everywhere (F1, Escape) and reports
	// whether it was one.
	Key func(*fyne.KeyEvent) bool
	// Aside does work off the window's thread, and rest on it after; nil: both at
	// once.
	Aside func(work, rest func())
}

// Page fills the window until Back.
type Page interface {
	// Content is what is shown; it is asked for once.
	Content() fyne.CanvasObject
	// Focus takes the keyboard first; nil: nothing does, and keys come to Key.
	Focus() fyne.Focusable
	// TypedKey and TypedRune take keys nothing in the page has taken.
	TypedKey(*fyne.KeyEvent)
	TypedRune(rune)
	// Close gives back what the page holds (pictures, goroutines).
	Close()
}

// WithPast is a page with a past of its own, to which the shortcuts that undo and
// redo belong while it stands.
type WithPast interface {
	Page
	Undo()
	Redo()
}
