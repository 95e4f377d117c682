package outfile

// This file checks that a failure leaves what was there, and nothing beside it.

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"testing"
)

func TestAFailureLeavesWhatWasThere(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "page.pdf")
	put := func(text string, err error) error {
		return Write(path, func(w io.Writer) error { io.WriteString(w, text); return err })
	}
	if err := put("first", nil); err != nil {
		t.Fatal(err)
	}
	if err := put("second", errors.New("the disk is full")); err == nil {
		t.Error("a failure is not told")
	}
	if err := Write(filepath.Join(dir, "no such folder", "x"), func(io.Writer) error { return nil }); err == nil {
		t.Error("a folder that is not there is not told")
	}
	got, _ := os.ReadFile(path)
	left, _ := os.ReadDir(dir)
	if string(got) != "first" || len(left) != 1 {
		t.Errorf("left %q and %d files", got, len(left))
	}
}
