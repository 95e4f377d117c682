package rounds

// This file counts.

// Tally is what came of a group of boats by one mechanic.
type Tally struct {
	Boats       int
	WithinAfter [4]int // by moves, 0 to 3: boats truly within the rule after at most so many
	WithinEnd   int    // in the end
	MarksEnd    int    // in the end, counted at the marks, run-out and all

	SaidWithin, WronglyWithin int
	Ends                      map[End]int

	Moves, Flats, Slides, Gaugings, Readings, Again, Burrs, OutOfReach int
	Minutes, WithinMinutes                                             float64 // of all; of those truly within in the end
}

// Count adds up the jobs a test lets pass.
func Count(jobs []Job, of func(*Job) bool) Tally {
	t := Tally{Ends: map[End]int{}}
	for i := range jobs {
		if j := &jobs[i]; of(j) {
			t.add(j)
		}
	}
	return t
}

func (t *Tally) add(j *Job) {
	t.Boats++
	for moves := range t.WithinAfter {
		if j.At(moves) <= limitThou {
			t.WithinAfter[moves]++
		}
	}
	if j.LastTrue() <= limitThou {
		t.WithinEnd++
		t.WithinMinutes += j.Minutes
	}
	if j.LastMarks() <= limitThou {
		t.MarksEnd++
	}
	t.Ends[j.End]++
	if j.End == InLine {
		t.SaidWithin++
		if j.LastTrue() > limitThou {
			t.WronglyWithin++
		}
	}
	t.Moves += j.Moves
	t.Flats += j.Flats
	t.Slides += j.Slides
	t.Gaugings += j.Gaugings
	t.Readings += j.Readings
	t.Again += j.Again
	t.Burrs += j.Burrs
	t.OutOfReach += j.OutOfReach
	t.Minutes += j.Minutes
}

// Each is a mean over the boats.
func (t *Tally) Each(total float64) float64 { return total / float64(max(t.Boats, 1)) }

// Percent is a share of the boats.
func (t *Tally) Percent(n int) float64 { return 100 * t.Each(float64(n)) }

// WrongPercent is how many of the verdicts "within" were wrong.
func (t *Tally) WrongPercent() float64 {
	return 100 * float64(t.WronglyWithin) / float64(max(t.SaidWithin, 1))
}

// binEnds part the probabilities of verdicts, ends upward.
var binEnds = []float64{0.02, 0.1, 0.3, 0.5, 0.7, 0.9, 0.98, 1}

// Bin is the verdicts whose probability lies in one part.
type Bin struct {
	From, To float64
	Verdicts int
	SumP     float64
	True     int // how many were within the rule
}

// Calibration sorts probabilities told into bins. A tool that tells the truth
// about its doubt is right in a share SumP / Verdicts of each.
func Calibration(told []Given) []Bin {
	bins := make([]Bin, len(binEnds))
	for i, end := range binEnds {
		bins[i].To = end
		if i > 0 {
			bins[i].From = binEnds[i-1]
		}
	}
	for _, g := range told {
		k := 0
		for k < len(bins)-1 && g.P >= bins[k].To {
			k++
		}
		bins[k].Verdicts++
		bins[k].SumP += g.P
		if g.TrueThou <= limitThou {
			bins[k].True++
		}
	}
	return bins
}
