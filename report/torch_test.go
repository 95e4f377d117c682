package report

// This file holds the smallest type of what is to be read in the bay.

import (
	"fmt"
	"regexp"
	"testing"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/report/paper"
)

// The embedded font's box is so much taller than its size, as pdftotext tells it.
const boxOfSize = 1.163

// TestReadByTorchlight: on the card of every built-in visit, in both languages, all
// words and numbers, those of the drawings too, are never under seven points. Only
// the foot of the page and the word within a stop sign may be smaller; the sign is
// known by its shape, and its word never under five.
func TestReadByTorchlight(t *testing.T) {
	word := regexp.MustCompile(`<word xMin="[-0-9.]+" yMin="([-0-9.]+)" xMax="[-0-9.]+" yMax="([-0-9.]+)">(.*)</word>`)
	for _, name := range assets.VisitNames() {
		d := document(t, name)
		in := worked(t, Until(d, BeforeMoving(&d.Visit)))
		for _, language := range []string{"en", "de"} {
			pdf := made(t, in, Options{Kind: Bay, Size: paper.Letter, Speaker: words.In(language)})
			if Pages(pdf) != 1 {
				t.Errorf("%s, %s: %d pages", name, language, Pages(pdf))
			}
			said := word.FindAllStringSubmatch(tool(t, pdf, "pdftotext", "-bbox", "FILE", "-"), -1)
			read := 0
			for _, w := range said {
				var top, bottom float64
				fmt.Sscan(w[1], &top)
				fmt.Sscan(w[2], &bottom)
				if top > 792-40 {
					continue
				}
				read++
				least := leastBayPoints[0]
				if w[3] == "STOP" {
					least = 5
				}
				if points := (bottom - top) / boxOfSize; points < least-0.05 {
					t.Errorf("%s, %s: %q in %.1f points", name, language, w[3], points)
				}
			}
			if read < 100 {
				t.Errorf("%s, %s: only %d words", name, language, read)
			}
		}
	}
}
