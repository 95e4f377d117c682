package boats

// This file goes through a boat's past by keyboard.

import (
	"image"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"image/png"

	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
)

// pastOf adds a boat that was gauged twice, a nut having come down in between.
func pastOf(t *testing.T, b *logbook.Book) hulls.Hull {
	t.Helper()
	h := builtin.Hull(t, "Kittiwake")
	h.Name = "Plover"
	id, err := b.NewHull(h)
	if err != nil {
		t.Fatal(err)
	}
	// At 12, 3, 6 and 9 o'clock: no thinner leaf goes, the next does not.
	goes := [][4]float64{{1.5, 1.5, 1.5, 1.5}, {6, 3, 0, 3}}
	stops := [][4]float64{{2, 2, 2, 2}, {8, 4, 1.5, 4}}
	for i, date := range []string{"2025-05-01", "2026-05-01"} {
		v := visit.New("Plover", h).Visit
		v.Date, v.State = date, visit.State{Boat: "afloat", EngineHours: visit.Known(100 + 60*float64(i))}
		v.Mounts = []visit.MountFound{{Mount: "fore starboard", Nut: visit.Free, Slide: visit.Free, StudFoundMM: visit.Known(20 + 1.5*float64(i))}}
		g := visit.Gauging{Held: "seated"}
		for k := range 4 {
			leaf := visit.Leaf{ClockDeg: float64(90 * k), Stops: visit.Thou(stops[i][k])}
			if goes[i][k] > 0 {
				leaf.Goes = visit.Thou(goes[i][k])
			}
			g.Readings = append(g.Readings, leaf)
		}
		v.Events = []visit.Event{{Gauging: &g}}
		if _, err := b.EnterVisit(id, v); err != nil {
			t.Fatal(err)
		}
	}
	return h
}

func TestWhatMovedIsOneKeyFromHerVisits(t *testing.T) {
	for language, want := range map[string][]string{
		"en": {"Since 2025-05-01, 365 days, 60 engine hours:", "fore starboard +1.5 mm", ": the nut of fore starboard backed off by about"},
		"de": {"Seit 2025-05-01, 365 Tage, 60 Motorstunden:", ": die Mutter von STB vorn hat sich um etwa"},
	} {
		b := shelfOf(t)
		pastOf(t, b)
		p, got := opened(t, b, language)
		test.Type(p.words, "plover")
		press(p, fyne.KeyReturn, fyne.KeyRight)
		if p.past == nil || p.past.count() != 2 {
			t.Fatal("her past does not stand")
		}
		for _, line := range want {
			if !strings.Contains(p.past.text.Text, line) {
				t.Errorf("%s: no %q in\n%s", language, line, p.past.text.Text)
			}
		}
		press(p, fyne.KeyDown)
		if strings.Contains(p.past.text.Text, "365") || !strings.Contains(p.past.text.Text, "2025-05-01") {
			t.Errorf("the first visit says\n%s", p.past.text.Text)
		}
		press(p, fyne.KeyReturn)
		if len(got.opened) != 1 || int64(got.opened[0]) != p.past.past.Entries[0].Number {
			t.Errorf("opened %v", got.opened)
		}
		press(p, fyne.KeyEscape)
		if p.past != nil || got.escapes != 0 || p.boat.line.Name != "Plover" {
			t.Error("Escape did not lead back to the list")
		}
		press(p, fyne.KeyEscape)
		if got.escapes != 1 {
			t.Error("Escape in the list did not leave the page")
		}
	}
}

func TestPlotsOnThePage(t *testing.T) {
	b := shelfOf(t)
	pastOf(t, b)
	p, _ := opened(t, b, "en")
	test.Type(p.words, "plover")
	press(p, fyne.KeyReturn, fyne.KeyRight)
	seen := map[string]bool{}
	for range whichPlot {
		pixels := p.past.plots.pixels(600, 400).(*image.RGBA)
		if pixels.Stride != 4*600 || seen[string(pixels.Pix)] {
			t.Errorf("%s: as another one, or stride %d", p.past.plots.which.Text, pixels.Stride)
		}
		seen[string(pixels.Pix)] = true
		p.desk.Window.Canvas().Focus(p.past.plots.which)
		press(p, fyne.KeyReturn)
	}
	p.desk.Window.Canvas().Focus(p.past.plots.hours)
	press(p, fyne.KeyReturn)
	if !p.past.plots.drawing.ByHours || seen[string(p.past.plots.pixels(600, 400).(*image.RGBA).Pix)] {
		t.Error("against hours as against dates")
	}
}

func TestPhotosAreAttachedToTheVisitChosen(t *testing.T) {
	b := shelfOf(t)
	p, _ := opened(t, b, "en")
	test.Type(p.words, "knot")
	press(p, fyne.KeyReturn, fyne.KeyRight)
	file := filepath.Join(t.TempDir(), "shot.png")
	f, err := os.Create(file)
	if err != nil {
		t.Fatal(err)
	}
	if err := png.Encode(f, image.NewGray(image.Rect(0, 0, 60, 40))); err != nil {
		t.Fatal(err)
	}
	f.Close()
	if !p.Dropped([]string{file}) {
		t.Fatal("not taken")
	}
	latest := logbook.VisitID(p.past.past.Entries[1].Number)
	list, err := b.Photos(latest)
	if err != nil || len(list) != 1 || list[0].Caption != "shot" {
		t.Errorf("%+v, %v", list, err)
	}
	p.leavePast()
	if p.boat.lines[0].Photos != 1 {
		t.Error("the list does not know of the photo")
	}
	if p.Dropped([]string{file}) {
		t.Error("a photo dropped on the list is nobody's")
	}
}
