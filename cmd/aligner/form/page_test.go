package form

// A boat is entered by keyboard alone, and the past leads back and forth by the same
// bytes.

import (
	"bytes"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"aligner/assets/words"
	"aligner/cmd/aligner/drawn"
	"aligner/cmd/aligner/page"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/logbook"
	"aligner/hulls/visit/builtin"
	"aligner/report/say"
)

// bench is a page in a test window.
type bench struct {
	t       *testing.T
	p       *Page
	win     fyne.Window
	book    *logbook.Book
	works   bool     // works out what matters, at once
	files   [][]byte // the hull after each step
	escaped int
}

func newBench(t *testing.T, d *Draft, language string, size fyne.Size) *bench {
	t.Helper()
	test.NewTempApp(t)
	b := &bench{t: t, win: test.NewTempWindow(t, nil)}
	book, err := logbook.Open(filepath.Join(t.TempDir(), "book.db"), logbook.Write)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { book.Close() })
	b.book = book
	b.win.Resize(size)
	b.open(d, language)
	return b
}

func (b *bench) open(d *Draft, language string) {
	desk := page.Desk{Speaker: words.In(language), Looks: drawn.Looks{Units: say.Units{Metric: true, DecimalComma: language == "de"}, NoMotion: true, TextSize: 1},
		Window: b.win, Back: func() {}, Key: func(k *fyne.KeyEvent) bool {
			if k.Name == fyne.KeyEscape {
				b.escaped++
			}
			return k.Name == fyne.KeyEscape
		}}
	here := func(work, done func()) {
		if b.works {
			work()
			done()
		}
	}
	b.p = New(desk, d, Do{Book: b.book, Aside: here})
	b.win.SetContent(b.p.Content())
	b.t.Cleanup(b.p.Close)
	if f := b.p.Focus(); f != nil {
		b.win.Canvas().Focus(f)
	}
}

// press types a key where the keyboard is.
func (b *bench) press(keys ...fyne.KeyName) {
	for _, k := range keys {
		if f := b.win.Canvas().Focused(); f != nil {
			f.TypedKey(&fyne.KeyEvent{Name: k})
		} else { // as the window hands it on
			b.p.TypedKey(&fyne.KeyEvent{Name: k})
		}
	}
}

// write types letters where the keyboard is.
func (b *bench) write(text string) {
	f := b.win.Canvas().Focused()
	for _, r := range text {
		f.TypedRune(r)
	}
}

func (b *bench) shortcut(s fyne.Shortcut) {
	f, ok := b.win.Canvas().Focused().(fyne.Shortcutable)
	if !ok {
		b.t.Fatal("no shortcut where the keyboard is")
	}
	f.TypedShortcut(s)
}

// tab goes to the next thing that takes the keyboard.
func (b *bench) tab() { b.win.Canvas().FocusNext() }

// file is the hull as she would be written now.
func (b *bench) file() []byte {
	h, _ := b.p.d.Hull()
	return hulls.Encode(h)
}

// dunlin is a boat unlike any built-in one, of our own invention.
func dunlin(t *testing.T) hulls.Hull {
	h, err := fields.SetMounts(builtin.Hull(t, "Eider"), 6)
	if err != nil {
		t.Fatal(err)
	}
	h.Name, h.HIN, h.OwnerReference, h.ShaftAngleDeg, h.ShaftSpeedMaxRPM = "Dunlin", "ZZZ12345D404", "berth 12", 9.5, 1450
	h.Engine = hulls.Engine{MassKg: 412, CentreOfMassMM: [3]float64{470, 6, 190}, DownAngleDeg: 7.5}
	for i := range h.Mounts {
		m := &h.Mounts[i]
		m.AtMM[0] += 22.5
		m.AtMM[1] += math.Copysign(20.5, m.AtMM[1])
		m.Thread, m.ThreadPitchMM = "M20x1.5", 1.5
		m.StiffnessNPerMM = hulls.Stiffness{Along: 260, ForeAft: 380, Athwart: 170}
		m.NutRangeMM, m.SlideRangeMM = [2]float64{-11, 7}, [2]float64{-5, 4}
		m.Reach = hulls.Awkward
	}
	h.Shaft.LengthMM, h.Shaft.DiameterMM, h.Shaft.Material = 2600, 32, "UNS S32205"
	h.Bearings[0].AtMM, h.Bearings[1].AtMM, h.Bearings[1].OffsetMM[1] = -1130, -2320, 0.4
	h.Log.AtMM, h.Log.BoreMM = -640, 50
	h.StuffingBox.AtMM, h.StuffingBox.MassKg = -430, 2.4
	h.Propeller = hulls.Propeller{MassKg: 9.2, AtMM: -2480, DiameterMM: 445, DensityKgM3: 8300}
	h.Look = hulls.Look{Engine: "petrol-v", HullSection: "vee", Hose: "bellows"}
	if r := hulls.Validate(h); r.Err() != nil {
		t.Fatal(r.Err())
	}
	return h
}

