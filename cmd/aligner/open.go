package main

// This file finds a hull by what was typed: a file, or a built-in name.

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"strings"

	"aligner/assets"
	"aligner/assets/words"
	"aligner/hulls"
)

// openHull reads a hull and what is doubtful about it. A file of that name
// comes before a built-in hull. The error is a *hulls.Fault.
func openHull(nameOrPath string) (hulls.Hull, []hulls.Fault, error) {
	data, err := hullBytes(nameOrPath)
	if err != nil {
		return hulls.Hull{}, nil, err
	}
	h, report := hulls.Check(data, nameOrPath)
	return h, report.Doubts, report.Err()
}

func hullBytes(nameOrPath string) ([]byte, error) {
	data, err := readFile(nameOrPath)
	if err == nil {
		return data, nil
	}
	if builtIn, ok := assets.Hull(nameOrPath); ok && errors.Is(err, fs.ErrNotExist) {
		return builtIn, nil
	}
	f := &hulls.Fault{File: nameOrPath}
	if errors.Is(err, fs.ErrNotExist) || nameOrPath == "" {
		f.Value = words.Say(words.NoHull, nil)
		f.Limit = words.Say(words.NoHullLimit, words.Args{"Known": strings.Join(assets.HullNames(), ", ")})
		f.Mend = words.Say(words.NoHullMend, nil)
		return nil, f
	}
	var path *fs.PathError
	if errors.As(err, &path) {
		err = path.Err
	}
	f.Value = words.Say(words.NoRead, words.Args{"What": err})
	f.Limit = words.Say(words.NoReadLimit, nil)
	f.Mend = words.Say(words.NoReadMend, nil)
	return nil, f
}

// readFile reads no more of a file than tells that it is too large.
func readFile(path string) ([]byte, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return io.ReadAll(io.LimitReader(f, hulls.MaxFileBytes+1))
}
