package lessons

// This file is the page: which lesson, which step, and the keys.

import (
	"os"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/widget"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
	"aligner/report/lesson"
	"aligner/report/say"
	"aligner/scene"
)

// Page is the page of lessons.
type Page struct {
	desk    page.Desk
	find    func(name string) (hulls.Hull, error) // of a lesson file
	lessons []lesson.Lesson
	at      int // which
	step    int // which thing to watch; after the last, the question
	show    *shown
	own     own // what the learner has done to the boat

	list          *page.List
	measured      *widget.Label // what a title's height is measured by
	picture       *drawn.Picture
	faces         *drawn.Faces
	text          *widget.Label
	answer        *page.Entry
	choices       *fyne.Container
	result        *widget.Label
	further, back *page.Button
	done          *widget.Label // what the learner has done, or may do
	undo          *page.Button
	side          *fyne.Container
	grow          *page.Grow
	large         *container.ThemeOverride // of the side
	scroll        *container.Scroll
	all           fyne.CanvasObject
}

// New makes the page of the built-in lessons; find finds the hull a lesson file names.
func New(desk page.Desk, find func(name string) (hulls.Hull, error)) *Page {
	p := &Page{desk: desk, find: find, faces: drawn.NewFaces(), text: widget.NewLabel(""), result: widget.NewLabel(""), choices: container.NewVBox()}
	for _, name := range assets.LessonNames() {
		data, _ := assets.Lesson(name)
		if l, r := lesson.Check(data, name, builtin.Find); r.Err() == nil {
			p.lessons = append(p.lessons, l)
		}
	}
	p.text.Wrapping, p.result.Wrapping = fyne.TextWrapWord, fyne.TextWrapWord
	p.text.SizeName, p.result.SizeName = textSize, textSize
	p.result.TextStyle.Bold = true
	p.picture = drawn.NewPicture(p)
	p.own.frames.Update = p.showOwn
	st := &p.picture.State
	st.Show = scene.ShowHull | scene.ShowHandles | scene.ShowNames | scene.ShowDirections | scene.ShowTrueLine | scene.ShowBed
	st.Words, st.Dark = say.Marks(desk.Speaker), desk.Looks.Dark
	p.picture.SetTextSize(desk.Looks.TextSize)
	p.faces.Words = say.Faces(desk.Speaker)
	p.list = page.NewList(p.keys, func() int { return len(p.lessons) }, newLine, p.line, func(i int) { p.choose(i) })
	p.answer = page.NewEntry(p.desk.Key)
	p.answer.OnSubmitted = p.answered
	p.further = page.NewButton(p.keys, p.say(words.LessonFurther, nil), func() { p.goOn(1) })
	p.back = page.NewButton(p.keys, p.say(words.LessonBack, nil), func() { p.goOn(-1) })
	p.done = widget.NewLabel("")
	p.done.Wrapping = fyne.TextWrapWord
	p.undo = page.NewButton(p.keys, p.say(words.LessonUndo, nil), p.asInLesson)
	p.lay()
	p.list.Select(0)
	return p
}

func (p *Page) say(id words.ID, args words.Args) string { return p.desk.Speaker.Say(id, args) }

// language is the reader's.
func (p *Page) language() string { return p.say(words.LessonLanguage, nil) }

func newLine() fyne.CanvasObject {
	l := widget.NewLabel("")
	l.Wrapping = fyne.TextWrapWord
	return l
}

func (p *Page) line(i int, o fyne.CanvasObject) {
	o.(*widget.Label).SetText(p.lessons[i].Title.In(p.language()))
}

// lay puts the parts where doc.go draws them.
func (p *Page) lay() {
	open := page.NewButton(p.keys, p.say(words.LessonOpen, nil), p.ask)
	leave := page.NewButton(p.desk.Key, p.say(words.PageBack, nil), p.desk.Back)
	p.measured = newLine().(*widget.Label)
	p.measured.Hide()
	left := container.NewBorder(nil, container.NewVBox(open, leave), nil, nil, container.New(&titles{p: p}, p.list, p.measured))
	p.side = container.NewVBox(p.text, p.result, p.answer, p.choices, container.New(&page.Flow{Narrow: 280}, p.further, p.back))
	p.grow = &page.Grow{PerWidth: timesPerWidth, Least: 1, Most: mostLarger, Changed: p.sizeType}
	p.large = p.grow.Over(p.side)
	p.scroll = container.NewVScroll(p.large)
	right := container.New(page.Upper{Share: 0.46}, p.faces, p.scroll)
	below := p.grow.Over(container.NewBorder(nil, nil, nil, container.NewVBox(p.undo), p.done))
	middle := container.New(page.Columns{Share: 0.55, Least: 260}, container.NewBorder(nil, below, nil, nil, p.picture), right)
	p.all = container.New(p.grow, container.New(page.Columns{Share: 0.2, Least: 170}, p.grow.Over(left), middle))
}

