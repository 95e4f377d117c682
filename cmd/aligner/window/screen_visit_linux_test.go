package window

// This file enters a worked visit into the real program on a screen of its own,
// by mouse and keys: the same hands do it in a window without a screen, and what
// they did is done again by xdotool. What the logbook holds afterwards comes to
// the estimate of the file.

import (
	"fmt"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"aligner/hulls/logbook"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
)

// tilTightened is a visit up to the first thing tightened, which has tests of
// its own.
func tilTightened(d visit.Document) visit.Document {
	for i, e := range d.Visit.Events {
		if e.Fasten != nil {
			d.Visit.Events = d.Visit.Events[:i]
			break
		}
	}
	return d
}

// again does deeds on the screen.
func (s *screen) again(deeds []deed) {
	s.t.Helper()
	for _, d := range deeds {
		switch {
		case d.wait:
			time.Sleep(3 * time.Second)
		case d.at != nil:
			s.hand("mousemove", fmt.Sprint(int(d.at.X)), fmt.Sprint(int(d.at.Y)), "click", "1")
			time.Sleep(500 * time.Millisecond)
		case d.keys != nil:
			s.hand(append([]string{"key", "--delay", "25"}, d.keys...)...)
		default:
			s.hand("type", "--delay", "25", "--", d.text)
		}
	}
}

func TestAVisitOnARealScreen(t *testing.T) {
	file := tilTightened(builtin.Visit(t, "first-job"))
	twin := opened(t, file.Hull.Name)
	twin.win.Resize(fyne.NewSize(1280, 800))
	h := &hands{t: t, w: twin, mouse: true}
	h.click(twin.stageStrip.buttons[stageBegin])
	h.begin(&file.Visit)
	h.click(twin.stageStrip.buttons[stageLook])
	h.lookOver(&file.Visit)
	h.click(twin.stageStrip.buttons[stageGauge])
	for _, e := range file.Visit.Events {
		if e.Gauging != nil {
			h.gauging(e.Gauging)
		} else if !h.move(e.Move) {
			t.Fatal("the plan has no step to put the move against")
		}
	}
	sameVisit(t, twin, &file)

	program := filepath.Join(t.TempDir(), "aligner")
	if out, err := exec.Command("go", "build", "-o", program, "aligner/cmd/aligner").CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	s := virtual(t)
	run := s.command(program, file.Hull.Name)
	data := t.TempDir()
	run.Env = append(run.Env, "HOME="+t.TempDir(), "XDG_CONFIG_HOME="+t.TempDir(), "XDG_DATA_HOME="+data)
	s.start(run)
	s.waitTitle("start", func(title string) bool { return strings.Contains(title, file.Hull.Name+", spread") })
	time.Sleep(2 * time.Second) // the first picture, and the keyboard
	s.again(h.did)
	time.Sleep(3 * time.Second)
	run.Process.Kill() // everything shown is on the disk before it is shown
	run.Wait()
	kept := latest(t, filepath.Join(data, "aligner", logbook.FileName))
	if n := len(kept.Visit.Events); n != len(file.Visit.Events) || !kept.Visit.CautionsMinded || len(kept.Visit.LookOver) < len(file.Visit.LookOver) {
		t.Errorf("kept %d events of %d, %d findings", n, len(file.Visit.Events), len(kept.Visit.LookOver))
	}
	if kept.Visit.State != file.Visit.State {
		t.Errorf("kept %+v", kept.Visit.State)
	}
	sameEstimate(t, estimateOf(t, &kept), &file)
}

// latest is the document of the visit worked on last.
func latest(t *testing.T, path string) visit.Document {
	t.Helper()
	b, err := logbook.Open(path, logbook.Write)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { b.Close() })
	id, ok, err := b.Latest()
	if err != nil || !ok {
		t.Fatalf("no visit kept: %v", err)
	}
	session, err := b.Begin(id)
	if err != nil {
		t.Fatal(err)
	}
	return session.Now()
}
