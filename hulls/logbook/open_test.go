package logbook

// This file tests what may be opened, and that what may not is left as it was.

import (
	"bytes"
	"database/sql"
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"testing"

	"aligner/hulls/visit"
)

// sqliteFile makes another program's database.
func sqliteFile(t *testing.T, path string, statements ...string) {
	t.Helper()
	db, err := sql.Open("sqlite", fileURI(path, nil))
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	for _, s := range statements {
		if _, err := db.Exec(s); err != nil {
			t.Fatal(err)
		}
	}
}

func TestWhatIsRefused(t *testing.T) {
	sound := inFolder(t)
	_, id := aVisit(t, sound, "Eider")
	do(t, at(t, sound, id), day()...)
	sound.Close()
	book, err := os.ReadFile(sound.Path())
	if err != nil {
		t.Fatal(err)
	}
	for name, c := range map[string]struct {
		make  func(path string)
		write error // nil: opens
		read  error
	}{
		"missing":   {func(string) {}, nil, ErrMissing},
		"empty":     {func(p string) { os.WriteFile(p, nil, 0o600) }, nil, ErrMissing},
		"a text":    {func(p string) { os.WriteFile(p, []byte("dear diary"), 0o600) }, ErrStranger, ErrStranger},
		"a folder":  {func(p string) { os.Mkdir(p, 0o700) }, ErrStranger, ErrStranger},
		"no folder": {func(p string) { os.Remove(filepath.Dir(p)) }, ErrMissing, ErrMissing},
		"another's tables": {func(p string) { sqliteFile(t, p, "CREATE TABLE notes (a)") },
			ErrStranger, ErrStranger},
		"another's tables in a log": {func(p string) { sqliteFile(t, p, "PRAGMA journal_mode = wal", "CREATE TABLE notes (a)") },
			ErrStranger, ErrStranger},
		"another's id": {func(p string) { sqliteFile(t, p, "PRAGMA application_id = 7", "CREATE TABLE hulls (a)") },
			ErrStranger, ErrStranger},
		"our tables, no id": {func(p string) { sqliteFile(t, p, first) }, ErrStranger, ErrStranger},
		"a later version": {func(p string) {
			os.WriteFile(p, book, 0o600)
			sqliteFile(t, p, "PRAGMA user_version = 99")
		}, ErrNewer, ErrNewer},
		"version nought": {func(p string) {
			os.WriteFile(p, book, 0o600)
			sqliteFile(t, p, "PRAGMA user_version = 0")
		}, ErrStranger, ErrStranger},
		"first page lost": {func(p string) { os.WriteFile(p, append(make([]byte, pageBytes), book[pageBytes:]...), 0o600) },
			ErrDamaged, ErrDamaged},
		"a page of tables lost": {func(p string) {
			torn := bytes.Clone(book)
			copy(torn[pageBytes+8:], bytes.Repeat([]byte{0xa5}, len(torn)-pageBytes-8))
			os.WriteFile(p, torn, 0o600)
		}, ErrDamaged, ErrDamaged},
	} {
		t.Run(name, func(t *testing.T) {
			for mode, want := range map[Mode]error{Write: c.write, Read: c.read} {
				folder := filepath.Join(t.TempDir(), "folder")
				if err := os.Mkdir(folder, 0o700); err != nil {
					t.Fatal(err)
				}
				path := filepath.Join(folder, FileName)
				c.make(path)
				before, _ := os.ReadFile(path)
				b, err := Open(path, mode)
				if want == nil {
					if err != nil {
						t.Fatalf("mode %d: %v", mode, err)
					}
					b.Close()
					continue
				}
				wantTrouble(t, err, want)
				if err != nil && !strings.Contains(err.Error(), path) {
					t.Errorf("mode %d: %q does not name the file", mode, err)
				}
				if after, _ := os.ReadFile(path); !bytes.Equal(before, after) {
					t.Errorf("mode %d: the file was changed", mode)
				}
			}
		})
	}
}

func TestDamagedPageIsTold(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	do(t, at(t, b, id), day()...)
	root := 0
	if err := b.db.QueryRow("SELECT rootpage FROM sqlite_schema WHERE name = 'hull_versions'").Scan(&root); err != nil {
		t.Fatal(err)
	}
	b.Close()
	f, err := os.OpenFile(b.Path(), os.O_RDWR, 0)
	if err != nil {
		t.Fatal(err)
	}
	f.WriteAt(bytes.Repeat([]byte{0xa5}, pageBytes), int64(root-1)*pageBytes)
	f.Close()
	b = openAt(t, b.Path(), Write)
	_, err = b.Document(id)
	wantTrouble(t, err, ErrDamaged)
	if !strings.Contains(err.Error(), "hulls salvage") {
		t.Errorf("%q does not say what to do", err)
	}
	wantTrouble(t, b.Check(t.Context()), ErrDamaged)
}

