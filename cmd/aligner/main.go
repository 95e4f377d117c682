// Command aligner lines up an inboard engine with its propeller shaft.
//
// Its verbs (one a file: check.go, hulls.go) work without a screen, take files
// or the names of built-in hulls, print for people or, with --json, one JSON
// object with units in its keys, and end with the codes of exit.go.
package main

import (
	"os"

	_ "aligner/cmd/aligner/locale"
)

func main() {
	code := func() int {
		defer func() {
			if r := recover(); r != nil {
				faultLog().Panicked(r)
				panic(r)
			}
		}()
		return run(os.Args[1:], os.Stdout, os.Stderr)
	}()
	os.Exit(code)
}
