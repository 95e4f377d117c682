package history

// This file puts chances into grades, and says how much of an answer there is.

import (
	"math"
	"reflect"
	"slices"

	"aligner/hulls/visit"
)

// Grade is a chance in words.
type Grade string

// The grades, from the likeliest.
const (
	AlmostSure  Grade = "almost sure" // from 0.9
	Likeliest   Grade = "most likely" // from 0.65
	Possible    Grade = "possible"    // from 0.2
	HardlyGrade Grade = "hardly"      // from 0.05
	Unlikely    Grade = "unlikely"
)

func gradeOf(chance float64) Grade {
	switch {
	case chance >= 0.9:
		return AlmostSure
	case chance >= toldFrom:
		return Likeliest
	case chance >= 0.2:
		return Possible
	case chance >= 0.05:
		return HardlyGrade
	}
	return Unlikely
}

// toldFrom is the chance from which one cause is named as the likely one.
const toldFrom = 0.65

// CornerDown is an answer of Told only: a mount came down, by rubber or by nut.
const CornerDown Cause = "corner down"

// kindsTold are the kinds of cause Told may name, each the sum of some causes; a
// narrower one is named before a wider one.
var kindsTold = []struct {
	cause Cause
	of    []Cause
}{
	{Steady, []Cause{Steady}}, {Settled, []Cause{Settled}}, {MountDown, []Cause{MountDown}}, {NutBacked, []Cause{NutBacked}},
	{NutRaised, []Cause{NutRaised}}, {ToOneSide, []Cause{ToOneSide}}, {SomethingElse, []Cause{SomethingElse}},
	{CornerDown, []Cause{MountDown, NutBacked}},
}

// Told is as much of an answer as the visits give: one cause at its mounts; or a
// kind of cause, the mounts not told apart (Mounts are then all that come into
// question); or none, Cause being "".
func (c *Change) Told() Likely {
	if len(c.Likely) == 0 {
		return Likely{}
	}
	if c.Likely[0].Chance >= toldFrom {
		return c.Likely[0]
	}
	for _, kind := range kindsTold {
		if sum := c.sum(kind.cause, kind.of); sum.Chance >= toldFrom {
			return sum
		}
	}
	return Likely{}
}

// sum puts causes together.
func (c *Change) sum(as Cause, of []Cause) Likely {
	sum := Likely{Cause: as}
	for _, l := range c.Likely {
		if !slices.Contains(of, l.Cause) {
			continue
		}
		sum.Chance += l.Chance
		sum.MM += l.Chance * l.MM
		sum.SDMM += l.Chance * (l.SDMM*l.SDMM + l.MM*l.MM)
		if l.Chance >= leastNamed {
			sum.Mounts = append(sum.Mounts, l.Mounts...)
		}
	}
	if sum.Chance > 0 {
		sum.MM /= sum.Chance
		sum.SDMM = math.Sqrt(max(0, sum.SDMM/sum.Chance-sum.MM*sum.MM))
	}
	slices.Sort(sum.Mounts)
	sum.Mounts, sum.Grade = slices.Compact(sum.Mounts), gradeOf(sum.Chance)
	return sum
}

// leastNamed is the chance from which a mount comes into question.
const leastNamed = 0.05

// Open reports whether an answer of Told leaves open which mount it was.
func (c *Change) Open(told Likely) bool {
	return told.Cause != "" && c.Likely[0].Chance < toldFrom
}

// sameHull reports whether the numbers that move the gap are the same.
func sameHull(a, b *visit.Document) bool { return reflect.DeepEqual(a.Hull, b.Hull) }
