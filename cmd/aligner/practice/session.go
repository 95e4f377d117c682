package practice

// This file is a piece of work as the page keeps it: whose it is, how far it is, and
// what came of it. It outlives the page, which is made anew with every change of
// language or looks.

import (
	"time"

	"aligner/kinematics/practice"
	"aligner/report/learners"
)

// Session is that. The window keeps it for the page.
type Session struct {
	File    learners.File
	Learner string
	Task    practice.Task
	work    *practice.Work    // nil: none begun
	debrief *practice.Debrief // nil: not handed over
	trouble error             // in keeping the last thing done
	Now     func() time.Time  // nil: the clock
}

// NewSession goes on with what was left unfinished, if anything was.
func NewSession(f learners.File, learner string) *Session {
	s := &Session{File: f, Learner: learner, Task: practice.Task{Grade: practice.TiltOnly, Number: 1}}
	if u, w := f.GoOn(); u != nil {
		s.Learner, s.Task, s.work = u.Learner, u.Task, w
	}
	return s
}

// begin puts a boat made ready in the place of the one before.
func (s *Session) begin(w *practice.Work) {
	s.work, s.debrief = w, nil
	s.keep()
}

// keep keeps what was done so far.
func (s *Session) keep() {
	s.trouble = s.File.Keep(learners.Unfinished{Learner: s.Learner, Task: s.work.Task, Acts: s.work.Acts})
}

// do does one act, and keeps it.
func (s *Session) do(a practice.Act) error {
	_, err := s.work.Do(a)
	if err == nil && a.HandOver == nil { // until it is judged it can be handed over again
		s.keep()
	}
	return err
}

// ended keeps what came of a piece of work.
func (s *Session) ended(d *practice.Debrief) {
	now := time.Now
	if s.Now != nil {
		now = s.Now
	}
	s.debrief = d
	s.trouble = s.File.Add(learners.Result{Learner: s.Learner, Ended: now().UTC().Truncate(time.Second), Task: s.work.Task, Acts: s.work.Acts, Debrief: *d})
	if s.trouble == nil {
		s.trouble = s.File.Done()
	}
}

// next is the boat after this one: the next of the grade, then of the next grade.
func (s *Session) next() practice.Task {
	t := s.work.Task
	if t.Number++; t.Number > practice.Numbers {
		t.Number = 1
		for i, g := range practice.Grades[:len(practice.Grades)-1] {
			if g == s.work.Task.Grade {
				t.Grade = practice.Grades[i+1]
			}
		}
	}
	return t
}
