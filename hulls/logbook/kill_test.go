package logbook

// This file tests the promise of the logbook: killed at any moment, every edit
// it told was kept is kept. A child process, this test's own program, begins or
// opens the logbook and pours edits into it; it is killed at random.

import (
	"bufio"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// pourInto has this program be the child that pours edits into a logbook.
const pourInto = "LOGBOOK_POUR_INTO"

func TestMain(m *testing.M) {
	if path := os.Getenv(pourInto); path != "" {
		if err := pour(path); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(1)
		}
		return
	}
	code := m.Run()
	if large != "" {
		os.RemoveAll(filepath.Dir(large))
	}
	os.Exit(code)
}

// pour tells each visit and edit on a line of its own once it is kept.
func pour(path string) error {
	b, err := Open(path, Write)
	if err != nil {
		return err
	}
	list, err := b.Hulls(HullQuery{})
	if err != nil {
		return err
	}
	if len(list) == 0 {
		h, err := hulls.Parse([]byte(os.Getenv(pourInto+"_HULL")), "hull")
		if err != nil {
			return err
		}
		if _, err := b.NewHull(h); err != nil {
			return err
		}
		if list, err = b.Hulls(HullQuery{}); err != nil {
			return err
		}
	}
	id, err := b.NewVisit(list[0].ID, "2026-05-14")
	if err != nil {
		return err
	}
	s, err := b.Begin(id)
	if err != nil {
		return err
	}
	fmt.Println("visit", id)
	for i := 1; ; i++ {
		if e := poured(i); e == nil {
			_, err = s.Undo()
		} else {
			err = s.Do(e)
		}
		if err != nil {
			return err
		}
		fmt.Println("edit", i)
	}
}

// poured is the edit with a number; nil undoes the one before.
func poured(i int) visit.Edit {
	switch {
	case i%11 == 10:
		return nil
	case i%5 == 4:
		return &visit.NoteVisit{Note: fmt.Sprint("note ", i)}
	}
	return &visit.TurnNut{Mount: "fore port", Steps: float64(i % 40), By: 1}
}

// life is what a child told before it was killed.
type life struct {
	visit VisitID // 0: none yet
	edits int
}

// liveFor runs a child and kills it after a while.
func liveFor(t *testing.T, path, hull string, d time.Duration) (l life) {
	t.Helper()
	child := exec.Command(os.Args[0])
	child.Env = append(os.Environ(), pourInto+"="+path, pourInto+"_HULL="+hull)
	var complaint strings.Builder
	child.Stderr = &complaint
	out, err := child.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := child.Start(); err != nil {
		t.Fatal(err)
	}
	kill := time.AfterFunc(d, func() { child.Process.Kill() }) // SIGKILL
	defer kill.Stop()
	lines := bufio.NewReader(out)
	for {
		line, err := lines.ReadString('\n')
		if err == io.EOF {
			break // a line without its end was being told: it does not count
		}
		if err != nil {
			t.Fatal(err)
		}
		n := 0
		what, rest, _ := strings.Cut(strings.TrimSpace(line), " ")
		if _, err := fmt.Sscan(rest, &n); err != nil {
			t.Fatalf("the child tells %q", line)
		}
		if what == "visit" {
			l.visit = VisitID(n)
		} else {
			l.edits = n
		}
	}
	child.Wait() // killed: an error is what is wanted
	if complaint.Len() > 0 {
		t.Errorf("the child complains: %s", complaint.String())
	}
	return l
}

const kills = 300

func TestKilledAtAnyMoment(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 300))
	folder := t.TempDir()
	hull := string(hulls.Encode(builtIn(t, "Eider")))
	common := filepath.Join(folder, FileName)
	lives := map[string][]life{}
	for i := range kills {
		path := common
		// Every fifth begins a logbook of its own, so that some are killed while
		// they make its tables.
		if i%5 == 0 {
			path = filepath.Join(folder, fmt.Sprintf("%d.db", i))
		}
		l := liveFor(t, path, hull, time.Duration(random.IntN(90_000))*time.Microsecond)
		lives[path] = append(lives[path], l)
		if path != common {
			holdLives(t, path, lives[path])
			os.Remove(path)
		}
	}
	holdLives(t, common, lives[common])
	told := 0
	early := 0
	for _, list := range lives {
		for _, l := range list {
			told += l.edits
			if l.visit == 0 {
				early++
			}
		}
	}
	t.Logf("%d kills, %d before a visit was begun; %d edits told, all kept", kills, early, told)
	if told < kills || early == kills {
		t.Errorf("only %d edits told: the children were killed too early to show anything", told)
	}
}

// holdLives opens what was killed and holds it against what was told.
func holdLives(t *testing.T, path string, lives []life) {
	t.Helper()
	b, err := Open(path, Write)
	if err != nil {
		t.Fatalf("after a kill it does not open: %v", err)
	}
	defer b.Close()
	if err := b.Check(t.Context()); err != nil {
		t.Fatal(err)
	}
	for _, l := range lives {
		if l.visit == 0 {
			continue
		}
		s, err := b.Begin(l.visit)
		if err != nil {
			t.Fatal(err)
		}
		kept := s.LastEdit()
		if kept < l.edits || kept > l.edits+1 {
			t.Errorf("visit %d: %d edits told, %d kept", l.visit, l.edits, kept)
		}
		want := visit.NewHistory(done(t))
		for i := 1; i <= kept; i++ {
			if e := poured(i); e == nil {
				want.Undo()
			} else if err := want.Do(e); err != nil {
				t.Fatal(err)
			}
		}
		if written(s.Now()) != written(want.Now()) {
			t.Errorf("visit %d: its %d edits come to another document", l.visit, kept)
		}
		d, err := b.Document(l.visit)
		if err != nil || written(d) != written(s.Now()) {
			t.Errorf("visit %d: from its snapshot it is another document (%v)", l.visit, err)
		}
	}
}
