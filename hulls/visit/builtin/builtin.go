// Package builtin opens the hulls and visits that come with the program, for
// tests, simulations and whatever else wants them by name.
package builtin

// This file is all of it.

import (
	"fmt"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit"
)

// Find gives a built-in hull by its name.
func Find(name string) (hulls.Hull, error) {
	data, ok := assets.Hull(name)
	if !ok {
		return hulls.Hull{}, fmt.Errorf("no built-in hull %q", name)
	}
	return hulls.Parse(data, name)
}

// FindVisit gives a built-in visit, with its hull, by its name.
func FindVisit(name string) (visit.Document, error) {
	data, ok := assets.Visit(name)
	if !ok {
		return visit.Document{}, fmt.Errorf("no built-in visit %q", name)
	}
	d, report := visit.Open(data, name, Find)
	return d, report.Err()
}

// tester is a test or a benchmark; package testing stays out of the program.
type tester interface {
	Helper()
	Fatal(...any)
}

// Hull is Find in a test that needs it.
func Hull(t tester, name string) hulls.Hull {
	t.Helper()
	h, err := Find(name)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

// Visit is FindVisit in a test that needs it.
func Visit(t tester, name string) visit.Document {
	t.Helper()
	d, err := FindVisit(name)
	if err != nil {
		t.Fatal(err)
	}
	return d
}
