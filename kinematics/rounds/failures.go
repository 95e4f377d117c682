package rounds

// This file prints how far the tool's doubt can be trusted, and the boats it did
// not serve.

import (
	"fmt"
	"io"
)

func (r *Result) printCalibration(w io.Writer) {
	fmt.Fprintf(w, "\nevery verdict the tool gave: the probability of \"within\" it told, and the share that was\n")
	fmt.Fprintf(w, "%15s %9s %12s %10s\n", "probability", "verdicts", "told, mean %", "were, %")
	for _, b := range Calibration(r.Jobs[ToolUser], func(*Job) bool { return true }) {
		n := float64(max(b.Verdicts, 1))
		fmt.Fprintf(w, "%7.2f to %4.2f %9d %12.1f %10.1f\n", b.From, b.To, b.Verdicts, 100*b.SumP/n, 100*float64(b.True)/n)
	}
}

// PrintFailures lists each boat that the tool did not have truly within after two
// moves, called within wrongly, or gave up.
func (r *Result) PrintFailures(w io.Writer) {
	fmt.Fprintf(w, "\nboats the tool did not serve: true spread by move, then every verdict\n")
	for i := range r.Jobs[ToolUser] {
		j := &r.Jobs[ToolUser][i]
		if j.End == InLine && j.At(2) <= limitThou && j.LastTrue() <= limitThou {
			continue
		}
		fmt.Fprintf(w, "boat %d %s: %s %s; true", j.Boat, j.Hull, j.End, j.Why)
		for _, thou := range j.TrueThou {
			fmt.Fprintf(w, " %.1f", thou)
		}
		fmt.Fprintf(w, " thou\n")
		for _, g := range j.Given {
			fmt.Fprintf(w, "    after %d: %-16s %.3f\n", g.Moves, g.Verdict, g.P)
		}
	}
}
