package search

// This file holds how long searches take, on the problems of testdata/glpk by
// kind. Times are for one problem, the mean over the kind; ms/worst is the
// slowest of the kind.

import (
	"math"
	"regexp"
	"testing"
	"time"
)

// kinds are the names of the stored problems without their numbers.
func kinds(b *testing.B) (names []string, of map[string][]stored) {
	number := regexp.MustCompile(`-\d+$`)
	of = map[string][]stored{}
	for _, s := range load(b) {
		kind := number.ReplaceAllString(s.name, "")
		if of[kind] == nil {
			names = append(names, kind)
		}
		of[kind] = append(of[kind], s)
	}
	return names, of
}

// run searches all problems b.N times and reports the slowest.
func run(b *testing.B, all []stored, change func(Problem) Problem, s Settings) {
	b.Helper()
	var worst time.Duration
	nodes, n := 0, 0
	for b.Loop() {
		for _, one := range all {
			start := time.Now()
			r := Least(change(one.p), s)
			worst = max(worst, time.Since(start))
			nodes += r.Nodes
			n++
		}
	}
	b.ReportMetric(b.Elapsed().Seconds()*1e3/float64(n), "ms/problem")
	b.ReportMetric(worst.Seconds()*1e3, "ms/worst")
	b.ReportMetric(float64(nodes)/float64(n), "nodes/problem")
	b.ReportMetric(0, "ns/op")
}

func BenchmarkRowsOnly(b *testing.B) {
	names, of := kinds(b)
	for _, kind := range names {
		b.Run(kind, func(b *testing.B) {
			run(b, of[kind], func(p Problem) Problem { return p }, Settings{})
		})
	}
}

// slowly spends about a microsecond and refuses half of all moves.
func slowly(p Problem) Problem {
	p.Accept = func(move []int) bool {
		x := float64(move[0])
		for range 70 {
			x = math.Sin(x + 1)
		}
		return scramble(move, 99) < 0.5+1e-9*x
	}
	return p
}

func BenchmarkHalfRefused(b *testing.B) {
	names, of := kinds(b)
	for _, kind := range names {
		b.Run(kind, func(b *testing.B) { run(b, of[kind], slowly, Settings{}) })
	}
}

// BenchmarkNearlyAllRefused refuses all but one move in a thousand.
func BenchmarkNearlyAllRefused(b *testing.B) {
	names, of := kinds(b)
	for _, kind := range names {
		b.Run(kind, func(b *testing.B) {
			run(b, of[kind], func(p Problem) Problem {
				p.Accept = func(move []int) bool { return scramble(move, 99) < 0.001 }
				return p
			}, Settings{})
		})
	}
}

func BenchmarkAllRefused(b *testing.B) {
	_, of := kinds(b)
	for _, kind := range []string{"four", "six"} {
		b.Run(kind, func(b *testing.B) {
			run(b, of[kind][:2], func(p Problem) Problem { p.Accept = refuse; return p }, Settings{})
		})
	}
}

func BenchmarkAcceptItself(b *testing.B) {
	p := slowly(Problem{})
	move := make([]int, 6)
	for b.Loop() {
		p.Accept(move)
	}
}