// A class stands back: type is so many times its usual size in a window so wide.
const timesPerWidth, mostLarger = 1.15 / 1280, 2.2

// sizeType shows all but the words in the type's size.
func (p *Page) sizeType() {
	p.picture.SetTextSize(float64(p.grow.Times()) * p.desk.Looks.TextSize)
	if p.show != nil {
		p.facesAnew()
	}
}

// choose begins a lesson.
func (p *Page) choose(i int) {
	p.at = i
	p.own.mount = 0
	p.show = newShown(p, &p.lessons[i])
	p.picture.SetModel(p.show.model)
	p.goOn(-p.step)
}

// goOn goes so many steps further; the question stands after the last thing to watch.
func (p *Page) goOn(by int) {
	l := &p.lessons[p.at]
	p.step = min(max(p.step+by, 0), len(l.Watch))
	p.tell("")
	p.answer.SetText("")
	p.own.state = nil
	p.fill()
}

// asking reports whether the question is up.
func (p *Page) asking() bool { return p.step == len(p.lessons[p.at].Watch) }

func (p *Page) fill() {
	l := &p.lessons[p.at]
	p.show.step(min(p.step, len(l.Watch)-1))
	p.choices.RemoveAll()
	p.answer.Hide()
	if !p.asking() {
		p.text.SetText(l.Watch[p.step].Text.In(p.language()))
	} else {
		p.text.SetText(l.Question.Text.In(p.language()))
		for i, c := range l.Question.Choices {
			text := p.say(words.LessonChoice, words.Args{"Number": i + 1, "Text": c.Text.In(p.language())})
			p.choices.Add(newChoice(p.keys, text, func() { p.chosen(i) }))
		}
		if len(l.Question.Choices) == 0 {
			p.answer.Show()
			p.desk.Window.Canvas().Focus(p.answer)
		}
	}
	p.tellOwn()
	p.large.Refresh()
	p.scroll.ScrollToTop()
}

// ask asks for a lesson file.
func (p *Page) ask() {
	d := dialog.NewFileOpen(func(from fyne.URIReadCloser, err error) {
		if from == nil || err != nil {
			return
		}
		path := from.URI().Path()
		from.Close()
		p.Open(path)
	}, p.desk.Window)
	d.SetFilter(storage.NewExtensionFileFilter([]string{".json"}))
	d.Show()
}

// Open adds a lesson file to the list and begins it.
func (p *Page) Open(path string) {
	data, err := os.ReadFile(path)
	if err == nil {
		l, report := lesson.Check(data, path, p.find)
		if err = report.Err(); err == nil {
			p.lessons = append(p.lessons, l)
			p.measure(p.list.Size().Width)
			p.list.Refresh()
			p.list.Select(len(p.lessons) - 1)
			return
		}
	}
	p.tell(p.desk.Speaker.Retell(err.Error()))
}

// Dropped opens lesson files dropped on the window, and reports whether there were any.
func (p *Page) Dropped(paths []string) bool {
	taken := false
	for _, path := range paths {
		if strings.HasSuffix(path, lesson.Ext) {
			p.Open(path)
			taken = true
		}
	}
	return taken
}

// Content is the page.
func (p *Page) Content() fyne.CanvasObject { return p.all }

// Focus is the list.
func (p *Page) Focus() fyne.Focusable { return p.list }

// keys takes the keys of the page.
func (p *Page) keys(k *fyne.KeyEvent) bool {
	if p.desk.Key(k) {
		return true
	}
	switch k.Name {
	case fyne.KeySpace, fyne.KeyRight:
		p.goOn(1)
	case fyne.KeyBackspace, fyne.KeyLeft:
		p.goOn(-1)
	case fyne.KeyHome:
		p.asInLesson()
	case fyne.KeyPageDown:
		page.Leaf(p.scroll, 1)
	case fyne.KeyPageUp:
		page.Leaf(p.scroll, -1)
	case fyne.Key1, fyne.Key2, fyne.Key3, fyne.Key4, fyne.Key5:
		p.chosen(int(k.Name[0] - '1'))
	default:
		return false
	}
	return true
}

// TypedKey takes the page's keys when nothing has the keyboard.
func (p *Page) TypedKey(k *fyne.KeyEvent) {
	if !p.keys(k) {
		p.list.Arrows(k)
	}
}

// TypedRune turns nuts: digits, which answer, come as keys too.
func (p *Page) TypedRune(r rune) {
	switch r {
	case '+':
		p.turnNut(1)
	case '-', '\u2212':
		p.turnNut(-1)
	case 'm', 'M':
		p.nextMount()
	case 'w', 'W':
		p.picture.Fit(scene.ViewWhole, p.smooth())
	}
}

// Close gives the picture back.
func (p *Page) Close() {
	p.own.frames.Drop()
	p.own.frames.Stop()
	p.picture.Close()
}

// decimal takes a comma for a point.
func decimal(text string) string { return strings.Replace(strings.TrimSpace(text), ",", ".", 1) }