// enter types one field's value, the keyboard being in it.
func (b *bench) enter(f *fields.Field, want fields.Value) {
	b.t.Helper()
	switch in := b.win.Canvas().Focused().(type) {
	case *line:
		if in.r.pointer != f.Pointer {
			b.t.Fatalf("the keyboard is in %s, not %s", in.r.pointer, f.Pointer)
		}
		text := b.p.units().Entry(f, want, b.p.d.in)
		if text == "" {
			b.press(fyne.KeyBackspace)
		}
		b.write(text)
	case *pick:
		if in.r.pointer != f.Pointer {
			b.t.Fatalf("the keyboard is in %s, not %s", in.r.pointer, f.Pointer)
		}
		for n := 0; in.own[in.SelectedIndex()] != want.Text; n++ {
			if n > len(in.own) {
				b.t.Fatalf("%s: %q is not to be had", f.Pointer, want.Text)
			}
			b.press(fyne.KeyRight)
			b.note()
		}
	default:
		b.t.Fatalf("the keyboard is in %T, wanted in %s", in, f.Pointer)
	}
	b.press(fyne.KeyReturn)
	b.note()
}

// note keeps the hull's file where it changed; it is on the disk already.
func (b *bench) note() {
	b.t.Helper()
	now := b.file()
	if n := len(b.files); n > 0 && bytes.Equal(now, b.files[n-1]) {
		return
	}
	b.files = append(b.files, now)
	if draft, ok, err := b.book.Draft(b.p.d.file); err != nil || !ok || !bytes.Equal(hulls.Encode(draft), now) {
		b.t.Fatalf("step %d is not on the disk (%v)", len(b.files), err)
	}
}

func TestFullBoatByKeyboard(t *testing.T) {
	b := newBench(t, NewDraft(), "de", fyne.NewSize(1280, 800))
	target := dunlin(t)
	b.write("Neues Boot")
	b.tab() // layout
	b.press(fyne.KeyRight)
	b.tab() // bearings
	b.press(fyne.KeyRight)
	b.tab() // mounts
	b.press(fyne.KeyRight)
	b.tab() // rubber or solid
	b.tab() // the button that begins
	b.press(fyne.KeyReturn)

	b.note()
	if begun := string(b.files[0]); !strings.Contains(begun, `"name": "Neues Boot"`) || !strings.Contains(begun, `"down-angle"`) {
		t.Fatalf("begun with another boat:\n%s", begun)
	}
	for _, f := range fields.List(&target) {
		b.enter(&f, f.Get(&target))
	}
	if got, want := string(b.file()), string(hulls.Encode(target)); got != want {
		t.Fatalf("entered another boat:\n%s\nwanted\n%s", got, want)
	}
	if len(b.files) < 100 {
		t.Errorf("only %d steps", len(b.files))
	}
	if b.p.report.Err() != nil {
		t.Error(b.p.report.Err())
	}
	b.throughThePast(b.files)
	b.keepByKeyboard(target)
}

// throughThePast undoes to the beginning and does again to the end, the files of
// all steps compared byte for byte, those on the disk too.
func (b *bench) throughThePast(files [][]byte) {
	same := func(i int, what string) {
		draft, _, err := b.book.Draft(b.p.d.file)
		if !bytes.Equal(b.file(), files[i]) || err != nil || !bytes.Equal(hulls.Encode(draft), files[i]) {
			b.t.Fatalf("%s to step %d: another file", what, i)
		}
	}
	b.p.turnTo(0)
	steps := 0
	walk := func(s fyne.Shortcut, from, to, by int, what string) {
		for i := from; i != to; i += by {
			if _, ok := b.win.Canvas().Focused().(*line); !ok { // in a list, which has no shortcuts: the window's
				if by < 0 {
					b.p.Undo()
				} else {
					b.p.Redo()
				}
			} else {
				b.shortcut(s)
			}
			same(i+by, what)
			steps++
		}
	}
	last := len(files) - 1
	walk(&fyne.ShortcutUndo{}, last, 0, -1, "undone")
	walk(&fyne.ShortcutRedo{}, 0, last, 1, "done again")
	if steps != 2*last {
		b.t.Errorf("%d steps", steps)
	}
}

// keepByKeyboard keeps the boat in the logbook and in a file.
func (b *bench) keepByKeyboard(target hulls.Hull) {
	for b.p.parts[b.p.d.part].sheet != words.FormKeep {
		b.press(fyne.KeyPageDown)
	}
	b.press(fyne.KeyReturn)
	kept, err := b.book.Hull(b.p.d.id)
	if err != nil || !bytes.Equal(hulls.Encode(kept.Hull), hulls.Encode(target)) {
		b.t.Fatalf("not in the logbook (%v); the page says %q", err, b.p.told.Text)
	}
	if _, ok, _ := b.book.Draft(b.p.d.file); ok {
		b.t.Error("the draft is still there")
	}
	path := filepath.Join(b.t.TempDir(), "dunlin.hull.json")
	b.tab()
	b.write(path)
	b.press(fyne.KeyReturn)
	data, err := os.ReadFile(path)
	if err != nil || !bytes.Equal(data, hulls.Encode(target)) {
		b.t.Errorf("no such file (%v); the page says %q", err, b.p.told.Text)
	}
	b.press(fyne.KeyReturn)
	if !strings.Contains(b.p.told.Text, "dunlin") {
		b.t.Errorf("writing over a file is told as %q", b.p.told.Text)
	}
}
