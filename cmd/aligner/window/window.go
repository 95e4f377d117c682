package window

// This file is the window's middle: one history, what it comes to, and the
// parts that show it.

import (
	"net/url"
	"reflect"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/faults"
	"aligner/cmd/aligner/page"
	"aligner/cmd/aligner/practice"
	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
	"aligner/report/learners"
	"aligner/report/say"
)

// Window is one boat on the screen.
type Window struct {
	win      fyne.Window
	prefs    fyne.Preferences
	settings Settings
	who      mechanic
	speaker  words.Speaker
	open     func(name string) ([]byte, hulls.Hull, error)

	history past
	keeper  Keeper
	kept    bool       // the history is on disk
	opened  visit.Edit // what put this boat on the screen, before anything was done on her
	trouble string     // with keeping, to be told
	boat    *boat
	now     shown
	before  shown
	preview visit.Edit // of the drag in progress

	picture    *drawn.Picture
	faces      *drawn.Faces
	sentence   *toldLine
	standing   *widget.Label // what the look-over found wrong
	top        *topStrip
	sheet      *sheet
	gauging    *gaugeSheet
	moving     *moveSheet
	beginning  *beginSheet
	looking    *lookSheet
	fastening  *fastenSheet
	handing    *handOverSheet
	mind       thinking
	stage      stage
	arrived    bool // at the stage, and nothing done there yet
	sheets     [stages]fyne.CanvasObject
	stageStrip *stageStrip
	middle     middle
	desktop    *fyne.Container // what the middle lays out
	bottom     *bottomStrip
	frames     drawn.Frames
	taken      float64 // the dragged value when it was taken, in mm
	chosen     int     // mount the keys act on

	title string

	// Program is what made this, with its version, for paper and reports; Faults
	// is where faults are written down, nil: nowhere; Learners is where practice is
	// kept. They are set before anything is shown.
	Program  string
	Faults   *faults.Log
	Learners learners.File
	showLink func(*url.URL) // in place of the system's; nil: the system's

	whole      fyne.CanvasObject // the window without a page
	page       page.Page         // nil: the boat
	openPage   opener            // makes the page anew
	practising *practice.Session // nil: not yet turned to

	askedLanguage, keptLanguage string // the language for this time, and the one kept meanwhile; "": none
	over                        func() // closes a form that stands over it all; nil: none
}

// New fills a window with a hull. open finds another by its name or file and
// gives its bytes too.
func New(win fyne.Window, prefs fyne.Preferences, name string, h hulls.Hull,
	open func(name string) ([]byte, hulls.Hull, error)) (*Window, error) {
	b, err := newBoat(h)
	if err != nil {
		return nil, err
	}
	w := &Window{win: win, prefs: prefs, settings: Load(prefs), open: open,
		history: inMemory{visit.NewHistory(visit.New(name, h))}, boat: b}
	// Before anything is measured: sizes in another font are remembered.
	w.useTheme()
	w.frames.Update = w.update
	w.mind.aside = w.inBackground
	w.picture, w.faces = drawn.NewPicture(w), drawn.NewFaces()
	w.sentence, w.standing = newToldLine(), widget.NewLabel("")
	w.standing.Wrapping = fyne.TextWrapWord
	w.standing.TextStyle.Bold = true
	w.build()
	w.useBoat()
	win.SetCloseIntercept(w.close)
	w.shortcuts()
	w.keysUnfocused()
	w.resultShortcuts()
	win.SetOnDropped(func(_ fyne.Position, files []fyne.URI) {
		w.dropped(files)
	})
	win.Resize(fyne.NewSize(float32(w.settings.Width), float32(w.settings.Height)))
	win.Canvas().Focus(w.picture)
	w.update()
	return w, nil
}

