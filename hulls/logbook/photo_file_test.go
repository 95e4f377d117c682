package logbook

// This file tests photos taken from files.

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestAPhotoFromAFile(t *testing.T) {
	b := inFolder(t)
	_, id := aVisit(t, b, "Eider")
	path := filepath.Join(t.TempDir(), "aft port.jpeg")
	if err := os.WriteFile(path, asJPEG(t, quarters(40, 30)), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ given, want string }{{"", "aft port"}, {"the mount", "the mount"}} {
		if _, err := b.AddPhotoFile(id, path, c.given); err != nil {
			t.Fatal(err)
		}
		list, err := b.Photos(id)
		if err != nil || len(list) != 1 || list[0].Caption != c.want {
			t.Errorf("%+v, %v", list, err)
		}
	}
	for _, bad := range []string{filepath.Join(t.TempDir(), "none.jpg"), t.TempDir()} {
		if _, err := b.AddPhotoFile(id, bad, ""); !errors.Is(err, ErrRefused) || !strings.Contains(err.Error(), bad) {
			t.Errorf("%s: %v", bad, err)
		}
	}
	if got := captionOf("/x/" + strings.Repeat("ä", 300) + ".png"); len(got) > longestText || len(got) < longestText-2 {
		t.Errorf("a caption of %d bytes", len(got))
	}
}
