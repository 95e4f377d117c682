package window

// This file is paper from the window: a sheet chosen, the place asked for, made
// off the window's thread, saved, and shown by whatever the system shows such
// files with.

import (
	"io"
	"net/url"
	"os"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/outfile"
	"aligner/cmd/aligner/page"
	"aligner/hulls/visit"
	"aligner/report"
)

// paperSheet is a button a sheet, and the place to save the one chosen to.
type paperSheet struct {
	w     *Window
	box   *fyne.Container
	kinds []*page.Button
	form  *saveForm
	said  *widget.Label
}

func newPaperSheet(w *Window) *paperSheet {
	s := &paperSheet{w: w, said: running()}
	s.form = newSaveForm(w, ".pdf")
	grid := container.New(&page.Flow{})
	for _, kind := range report.Kinds {
		b := newPress(w, w.speaker.Say(words.Of("paper_kind", string(kind)), nil), func() { s.ask(kind) })
		s.kinds = append(s.kinds, b)
		grid.Add(b)
	}
	s.said.Hide()
	s.box = container.NewVBox(heading(w.speaker.Say(words.PaperTitle, nil)), grid, s.form.box, s.said)
	return s
}

// ask asks where a sheet is to be saved.
func (s *paperSheet) ask(kind report.Kind) {
	d := s.w.history.Now()
	name := fileName(d.Hull.Name, d.Visit.Date, string(kind)) + ".pdf"
	s.form.ask(s.w.speaker.Say(words.PaperSaveTo, words.Args{"Kind": s.w.speaker.Say(words.Of("paper_kind", string(kind)), nil)}), name,
		func(path string) { s.save(kind, path) })
}

// fileName is a name made of some words: letters and digits, the rest hyphens.
func fileName(parts ...string) string {
	var kept []string
	for _, p := range parts {
		p = strings.Join(strings.FieldsFunc(strings.ToLower(p), func(r rune) bool {
			return !(r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r > 127)
		}), "-")
		if p != "" {
			kept = append(kept, p)
		}
	}
	return strings.Join(kept, "-")
}

// save makes a sheet in the background and saves it.
func (s *paperSheet) save(kind report.Kind, path string) {
	d := s.w.history.Now()
	w := s.w
	options := report.Options{Kind: kind, Units: w.units(), Speaker: w.speaker, Seen: w.seen(), Today: w.handing.today(), Program: w.Program}
	write(s.said, w.speaker.Say(words.PaperWorking, nil))
	var pages int
	var err error
	w.mind.aside(func() { pages, err = paperTo(path, d, options) }, func() {
		if err != nil {
			w.fault("paper", err)
			write(s.said, w.told(err))
			return
		}
		write(s.said, w.speaker.Say(words.SheetDone, words.Args{"File": path, "Kind": w.speaker.Say(words.Of("paper_kind", string(kind)), nil), "Count": pages}))
		w.openOutside(path)
	})
}

// paperTo makes a sheet and writes it.
func paperTo(path string, d visit.Document, o report.Options) (pages int, err error) {
	if o.Kind == report.Class {
		d = report.Until(d, report.BeforeMoving(&d.Visit))
	}
	in, err := report.Work(d)
	if err != nil {
		return 0, err
	}
	pdf, err := report.PDF(in, o)
	if err != nil {
		return 0, err
	}
	return report.Pages(pdf), outfile.Write(path, func(w io.Writer) error { _, err := w.Write(pdf); return err })
}

// openOutside shows a file by whatever the system shows such files with, where
// there is something.
func (w *Window) openOutside(path string) {
	full, err := filepath.Abs(path)
	if err != nil {
		return
	}
	link := &url.URL{Scheme: "file", Path: filepath.ToSlash(full)}
	go w.show(link) // starting another program takes its time; none is no fault
}

// saveForm asks for a place: a line to type, a dialog to look for it in.
type saveForm struct {
	w      *Window
	box    *fyne.Container
	title  *widget.Label
	path   *field
	ending string
	then   func(path string)
	leave  func() // called when the form closes; nil: nothing
}

func newSaveForm(w *Window, ending string) *saveForm {
	f := &saveForm{w: w, title: heading(""), ending: ending}
	f.path = newField(w, func(string) {})
	f.path.OnSubmitted = func(string) { f.save() }
	f.path.Before = func(k *fyne.KeyEvent) bool {
		if k.Name == fyne.KeyEscape {
			f.close()
			return true
		}
		return w.keyEverywhere(k)
	}
	save := newPress(w, w.speaker.Say(words.SaveHere, nil), f.save)
	save.Importance = widget.HighImportance
	browse := newPress(w, w.speaker.Say(words.SaveBrowse, nil), f.browse)
	no := newPress(w, w.speaker.Say(words.SaveNot, nil), f.close)
	f.box = container.NewVBox(f.title, f.path, container.New(&page.Flow{}, save, browse, no))
	f.box.Hide()
	return f
}

// ask opens the form with a name in the folder used last.
func (f *saveForm) ask(title, name string, then func(path string)) {
	f.then = then
	write(f.title, title)
	path := filepath.Join(f.w.folder(), name)
	f.path.was = path // leaving the line changes no document
	f.path.SetText(path)
	f.box.Show()
	f.w.win.Canvas().Focus(f.path)
	f.w.openPart(f.box)
}

func (f *saveForm) close() {
	seen(f.box, false)
	if f.leave != nil {
		f.leave()
	}
	f.w.win.Canvas().Focus(f.w.picture)
}

// save goes on with the place typed.
func (f *saveForm) save() {
	path := strings.TrimSpace(f.path.Text)
	if path == "" {
		return
	}
	if !strings.EqualFold(filepath.Ext(path), f.ending) {
		path += f.ending
	}
	f.w.settings.Folder = filepath.Dir(path)
	f.w.settings.SaveOfMachine(f.w.prefs)
	f.close()
	f.then(path)
}

// browse looks for a place in a dialog as large as the window lets it be.
func (f *saveForm) browse() {
	picked := dialog.NewFileSave(func(to fyne.URIWriteCloser, err error) {
		if err != nil || to == nil {
			return
		}
		path := to.URI().Path()
		to.Close()
		f.path.was = path
		f.path.SetText(path)
		f.save()
	}, f.w.win)
	picked.SetFilter(storage.NewExtensionFileFilter([]string{f.ending}))
	picked.SetFileName(filepath.Base(f.path.Text))
	if here, err := storage.ListerForURI(storage.NewFileURI(f.w.folder())); err == nil {
		picked.SetLocation(here)
	}
	size := f.w.win.Canvas().Size()
	picked.Resize(fyne.NewSize(size.Width*0.8, size.Height*0.8))
	picked.Show()
}

// folder is where files were saved last, or one's own.
func (w *Window) folder() string {
	if info, err := os.Stat(w.settings.Folder); err == nil && info.IsDir() {
		return w.settings.Folder
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return "."
	}
	if info, err := os.Stat(filepath.Join(home, "Documents")); err == nil && info.IsDir() {
		return filepath.Join(home, "Documents")
	}
	return home
}
