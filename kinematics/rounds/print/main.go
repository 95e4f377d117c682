// Command print lines simulated boats up by the tool and by the lever rule, and
// prints what came of it. See package rounds for what is simulated.
//
//	go run ./kinematics/rounds/print -seed 1 -boats 1000
package main

import (
	"flag"
	"fmt"
	"os"

	"aligner/kinematics/rounds"
)

func main() {
	seed := flag.Uint64("seed", 1, "the same seed gives the same boats and readings")
	boats := flag.Int("boats", 1000, "how many, the built-in hulls in turn")
	workers := flag.Int("workers", 0, "boats at once; 0: as many as there are processors")
	failures := flag.Bool("failures", false, "also list every boat that was not truly within after two moves, or wrongly said to be")
	flag.Parse()
	if err := run(*seed, *boats, *workers, *failures); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(3)
	}
}

func run(seed uint64, boats, workers int, failures bool) error {
	hulls, err := rounds.BuiltIn()
	if err != nil {
		return err
	}
	r, err := rounds.Run(rounds.Problem{Seed: seed, Boats: boats, Hulls: hulls, Tool: rounds.NewTool, Workers: workers})
	if err != nil {
		return err
	}
	r.Print(os.Stdout)
	if failures {
		r.PrintFailures(os.Stdout)
	}
	return nil
}