// build makes every strip and sheet, in the language wanted.
func (w *Window) build() {
	w.speaker = words.In(w.settings.Language, "en")
	w.faces.Words, w.picture.State.Words = say.Faces(w.speaker), say.Marks(w.speaker)
	w.top, w.bottom = newTopStrip(w), newBottomStrip(w)
	w.sheet, w.gauging, w.moving, w.stageStrip = newSheet(w), newGaugeSheet(w), newMoveSheet(w), newStageStrip(w)
	w.beginning, w.looking, w.fastening, w.handing = newBeginSheet(w), newLookSheet(w), newFastenSheet(w), newHandOverSheet(w)
	for i, box := range [stages]fyne.CanvasObject{w.sheet.box, w.beginning.box, w.looking.box, w.gauging.box, w.moving.box, w.fastening.box, w.handing.box} {
		w.sheets[i] = page.Scrolled(box)
		if stage(i) != w.stage {
			w.sheets[i].Hide()
		}
	}
	w.shareOut()
	w.useSettings()
	w.stageStrip.show(w.stage) // in the colours just set
	w.sheet.fill()
	sheets := container.NewStack(w.sheets[:]...)
	column := container.NewBorder(container.NewVBox(w.standing, w.sentence), nil, nil, nil, sheets)
	w.desktop = container.New(&w.middle, w.picture, w.faces, column)
	w.whole = container.NewBorder(container.NewVBox(w.top.box, w.stageStrip.box), w.bottom.box, nil, nil, w.desktop)
	if open := w.openPage; open != nil {
		w.turnTo(open)
		return
	}
	w.win.SetContent(w.whole)
}

// shareOut gives the faces their share of the height at this stage.
func (w *Window) shareOut() {
	w.middle.share = facesShareReading
	if w.stage == stageTry {
		w.middle.share = facesShareTrying
	}
	if w.desktop != nil {
		w.desktop.Refresh()
	}
}

// Speak changes the language, as asked for on the command line: until the window
// closes, or another is chosen.
func (w *Window) Speak(language string) {
	kept := w.settings.Language
	w.speak(language)
	w.askedLanguage, w.keptLanguage = language, kept
}

// speak changes the language while running.
func (w *Window) speak(language string) {
	w.askedLanguage = ""
	if language != w.settings.Language {
		w.settings.Language = language
		w.build()
		w.update()
		if w.page == nil {
			w.win.Canvas().Focus(w.picture)
		}
	}
}

// units are the units wanted.
func (w *Window) units() say.Units {
	return say.Units{Metric: w.settings.Metric, DecimalComma: w.settings.Language == "de"}
}

// looks are how the person wants to look at things.
func (w *Window) looks() drawn.Looks {
	s := &w.settings
	return drawn.Looks{Units: w.units(), LookingAft: s.LookingAft, Dark: s.Dark, NoMotion: s.NoMotion, TextSize: s.TextSize}
}

// document is what is shown: with a drag in progress, what it would come to.
func (w *Window) document() visit.Document {
	d := w.history.Now()
	if w.preview != nil {
		if p, err := w.preview.Apply(d); err == nil {
			return p
		}
	}
	return d
}

// do records an edit and shows what it comes to. A refused one is told, and
// what was touched goes back to what the document says.
func (w *Window) do(e visit.Edit) {
	w.arrived = false
	if err := w.recorded(e); err != nil {
		w.update()
		w.sentence.SetText(w.told(err))
		return
	}
	w.followHull()
	w.rethink()
	w.update()
}

// undo and redo go through the history, and say which edit they undid or did
// again.
func (w *Window) undo() { w.travel(w.history.Undo, words.Undone) }
func (w *Window) redo() { w.travel(w.history.Redo, words.Redone) }

func (w *Window) travel(way func() (visit.Edit, error), id words.ID) {
	e, err := way()
	if err != nil {
		w.update()
		w.sentence.SetText(w.told(err))
		return
	}
	if e == nil {
		w.sentence.SetText(w.speaker.Say(words.NothingThere, nil))
		return
	}
	w.followHull()
	w.rethink()
	w.update()
	w.sentence.SetText(w.speaker.Say(id, words.Args{"What": w.describe(e)}))
	if w.page == nil && w.win.Canvas().Focused() == nil { // pressed with the mouse
		w.takeKeyboard()
	}
}

// followHull prepares another hull when the history has come to one.
func (w *Window) followHull() {
	d := w.history.Now()
	if reflect.DeepEqual(d.Hull, w.boat.hull) {
		return
	}
	b, err := newBoat(d.Hull)
	if err != nil {
		w.sentence.SetText(w.told(err))
		return
	}
	w.boat = b
	w.now, w.before = shown{}, shown{}
	w.useBoat()
}

