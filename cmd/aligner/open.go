package main

// This file finds a hull by what was typed: a file, a built-in name, or an entry
// of the logbook.

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"strings"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
	"aligner/hulls/logbook"
	"aligner/kinematics"
)

// openHull reads a hull and what is doubtful about it. A file of that name
// comes before a built-in hull. The error is a *hulls.Fault.
func openHull(nameOrPath string) (hulls.Hull, []hulls.Fault, error) {
	h, report := lookOver(nameOrPath)
	return h, report.Doubts, report.Err()
}

// lookOver reads a hull and reports what is impossible about it and what is
// odd, by its numbers and by working it out.
func lookOver(nameOrPath string) (hulls.Hull, hulls.Report) {
	return lookOverBytes(nameOrPath, keptHull)
}

// lookOverBytes is lookOver where kept finds what is neither a file nor built in.
func lookOverBytes(nameOrPath string, kept func(string) ([]byte, error)) (hulls.Hull, hulls.Report) {
	data, fault := hullBytes(nameOrPath, kept)
	if fault != nil {
		return hulls.Hull{}, hulls.Report{Refusals: []hulls.Fault{*fault}}
	}
	h, report := hulls.Check(data, nameOrPath)
	if len(report.Refusals) > 0 {
		return h, report
	}
	odd, err := kinematics.Doubts(h)
	if err != nil {
		odd = append(odd, hulls.Fault{Value: speaker.Say(words.NoWorking, words.Args{"What": err}),
			Limit: speaker.Say(words.NoWorkingLimit, nil), Mend: speaker.Say(words.NoWorkingMend, nil)})
	}
	hulls.Locate(odd, data, nameOrPath)
	report.Doubts = append(report.Doubts, odd...)
	return h, report
}

func hullBytes(nameOrPath string, kept func(string) ([]byte, error)) ([]byte, *hulls.Fault) {
	data, err := readFile(nameOrPath, hulls.MaxFileBytes)
	if err == nil {
		return data, nil
	}
	if errors.Is(err, fs.ErrNotExist) && nameOrPath != "" {
		if found, fault := elsewhere(nameOrPath, assets.Hull, kept); found != nil || fault != nil {
			return found, fault
		}
	}
	return nil, noRead(nameOrPath, err, words.NoHull, words.NoHullMend,
		speaker.Say(words.NoHullLimit, words.Args{"Known": strings.Join(assets.HullNames(), ", ")}))
}

// elsewhere finds what is no file: built in, or kept in the logbook. A logbook
// that was named comes first.
func elsewhere(name string, builtIn func(string) ([]byte, bool), kept func(string) ([]byte, error)) ([]byte, *hulls.Fault) {
	found, ok := builtIn(name)
	if ok && logbookFile == "" {
		return found, nil
	}
	file, err := kept(name)
	switch {
	case err == nil && file != nil:
		return file, nil
	case ok && (err == nil || errors.Is(err, logbook.ErrMissing)): // a logbook yet to be begun
		return found, nil
	case err != nil:
		return nil, asFault(err)
	}
	return nil, nil
}

// noRead tells in one line why what was asked for could not be read.
func noRead(nameOrPath string, err error, none, mend words.ID, limit string) *hulls.Fault {
	f := &hulls.Fault{File: nameOrPath}
	if nameOrPath == "" {
		f.File = `""`
	}
	if errors.Is(err, fs.ErrNotExist) || nameOrPath == "" {
		f.Value, f.Limit, f.Mend = speaker.Say(none, nil), limit, speaker.Say(mend, nil)
		return f
	}
	var path *fs.PathError
	if errors.As(err, &path) {
		err = path.Err
	}
	f.Value = speaker.Say(words.NoRead, words.Args{"What": err})
	f.Limit = speaker.Say(words.NoReadLimit, nil)
	f.Mend = speaker.Say(words.NoReadMend, nil)
	return f
}

// readFile reads no more of a file than tells that it is too large.
func readFile(path string, most int64) ([]byte, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return io.ReadAll(io.LimitReader(f, most+1))
}
