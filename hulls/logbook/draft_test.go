package logbook

// A draft comes back as it was, whatever does not fit in it, until it is dropped.

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit/builtin"
)

func TestDraft(t *testing.T) {
	b, err := Open(filepath.Join(t.TempDir(), "book.db"), Write)
	if err != nil {
		t.Fatal(err)
	}
	defer b.Close()
	if _, ok, err := b.Draft(); ok || err != nil {
		t.Fatalf("a draft nobody made: %v, %v", ok, err)
	}
	h := builtin.Hull(t, "Kittiwake")
	h.Bearings[0].AtMM = -9000 // behind the shaft: no boat yet
	if err := b.KeepDraft(h); err != nil {
		t.Fatal(err)
	}
	back, ok, err := b.Draft()
	if err != nil || !ok || !bytes.Equal(hulls.Encode(back), hulls.Encode(h)) {
		t.Errorf("%v, %v: another draft", ok, err)
	}
	if err := os.WriteFile(b.draftPath(), []byte("{"), 0o600); err != nil {
		t.Fatal(err)
	}
	if _, ok, err := b.Draft(); ok || err == nil {
		t.Error("a damaged draft was read")
	}
	for range 2 {
		if err := b.DropDraft(); err != nil {
			t.Error(err)
		}
	}
	if _, ok, _ := b.Draft(); ok {
		t.Error("dropped and still there")
	}
}