// Two programs that begin a logbook at once begin one.
func TestBegunByTwoAtOnce(t *testing.T) {
	for range 10 {
		path := filepath.Join(t.TempDir(), FileName)
		var all sync.WaitGroup
		for range 4 {
			all.Add(1)
			go func() {
				defer all.Done()
				b, err := Open(path, Write)
				if err != nil {
					t.Error(err)
					return
				}
				defer b.Close()
				if _, err := b.NewHull(builtIn(t, "Wren")); err != nil {
					t.Error(err)
				}
			}()
		}
		all.Wait()
		if n, err := openAt(t, path, Read).CountHulls(""); err != nil || n != 4 {
			t.Fatalf("%d hulls (%v), want 4", n, err)
		}
	}
}

// A migration that fails leaves the version before it, whole.
func TestMigrationsAreWholeOrNot(t *testing.T) {
	b := inFolder(t)
	aVisit(t, b, "Eider")
	before := contents(t, b)
	bad := append(append([]string{}, migrations...), "CREATE TABLE second (a) STRICT; CREATE TABLE second (a) STRICT")
	if err := b.migrate(bad); err == nil || !strings.Contains(err.Error(), "migration 2") {
		t.Errorf("a bad script: %v", err)
	}
	if contents(t, b) != before || rowsOf(t, b, "sqlite_schema WHERE name = 'second'") != 0 {
		t.Error("a bad script left something behind")
	}
	good := append(append([]string{}, migrations...), "CREATE TABLE second (a INTEGER) STRICT", "CREATE TABLE third (a INTEGER) STRICT")
	if err := b.migrate(good); err != nil {
		t.Fatal(err)
	}
	if err := b.migrate(good); err != nil { // nothing to do
		t.Fatal(err)
	}
	if contents(t, b) != before {
		t.Error("migrating changed what is kept")
	}
	b.Close()
	for _, mode := range []Mode{Write, Read} {
		_, err := Open(b.Path(), mode)
		wantTrouble(t, err, ErrNewer) // for this program, which knows neither
	}
}

// While one program writes, another reads; it sees each edit at once and can
// change nothing.
func TestReadWhileAnotherWrites(t *testing.T) {
	b := inFolder(t)
	hull, id := aVisit(t, b, "Eider")
	r := openAt(t, b.Path(), Read)
	s := at(t, b, id)
	for _, e := range day() {
		do(t, s, e)
		if d, err := r.Document(id); err != nil || written(d) != written(s.Now()) {
			t.Fatalf("%s does not show (%v)", e.Name(), err)
		}
	}
	if r.Writable() || r.Copied() {
		t.Errorf("open to write: %v, a copy: %v", r.Writable(), r.Copied())
	}
	_, err := r.NewHull(builtIn(t, "Wren"))
	wantTrouble(t, err, ErrReadOnly)
	wantTrouble(t, r.SaveHull(hull, builtIn(t, "Wren")), ErrReadOnly)
	wantTrouble(t, at(t, r, id).Do(&visit.NoteVisit{Note: "no"}), ErrReadOnly)
	if _, err := r.db.Exec("DELETE FROM settings"); err == nil {
		t.Error("a statement that writes went through")
	}
	if err := r.Backup(t.Context(), b.Path()+".copy"); err != nil {
		t.Errorf("a backup while reading: %v", err)
	}
}

// A copy is read where the place is read-only: the log ahead of the file too.
func TestCopyOfABookInUse(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	s := at(t, b, id)
	do(t, s, day()...)
	r, err := openCopy(b.Path()) // the writer has not closed: all of it is in the log
	if err != nil {
		t.Fatal(err)
	}
	if d, err := r.Document(id); err != nil || written(d) != written(s.Now()) || !r.Copied() || r.Path() != b.Path() {
		t.Errorf("the copy of %s differs (%v)", r.Path(), err)
	}
	folder := r.copy
	if err := r.Close(); err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(folder); !errors.Is(err, os.ErrNotExist) {
		t.Errorf("the copy is left behind (%v)", err)
	}
}

func TestDefaultPlace(t *testing.T) {
	home := t.TempDir()
	t.Setenv("HOME", home)
	if runtime.GOOS != "linux" {
		t.Log("the default place of this system is that of its own functions")
		return
	}
	for _, c := range []struct{ data, want string }{
		{"", filepath.Join(home, ".local", "share")},
		{"relative", filepath.Join(home, ".local", "share")},
		{"/srv/data", "/srv/data"},
	} {
		got, err := dataFolder("linux", func(string) string { return c.data })
		if err != nil || got != c.want {
			t.Errorf("XDG_DATA_HOME=%q: %q (%v), want %q", c.data, got, err, c.want)
		}
	}
	t.Setenv("XDG_DATA_HOME", filepath.Join(t.TempDir(), "new"))
	path, err := DefaultPath()
	if err != nil {
		t.Fatal(err)
	}
	b := openAt(t, path, Write) // makes the folder
	info, err := os.Stat(filepath.Dir(b.Path()))
	if err != nil || info.Mode().Perm() != 0o700 {
		t.Errorf("the folder is %v (%v), want for its owner alone", info.Mode(), err)
	}
	if info, err = os.Stat(path); err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("the file is %v (%v), want for its owner alone", info.Mode(), err)
	}
}
