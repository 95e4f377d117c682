package say

// This file says what a boat answered to each move, against what was expected of
// it: the learning, in plain words.

import (
	"math"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics/response"
)

// Answers are a line for each move that was gauged after, and another where it
// is off: what commonly makes it so.
func Answers(s words.Speaker, u Units, h *hulls.Hull, l *response.Learnt) []string {
	var lines []string
	for i := range l.Answers {
		lines = append(lines, Answer(s, u, h, &l.Answers[i])...)
	}
	return lines
}

// Answer is that to one move.
func Answer(s words.Speaker, u Units, h *hulls.Hull, a *response.Answer) []string {
	percent := func(share float64) int { return int(math.Round(100 * share)) }
	expected := math.Hypot(a.ExpectedMM[0], a.ExpectedMM[1])
	args := words.Args{"Number": a.Change + 1, "Mounts": mounts(s, h, a.Mounts), "Percent": percent(a.Share),
		"Low": max(percent(1-2*a.SD), 0), "High": percent(1 + 2*a.SD),
		"Expected": u.LeafWithUnit(2 * expected), "Found": u.LeafWithUnit(2 * a.Share * expected)}
	id := words.AnswerAsExpected
	switch {
	case !a.Off():
		return []string{s.Say(id, args)}
	case a.Share < 0:
		id = words.AnswerOther
	case a.Share < 1:
		id = words.AnswerLess
	default:
		id = words.AnswerMore
	}
	var causes []string
	for _, c := range a.Causes {
		causes = append(causes, s.Say(words.Of("learn", string(c)), nil))
	}
	return []string{s.Say(id, args), s.Say(words.AnswerCauses, words.Args{"Causes": strings.Join(causes, "; ")})}
}
