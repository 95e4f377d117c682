package counter

// This file is the words beside the picture: large sentences, the numbers behind them
// small.

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"aligner/assets/words"
	"aligner/report/cost"
)

const (
	sentenceSize = theme.SizeNameSubHeadingText
	headingSize  = theme.SizeNameHeadingText
	captionSize  = theme.SizeNameCaptionText
)

// alignedMM is a gap between opposite sides at which anybody would call it lined up:
// about 3 thou, as is common practice without a source.
const alignedMM = 3 * 0.0254

// tell writes what it means as the handle stands.
func (p *Page) tell() {
	percent := p.desk.Looks.Units.Plain(math.Round(100*p.share), 0)
	after := words.CounterNow
	if p.boat.Planned {
		after = words.CounterAfter
	}
	switch before := p.say(words.CounterBefore, nil); p.share {
	case 0:
		p.between.SetText(p.say(words.CounterAt, words.Args{"State": before}))
	case 1:
		p.between.SetText(p.say(words.CounterAt, words.Args{"State": p.say(after, nil)}))
	default:
		p.between.SetText(p.say(words.CounterBetween, words.Args{"Before": before, "After": p.say(after, nil), "Percent": percent}))
	}
	p.words.RemoveAll()
	add := func(text string, size fyne.ThemeSizeName, bold bool) {
		if text == "" {
			return
		}
		l := widget.NewLabel(text)
		l.Wrapping, l.SizeName, l.TextStyle.Bold = fyne.TextWrapWord, size, bold
		p.words.Add(l)
	}
	if p.player.turn != nil {
		short, sentence, number := p.played()
		add(short, headingSize, true)
		add(sentence, sentenceSize, false)
		add(number, captionSize, false)
	} else {
		p.headline(add)
	}
	if c := p.cost(); c != nil {
		p.tellCosts(c, add)
	} else {
		add(p.say(words.CounterSoft, nil), sentenceSize, false)
	}
	p.override.Refresh() // the new words are large too
}

// sheetMM is the thickness of a sheet of office paper (80 g/m2; common knowledge, no
// source).
const sheetMM = 0.1

// headline is how the faces stand, for who has never seen a feeler leaf.
func (p *Page) headline(add func(string, fyne.ThemeSizeName, bool)) {
	spread := p.result.Gap.SpreadMM()
	args := words.Args{"Gap": p.desk.Looks.Units.GapWithUnit(spread), "Sheets": int(math.Round(spread / sheetMM))}
	switch {
	case spread <= alignedMM:
		add(p.say(words.CounterFine, nil), headingSize, true)
		add(p.say(words.CounterOff, args), sentenceSize, false)
	case spread < 1.5*sheetMM:
		add(p.say(words.CounterOff, args), headingSize, true)
	default:
		add(p.say(words.CounterSheets, args), headingSize, true)
	}
}

// tellCosts says what matters first, apart from it what line-up has no part in, and
// what is as it should be.
func (p *Page) tellCosts(c *cost.Costs, add func(string, fyne.ThemeSizeName, bool)) {
	sections := map[words.ID][]*cost.Item{}
	for i := range c.Items {
		id, item := words.CostTitle, &c.Items[i]
		switch {
		case item.Grade == cost.Nothing:
			id = words.CounterNothing
		case item.Part == cost.Spacing, item.Part == cost.Whirling:
			id = words.CounterApart
		}
		sections[id] = append(sections[id], item)
	}
	for _, id := range []words.ID{words.CostTitle, words.CounterApart, words.CounterNothing} {
		for i, item := range sections[id] {
			if i == 0 {
				add(p.say(id, nil), sentenceSize, true)
			}
			line := item.Text(p.desk.Speaker, p.desk.Looks.Units)
			add(line.Sentence, sentenceSize, false)
			add(line.Number, captionSize, false)
		}
	}
	add(p.say(words.CostMaker, nil), captionSize, false)
}

// cost is what it costs to leave the boat as the handle stands; nil: it cannot be
// worked out.
func (p *Page) cost() *cost.Costs {
	if p.costs == nil {
		c, err := cost.Of(&p.boat.Hull, p.state(), p.boat.Fault)
		if err != nil {
			return nil
		}
		p.costs = c
	}
	return p.costs
}
