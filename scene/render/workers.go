// This file holds the workers: goroutines that live as long as the renderer.

package render

import (
	"sync"
	"sync/atomic"
)

// pool runs a phase on all workers at once. The caller's goroutine is the first
// worker, so that one worker means no goroutine at all.
type pool struct {
	start []chan func(worker int)
	done  sync.WaitGroup
	next  atomic.Int64
}

func newPool(workers int) *pool {
	p := &pool{start: make([]chan func(int), workers-1)}
	for i := range p.start {
		c := make(chan func(int))
		p.start[i] = c
		go func() {
			for run := range c {
				run(i + 1)
				p.done.Done()
			}
		}()
	}
	return p
}

// run calls f once on every worker and returns when all are done. Within f,
// take hands out the numbers of the pieces of work.
func (p *pool) run(f func(worker int)) {
	p.next.Store(0)
	p.done.Add(len(p.start))
	for _, c := range p.start {
		c <- f
	}
	f(0)
	p.done.Wait()
}

// take returns the next piece of work of the phase.
func (p *pool) take() int { return int(p.next.Add(1)) - 1 }

func (p *pool) close() {
	for _, c := range p.start {
		close(c)
	}
}
