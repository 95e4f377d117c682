package report

// This file draws the end of a bay card: fastening, what stops a plan, cautions,
// spanners.

import (
	"slices"
	"strings"

	"aligner/assets/words"
	"aligner/kinematics/plan"
	"aligner/report/job"
	"aligner/report/paper"
	"aligner/report/say"
)

// bayLast draws what comes after the steps: gauge, tighten, gauge.
func (d *drawer) bayLast(x, y, w, k float64) float64 {
	y += 2.2 * k
	d.Stroke(paper.Pen{MM: 0.5}, paper.Point{X: x, Y: y}, paper.Point{X: x + w, Y: y})
	y += 1 * k
	t := paper.Type{Points: d.points(9.5, k)}
	if d.done() {
		y += d.Paragraph(x, y, w, t, d.say(words.PaperIsHandedOver, words.Args{"Date": d.v.HandedOver.Date})) + 0.6*k
		return d.clockTable(x, y, w, k, []clockRow{d.boxes(words.PaperFound), d.boxes(words.PaperFoundAgain)})
	}
	if d.p.Status == plan.NotForMoves || d.p.Status == plan.None {
		y += d.Paragraph(x, y, w, t, d.say(words.PaperWriteHere, nil)) + 0.6*k
		return d.clockTable(x, y, w, k, []clockRow{d.boxes(words.PaperFound), d.boxes(words.PaperFoundAgain)})
	}
	y += d.Paragraph(x, y, w, paper.Type{Points: d.points(11, k), Bold: true}, d.say(words.PaperThenFasten, nil))
	y += d.Paragraph(x, y, w, t, d.fastening()) + 0.6*k
	return d.clockTable(x, y, w, k, []clockRow{d.boxes(words.PaperBeforeTight), d.boxes(words.PaperAfterTight)})
}

// boxes is a row to write in.
func (d *drawer) boxes(label words.ID) clockRow {
	return clockRow{label: d.say(label, nil), texts: make([]string, len(d.positions()))}
}

// fastening says the order of tightening in one paragraph.
func (d *drawer) fastening() string {
	oiled, makerNM := job.CouplingBolts(d.v)
	steps, _ := job.FastenOrder(d.h, oiled, makerNM)
	var said []string
	var pairs []string
	how := words.PaperFastenPairs
	for _, s := range steps {
		switch s.Kind {
		case job.JamNuts, job.FootBolts:
			if s.Kind == job.FootBolts {
				how = words.SheetFastenFeet
			}
			pairs = append(pairs, d.mountNames(s.Mounts))
		case job.BoltRound:
			if s.Round == 3 {
				said = append(said, s.Text.Say(d.s, d.u))
			}
		}
	}
	first := d.say(how, words.Args{"Pairs": strings.Join(pairs, d.say(words.PaperThenWord, nil))})
	return strings.Join(append([]string{first}, said...), " ")
}

func (d *drawer) mountNames(at []int) string {
	var names []string
	for _, i := range at {
		names = append(names, d.s.Part(d.h.Mounts[i].Name))
	}
	return strings.Join(names, " + ")
}

// stopped says what stops a plan and what would free it.
func (d *drawer) stopped() []string {
	if d.p.Status == plan.NotForMoves || len(d.p.Binding)+len(d.p.Freeing)+len(d.p.Warnings) == 0 {
		return nil
	}
	// The sentences of the command line, without those said here otherwise.
	all := say.Plan(d.s, d.u, d.h, d.e, &plan.Plan{Status: plan.None, Binding: d.p.Binding, Freeing: d.p.Freeing}, false)[1:]
	for _, w := range d.p.Warnings {
		all = append(all, d.say(words.Of("warning", string(w.What)), words.Args{"Name": w.Name}))
	}
	return all
}

// bayMinds draws cautions and what to bring in two columns of about one height.
func (d *drawer) bayMinds(y, k float64) float64 {
	x, _, w, _ := d.InsideMM()
	t := paper.Type{Points: d.points(7.8, k)}
	head := paper.Type{Points: d.points(9.5, k), Bold: true}
	const between, dot = 4.0, 2.6
	wide := (w - between - 3) / 2
	type item struct {
		text string
		head bool
		tall float64
	}
	var items []item
	total := 0.0
	add := func(title words.ID, lines []string) {
		items = append(items, item{d.say(title, nil), true, head.LineMM()})
		total += head.LineMM()
		for _, line := range lines {
			tall := d.ParagraphMM(wide-dot, t, line)
			items = append(items, item{line, false, tall})
			total += tall
		}
	}
	add(words.PaperMind, d.cautions())
	add(words.PaperBring, d.bring())
	at, end, left := y+1.2*k, y, x+2
	for i, it := range items {
		// A heading stays with what follows it.
		if next := it.tall / 2; left == x+2 && at+next-y > total/2 && i > 0 && !items[i-1].head {
			left, at = x+2+wide+between-1, y+1.2*k
		}
		if it.head {
			at += d.Line(left, at, wide, head, it.text)
		} else {
			d.Line(left, at, 3, t, "•")
			at += d.Paragraph(left+dot, at, wide-dot, t, it.text)
		}
		end = max(end, at+1*k)
	}
	d.Rect(x, y, w, end-y, &paper.Pen{MM: 0.6}, nil)
	middle := x + 2 + wide + between/2 - 1
	d.Stroke(paper.Pen{MM: 0.25}, paper.Point{X: middle, Y: y}, paper.Point{X: middle, Y: end})
	return end
}

// cautions are those of work in the bay, each once.
func (d *drawer) cautions() []string {
	var lines []string
	for _, stage := range []job.Stage{job.LookingOver, job.Gauging, job.Moving, job.Fastening} {
		for _, c := range job.Cautions(stage, d.v.State.Afloat()) {
			if text := c.Text.Say(d.s, d.u); !slices.Contains(lines, text) {
				lines = append(lines, text)
			}
		}
	}
	return lines
}

// bring is what goes into the bay: spanners and what gauges and moves.
func (d *drawer) bring() []string {
	var lines []string
	for _, item := range job.Bring(d.h, d.v, d.v.Bolts.Maker.NM()) {
		switch item.Text.ID {
		case words.JobBringLeaves: // told one by one below
		case words.JobBringMirrorForMounts, words.JobBringMirrorForFaces, words.JobBringSpanner, words.JobBringOlderSpanner,
			words.JobBringUnknownSpanner, words.JobBringFootSpanners, words.JobBringShims, words.JobBringLeverOrScrews,
			words.JobBringSupport, words.JobBringFreeingOil, words.JobBringTorqueWrench, words.JobBringTorqueWrenchTo:
			lines = append(lines, item.Text.Say(d.s, d.u))
		}
	}
	if thickest := d.v.Leaves.SinglesMM(); len(thickest) > 0 {
		var marks []string
		for _, mm := range thickest {
			marks = append(marks, d.thickness(mm))
		}
		lines = append(lines, d.say(words.PaperLeafList, words.Args{"Leaves": strings.Join(marks, ", "), "Unit": d.leafUnit()}))
	}
	return lines
}
