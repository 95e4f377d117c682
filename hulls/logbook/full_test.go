package logbook

// This file tests a disk that is full, and one that cannot be written.

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"aligner/hulls/visit"
)

// fill pours edits in until one is refused, which must be for want of room.
// Everything told as kept must be there, in this program and in the file.
func fill(t *testing.T, b *Book, id VisitID) *Session {
	t.Helper()
	s := at(t, b, id)
	kept := 0
	for i := range 100_000 {
		before := written(s.Now())
		err := s.Do(&visit.NoteVisit{Note: fmt.Sprint(i, strings.Repeat(" note", 300))})
		if err != nil {
			wantTrouble(t, err, ErrFull)
			if written(s.Now()) != before {
				t.Error("the document changed although there was no room to keep it")
			}
			break
		}
		kept++
	}
	if kept < 10 || kept > 5000 {
		t.Fatalf("%d edits before there was no room", kept)
	}
	holdFull(t, b, id, s, kept)
	return s
}

func holdFull(t *testing.T, b *Book, id VisitID, s *Session, kept int) {
	t.Helper()
	if again := at(t, b, id); again.LastEdit() != kept || written(again.Now()) != written(s.Now()) {
		t.Errorf("%d of %d edits are there", again.LastEdit(), kept)
	}
	if err := b.Check(t.Context()); err != nil {
		t.Error(err)
	}
}

// A file that may not grow: SQLite tells it as it tells a full disk.
func TestNoRoom(t *testing.T) {
	path := filepath.Join(t.TempDir(), FileName)
	b, err := open(path, Write, []string{"max_page_count(120)"})
	if err != nil {
		t.Fatal(err)
	}
	_, id := aVisit(t, b, "Eider")
	s := fill(t, b, id)
	_, err = b.AddPhoto(id, noise(t, 1600, 1200), "no room for it")
	wantTrouble(t, err, ErrFull)
	if _, err := s.Undo(); err != nil { // a small edit may still fit; either way it is told
		wantTrouble(t, err, ErrFull)
	}
	if err := b.Close(); err != nil {
		t.Fatal(err)
	}
	b = openAt(t, path, Write) // there is room again
	s = at(t, b, id)
	do(t, s, &visit.NoteVisit{Note: "room again"})
	holdFull(t, b, id, s, s.LastEdit())
}

// mounted makes a disk in memory of a size, if this system and user may.
func mounted(t *testing.T, options string) (folder string, ok bool) {
	t.Helper()
	if runtime.GOOS != "linux" || os.Getuid() != 0 {
		t.Log("only root on Linux can make a small disk: tried by a bound on the file's pages alone")
		return "", false
	}
	folder = t.TempDir()
	if out, err := exec.Command("mount", "-t", "tmpfs", "-o", options, "tmpfs", folder).CombinedOutput(); err != nil {
		t.Logf("no small disk can be made here (%v: %s): tried by a bound on the file's pages alone", err, out)
		return "", false
	}
	t.Cleanup(func() {
		if out, err := exec.Command("umount", folder).CombinedOutput(); err != nil {
			t.Errorf("umount: %v: %s", err, out)
		}
	})
	return folder, true
}

func TestDiskFull(t *testing.T) {
	folder, ok := mounted(t, "size=1m")
	if !ok {
		return
	}
	path := filepath.Join(folder, FileName)
	b, err := Open(path, Write)
	if err != nil {
		t.Fatal(err)
	}
	defer b.Close()
	_, id := aVisit(t, b, "Eider")
	fill(t, b, id)
	wantTrouble(t, b.Backup(t.Context(), filepath.Join(folder, "backup.db")), ErrFull)
	if left, _ := filepath.Glob(filepath.Join(folder, "backup.db*")); len(left) > 0 {
		t.Errorf("a backup that did not fit left %v", left)
	}
	elsewhere := filepath.Join(t.TempDir(), "backup.db")
	if err := b.Backup(t.Context(), elsewhere); err != nil {
		t.Fatalf("a backup to another disk: %v", err)
	}
	want, err := b.Document(id)
	if err != nil {
		t.Fatal(err)
	}
	if got, err := openAt(t, elsewhere, Read).Document(id); err != nil || written(got) != written(want) {
		t.Errorf("the backup differs (%v)", err)
	}
	if err := b.Close(); err != nil {
		t.Fatal(err)
	}
	r := openAt(t, path, Read)
	if got, err := r.Document(id); err != nil || written(got) != written(want) {
		t.Errorf("opened again on the full disk it differs (%v)", err)
	}
}

// A disk with no room at all: no logbook can begin there, and that is said.
func TestDiskFullFromTheBeginning(t *testing.T) {
	folder, ok := mounted(t, "size=64k")
	if !ok {
		return
	}
	path := filepath.Join(folder, FileName)
	_, err := Open(path, Write)
	wantTrouble(t, err, ErrFull)
	os.WriteFile(filepath.Join(folder, "rest"), make([]byte, 64<<10), 0o600) // as much as goes
	_, err = Open(path, Write)
	wantTrouble(t, err, ErrFull)
}

// On a disk that cannot be written a log ahead of the file does not open: a copy
// is read, whether the last writer closed the logbook or was killed.
func TestReadOnlyDisk(t *testing.T) {
	for _, closed := range []bool{true, false} {
		folder, ok := mounted(t, "size=8m")
		if !ok {
			return
		}
		path := filepath.Join(folder, FileName)
		source := inFolder(t)
		_, id := aVisit(t, source, "Eider")
		s := at(t, source, id)
		do(t, s, day()...)
		if closed {
			source.Close()
		}
		if err := copyBook(source.Path(), path); err != nil {
			t.Fatal(err)
		}
		if out, err := exec.Command("mount", "-o", "remount,ro", folder).CombinedOutput(); err != nil {
			t.Fatalf("%v: %s", err, out)
		}
		r := openAt(t, path, Read)
		d, err := r.Document(id)
		if err != nil || written(d) != written(s.Now()) {
			t.Errorf("closed %v: the document differs (%v)", closed, err)
		}
		if !r.Copied() {
			t.Errorf("closed %v: no copy is read", closed)
		}
		if err := r.Check(t.Context()); err != nil {
			t.Error(err)
		}
		_, err = Open(path, Write)
		wantTrouble(t, err, ErrReadOnly)
		_, err = Open(filepath.Join(folder, "new.db"), Write)
		wantTrouble(t, err, ErrReadOnly)
		wantTrouble(t, r.Backup(t.Context(), filepath.Join(folder, "backup.db")), ErrReadOnly)
		if err := r.Close(); err != nil {
			t.Error(err)
		}
	}
}
