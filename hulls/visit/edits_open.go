package visit

// This file holds the edits that put another boat or another visit on the
// screen.

import (
	"encoding/json"

	"aligner/hulls"
)

// OpenHull puts another boat on the screen, as drawn.
type OpenHull struct {
	HullName string          `json:"hull_name"`
	Hull     json.RawMessage `json:"hull"` // a hull file
}

// Name is "open hull".
func (*OpenHull) Name() string { return "open hull" }

// Words say "opened Eider".
func (e *OpenHull) Words() (string, map[string]any) {
	return "edit_open_hull", map[string]any{"Hull": e.HullName}
}

// Apply opens it.
func (e *OpenHull) Apply(d Document) (Document, error) {
	h, err := hulls.Parse(e.Hull, e.HullName)
	if err != nil {
		return d, err
	}
	return New(e.HullName, h), nil
}

// OpenVisit puts a visit and its hull on the screen.
type OpenVisit struct {
	Visit    Visit           `json:"visit"`
	HullName string          `json:"hull_name"`
	Hull     json.RawMessage `json:"hull"` // a hull file, also where the visit embeds it
}

// Name is "open visit".
func (*OpenVisit) Name() string { return "open visit" }

// Words say "visit of 2026-05-14 on Eider opened".
func (e *OpenVisit) Words() (string, map[string]any) {
	return "edit_open_visit", map[string]any{"Hull": e.HullName, "Date": e.Visit.Date}
}

// Apply opens it.
func (e *OpenVisit) Apply(d Document) (Document, error) {
	h, err := hulls.Parse(e.Hull, e.HullName)
	if err != nil {
		return d, err
	}
	opened, err := onHull(Visit{}, e.HullName, h).withVisit(e.Visit)
	if err != nil {
		return d, err
	}
	opened.Trial.Afloat = e.Visit.State.Afloat()
	return opened, nil
}
