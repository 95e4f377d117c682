package job

// This file is what the tests share.

import (
	"testing"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
)

func hull(t testing.TB, name string) *hulls.Hull {
	t.Helper()
	h := builtin.Hull(t, name)
	return &h
}

// built is a built-in visit with its hull.
func built(t testing.TB, name string) (*hulls.Hull, *visit.Visit) {
	t.Helper()
	d := builtin.Visit(t, name)
	return &d.Hull, &d.Visit
}

// settled is a state nothing is to be said of.
var settled = visit.State{Boat: "afloat", HoursSinceLaunch: visit.Known(100), MountAgeMonths: visit.Known(30)}

// found are findings, all alike.
func found(finding string, checks ...string) []visit.Finding {
	var list []visit.Finding
	for _, c := range checks {
		list = append(list, visit.Finding{Check: c, Finding: finding})
	}
	return list
}

// allGood is a visit with every check of a hull good.
func allGood(h *hulls.Hull) *visit.Visit {
	v := &visit.Visit{State: settled, Date: "2026-05-14"}
	for _, c := range LookOver(h, v) {
		v.LookOver = append(v.LookOver, visit.Finding{Check: c.ID, Finding: "good"})
	}
	return v
}
