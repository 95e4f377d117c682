package photos

// This file is the strip: which visit's photos it shows, and attaching more.

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/hulls/logbook"
)

// Endings of files that photos are kept in.
var Endings = []string{".jpg", ".jpeg", ".png", ".gif", ".webp", ".tif", ".tiff", ".bmp"}

// IsPhoto reports whether a file's name ends like a photo's.
func IsPhoto(path string) bool {
	for _, e := range Endings {
		if strings.HasSuffix(strings.ToLower(path), e) {
			return true
		}
	}
	return false
}

// Strip is the photos of one visit.
type Strip struct {
	// Changed is called after one was attached, Reached when the keyboard comes to
	// a part of the strip; nil: nothing.
	Changed func()
	Reached func(fyne.CanvasObject)

	desk  page.Desk
	book  *logbook.Book
	visit logbook.VisitID // 0: none
	turn  int             // of showing, so that what comes late is dropped

	box    *fyne.Container
	path   *entry
	add    *fyne.Container
	thumbs *fyne.Container
	scroll *container.Scroll
	told   *widget.Label
}

// New is an empty strip.
func New(desk page.Desk) *Strip {
	s := &Strip{desk: desk, thumbs: container.NewHBox(), told: widget.NewLabel("")}
	s.told.Wrapping = fyne.TextWrapWord
	s.told.Hide()
	s.path = s.newEntry()
	s.path.SetPlaceHolder(s.say(words.PhotoPath, nil))
	s.path.OnSubmitted = func(string) { s.attachTyped() }
	attach := s.newButton(s.say(words.PhotoAttach, nil), s.attachTyped)
	find := s.newButton(s.say(words.PhotoFind, nil), s.find)
	s.add = container.NewBorder(nil, nil, nil, container.NewHBox(attach, find), s.path)
	s.scroll = container.NewHScroll(s.thumbs)
	s.box = container.NewBorder(container.NewVBox(s.add, s.told), nil, nil, nil, s.scroll)
	return s
}

func (s *Strip) say(id words.ID, args words.Args) string { return s.desk.Speaker.Say(id, args) }

// Content is the strip.
func (s *Strip) Content() fyne.CanvasObject { return s.box }

// aside does work off the window's thread where there is one for it, and rest on
// it after.
func (s *Strip) aside(work, rest func()) {
	if s.desk.Aside == nil {
		work()
		rest()
		return
	}
	s.desk.Aside(work, rest)
}

// Show shows a visit's photos; 0: none.
func (s *Strip) Show(book *logbook.Book, id logbook.VisitID) {
	s.book, s.visit = book, id
	s.told.Hide()
	if book != nil && id != 0 && book.Writable() {
		s.add.Show()
	} else {
		s.add.Hide()
	}
	s.draw()
}

// draw makes the small pictures anew.
func (s *Strip) draw() {
	s.turn++
	turn, book, id := s.turn, s.book, s.visit
	s.thumbs.RemoveAll()
	s.scroll.Hide()
	if book == nil || id == 0 {
		return
	}
	var list []thumb
	var err error
	s.aside(func() { list, err = thumbsOf(book, id) }, func() {
		if turn != s.turn {
			return
		}
		if err != nil {
			s.tell(s.desk.Speaker.Retell(err.Error()))
		}
		for _, t := range list {
			s.thumbs.Add(s.shown(t))
		}
		if len(list) > 0 {
			s.scroll.Show()
		}
		s.box.Refresh()
	})
}

func (s *Strip) tell(text string) {
	s.told.SetText(text)
	s.told.Show()
}

func (s *Strip) attachTyped() {
	if path := strings.TrimSpace(s.path.Text); path != "" {
		s.path.SetText("")
		s.Attach(path)
	}
}

// Attach attaches files to the visit.
func (s *Strip) Attach(paths ...string) {
	book, id := s.book, s.visit
	if book == nil || id == 0 {
		return
	}
	var err error
	kept := 0
	s.tell(s.say(words.PhotoAttaching, nil))
	s.aside(func() {
		for _, path := range paths {
			if _, err = book.AddPhotoFile(id, path, ""); err != nil {
				return
			}
			kept++
		}
	}, func() {
		if err != nil {
			s.tell(s.desk.Speaker.Retell(err.Error()))
		} else {
			s.tell(s.say(words.PhotoAttached, words.Args{"Photos": s.say(words.LogbookPhotos, words.Args{"Count": kept})}))
		}
		if kept > 0 && s.visit == id {
			s.draw()
		}
		if kept > 0 && s.Changed != nil {
			s.Changed()
		}
	})
}

// find looks for a photo in a dialog as large as the window lets it be.
func (s *Strip) find() {
	d := dialog.NewFileOpen(func(from fyne.URIReadCloser, err error) {
		if err != nil {
			s.tell(err.Error())
		}
		if from == nil {
			return
		}
		path := from.URI().Path()
		from.Close()
		s.Attach(path)
	}, s.desk.Window)
	d.SetFilter(storage.NewExtensionFileFilter(bothCases(Endings)))
	size := s.desk.Window.Canvas().Size()
	d.Resize(fyne.NewSize(size.Width*0.8, size.Height*0.8))
	d.Show()
}

// bothCases are endings as cameras write them too.
func bothCases(endings []string) []string {
	all := append([]string(nil), endings...)
	for _, e := range endings {
		all = append(all, strings.ToUpper(e))
	}
	return all
}
