package main

// This file finds a visit by what was typed: a file, a built-in name, or the
// number of one in the logbook.

import (
	"encoding/json"
	"errors"
	"io/fs"
	"path/filepath"
	"strings"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/visit"
)

// openVisit reads a visit with its hull, and what is doubtful about it. The
// error is a *hulls.Fault.
func openVisit(nameOrPath string) (visit.Document, []hulls.Fault, error) {
	data, fault := visitBytes(nameOrPath)
	if fault != nil {
		return visit.Document{}, nil, fault
	}
	d, report := visit.Open(data, nameOrPath, hullBeside(nameOrPath))
	return d, report.Doubts, report.Err()
}

// hullBeside finds the hull a visit names: a file beside the visit, or a built-in
// one. A boat of the logbook that happens to have its name is another boat.
func hullBeside(visitPath string) func(name string) (hulls.Hull, error) {
	return func(name string) (hulls.Hull, error) {
		if !filepath.IsAbs(name) {
			beside := filepath.Join(filepath.Dir(visitPath), name)
			h, report := lookOverBytes(beside, notKept)
			err := report.Err()
			var fault *hulls.Fault
			if err == nil || errors.As(err, &fault) && fault.Value != speaker.Say(words.NoHull, nil) {
				return h, err
			}
		}
		h, report := lookOverBytes(name, notKept)
		return h, report.Err()
	}
}

// notKept looks into no logbook.
func notKept(string) ([]byte, error) { return nil, nil }

func visitBytes(nameOrPath string) ([]byte, *hulls.Fault) {
	data, err := readFile(nameOrPath, visit.MaxFileBytes)
	if err == nil {
		return data, nil
	}
	if errors.Is(err, fs.ErrNotExist) && nameOrPath != "" {
		if found, fault := elsewhere(nameOrPath, assets.Visit, keptVisit); found != nil || fault != nil {
			return found, fault
		}
	}
	return nil, noRead(nameOrPath, err, words.NoVisit, words.NoVisitMend,
		speaker.Say(words.NoVisitLimit, words.Args{"Known": strings.Join(assets.VisitNames(), ", ")}))
}

// isVisit reports whether a file says that it is a visit. One that says nothing
// readable is taken for a hull.
func isVisit(data []byte) bool {
	var head struct {
		Format string `json:"format"`
	}
	return json.Unmarshal(data, &head) == nil && strings.HasPrefix(head.Format, "visit/") || strings.Contains(string(data[:min(len(data), 200)]), `"visit/`)
}
