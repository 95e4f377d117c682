package rounds

// This file prints the tables.

import (
	"fmt"
	"io"
	"slices"
	"strings"
)

// group is a line's worth of boats.
type group struct {
	name string
	of   func(*Job) bool
}

// groups are all boats, each layout, each hull.
func (r *Result) groups() []group {
	groups := []group{{"all boats", func(*Job) bool { return true }}}
	var layouts, names []string
	for _, h := range r.Problem.Hulls {
		if l := string(h.Layout); !slices.Contains(layouts, l) {
			layouts = append(layouts, l)
		}
		names = append(names, h.Name)
	}
	for _, l := range layouts {
		groups = append(groups, group{l, func(j *Job) bool { return string(j.Layout) == l }})
	}
	for _, n := range names {
		groups = append(groups, group{n, func(j *Job) bool { return j.Hull == n }})
	}
	return groups
}

// Print writes what came of it all.
func (r *Result) Print(w io.Writer) {
	fmt.Fprintf(w, `Rounds to alignment: %d boats, seed %d.
Judged by the true gap: the spread that the engine's position gives, run-out taken
out, which is what nuts can cure; within the rule at %d thou. "At the marks" is the
same job's spread with run-out left in.

`, r.Problem.Boats, r.Problem.Seed, limitThou)
	r.printShares(w)
	r.printWork(w)
	r.printEnds(w)
	r.printCalibration(w)
}

func (r *Result) printShares(w io.Writer) {
	fmt.Fprintf(w, "%-34s %6s | %28s | %7s | %s\n", "", "", "truly within, %, after", "", "said \"within\"")
	fmt.Fprintf(w, "%-34s %6s | %6s %6s %6s %7s | %7s | %6s %8s\n", "", "boats", "1 move", "2", "3", "the end", "at marks", "said", "wrong, %")
	for _, g := range r.groups() {
		for m := range mechanics {
			t := Count(r.Jobs[m], g.of)
			fmt.Fprintf(w, "%-13s %-20s %6d | %6.1f %6.1f %6.1f %7.1f | %8.1f | %6d %8.2f\n", first(m, g.name), m, t.Boats,
				t.Percent(t.WithinAfter[1]), t.Percent(t.WithinAfter[2]), t.Percent(t.WithinAfter[3]), t.Percent(t.WithinEnd),
				t.Percent(t.MarksEnd), t.SaidWithin, t.WrongPercent())
		}
	}
}

// first names a group on its first line only.
func first(m Mechanic, name string) string {
	if m == 0 {
		return name
	}
	return ""
}

func (r *Result) printWork(w io.Writer) {
	fmt.Fprintf(w, "\n%-34s | %6s %6s %6s | %8s %8s %6s | %7s %s\n", "a boat, on average", "moves", "flats", "slides", "gaugings", "readings", "again", "minutes", "(of those that ended within)")
	for _, g := range r.groups() {
		for m := range mechanics {
			t := Count(r.Jobs[m], g.of)
			each := func(n int) float64 { return t.Each(float64(n)) }
			fmt.Fprintf(w, "%-13s %-20s | %6.2f %6.1f %6.1f | %8.2f %8.1f %6.2f | %7.0f %7.0f\n", first(m, g.name), m,
				each(t.Moves), each(t.Flats), each(t.Slides), each(t.Gaugings), each(t.Readings), each(t.Again),
				t.Each(t.Minutes), t.WithinMinutes/float64(max(t.WithinEnd, 1)))
		}
	}
}

// printEnds says how jobs ended, and with which words the tool gave up.
func (r *Result) printEnds(w io.Writer) {
	fmt.Fprintf(w, "\nhow jobs ended\n")
	for m := range mechanics {
		t := Count(r.Jobs[m], func(*Job) bool { return true })
		var parts []string
		for _, end := range []End{InLine, MovesSpent, NoPlan, NotFlat, Failed} {
			if n := t.Ends[end]; n > 0 {
				parts = append(parts, fmt.Sprintf("%s %d", end, n))
			}
		}
		fmt.Fprintf(w, "  %-20s %s\n", m, strings.Join(parts, ", "))
		why := map[string]int{}
		for i := range r.Jobs[m] {
			if j := &r.Jobs[m][i]; j.End == InLine && j.Why != "" {
				why[string(j.End)+", "+j.Why]++
			} else if j.Why != "" {
				why[j.Hull+": "+string(j.End)+": "+j.Why]++
			}
		}
		for _, text := range sortedByCount(why) {
			fmt.Fprintf(w, "    %4d  %s\n", why[text], text)
		}
	}
}

// mostReasons bounds the list of reasons.
const mostReasons = 20

func sortedByCount(n map[string]int) []string {
	var keys []string
	for k := range n {
		keys = append(keys, k)
	}
	slices.SortFunc(keys, func(a, b string) int {
		if n[a] != n[b] {
			return n[b] - n[a]
		}
		return strings.Compare(a, b)
	})
	return keys[:min(len(keys), mostReasons)]
}
