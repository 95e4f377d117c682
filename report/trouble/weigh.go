package trouble

// This file weighs the causes of a symptom by the tests answered, and picks the
// next test.

import (
	"math"
	"slices"
)

// Answer is how a test came out.
type Answer string

// The answers; a test with neither was not made.
const (
	Good Answer = "good"
	Bad  Answer = "bad"
)

// Answers are the tests made.
type Answers map[Test]Answer

// Ranked is a cause with what speaks for it.
type Ranked struct {
	Cause  Cause
	Share  float64 // of all weights, Else's included
	Grade  Grade
	Tested bool // a test that shows it came out bad
}

// Finding is what is thought of a symptom.
type Finding struct {
	Symptom Symptom
	Causes  []Ranked // the likeliest first
	// Next are the tests not yet made that bear on a cause here, the one that
	// tells most for its minutes first.
	Next []Test
}

// Weigh ranks the causes of a symptom, some tests having been made.
func Weigh(s Symptom, made Answers) Finding { return WeighOn(Boat{}, s, made) }

// WeighOn is Weigh on a boat of which something is known beforehand.
func WeighOn(b Boat, s Symptom, made Answers) Finding {
	f := Finding{Symptom: s}
	sum := Else
	for _, c := range Causes {
		w := fits[s][c] * b.counts(c)
		if w == 0 {
			continue
		}
		tested := false
		for t, a := range made {
			w *= ratio(t, c, a)
			tested = tested || a == Bad && t.Shows(c)
		}
		f.Causes = append(f.Causes, Ranked{Cause: c, Share: w, Tested: tested})
		sum += w
	}
	for i := range f.Causes {
		c := &f.Causes[i]
		c.Share /= sum
		c.Grade = grade(c.Share, c.Tested)
	}
	slices.SortStableFunc(f.Causes, func(a, b Ranked) int {
		switch {
		case a.Share > b.Share:
			return -1
		case a.Share < b.Share:
			return 1
		}
		return 0
	})
	f.Next = next(f.Causes, made)
	return f
}

// ratio is what a test's answer multiplies a cause's weight by.
func ratio(t Test, c Cause, a Answer) float64 {
	hit, bears := trials[t].hits[c]
	switch {
	case !bears:
		return 1
	case a == Bad:
		return hit / t.alarm()
	case a == Good:
		return (1 - hit) / (1 - t.alarm())
	}
	return 1
}

// leastGain is what a test must tell to be worth its while, in bits.
const leastGain = 0.005

// next orders the tests by what they are expected to tell, a minute.
func next(causes []Ranked, made Answers) []Test {
	type worth struct {
		test Test
		rate float64
	}
	var list []worth
	for _, t := range Tests {
		if made[t] != "" {
			continue
		}
		if g := gain(t, causes); g > leastGain {
			list = append(list, worth{t, g / float64(t.Minutes())})
		}
	}
	slices.SortStableFunc(list, func(a, b worth) int {
		switch {
		case a.rate > b.rate:
			return -1
		case a.rate < b.rate:
			return 1
		}
		return 0
	})
	var tests []Test
	for _, w := range list {
		tests = append(tests, w.test)
	}
	return tests
}

// gain is the mutual information of a test and the causes, in bits: how much the
// answer is expected to narrow them down (Shannon).
func gain(t Test, causes []Ranked) float64 {
	rest, bad, noise := 1.0, 0.0, 0.0
	each := func(share, p float64) {
		bad += share * p
		noise += share * coin(p)
		rest -= share
	}
	for _, c := range causes {
		p, bears := trials[t].hits[c.Cause]
		if !bears {
			p = t.alarm()
		}
		each(c.Share, p)
	}
	each(max(rest, 0), t.alarm())
	return coin(bad) - noise
}

// coin is the entropy of a yes or no, in bits.
func coin(p float64) float64 {
	if p <= 0 || p >= 1 {
		return 0
	}
	return -p*math.Log2(p) - (1-p)*math.Log2(1-p)
}
