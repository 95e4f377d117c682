package rounds

// This file prints how far the tool's doubt can be trusted, and the boats it did
// not serve.

import (
	"fmt"
	"io"
)

// printCalibration holds probabilities told against what was true: of verdicts
// given at a gauging, and of plans about the gap after their move.
func (r *Result) printCalibration(w io.Writer) {
	var verdicts, plans []Given
	for i := range r.Jobs[ToolUser] {
		verdicts = append(verdicts, r.Jobs[ToolUser][i].Given...)
		plans = append(plans, r.Jobs[ToolUser][i].Planned...)
	}
	given, planned := Calibration(verdicts), Calibration(plans)
	fmt.Fprintf(w, "\nhow far the tool's doubt can be trusted: probability of \"within\" it told, and the share that was\n")
	fmt.Fprintf(w, "%15s | %-30s | %-30s\n", "", "verdicts at a gauging", "plans, of the gap after")
	fmt.Fprintf(w, "%15s | %8s %10s %10s | %8s %10s %10s\n", "probability", "told", "mean, %", "true, %", "told", "mean, %", "true, %")
	for i, b := range given {
		fmt.Fprintf(w, "%7.2f to %4.2f | %s | %s\n", b.From, b.To, b.cells(), planned[i].cells())
	}
}

func (b *Bin) cells() string {
	if b.Verdicts == 0 {
		return fmt.Sprintf("%8d %10s %10s", 0, "-", "-")
	}
	n := float64(b.Verdicts)
	return fmt.Sprintf("%8d %10.1f %10.1f", b.Verdicts, 100*b.SumP/n, 100*float64(b.True)/n)
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
