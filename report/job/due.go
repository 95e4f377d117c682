package job

// This file says when to look again. Intervals in use differ (after four hours,
// a month, a season); these are a day or two after launching, within the first
// ten to fifty running hours, then each season, and after anything that may
// have moved it (common practice, no source; the ten to fifty hours from
// memory).

import (
	"time"

	"aligner/hulls"
	"aligner/hulls/visit"
)

// When says what a check is due by.
type When string

// Due by a date, by the engine's hours, or when something happens.
const (
	ByDate  When = "by date"
	ByHours When = "by hours"
	OnEvent When = "on event"
)

// DueCheck is one check to come.
type DueCheck struct {
	When    When
	Date    string     // ByDate: "2027-05-14"; "" where the visit has no date
	Hours   [2]float64 // ByHours: running hours from now, from and to
	Reason  string     // the word its sentence goes by
	Text    Text
	Sources []Source
}

// Running hours within which newly lined-up engines are looked at again.
var runningHours = [2]float64{10, 50}

const dateForm = "2006-01-02"

// Due lists the checks to come, the next first.
func Due(h *hulls.Hull, v *visit.Visit) []DueCheck {
	var list []DueCheck
	last, dated := lastDate(v)
	add := func(reason string, when When, days int, sources ...Source) {
		d := DueCheck{When: when, Reason: reason, Sources: sources}
		args := Args{}
		if when == ByDate && dated {
			d.Date = last.AddDate(0, 0, days).Format(dateForm)
			if days == yearDays {
				d.Date = last.AddDate(1, 0, 0).Format(dateForm)
			}
			args["Date"] = d.Date
		}
		if when == ByHours {
			d.Hours = runningHours
			args["From"], args["To"] = Number(d.Hours[0]), Number(d.Hours[1])
		}
		id := reason
		if when == ByDate && !dated {
			id += " undated"
		}
		d.Text = text("due", id, args)
		list = append(list, d)
	}
	if stage, _ := Standing(LookOver(h, v)); stage != "" || hasFailed(h, v) {
		add("mended", OnEvent, 0, CommonPractice)
	}
	s := v.State
	switch {
	case !s.Afloat():
		add("launched", OnEvent, 0, ArmyCraft, CommonPractice)
	case s.HoursSinceLaunch.Known && s.HoursSinceLaunch.Value < 2*StandingHours:
		add("settled", ByDate, 2, CommonPractice)
	}
	if hasKind(h, hulls.Rubber) && toldState(MountsStood, s) == Failed {
		add("rubber", ByDate, 1, CommonPractice)
	}
	add("running in", ByHours, 0, FromMemory)
	add("season", ByDate, yearDays, CommonPractice)
	add("struck", OnEvent, 0, CommonPractice)
	return list
}

const yearDays = 365

func hasFailed(h *hulls.Hull, v *visit.Visit) bool {
	for _, c := range LookOver(h, v) {
		if c.State == Failed && !c.Told {
			return true
		}
	}
	return false
}

// lastDate is that of the last thing done that has a date.
func lastDate(v *visit.Visit) (time.Time, bool) {
	if t, err := time.Parse(dateForm, v.HandedOver.Date); err == nil {
		return t, true
	}
	for i := len(v.Events) - 1; i >= 0; i-- {
		if t, err := time.Parse(dateForm, v.Events[i].Date); err == nil {
			return t, true
		}
	}
	t, err := time.Parse(dateForm, v.Date)
	return t, err == nil
}
