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

func TestCautionsAreReadByTorchlight(t *testing.T) {
	word := regexp.MustCompile(`<word xMin="[-0-9.]+" yMin="([-0-9.]+)" xMax="[-0-9.]+" yMax="([-0-9.]+)">(Battery|Batterie)</word>`)
	for _, name := range assets.VisitNames() {
		d := document(t, name)
		in := worked(t, Until(d, BeforeMoving(&d.Visit)))
		for _, language := range []string{"en", "de"} {
			pdf := made(t, in, Options{Kind: Bay, Size: paper.Letter, Speaker: words.In(language)})
			if Pages(pdf) != 1 {
				t.Errorf("%s, %s: %d pages", name, language, Pages(pdf))
			}
			found := word.FindStringSubmatch(tool(t, pdf, "pdftotext", "-bbox", "FILE", "-"))
			if found == nil {
				t.Errorf("%s, %s: no caution", name, language)
				continue
			}
			var top, bottom float64
			fmt.Sscan(found[1], &top)
			fmt.Sscan(found[2], &bottom)
			if points := (bottom - top) / boxOfSize; points < leastBayPoints-0.05 {
				t.Errorf("%s, %s: cautions in %.1f points", name, language, points)
			}
		}
	}
}
