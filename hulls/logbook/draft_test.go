package logbook

// Drafts come back as they were, whatever does not fit in them, each under its own
// name, until they are dropped.

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit/builtin"
)

func TestDrafts(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "yard [1]*") // what patterns would take for more
	if err := os.Mkdir(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	b, err := Open(filepath.Join(dir, "book.db"), Write)
	if err != nil {
		t.Fatal(err)
	}
	defer b.Close()
	of, other := DraftOf(17), NewDraftID()
	if of.Hull() != 17 || other.Hull() != 0 || NewDraftID() == other {
		t.Errorf("%s is of %d, %s of %d", of, of.Hull(), other, other.Hull())
	}
	if _, ok, err := b.Draft(of); ok || err != nil || len(b.Drafts()) > 0 {
		t.Fatalf("a draft nobody made: %v, %v, %v", ok, err, b.Drafts())
	}
	h := builtin.Hull(t, "Kittiwake")
	h.Bearings[0].AtMM = -9000 // behind the shaft: no boat yet
	wren := builtin.Hull(t, "Wren")
	if err := b.KeepDraft(of, h); err != nil {
		t.Fatal(err)
	}
	if err := b.KeepDraft(other, wren); err != nil {
		t.Fatal(err)
	}
	for id, want := range map[DraftID]hulls.Hull{of: h, other: wren} {
		back, ok, err := b.Draft(id)
		if err != nil || !ok || !bytes.Equal(hulls.Encode(back), hulls.Encode(want)) {
			t.Errorf("%s: %v, %v: another draft", id, ok, err)
		}
	}
	if all := b.Drafts(); len(all) != 2 {
		t.Errorf("%v", all)
	}
	if err := os.WriteFile(b.draftPath(of), []byte("{"), 0o600); err != nil {
		t.Fatal(err)
	}
	if _, ok, err := b.Draft(of); ok || err == nil {
		t.Error("a damaged draft was read")
	}
	if all := b.Drafts(); len(all) != 1 || all[0] != other {
		t.Errorf("%v with one damaged", all)
	}
	for range 2 {
		if err := b.DropDraft(other); err != nil {
			t.Error(err)
		}
	}
	if _, ok, _ := b.Draft(other); ok {
		t.Error("dropped and still there")
	}
	if path := b.draftPath("../../etc/x"); filepath.Dir(path) != dir {
		t.Errorf("a draft would lie at %s", path)
	}
}
