package boats

// This file carries boats between logbooks: one out to a zip file with all her
// visits and photos, one in from such a file, after saying what that changes.

import (
	"context"
	"os"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/widget"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls/logbook"
	"aligner/report/say"
)

// takeOut asks for a place and writes the boat's zip file there.
func (b *boat) takeOut() {
	p, line := b.p, b.line
	d := dialog.NewFileSave(func(to fyne.URIWriteCloser, err error) {
		if err != nil {
			p.fail(err)
		}
		if to == nil {
			return // thought better of it
		}
		go func() {
			err := p.book.Export(context.Background(), line.ID, to)
			if closed := to.Close(); err == nil {
				err = closed
			}
			fyne.Do(func() {
				if err != nil {
					p.fail(err)
					return
				}
				p.tell(p.say(words.LogbookExported, words.Args{"Name": line.Name, "File": to.URI().Path()}))
			})
		}()
	}, p.desk.Window)
	d.SetFileName(strings.ToLower(strings.ReplaceAll(line.Name, " ", "-")) + ".zip")
	d.Show()
}

// takeIn asks for a zip file.
func (p *Page) takeIn() {
	d := dialog.NewFileOpen(func(from fyne.URIReadCloser, err error) {
		if err != nil {
			p.fail(err)
		}
		if from == nil {
			return
		}
		path := from.URI().Path()
		from.Close()
		p.TakeIn(path)
	}, p.desk.Window)
	d.SetFilter(storage.NewExtensionFileFilter([]string{".zip"}))
	d.Show()
}

// TakeIn says what taking a boat in from a zip file would change, and does it
// when told to.
func (p *Page) TakeIn(path string) {
	f, err := os.Open(path)
	if err != nil {
		p.fail(err)
		return
	}
	info, err := f.Stat()
	if err != nil {
		p.fail(err)
		f.Close()
		return
	}
	bundle, err := logbook.ReadBundle(f, info.Size(), path)
	if err != nil {
		p.fail(err)
		f.Close()
		return
	}
	changes, err := p.book.Compare(context.Background(), bundle)
	if err != nil {
		p.fail(err)
		f.Close()
		return
	}
	p.ask(bundle, changes, func() { f.Close() })
}

// ask shows the changes, with what can be done about them.
func (p *Page) ask(bundle *logbook.Bundle, c logbook.Changes, done func()) {
	text := widget.NewLabel(strings.Join(append(say.TakenIn(p.desk.Speaker, &c), say.Alike(p.desk.Speaker, &c)...), "\n"))
	text.Wrapping = fyne.TextWrapWord
	ours, theirs := c.Any(logbook.KeepOurs), c.Any(logbook.TakeTheirs)
	title := p.say(words.BoatsTakeInTitle, words.Args{"Name": c.HullName})
	if !theirs {
		told := dialog.NewCustom(title, p.say(words.PageBack, nil), text, p.desk.Window)
		told.SetOnClosed(done)
		told.Resize(dialogSize)
		told.Show()
		return
	}
	var d *dialog.CustomDialog
	take := func(id words.ID, choice logbook.Choice) fyne.CanvasObject {
		return widget.NewButton(p.say(id, nil), func() {
			d.Hide()
			p.taken(bundle, choice)
		})
	}
	d = dialog.NewCustomWithoutButtons(title, text, p.desk.Window)
	buttons := []fyne.CanvasObject{widget.NewButton(p.say(words.PageBack, nil), func() { d.Hide() })}
	if ours {
		buttons = append(buttons, take(words.BoatsTakeNew, logbook.KeepOurs))
	}
	if theirs && c.Differs() {
		buttons = append(buttons, take(words.BoatsTakeAll, logbook.TakeTheirs))
	}
	d.SetButtons(buttons)
	d.SetOnClosed(done)
	d.Resize(dialogSize)
	d.Show()
}

var dialogSize = fyne.NewSize(520, 320)

func (p *Page) taken(bundle *logbook.Bundle, choice logbook.Choice) {
	c, err := p.book.Import(context.Background(), bundle, choice)
	if err != nil {
		p.fail(err)
		return
	}
	p.words.SetText(c.HullName)
	p.again()
	p.tell(p.say(words.LogbookTaken, words.Args{"Number": c.ID}))
}

// builtIn offers the boats that come with the program.
func (p *Page) builtIn() fyne.CanvasObject {
	choice := widget.NewSelect(assets.HullNames(), func(name string) { p.do.Hull(name) })
	choice.PlaceHolder = p.say(words.BoatsBuiltIn, nil)
	return choice
}