// useBoat puts the boat on every part.
func (w *Window) useBoat() {
	w.looking.fresh = true
	w.chosen = 0
	w.picture.SetModel(w.boat.model)
	w.sheet.fill()
}

// update works everything out afresh and shows it.
func (w *Window) update() {
	d := w.document()
	w.boat.work(&d, w.mind.liftMM, w.mind.slideMM, &w.now)
	w.picture.State.Now = nil
	if w.now.err == nil {
		w.picture.State.Now = &w.now.move
	}
	w.picture.State.Afloat = d.Trial.Afloat
	w.picture.State.Touches = nil
	if w.now.err == nil {
		w.picture.State.Touches = drawn.Touches(w.speaker, w.units(), &d.Hull, &w.now.result)
	}
	w.layOver(&d)
	w.markReadings(&d)
	w.exaggerate(&d)
	w.picture.Refresh()
	w.faces.SetResult(&w.now.result, d.Hull.Coupling.OuterDiameterMM, w.looks())
	w.tellTitle(&d)
	w.sentence.SetText(w.effect(&d))
	if w.trouble != "" {
		w.sentence.SetText(w.trouble)
		w.trouble = ""
	}
	w.top.show(&d)
	w.sheet.show(&d)
	w.bottom.show(&d)
	w.tellStanding(&d)
	switch w.stage {
	case stageBegin:
		w.beginning.show(&d)
	case stageLook:
		w.looking.show(&d)
	case stageFasten:
		w.fastening.show(&d)
	case stageHandOver:
		w.handing.show(&d)
	case stageGauge:
		w.gauging.show(&d)
	case stageMove:
		w.moving.show(&d)
	}
}

// tellTitle writes boat and spread into the window's title, to be read when it
// is small.
func (w *Window) tellTitle(d *visit.Document) {
	title := w.speaker.Say(words.WindowTitle, words.Args{"Hull": d.Hull.Name})
	if r := &w.now.result; w.now.err == nil && r.Gap.Known && r.Held != kinematics.Bolted {
		title = w.speaker.Say(words.WindowTitleGap, words.Args{"Hull": d.Hull.Name, "Spread": w.faces.Spread(w.units())})
	}
	if title != w.title {
		w.title = title
		w.win.SetTitle(title)
	}
}

// exaggerate makes movement as large as wanted, but for a hanging shaft, a
// centimetre down, no larger than stays in the picture; and writes how large.
func (w *Window) exaggerate(d *visit.Document) {
	n := w.settings.Exaggeration
	if d.Trial.Held == "hanging" && w.now.err == nil {
		n = min(n, w.boat.model.MaxExaggeration(&w.now.move))
	}
	w.picture.State.Exaggeration = n
	w.bottom.write(n)
}

// openBoat shows another boat, by built-in name or file.
func (w *Window) openBoat(name string) {
	data, _, err := w.open(name)
	if err != nil {
		w.sentence.SetText(w.told(err))
		return
	}
	w.do(&visit.OpenHull{HullName: name, Hull: data})
}

// openVisit shows a built-in visit, by its name, at the stage it is in.
func (w *Window) openVisit(name string) {
	d, err := builtin.FindVisit(name)
	if err != nil {
		w.sentence.SetText(w.told(err))
		return
	}
	w.Show(&d)
}

// Show opens a visit at the stage it is in.
func (w *Window) Show(d *visit.Document) {
	w.do(&visit.OpenVisit{Visit: d.Visit, HullName: d.HullName, Hull: hulls.Encode(d.Hull)})
	w.looking.fresh = true
	w.enter(stageGauge)
	w.arrived = false // that it was opened is to be read
	w.update()
}

// close keeps the settings.
func (w *Window) close() {
	size := w.win.Canvas().Size()
	w.settings.Boat = w.history.Now().HullName
	w.settings.Width, w.settings.Height = float64(size.Width), float64(size.Height)
	w.keepSettings()
	w.workOutNow()
	w.leavePage()
	w.picture.Close()
	w.win.Close()
}
