package interval

// This file holds a fit of anything at all to what it promises: no panic, and
// numbers where it says that it converged.

import (
	"encoding/binary"
	"math"
	"math/rand/v2"
	"testing"
)

// bits turns bytes into numbers: any double there is, or with tame set one of
// everyday size with a few digits, so that rows meet and contradict each other.
type bits struct {
	data []byte
	tame bool
}

func (b *bits) number() float64 {
	if !b.tame {
		var raw [8]byte
		b.data = b.data[copy(raw[:], b.data):]
		return math.Float64frombits(binary.LittleEndian.Uint64(raw[:]))
	}
	var raw [2]byte
	b.data = b.data[copy(raw[:], b.data):]
	return float64(int16(binary.LittleEndian.Uint16(raw[:]))) / 256
}

func (b *bits) problem(unknowns int) Problem {
	p := Problem{Unknowns: unknowns, Sigma: math.Abs(b.number())}
	for len(b.data) > 0 && len(p.Rows) < 40 {
		row := Row{X: make([]float64, unknowns)}
		for j := range row.X {
			row.X[j] = b.number()
		}
		row.Least = b.number()
		switch row.Scale = math.Abs(b.number()); {
		case row.Scale > 100:
			row.Least, row.Most, row.Scale = math.Inf(-1), row.Least, 1
		case row.Scale > 80:
			row.Most, row.Scale = math.Inf(1), 1
		case row.Scale > 60:
			row.Most, row.Scale = row.Least, 1
		default:
			row.Most = row.Least + math.Abs(b.number())
		}
		p.Rows = append(p.Rows, row)
	}
	return p
}

func FuzzFit(f *testing.F) {
	random := rand.New(rand.NewPCG(5, 5))
	for n := range 400 {
		data := make([]byte, 1+random.IntN(300))
		for i := range data {
			data[i] = byte(random.Uint32())
		}
		f.Add(data, uint8(n%5), n%3 == 0, n%4 > 0)
	}
	f.Fuzz(func(t *testing.T, data []byte, unknowns uint8, free, tame bool) {
		b := bits{data, tame}
		p := b.problem(int(unknowns % 6))
		r := Fit(p, Settings{FreeSigma: free})
		if r.Status != Converged {
			if r.Covariance != nil {
				t.Fatalf("%v, with a covariance", r.Status)
			}
			return
		}
		finite := func(what string, x float64) {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Fatalf("converged after %d steps with %s %v: %+v", r.Iterations, what, x, p)
			}
		}
		finite("sigma", r.Sigma)
		finite("log likelihood", r.LogLikelihood)
		for i, x := range r.B {
			finite("b", x)
			for j := range r.B {
				finite("covariance", r.Covariance.At(i, j))
			}
			if !(r.Covariance.At(i, i) > 0) {
				t.Fatalf("converged with a variance of %v: %+v", r.Covariance.At(i, i), p)
			}
		}
	})
}
