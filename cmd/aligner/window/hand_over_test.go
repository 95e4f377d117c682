package window

// This file tests the end of a job: stud heights and notes kept, paper saved and
// shown, and the report of a problem.

import (
	"archive/zip"
	"bytes"
	"errors"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/cmd/aligner/faults"
	"aligner/report"
)

// TestPaperFromTheWindow saves each sheet by keyboard to a folder that is
// remembered, and hands it to the system.
func TestPaperFromTheWindow(t *testing.T) {
	m := aboard(t, "first-job")
	dir := t.TempDir()
	m.w.settings.Folder = dir
	shown := make(chan *url.URL, 1)
	m.w.showLink = func(u *url.URL) { shown <- u }
	m.press(fyne.KeyF7)
	for i, kind := range report.Kinds {
		m.press(fyne.KeyEscape)
		m.keys("q")
		for range i {
			m.w.win.Canvas().FocusNext()
		}
		m.press(fyne.KeyReturn)
		form := m.w.handing.paper.form
		if !form.box.Visible() || m.w.win.Canvas().Focused() != fyne.Focusable(form.path) || !strings.Contains(form.path.Text, string(kind)) {
			t.Fatalf("%s: asked for %q", kind, form.path.Text)
		}
		path := filepath.Join(dir, string(kind)+" sheet.pdf")
		form.path.SetText("")
		m.keys(strings.TrimSuffix(path, ".pdf")) // the ending is added
		m.press(fyne.KeyReturn)
		pdf, err := os.ReadFile(path)
		if err != nil || !bytes.HasPrefix(pdf, []byte("%PDF-")) {
			t.Fatalf("%s: %v, told %q", kind, err, m.w.handing.paper.said.Text)
		}
		if u := <-shown; u.Scheme != "file" || !strings.HasSuffix(u.Path, string(kind)+" sheet.pdf") {
			t.Errorf("%s: shown as %v", kind, u)
		}
		if !strings.Contains(m.w.handing.paper.said.Text, path) {
			t.Errorf("%s: told %q", kind, m.w.handing.paper.said.Text)
		}
	}
	if Load(m.w.prefs).Folder != dir {
		t.Errorf("the folder remembered is %q", Load(m.w.prefs).Folder)
	}
	// A place that cannot be written to is told, and written down.
	m.w.Faults = faults.In(filepath.Join(dir, "log"))
	m.w.Faults.Begin("aligner")
	m.keys("q")
	m.press(fyne.KeyReturn)
	m.w.handing.paper.form.path.SetText(filepath.Join(dir, "no folder", "x.pdf"))
	m.press(fyne.KeyReturn)
	if !strings.Contains(m.w.handing.paper.said.Text, "x.pdf") || !strings.Contains(m.w.Faults.LastRun(), "paper") {
		t.Errorf("told %q, written down %q", m.w.handing.paper.said.Text, m.w.Faults.LastRun())
	}
}

// TestEscapeSavesNothing.
func TestEscapeSavesNothing(t *testing.T) {
	m := aboard(t, "first-job")
	m.w.settings.Folder = t.TempDir()
	m.press(fyne.KeyF7)
	m.keys("q")
	m.press(fyne.KeyReturn)
	m.press(fyne.KeyEscape)
	if left, _ := os.ReadDir(m.w.settings.Folder); len(left) != 0 || m.w.handing.paper.form.box.Visible() || m.w.win.Canvas().Focused() != fyne.Focusable(m.w.picture) {
		t.Errorf("%d files", len(left))
	}
}

// TestStudsAndNotes are kept as they are typed, each one edit.
func TestStudsAndNotes(t *testing.T) {
	m := aboard(t, "first-job")
	m.press(fyne.KeyF7)
	studs := m.w.handing.studs
	m.w.win.Canvas().Focus(studs.left[1])
	studs.left[1].SetText("")
	m.keys("23,5")
	m.press(fyne.KeyReturn)
	name := m.w.boat.hull.Mounts[1].Name
	v := m.w.history.Now().Visit
	if got := v.Found(name).StudLeftMM; !got.Known || got.Value != 23.5 {
		t.Errorf("%s stands %+v", name, got)
	}
	m.press(fyne.KeyEscape)
	m.keys("z")
	m.keys("zinc soon")
	m.press(fyne.KeyReturn)
	m.w.Touched()
	m.keys("k")
	h := m.w.history.Now().Visit.HandedOver
	if h.Note != "zinc soon" || !h.NutsMarked || !m.w.handing.marked.Checked {
		t.Errorf("kept %+v", h)
	}
	m.w.undo()
	m.w.undo()
	if h = m.w.history.Now().Visit.HandedOver; h.Note != "" || h.NutsMarked || m.w.handing.marked.Checked {
		t.Errorf("after undo %+v", h)
	}
}

// TestProblemReportFromTheWindow holds what it says, and nothing of it is sent.
func TestProblemReportFromTheWindow(t *testing.T) {
	m := aboard(t, "first-job")
	m.w.settings.Folder = t.TempDir()
	m.w.Program = "aligner of this test"
	m.w.Faults = faults.In(t.TempDir())
	m.w.Faults.Begin(m.w.Program)
	m.w.fault("drawing", errors.New("out of paint"))
	m.w.askProblem()
	if m.w.win.Canvas().Overlays().Top() == nil {
		t.Fatal("not asked where to save it")
	}
	m.press(fyne.KeyReturn)
	if m.w.win.Canvas().Overlays().Top() != nil {
		t.Error("the question stays")
	}
	left, _ := os.ReadDir(m.w.settings.Folder)
	if len(left) != 1 || !strings.Contains(m.w.sentence.Text, left[0].Name()) {
		t.Fatalf("%d files, told %q", len(left), m.w.sentence.Text)
	}
	z, err := zip.OpenReader(filepath.Join(m.w.settings.Folder, left[0].Name()))
	if err != nil {
		t.Fatal(err)
	}
	defer z.Close()
	var names []string
	for _, f := range z.File {
		names = append(names, f.Name)
	}
	want := []string{faults.ReadMeFile, faults.AboutFile, faults.VisitFile, faults.HullFile, faults.FaultsFile}
	if strings.Join(names, " ") != strings.Join(want, " ") {
		t.Errorf("holds %v", names)
	}
	if text := m.w.insideProblem(); !strings.Contains(text, words.Say(words.ProblemInsideNot, nil)) {
		t.Errorf("says of itself %q", text)
	}
}
