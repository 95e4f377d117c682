package assets

// The fonts can write what the program says.

import (
	"strings"
	"testing"

	"golang.org/x/image/font/sfnt"
)

// signs are needed beyond ASCII: those of the trade and of arithmetic, and the
// letters and quotes of German and its neighbours.
const signs = "⌀ØΔ°′″±×÷−≤≥≈≠√∞²³½¼¾µμ → ← ↑ ↓ ↔ ↕ ✓✗▲▼◀▶●○◆□☐☑–—…·•" +
	"ÄÖÜäöüßÅåÆæÇçÉéÈèÊêËëÍíÑñÓóÚúØøŁłŒœŠšŽž„“”‚‘’«»€§αβγδθλπσφω"

func TestFontsHaveTheirGlyphs(t *testing.T) {
	for _, weight := range []string{"regular", "bold"} {
		font, err := sfnt.Parse(Font(weight))
		if err != nil {
			t.Errorf("%s: %v", weight, err)
			continue
		}
		var buffer sfnt.Buffer
		has := func(c rune) bool {
			i, err := font.GlyphIndex(&buffer, c)
			return err == nil && i != 0
		}
		for _, c := range signs {
			if !has(c) {
				t.Errorf("%s has no %q (%U)", weight, c, c)
			}
		}
		for c := rune(' '); c <= '~'; c++ {
			if !has(c) {
				t.Errorf("%s has no %q", weight, c)
			}
		}
		if has('漢') {
			t.Errorf("%s has a glyph of another script: not the font meant, or this test finds glyphs everywhere", weight)
		}
	}
	if Font("italic") != nil {
		t.Error("there is an italic")
	}
}

func TestFontsBringTheirLicence(t *testing.T) {
	text := strings.Join(strings.Fields(FontLicence()), " ")
	for _, part := range []string{"Bitstream Vera is a trademark", "DejaVu changes are in public domain", "shall be included in all copies"} {
		if !strings.Contains(text, part) {
			t.Errorf("%q is not in the licence", part)
		}
	}
}
