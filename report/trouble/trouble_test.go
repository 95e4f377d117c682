package trouble

// This file holds the scheme to its laws.

import (
	"testing"
)

// However a symptom is told, no cause is more than likely before a test.
func TestNoVerdictFromASymptomAlone(t *testing.T) {
	for _, s := range Symptoms {
		f := Weigh(s, nil)
		if len(f.Causes) < 3 {
			t.Errorf("%s has %d causes only", s, len(f.Causes))
		}
		for _, c := range f.Causes {
			if c.Grade == VeryLikely || c.Tested {
				t.Errorf("%s: %s is %s untested", s, c.Cause, c.Grade)
			}
		}
		if len(f.Next) == 0 {
			t.Errorf("%s has no test", s)
		}
	}
}

// Good answers alone never make a cause more than likely either.
func TestNoVerdictByExclusion(t *testing.T) {
	for _, s := range Symptoms {
		f := Weigh(s, nil)
		keep := f.Causes[0].Cause
		made := Answers{}
		for _, test := range Tests {
			if !test.BearsOn(keep) {
				made[test] = Good
			}
		}
		for _, c := range Weigh(s, made).Causes {
			if c.Grade == VeryLikely {
				t.Errorf("%s: %s is %s by exclusion", s, c.Cause, c.Grade)
			}
		}
	}
}

// A test moves the causes it bears on, and of the others only what they share.
func TestATestMovesOnlyWhatItBearsOn(t *testing.T) {
	share := func(f Finding, c Cause) float64 {
		for _, r := range f.Causes {
			if r.Cause == c {
				return r.Share
			}
		}
		return 0
	}
	for _, s := range Symptoms {
		before := Weigh(s, nil)
		for _, test := range before.Next {
			for _, answer := range []Answer{Good, Bad} {
				after := Weigh(s, Answers{test: answer})
				for _, a := range before.Causes {
					for _, b := range before.Causes {
						if test.BearsOn(a.Cause) || test.BearsOn(b.Cause) {
							continue
						}
						was, is := a.Share/b.Share, share(after, a.Cause)/share(after, b.Cause)
						if was/is-1 > 1e-9 || is/was-1 > 1e-9 {
							t.Errorf("%s, %s %s: %s to %s went from %v to %v", s, test, answer, a.Cause, b.Cause, was, is)
						}
					}
					rose := share(after, a.Cause)/(1-share(after, a.Cause)) > a.Share/(1-a.Share)
					if test.BearsOn(a.Cause) && onlyOn(test, a.Cause, before) && rose != (answer == Bad) {
						t.Errorf("%s, %s %s: %s went the wrong way", s, test, answer, a.Cause)
					}
				}
			}
		}
	}
}

// onlyOn reports that of a symptom's causes a test bears on one.
func onlyOn(test Test, c Cause, f Finding) bool {
	for _, r := range f.Causes {
		if r.Cause != c && test.BearsOn(r.Cause) {
			return false
		}
	}
	return true
}

// Every cause is met in some symptom and can be shown by some test; every test is
// of use; every symptom is offered.
func TestNothingIsLost(t *testing.T) {
	if len(fits) != len(Symptoms) || len(trials) != len(Tests) {
		t.Fatalf("%d symptoms of %d, %d tests of %d", len(fits), len(Symptoms), len(trials), len(Tests))
	}
	for _, c := range Causes {
		met, shown := false, false
		for _, s := range Symptoms {
			met = met || fits[s][c] > 0
		}
		for _, test := range Tests {
			shown = shown || test.Shows(c)
		}
		if !met || !shown {
			t.Errorf("%s: met %v, shown by a test %v", c, met, shown)
		}
	}
	for test, trial := range trials {
		if trial.minutes <= 0 || len(trial.hits) == 0 {
			t.Errorf("%s: %+v", test, trial)
		}
		for c, hit := range trial.hits {
			if hit <= test.alarm() || hit >= 1 {
				t.Errorf("%s shows %s %v of the times", test, c, hit)
			}
		}
	}
	for s, causes := range fits {
		for c := range causes {
			if f := Weigh(s, Answers{}); !inList(f, c) {
				t.Errorf("%s: %s is not ranked", s, c)
			}
		}
	}
}

func inList(f Finding, c Cause) bool {
	for _, r := range f.Causes {
		if r.Cause == c {
			return true
		}
	}
	return false
}

// Whatever cause is there, answering the tests offered as it would have them
// answered brings it to the head with the highest grade.
func TestTheTestsOfferedFindTheCause(t *testing.T) {
	for _, s := range Symptoms {
		for cause := range fits[s] {
			made := Answers{}
			minutes := 0
			for range Tests {
				f := Weigh(s, made)
				if len(f.Next) == 0 || f.Causes[0].Grade == VeryLikely {
					break
				}
				test := f.Next[0]
				made[test] = Good
				if trials[test].hits[cause] > 0.5 {
					made[test] = Bad
				}
				minutes += test.Minutes()
			}
			f := Weigh(s, made)
			best := f.Causes[0]
			if best.Cause != cause && best.Grade == VeryLikely && !alike(best.Cause, cause) {
				t.Errorf("%s from %s: found %s after %d minutes", s, cause, best.Cause, minutes)
			}
		}
	}
}

// alike reports that no test here tells two causes apart.
func alike(a, b Cause) bool {
	for _, test := range Tests {
		if (trials[test].hits[a] > 0.5) != (trials[test].hits[b] > 0.5) {
			return false
		}
	}
	return true
}

// A gap out of the rule does not make line-up the likely cause of a shake once a
// turn: it bends steadily, and most boats that are gauged are out of line.
func TestAGapOutOfTheRuleDoesNotExplainAShake(t *testing.T) {
	for _, s := range []Symptom{ShakesOnceATurn, ShakesWithSpeed, ShakesAtOneSpeed} {
		for _, made := range []Answers{{GaugeRound: Bad}, {GaugeRound: Bad, TurnByHand: Bad, TapStrut: Good, TryCoupling: Good, StripBearing: Good}} {
			f := Weigh(s, made)
			for i, c := range f.Causes {
				if c.Cause == OutOfLine && (i == 0 || c.Grade == VeryLikely) {
					t.Errorf("%s with %v: out of line is number %d, %s", s, made, i+1, c.Grade)
				}
			}
		}
	}
	if f := Weigh(BearingWears, Answers{GaugeRound: Bad}); f.Causes[0].Cause != OutOfLine {
		t.Errorf("a bearing that wears, the gap out of the rule: %s first", f.Causes[0].Cause)
	}
}
