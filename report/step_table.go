package report

// This file is the table of what one step of each nut, and a slide of each end, does
// to the gap at 12, 3, 6 and 9: what it takes to work a move out by hand.

import (
	"math"

	"aligner/assets/words"
	"aligner/kinematics/why"
	"aligner/report/paper"
	"aligner/report/say"
)

// stepHours are the clock positions of the table, as they are stored.
var stepHours = []float64{0, 90, 180, 270}

// stepTable sets the table, and under it how it is read.
func (f *flow) stepTable() error {
	steps, err := why.Table(f.h, f.e.Aim, f.v.State.Afloat())
	if err != nil {
		return err
	}
	columns := []column{{f.say(words.PaperOneStep, nil), 0.44, paper.Left}}
	for i, deg := range stepHours {
		title := f.clock(deg)
		switch i {
		case 1:
			title += " " + f.say(words.PaperStarboard, nil)
		case 3:
			title += " " + f.say(words.PaperPort, nil)
		}
		columns = append(columns, column{title, 0.11, paper.Right})
	}
	columns = append(columns, column{"±", 0.12, paper.Right})
	var rows [][]string
	for i := range steps {
		rows = append(rows, f.stepRow(&steps[i]))
	}
	f.table(columns, rows)
	f.paragraphs(f.say(words.SheetStepsRead, words.Args{"Unit": f.u.GapUnit()}))
	return nil
}

// stepRow is one step: what is done, what it does at each hour, give or take.
func (f *flow) stepRow(r *why.Row) []string {
	what := f.nutText(&f.h.Mounts[r.Mounts[0]], r.Steps)
	if r.Slide {
		what = f.mountNames(r.Mounts) + " " + f.slideText(r.Steps)
	}
	if r.Hardly {
		what += " *"
	}
	cells := []string{what}
	for _, deg := range stepHours {
		sin, cos := math.Sincos(deg * math.Pi / 180)
		cells = append(cells, f.change(r.Change[0]*cos+r.Change[1]*sin))
	}
	return append(cells, f.step(math.Hypot(r.SD[0], r.SD[1])))
}

// change writes a signed change of the gap a digit finer than a gap: steps are
// many, and what is rounded off each adds up.
func (d *drawer) change(mm float64) string {
	text := d.step(math.Abs(mm))
	switch rounded := math.Round(mm / d.finestMM()); {
	case rounded > 0:
		return "+" + text
	case rounded < 0:
		return "\u2212" + text
	}
	return text
}

// step writes a size as fine as the table has it, in hundredths of a thou or
// ten-thousandths of a mm.
func (d *drawer) step(mm float64) string {
	mm = math.Round(mm/d.finestMM()) * d.finestMM()
	if d.u.Metric {
		return d.u.Fixed(mm, 4)
	}
	return d.u.Fixed(mm/say.MMPerThou, 2)
}

func (d *drawer) finestMM() float64 {
	if d.u.Metric {
		return 1e-4
	}
	return say.MMPerThou / 100
}
