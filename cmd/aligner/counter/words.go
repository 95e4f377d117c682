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
	looks := p.desk.Looks
	percent := looks.Units.Plain(math.Round(100*p.share), 0)
	after := words.CounterNow
	if p.boat.Planned {
		after = words.CounterAfter
	}
	p.between.SetText(p.say(words.CounterBetween, words.Args{"Before": p.say(words.CounterBefore, nil), "After": p.say(after, nil), "Percent": percent}))
	p.words.RemoveAll()
	add := func(text string, size fyne.ThemeSizeName, bold bool) {
		if text == "" {
			return
		}
		l := widget.NewLabel(text)
		l.Wrapping, l.SizeName, l.TextStyle.Bold = fyne.TextWrapWord, size, bold
		p.words.Add(l)
	}
	spread := p.result.Gap.SpreadMM()
	if spread <= alignedMM {
		add(p.say(words.CounterFine, nil), headingSize, true)
	}
	add(p.say(words.CounterOff, words.Args{"Gap": looks.Units.GapWithUnit(spread)}), sentenceSize, false)
	if c := p.cost(); c != nil {
		add(p.say(words.CostTitle, nil), sentenceSize, true)
		for _, line := range c.Text(p.desk.Speaker, looks.Units) {
			add(line.Sentence, sentenceSize, false)
			add(line.Number, captionSize, false)
		}
	} else {
		add(p.say(words.CounterSoft, nil), sentenceSize, false)
	}
	p.words.Refresh()
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
