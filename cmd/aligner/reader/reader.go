package reader

// This file is the page.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
)

// Line is one line: what it says, with a key before it or its source after it.
type Line struct{ Key, Text, From string }

// Part is lines under a heading; "": none.
type Part struct {
	Heading string
	Lines   []Line
}

// Reader is the page.
type Reader struct {
	desk   page.Desk
	title  string
	parts  []Part
	scroll *container.Scroll
}

// New is a page of parts.
func New(d page.Desk, title string, parts []Part) *Reader {
	return &Reader{desk: d, title: title, parts: parts}
}

// readWide is how wide lines are let run, in units of the screen: longer ones are
// tiring to read.
const readWide = 760

// Content is the title, a way back and the parts.
func (r *Reader) Content() fyne.CanvasObject {
	title := widget.NewLabel(r.title)
	title.TextStyle.Bold, title.SizeName = true, theme.SizeNameHeadingText
	title.Truncation = fyne.TextTruncateEllipsis
	back := widget.NewButton(r.desk.Speaker.Say(words.ReaderBack, nil), r.desk.Back)
	box := container.NewVBox()
	for _, p := range r.parts {
		if p.Heading != "" {
			h := widget.NewLabel(p.Heading)
			h.TextStyle.Bold, h.SizeName = true, theme.SizeNameSubHeadingText
			h.Wrapping = fyne.TextWrapWord
			box.Add(h)
		}
		for _, l := range p.Lines {
			box.Add(line(l))
		}
	}
	r.scroll = container.NewVScroll(container.New(column{}, box))
	return container.NewBorder(container.NewBorder(nil, nil, nil, back, title), nil, nil, nil, r.scroll)
}

// line is a key beside what it does, or a text with its source.
func line(l Line) fyne.CanvasObject {
	text := widget.NewLabel(l.Text)
	text.Wrapping = fyne.TextWrapWord
	if l.From != "" {
		from := widget.NewLabel(l.From)
		from.Wrapping, from.SizeName = fyne.TextWrapWord, theme.SizeNameCaptionText
		return container.New(tight{}, text, from)
	}
	if l.Key == "" {
		return text
	}
	key := widget.NewLabel(l.Key)
	key.TextStyle.Bold = true
	key.Wrapping = fyne.TextWrapWord
	return container.New(keyed{}, key, text)
}

// Focus is nothing: all keys come to the page.
func (r *Reader) Focus() fyne.Focusable { return nil }

// TypedKey scrolls, or leaves.
func (r *Reader) TypedKey(k *fyne.KeyEvent) {
	step := r.scroll.Size().Height
	switch k.Name {
	case fyne.KeyDown:
		r.by(60)
	case fyne.KeyUp:
		r.by(-60)
	case fyne.KeyPageDown, fyne.KeySpace:
		r.by(0.9 * step)
	case fyne.KeyPageUp:
		r.by(-0.9 * step)
	case fyne.KeyHome:
		r.scroll.ScrollToTop()
	case fyne.KeyEnd:
		r.scroll.ScrollToBottom()
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeyF1:
		r.desk.Back()
	}
}

func (r *Reader) by(dy float32) {
	most := max(0, r.scroll.Content.MinSize().Height-r.scroll.Size().Height)
	r.scroll.ScrollToOffset(fyne.NewPos(0, min(max(0, r.scroll.Offset.Y+dy), most)))
}

// TypedRune does nothing.
func (r *Reader) TypedRune(rune) {}

// Close has nothing to give back.
func (r *Reader) Close() {}
