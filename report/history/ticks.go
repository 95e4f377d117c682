package history

// This file marks the axes: dates by months or years, the clock by its quarters.

import (
	"math"
	"time"

	"gonum.org/v1/plot"

	"aligner/assets/words"
)

// calendar marks days since 1970 at the beginnings of months, half years or
// years, whichever gives about as many marks as there is room for.
type calendar struct{ most int }

// Ticks are the marks between two days.
func (c calendar) Ticks(least, last float64) []plot.Tick {
	if last-least < 62 {
		return days(least, last, c.most)
	}
	for _, months := range []int{1, 2, 3, 6, 12, 24, 60, 120} {
		if ticks := everyMonths(least, last, months); len(ticks) <= c.most || months == 120 {
			return ticks
		}
	}
	return nil
}

func dayOf(x float64) time.Time { return time.Unix(int64(math.Round(x*secondsPerDay)), 0).UTC() }

func days(least, last float64, most int) (ticks []plot.Tick) {
	step := math.Max(1, math.Ceil((last-least)/float64(most-2)))
	for x := math.Ceil(least); x <= last; x += step {
		ticks = append(ticks, plot.Tick{Value: x, Label: dayOf(x).Format(time.DateOnly)})
	}
	return ticks
}

func everyMonths(least, last float64, months int) (ticks []plot.Tick) {
	from := dayOf(least)
	year, month := from.Year(), 1
	if months > 12 {
		year -= year % (months / 12)
	}
	form := "2006-01"
	if months >= 12 {
		form = "2006"
	}
	for day := time.Date(year, time.Month(month), 1, 0, 0, 0, 0, time.UTC); ; day = day.AddDate(0, months, 0) {
		x := float64(day.Unix()) / secondsPerDay
		if x > last {
			return ticks
		}
		if x >= least {
			ticks = append(ticks, plot.Tick{Value: x, Label: day.Format(form)})
		}
	}
}

// clock marks the quarters, looking forward: 12 above and below, PORT and STBD
// between.
func clock(s words.Speaker) plot.ConstantTicks {
	const room = "  " // the library measures letters a little short
	return plot.ConstantTicks{{Value: 0, Label: "12" + room}, {Value: 90, Label: "3 " + s.Say(words.FacesStarboard, nil) + room}, {Value: 180, Label: "6" + room},
		{Value: 270, Label: "9 " + s.Say(words.FacesPort, nil) + room}, {Value: 360, Label: "12" + room}}
}

// decimals writes the marks of an axis in numbers with the decimal sign wanted.
type decimals struct {
	write func(v float64, decimals int) string
}

// Ticks are the library's own, written anew.
func (d decimals) Ticks(least, last float64) []plot.Tick {
	ticks := plot.DefaultTicks{}.Ticks(least, last)
	for i := range ticks {
		if !ticks[i].IsMinor() {
			ticks[i].Label = d.write(ticks[i].Value, 4)
		}
	}
	return ticks
}
