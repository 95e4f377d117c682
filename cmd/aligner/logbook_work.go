package main

// This file works kept visits out, for the lists: spread, verdict, next check.

import (
	"context"
	"fmt"
	"slices"

	"aligner/assets/words"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
	"aligner/kinematics/gauge"
	"aligner/report/job"
)

// summary is what lists say of a visit. A visit without gauged gaps has no
// spread, and one in which nothing was gauged puts off no check that is due.
func summary(d visit.Document) (s logbook.Summary, err error) {
	for _, c := range job.Due(&d.Hull, &d.Visit) {
		if gauged(&d.Visit) && c.When == job.ByDate && c.Date != "" && (s.Due == "" || c.Date < s.Due) {
			s.Due, s.DueReason = c.Date, c.Reason
		}
	}
	m, err := gauge.NewModel(&d.Hull, d.Visit.State.Afloat())
	if err != nil {
		return s, err
	}
	est, err := m.Estimate(&d.Visit)
	if err != nil {
		return s, err
	}
	told := estimateJSONOf(est)
	if told.SpreadMM != nil && told.OpensAtDeg != nil && est.GapCount > 0 {
		s.SpreadMM, s.OpensAtDeg, s.Verdict = visit.Known(*told.SpreadMM), visit.Known(*told.OpensAtDeg), told.Verdict
	}
	return s, nil
}

// gauged reports whether anything was.
func gauged(v *visit.Visit) bool {
	return slices.ContainsFunc(v.Events, func(e visit.Event) bool { return e.Gauging != nil && len(e.Gauging.Readings) > 0 })
}

// refresh works out the visits of a hull, or with 0 of all, that changed since
// they were. One that cannot be worked out is told, and has no spread.
func refresh(e *env, b *logbook.Book, hull logbook.HullID) error {
	_, err := refreshCounted(e, b, hull)
	return err
}

func refreshCounted(e *env, b *logbook.Book, hull logbook.HullID) (done int, err error) {
	const page = 500
	for offset := 0; ; offset += page {
		lines, err := b.Visits(logbook.VisitQuery{Hull: hull, Limit: page, Offset: offset})
		if err != nil {
			return done, err
		}
		for _, l := range lines {
			if !l.Stale {
				continue
			}
			d, err := b.Document(l.ID)
			if err != nil {
				return done, err
			}
			s, err := summary(d)
			if err != nil {
				e.warnDoubt(speaker.Say(words.NotWorkedOut, words.Args{"Number": l.ID, "What": err}))
			}
			if err := b.Summarise(l.ID, l.LastEdit, s); err != nil {
				return done, err
			}
			done++
		}
		if len(lines) < page {
			return done, nil
		}
	}
}

// warnDoubt prints one doubt to the side.
func (e *env) warnDoubt(line string) {
	e.warn(oneLine(speaker.Say(words.Doubt, words.Args{"Line": line})))
}

type hullsRefreshCmd struct {
	All bool `help:"${help_refresh_all}"`
}

// Run works out what changed, or all.
func (c *hullsRefreshCmd) Run(e *env) error {
	return withLogbook(logbook.Write, func(b *logbook.Book) error {
		if c.All {
			if err := b.Rebuild(context.Background(), nil); err != nil {
				return err
			}
		}
		n, err := refreshCounted(e, b, 0)
		if err != nil {
			return fmt.Errorf("after %d visits: %w", n, err)
		}
		e.say(words.LogbookRefreshed, words.Args{"Count": n})
		return nil
	})
}

// logbookHelp are the helps of the verbs and flags of the logbook.
var logbookHelp = []words.ID{
	words.HelpLogbook, words.HelpHullsFind, words.HelpLimit, words.HelpHullsNew, words.HelpHullsName, words.HelpHullsFrom, words.HelpHullsHIN,
	words.HelpHullsOwner, words.HelpHullsExport, words.HelpHullsOut, words.HelpHullsImport, words.HelpBundle, words.HelpDryRun, words.HelpTheirs,
	words.HelpHullsBackup, words.HelpBackupOut, words.HelpHullsSalvage, words.HelpDamaged, words.HelpSalvaged, words.HelpHullsRefresh,
	words.HelpRefreshAll, words.HelpEntry, words.HelpVisits, words.HelpVisitsList, words.HelpVisitsShow, words.HelpVisitsNew, words.HelpVisitsDate,
	words.HelpVisitsImport, words.HelpVisitsExport, words.HelpVisitsOut, words.HelpVisitsOf,
	words.HelpHullsHistory, words.HelpHistoryOut, words.HelpHistoryHours, words.HelpVisitsPhoto, words.HelpPhotoFile, words.HelpPhotoCaption,
	words.HelpHullsCompare, words.HelpHullsMatters, words.HelpHullsLearn, words.HelpHullsCopy, words.HelpHullA, words.HelpHullB, words.HelpCopyName,
}
