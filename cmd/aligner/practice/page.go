package practice

// This file is the page: its parts, where they stand, and the keys.

import (
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/kinematics/practice"
	"aligner/report/learners"
	"aligner/report/say"
	"aligner/scene"
)

// Page is the page of practice.
type Page struct {
	desk    page.Desk
	s       *Session
	results []learners.Result // kept before
	busy    bool              // a boat is being made ready, or a work judged

	learner       *page.Entry
	grade, number *page.Choice
	begin         *page.Button
	told          *widget.Label // the task, or what was refused
	tally         *widget.Label
	kept          *widget.Label // results
	export        *page.Button
	log           *widget.Label // what was done
	logView       *container.Scroll
	picture       *drawn.Picture
	faces         *drawn.Faces
	sheet         *sheet
	end           *end
	right         *fyne.Container // sheet or end
	all           fyne.CanvasObject
}

// New makes the page of a session.
func New(desk page.Desk, s *Session) *Page {
	p := &Page{desk: desk, s: s, faces: drawn.NewFaces(), told: running(), tally: running(), kept: running()}
	p.learner = page.NewEntry(p.keys)
	p.learner.SetPlaceHolder(p.say(words.PracticeLearner, nil))
	p.learner.SetText(s.Learner)
	var grades, numbers []string
	for _, g := range practice.Grades {
		grades = append(grades, say.Grade(desk.Speaker, g))
	}
	for n := range practice.Numbers {
		numbers = append(numbers, p.say(words.PracticeBoat, nil)+" "+strconv.Itoa(n+1))
	}
	p.grade = page.NewChoice(p.keys, grades, func(i int) { p.pick(practice.Task{Grade: practice.Grades[i], Number: s.Task.Number}) })
	p.number = page.NewChoice(p.keys, numbers, func(i int) { p.pick(practice.Task{Grade: s.Task.Grade, Number: i + 1}) })
	p.begin = page.NewButton(p.keys, p.say(words.PracticeBegin, nil), func() { p.ask(s.Task) })
	p.begin.Importance = widget.HighImportance
	p.log = running()
	p.logView = container.NewVScroll(p.log)
	p.picture = drawn.NewPicture(drawn.Onlooker{Key: p.TypedKey, Rune: p.TypedRune})
	st := &p.picture.State
	st.Show = scene.ShowHull | scene.ShowNames | scene.ShowDirections | scene.ShowTrueLine | scene.ShowBed
	st.Words, st.Dark = say.Marks(desk.Speaker), desk.Looks.Dark
	p.picture.SetTextSize(desk.Looks.TextSize)
	p.faces.Words = say.Faces(desk.Speaker)
	p.export = page.NewButton(p.keys, p.say(words.PracticeExport, nil), p.askExport)
	p.sheet, p.end = newSheet(p), newEnd(p)
	p.lay()
	p.readResults()
	p.boat()
	p.show()
	if s.work != nil && s.work.Ended() && s.debrief == nil {
		p.judge()
	}
	return p
}

func (p *Page) say(id words.ID, args words.Args) string { return p.desk.Speaker.Say(id, args) }

func running() *widget.Label {
	l := widget.NewLabel("")
	l.Wrapping = fyne.TextWrapWord
	return l
}

// Where things stand, in parts of the page.
const (
	leftShare, leftLeast   = 0.38, 280
	sheetShare, sheetLeast = 0.62, 300
	nameWide, gradeWide    = 140, 180
)

// lay puts the parts where doc.go draws them.
func (p *Page) lay() {
	leave := page.NewButton(p.desk.Key, p.say(words.PageBack, nil), p.desk.Back)
	wide := func(o fyne.CanvasObject, width float32) fyne.CanvasObject {
		return container.NewGridWrap(fyne.NewSize(width, o.MinSize().Height), o)
	}
	top := container.NewHBox(wide(p.learner, nameWide), wide(p.grade, gradeWide), p.number, p.begin, leave)
	left := container.NewGridWithRows(2, p.picture, p.faces)
	p.right = container.NewStack()
	sheet := container.New(above{}, p.told, p.right)
	log := container.New(above{}, p.tally, p.logView)
	right := container.New(page.Columns{Share: sheetShare, Least: sheetLeast}, sheet, log)
	p.all = container.NewPadded(container.NewBorder(top, nil, nil, nil, container.New(page.Columns{Share: leftShare, Least: leftLeast}, left, right)))
}

