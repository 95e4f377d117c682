package form

// This file is the first questions about a new boat, and the nearest one there is.

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/logbook"
	"aligner/report/say"
)

// questions are the answers so far.
type questions struct {
	name   string
	wanted fields.Wanted
}

func firstQuestions() questions {
	return questions{wanted: fields.Wanted{Layout: hulls.InLine, Mounts: 4, Bearings: 1}}
}

// builtIn are the boats to begin from. The bench is none.
func builtIn() (all []hulls.Hull) {
	for _, name := range assets.HullNames() {
		data, _ := assets.Hull(name)
		if h, err := hulls.Parse(data, name); err == nil && name != "Bench" {
			all = append(all, h)
		}
	}
	return all
}

// askFirst is the sheet of the questions.
func (p *Page) askFirst() fyne.CanvasObject {
	q := &p.d.ask
	known := builtIn()
	proposal := widget.NewLabel("")
	proposal.Wrapping = fyne.TextWrapWord
	var start *page.Button
	propose := func() {
		base := known[fields.Nearest(q.wanted, known)]
		proposal.SetText(p.say(words.FormNearest, words.Args{"Name": base.Name}))
		start.SetText(p.say(words.FormStart, words.Args{"Name": base.Name}))
	}
	begin := func() { p.beginFrom(known[fields.Nearest(q.wanted, known)]) }
	start = page.NewButton(p.keys, "", begin)
	start.Importance = widget.HighImportance

	name := page.NewEntry(p.keys)
	name.SetText(q.name)
	name.OnChanged = func(s string) { q.name = s }
	name.OnSubmitted = func(string) { begin() }
	p.first = name

	table := p.askTable(name, propose)
	propose()
	title := widget.NewLabel(p.say(words.FormBegin, nil))
	title.TextStyle.Bold = true
	buttons := container.NewVBox(start)
	p.addDrafts(buttons)
	buttons.Add(p.button(words.PageBack, p.desk.Back))
	all := container.NewVBox(title, table, proposal, buttons, p.told)
	return container.NewVScroll(container.New(narrow{}, all))
}

// askTable is the questions, a line each; changed is told of every answer.
func (p *Page) askTable(name fyne.CanvasObject, changed func()) fyne.CanvasObject {
	q := &p.d.ask
	label := func(id words.ID) fyne.CanvasObject { return widget.NewLabel(p.say(id, nil)) }
	one := func(now int, options []string, chosen func(i int)) fyne.CanvasObject {
		s := &asked{keys: p.keys}
		s.Options = options
		s.ExtendBaseWidget(s)
		s.SetSelectedIndex(now)
		s.OnChanged = func(string) {
			chosen(s.SelectedIndex())
			changed()
		}
		return s
	}
	choice := func(c string) string { return say.Choice(p.desk.Speaker, c) }
	layouts := []hulls.Layout{hulls.InLine, hulls.DownAngle, hulls.VDrive}
	at := 0
	for i, l := range layouts {
		if l == q.wanted.Layout {
			at = i
		}
	}
	solid := 0
	if q.wanted.Solid {
		solid = 1
	}
	return container.New(layout.NewFormLayout(),
		label(words.FormName), name,
		label(words.FormLayout), one(at, []string{choice("in-line"), choice("down-angle"), choice("v-drive")}, func(i int) { q.wanted.Layout = layouts[i] }),
		label(words.FormBearings), one(q.wanted.Bearings-1, []string{"1", "2", "3"}, func(i int) { q.wanted.Bearings = i + 1 }),
		label(words.FormMounts), one(q.wanted.Mounts/2-2, []string{"4", "6"}, func(i int) { q.wanted.Mounts = 4 + 2*i }),
		label(words.FormFeet), one(solid, []string{choice("rubber"), choice("solid")}, func(i int) { q.wanted.Solid = i == 1 }))
}

// beginFrom puts the new boat into the form.
func (p *Page) beginFrom(base hulls.Hull) {
	name := p.d.ask.name
	if name == "" {
		name = p.say(words.FormTitle, nil)
	}
	h, err := fields.NewFrom(base, name, p.d.ask.wanted)
	if err == nil {
		_, err = fields.Set(h, "/name", fields.Value{Text: name})
	}
	if err != nil {
		p.tell(p.desk.Speaker.Retell(err.Error()))
		return
	}
	p.d.begin(h, base)
	p.keepDraft()
	p.build()
	p.focus()
}

// mostDrafts is how many unfinished boats are offered, the latest first.
const mostDrafts = 5

// addDrafts offers to go on with boats that were not kept.
func (p *Page) addDrafts(buttons *fyne.Container) {
	if p.do.Book == nil {
		return
	}
	for i, id := range p.do.Book.Drafts() {
		h, ok, err := p.do.Book.Draft(id)
		if i == mostDrafts || err != nil || !ok || len(h.Mounts) == 0 {
			continue
		}
		buttons.Add(page.NewButton(p.keys, p.say(words.FormGoOn, words.Args{"Name": h.Name}), func() { p.goOnWith(id, h) }))
	}
}

// goOnWith puts a draft into the form.
func (p *Page) goOnWith(id logbook.DraftID, h hulls.Hull) {
	base := h
	if kept, err := p.do.Book.Hull(id.Hull()); err == nil {
		base = kept.Hull
	} else if len(hulls.Validate(h).Refusals) > 0 { // something to draw meanwhile
		known := builtIn()
		base = known[fields.Nearest(fields.Wanted{Layout: h.Layout, Mounts: len(h.Mounts), Bearings: len(h.Bearings)}, known)]
	}
	p.d.begin(h, base)
	p.d.id, p.d.file = id.Hull(), id
	p.build()
	p.focus()
}

// narrow keeps the questions in the middle, no wider than they can be read.
type narrow struct{}

const mostQuestions = 620

func (narrow) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(300, o[0].MinSize().Height)
}

func (narrow) Layout(o []fyne.CanvasObject, s fyne.Size) {
	w := min(s.Width-20, mostQuestions)
	o[0].Resize(fyne.NewSize(w, s.Height))
	o[0].Move(fyne.NewPos((s.Width-w)/2, 12))
}
