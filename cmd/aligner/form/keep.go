package form

// This file is the sheet that keeps the boat: in the logbook, and in a file.

import (
	"os"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/logbook"
)

// keep puts the boat into the logbook, and into a file.
func (p *Page) keep(box *fyne.Container) fyne.Focusable {
	if err := p.report.Err(); err != nil {
		f := p.report.Refusals[0]
		text(box, p.say(words.FormNotYet, words.Args{"Fault": p.placed(&f)}), true)
		return nil
	}
	book := p.button(words.FormKeepBook, p.keepInBook)
	box.Add(book)
	file := page.NewEntry(p.keys)
	file.SetPlaceHolder(p.h.Name + ".hull.json")
	write := func() { p.writeFile(file.Text) }
	file.OnSubmitted = func(string) { write() }
	box.Add(container.NewBorder(nil, nil, widget.NewLabel(p.say(words.FormFileName, nil)), p.button(words.FormKeepFile, write), file))
	if p.do.Work != nil {
		box.Add(p.button(words.FormOnScreen, func() { p.do.Work(p.h) }))
	}
	if p.d.id != 0 {
		box.Add(p.button(words.FormKeepCopy, func() {
			p.d.id = 0
			p.edit(fields.Replace{Hull: fields.Copy(p.h, p.h.Name)})
			p.keepInBook()
		}))
	}
	return book
}

func (p *Page) keepInBook() {
	if p.do.Book == nil {
		p.tell(p.say(words.FormNoBook, words.Args{"Why": "-"}))
		return
	}
	err := error(nil)
	if p.d.id == 0 {
		p.d.id, err = p.do.Book.NewHull(p.h)
	} else {
		err = p.do.Book.SaveHull(p.d.id, p.h)
	}
	if err != nil {
		p.tell(p.say(words.FormNoBook, words.Args{"Why": p.desk.Speaker.Retell(err.Error())}))
		return
	}
	_ = p.do.Book.DropDraft(p.d.file)
	p.d.file = logbook.DraftOf(p.d.id)
	_ = p.do.Book.DropDraft(p.d.file) // kept now; one left behind is offered again, no more
	told := p.say(words.FormKeptBook, words.Args{"Name": p.h.Name, "Number": p.d.id})
	if p.do.Kept != nil {
		if err := p.do.Kept(p.h); err != nil {
			told += " " + p.say(words.FormNotInVisit, words.Args{"Why": p.desk.Speaker.Retell(err.Error())})
		}
	}
	p.fill()
	p.focus()
	p.tell(told)
}

func (p *Page) writeFile(path string) {
	if path == "" {
		path = p.h.Name + ".hull.json"
	}
	if _, err := os.Lstat(path); err == nil {
		p.tell(p.say(words.FormFileThere, words.Args{"File": path}))
		return
	}
	if err := os.WriteFile(path, hulls.Encode(p.h), 0o644); err != nil {
		p.tell(err.Error())
		return
	}
	p.tell(p.say(words.FormKeptFile, words.Args{"Name": p.h.Name, "File": path}))
}