// readResults reads what was kept before.
func (p *Page) readResults() {
	all, _, err := p.s.File.All()
	if err != nil {
		p.s.trouble = err
	}
	slices.Reverse(all)
	p.results = all
}

// pick chooses a boat, and shows her unless one is being worked on.
func (p *Page) pick(t practice.Task) {
	p.s.Task = t
	if p.s.work == nil {
		p.boat()
	}
}

// ask begins a boat, after a question where that leaves work undone.
func (p *Page) ask(t practice.Task) {
	if w := p.s.work; w == nil || len(w.Acts) == 0 || w.Ended() {
		p.beginTask(t)
		return
	}
	d := dialog.NewConfirm(p.say(words.PracticeTitle, nil), p.say(words.PracticeLeave, nil), func(leave bool) {
		if leave {
			p.beginTask(t)
		}
	}, p.desk.Window)
	d.SetConfirmText(p.say(words.PracticeBegin, nil))
	d.SetDismissText(p.say(words.PracticeStay, nil))
	d.Show()
}

// beginTask makes a boat ready, off the window's thread: one with a stuck nut is
// worked once by the tool for it.
func (p *Page) beginTask(t practice.Task) {
	switch {
	case p.busy:
		return
	case learners.CheckName(p.learner.Text) != nil:
		p.tell(p.say(words.PracticeNameBad, nil), true)
		p.desk.Window.Canvas().Focus(p.learner)
		return
	}
	p.s.Learner, p.s.Task = strings.TrimSpace(p.learner.Text), t
	var w *practice.Work
	var err error
	p.aside(func() { w, err = practice.Begin(t) }, func() {
		if err != nil {
			p.tell(p.desk.Speaker.Retell(err.Error()), true)
			return
		}
		p.s.begin(w)
		p.boat()
		p.show()
		p.desk.Window.Canvas().Focus(p.sheet.hold)
	})
}

// aside does work off the window's thread, one at a time.
func (p *Page) aside(work, rest func()) {
	p.busy = true
	done := func() {
		p.busy = false
		rest()
	}
	if p.desk.Aside == nil {
		work()
		done()
		return
	}
	p.desk.Aside(work, done)
}

// do does one act and shows it, or what it was refused for.
func (p *Page) do(a practice.Act) bool {
	if p.s.work == nil || p.busy {
		return false
	}
	err := p.s.do(a)
	p.show()
	if err != nil {
		p.tell(p.desk.Speaker.Retell(err.Error()), true)
	}
	return err == nil
}

// handOver ends the work and judges it.
func (p *Page) handOver(c practice.Cause) {
	if !p.do(practice.Act{HandOver: &practice.HandOver{Cause: c}}) {
		return
	}
	p.judge()
}

// judge judges what was handed over, off the window's thread.
func (p *Page) judge() {
	w := p.s.work
	var d *practice.Debrief
	var err error
	p.aside(func() { d, err = practice.Judge(w.Task, w.Acts) }, func() {
		if p.s.work != w || p.s.debrief != nil { // judged on a page made since
			return
		}
		if err != nil {
			p.tell(p.desk.Speaker.Retell(err.Error()), true)
			return
		}
		p.s.ended(d)
		p.readResults()
		p.show()
		p.desk.Window.Canvas().Focus(p.end.next)
	})
}

// Content is the page.
func (p *Page) Content() fyne.CanvasObject { return p.all }

// Focus is where the next thing is typed.
func (p *Page) Focus() fyne.Focusable {
	switch {
	case p.s.work == nil && p.s.Learner == "":
		return p.learner
	case p.s.work == nil:
		return p.begin
	case p.s.debrief != nil:
		return p.end.next
	}
	if !p.s.work.Gauging() {
		return p.sheet.hold
	}
	return p.sheet.at
}

func (p *Page) keys(k *fyne.KeyEvent) bool { return p.desk.Key(k) }

// TypedKey takes keys that nothing has.
func (p *Page) TypedKey(k *fyne.KeyEvent) {
	p.keys(k)
}

// TypedRune has no letters of its own.
func (p *Page) TypedRune(rune) {}

// Close gives the picture back.
func (p *Page) Close() { p.picture.Close() }
