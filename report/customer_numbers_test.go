package report

// The customer's figures are the estimate's, in inches and rounded to half a thou, as
// found and as left.

import (
	"math"
	"strconv"
	"strings"
	"testing"
)

// widestInches is how a customer reads the widest gap of faces that touch.
func widestInches(cosMM, sinMM float64) string {
	halves := math.Round(2 * math.Hypot(cosMM, sinMM) / 25.4 * 2000)
	if halves == 0 {
		return "no gap a leaf can find"
	}
	return strconv.FormatFloat(halves/2000, 'f', -1, 64) + " in apart at the widest"
}

func TestTheCustomerReadsTheEstimate(t *testing.T) {
	// One of each layout and branch: the pictures take their time.
	for _, name := range []string{"first-job", "v-drive", "bent-shaft", "hogging", "solid-feet", "far-apart"} {
		in := worked(t, document(t, name))
		text := strings.Join(strings.Fields(tool(t, made(t, in, Options{Kind: Customer}), "pdftotext", "-raw", "FILE", "-")), " ")
		first := in.Estimate.States[0]
		for what, want := range map[string]string{
			"before": widestInches(first.CosMM, first.SinMM),
			"after":  widestInches(in.Estimate.Gap.MeanMM[0], in.Estimate.Gap.MeanMM[1]),
		} {
			if !strings.Contains(text, want) {
				t.Errorf("%s, %s: no %q in %q", name, what, want, text[:400])
			}
		}
	}
}
