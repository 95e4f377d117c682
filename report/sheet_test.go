package report

// Every kind of sheet of every built-in visit: sound, titled, fonts in it, the
// same bytes twice.

import (
	"bytes"
	"fmt"
	"regexp"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/report/paper"
)

// TestEverySheetOfEveryVisit is held to qpdf, pdfinfo and pdffonts.
func TestEverySheetOfEveryVisit(t *testing.T) {
	for _, name := range assets.VisitNames() {
		for _, kind := range Kinds {
			t.Run(name+" "+string(kind), func(t *testing.T) {
				d := document(t, name)
				if kind == Class {
					d = Until(d, BeforeMoving(&d.Visit))
				}
				in := worked(t, d)
				size := paper.A4
				if len(name)%2 == 0 {
					size = paper.Letter
				}
				o := Options{Kind: kind, Size: size, Quick: name != "v-drive"}
				pdf := made(t, in, o)
				sound(t, pdf, size)
				// Two boats' are made twice, one of them with soft shadows.
				twice := name == "v-drive" || name == "first-job"
				if twice && !bytes.Equal(pdf, made(t, in, o)) {
					t.Error("made twice, it is not the same")
				}
				info := tool(t, pdf, "pdfinfo", "FILE")
				if want := regexp.MustCompile(`Title: +.*` + d.Hull.Name + `, ` + d.Visit.Date); !want.MatchString(info) {
					t.Errorf("title: %s", info)
				}
				if want := fmt.Sprintf(`Pages: +%d\n`, Pages(pdf)); !regexp.MustCompile(want).MatchString(info) {
					t.Errorf("not %d pages: %s", Pages(pdf), info)
				}
				if kind == Bay || kind == Customer {
					if Pages(pdf) != 1 {
						t.Errorf("%d pages", Pages(pdf))
					}
				}
				if said := text(t, pdf); hole.MatchString(said) || strings.Contains(said, "<no value>") || strings.Contains(said, "%!") {
					t.Errorf("a sentence is missing or has a hole:\n%s", said)
				}
			})
		}
	}
}

// sound holds a PDF to qpdf --check and pdffonts: no fault, every font embedded
// and readable as text.
func sound(t *testing.T, pdf []byte, size paper.Size) {
	t.Helper()
	if out := tool(t, pdf, "qpdf", "--check", "FILE"); !strings.Contains(out, "No syntax or stream encoding errors") {
		t.Errorf("qpdf: %s", out)
	}
	fonts := strings.Split(strings.TrimSpace(tool(t, pdf, "pdffonts", "FILE")), "\n")[2:]
	for _, font := range fonts {
		if !regexp.MustCompile(`Identity-H +yes +\w+ +yes`).MatchString(font) {
			t.Errorf("font not embedded or without its letters: %s", font)
		}
	}
	if len(fonts) == 0 {
		t.Error("no fonts")
	}
	want := "595.28 x 841.89"
	if size == paper.Letter {
		want = "612 x 792"
	}
	if info := tool(t, pdf, "pdfinfo", "FILE"); !strings.Contains(info, want) {
		t.Errorf("not %s: %s", want, info)
	}
}

// hole is a sentence told by its ID only.
var hole = regexp.MustCompile(`\[[a-z]+_[a-z_]+\]`)
