package rounds

// This file lines up many boats at once. A boat's numbers come from its own
// random streams, so they are the same whatever the number of workers.

import (
	"fmt"
	"runtime"
	"sync"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/visit/builtin"
)

// Mechanic says who works.
type Mechanic int

// Each works on every boat.
const (
	ToolUser  Mechanic = iota // by the tool alone
	Careful                   // by the lever rule, half turns and odd readings minded
	Plain                     // by the lever rule, at the marks
	mechanics                 // how many
)

func (m Mechanic) String() string {
	return [...]string{"the tool", "lever rule, careful", "lever rule, plain"}[m]
}

// Problem is what to run.
type Problem struct {
	Seed  uint64
	Boats int
	Hulls []*hulls.Hull // boats in turn
	// Tool makes the tool ready for a hull.
	Tool     func(h *hulls.Hull, afloat bool) (Tool, error)
	Workers  int // 0 (default): as many as there are processors
	Settings Settings
}

// Result holds a job by mechanic and boat.
type Result struct {
	Problem Problem
	Jobs    [mechanics][]Job
}

// BuiltIn are the built-in hulls whose shaft can be held seated.
func BuiltIn() ([]*hulls.Hull, error) {
	var all []*hulls.Hull
	for _, name := range assets.HullNames() {
		h, err := builtin.Find(name)
		if err != nil {
			return nil, err
		}
		if h.Coupling.HasPilot() {
			all = append(all, &h)
		}
	}
	return all, nil
}

// Run lines up every boat by every mechanic.
func Run(p Problem) (*Result, error) {
	tools := make(map[string][2]Tool, len(p.Hulls))
	for _, h := range p.Hulls {
		var pair [2]Tool
		for i, afloat := range []bool{false, true} {
			t, err := p.Tool(h, afloat)
			if err != nil {
				return nil, fmt.Errorf("%s: %w", h.Name, err)
			}
			pair[i] = t
		}
		tools[h.Name] = pair
	}
	result := &Result{Problem: p}
	for m := range result.Jobs {
		result.Jobs[m] = make([]Job, p.Boats)
	}
	workers := p.Workers
	if workers == 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	next := make(chan int)
	errs := make([]error, p.Boats)
	var wg sync.WaitGroup
	for range workers {
		wg.Go(func() {
			for n := range next {
				errs[n] = result.boat(n, tools)
			}
		})
	}
	for n := range p.Boats {
		next <- n
	}
	close(next)
	wg.Wait()
	for _, err := range errs {
		if err != nil {
			return nil, err
		}
	}
	return result, nil
}

// boat makes boat n and lets each mechanic work on it. What goes wrong in a job
// is counted as that job's end; only a boat that cannot be made is an error.
func (r *Result) boat(n int, tools map[string][2]Tool) error {
	p := &r.Problem
	b, err := NewBoat(p.Seed, n, p.Hulls[n%len(p.Hulls)])
	if err != nil {
		return err
	}
	tool := tools[b.Nominal.Name][0]
	if b.Afloat {
		tool = tools[b.Nominal.Name][1]
	}
	for m := range mechanics {
		var job Job
		var err error
		switch m {
		case ToolUser:
			job, err = ByTool(b, tool, stream(p.Seed, n, toolStream), p.Settings)
		case Careful:
			job, err = ByLever(b, true, stream(p.Seed, n, carefulStream), p.Settings)
		case Plain:
			job, err = ByLever(b, false, stream(p.Seed, n, plainStream), p.Settings)
		}
		if err != nil {
			if len(job.TrueThou) == 0 {
				return err
			}
			job.ended(Failed, err.Error())
		}
		r.Jobs[m][n] = job
	}
	return nil
}
