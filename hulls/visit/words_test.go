package visit

// This file holds that every edit can be told: its words are among the
// project's sentences, and fill every gap of them.

import (
	"strings"
	"testing"

	"aligner/assets/words"
)

func TestEveryEditHasItsSentence(t *testing.T) {
	for _, e := range edits(t) {
		id, args := e.Words()
		if s := words.Say(words.ID(id), args); s == "" || strings.HasPrefix(s, "["+id) || strings.Contains(s, "<no value>") {
			t.Errorf("%s is told as %q", e.Name(), s)
		}
	}
}
