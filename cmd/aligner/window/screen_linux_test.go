package window

// This file drives the real program on a screen of its own: a mount dragged
// with the mouse comes to what the mechanics say, undo leads back, and keys do
// the same. It needs Xvfb and xdotool, which make test installs.

import (
	"bufio"
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"aligner/scene"
)

// screen is a virtual screen with the program on it.
type screen struct {
	t       *testing.T
	display string
}

// virtual starts a screen that ends with the test.
func virtual(t *testing.T) *screen {
	t.Helper()
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	x := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", "1280x800x24")
	x.ExtraFiles = []*os.File{w}
	if err := x.Start(); err != nil {
		t.Fatalf("no virtual screen (%v): make test installs xvfb and xdotool", err)
	}
	t.Cleanup(func() { x.Process.Kill(); x.Wait() })
	w.Close()
	line, err := bufio.NewReader(r).ReadString('\n')
	if err != nil {
		t.Fatal(err)
	}
	return &screen{t, ":" + strings.TrimSpace(line)}
}

// command is one to be run on the screen.
func (s *screen) command(name string, args ...string) *exec.Cmd {
	c := exec.Command(name, args...)
	c.Env = append(os.Environ(), "DISPLAY="+s.display, "WAYLAND_DISPLAY=", "FYNE_SCALE=1", "LANG=en_US.UTF-8")
	return c
}

// start starts a program that runs until the test's end. What it said is told where
// the test fails: a window that does not come up has its reason.
func (s *screen) start(run *exec.Cmd) {
	s.t.Helper()
	var said bytes.Buffer
	run.Stdout, run.Stderr = &said, &said
	if err := run.Start(); err != nil {
		s.t.Fatal(err)
	}
	s.t.Cleanup(func() {
		run.Process.Kill()
		run.Wait()
		if s.t.Failed() {
			s.t.Logf("the program ended with %v and said %q", run.ProcessState, said.String())
		}
	})
}

// hand runs xdotool.
func (s *screen) hand(args ...string) string {
	s.t.Helper()
	out, err := s.command("xdotool", args...).CombinedOutput()
	if err != nil {
		s.t.Fatalf("xdotool %v: %v: %s", args, err, out)
	}
	return strings.TrimSpace(string(out))
}

// waitTitle waits until the window's title satisfies wanted.
func (s *screen) waitTitle(what string, wanted func(string) bool) string {
	s.t.Helper()
	var title string
	for range 1200 { // a minute: the machine may be busy
		out, err := s.command("xdotool", "search", "--onlyvisible", "--name", "^aligner: ", "getwindowname").Output()
		if title = strings.TrimSpace(string(out)); err == nil && wanted(title) {
			return title
		}
		time.Sleep(50 * time.Millisecond)
	}
	s.t.Fatalf("%s: the title is %q", what, title)
	return ""
}

// handlePlace is where the first mount's nut is taken on the screen: the same
// window laid out without one says.
func handlePlace(t *testing.T) (x, y int) {
	w := opened(t, "Eider")
	w.win.Resize(fyne.NewSize(1280, 800))
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(w.picture)
	s := w.picture.Size()
	w.picture.Paint(int(s.Width), int(s.Height))
	for _, h := range w.picture.Model().Handles() {
		if h.ID == scene.HandleOf(0, scene.Vertical) {
			px, py, _, _ := w.picture.Model().Camera(w.picture.State.View).Project(int(s.Width), int(s.Height), h.At)
			return int(at.X) + int(px), int(at.Y) + int(py)
		}
	}
	t.Fatal("no handle")
	return 0, 0
}

func TestAMountDraggedOnARealScreen(t *testing.T) {
	program := filepath.Join(t.TempDir(), "aligner")
	if out, err := exec.Command("go", "build", "-o", program, "aligner/cmd/aligner").CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	s := virtual(t)
	run := s.command(program, "Eider")
	run.Env = append(run.Env, "HOME="+t.TempDir(), "XDG_CONFIG_HOME="+t.TempDir())
	s.start(run)
	drawn := s.waitTitle("start", func(title string) bool { return strings.Contains(title, "Eider, spread") })
	time.Sleep(time.Second) // the first picture, and the keyboard

	x, y := handlePlace(t)
	s.hand("mousemove", fmt.Sprint(x), fmt.Sprint(y), "mousedown", "1")
	for i := range 10 {
		s.hand("mousemove", fmt.Sprint(x), fmt.Sprint(y-4*(i+1)))
	}
	s.hand("mouseup", "1")
	dragged := s.waitTitle("drag", func(title string) bool { return title != drawn && flatsOf(t, title) > 0 })
	flats := flatsOf(t, dragged)
	s.hand("key", "ctrl+z")
	s.waitTitle("undo", func(title string) bool { return title == drawn })
	for range flats {
		s.hand("key", "Up")
	}
	s.waitTitle("keys", func(title string) bool { return title == dragged })
}

// flatsOf is at how many flats of the fore port nut the mechanics say the
// title's spread, or 0.
func flatsOf(t *testing.T, title string) int {
	_, h, err := openHull("Eider")
	if err != nil {
		t.Fatal(err)
	}
	for flats := 1; flats <= 40; flats++ {
		lifts := make([]float64, len(h.Mounts))
		lifts[0] = float64(flats) * h.Mounts[0].LiftPerStepMM()
		if strings.HasSuffix(title, "spread "+spreadOf(t, "Eider", lifts)) {
			return flats
		}
	}
	return 0
}
