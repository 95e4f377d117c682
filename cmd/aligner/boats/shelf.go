package boats

// This file gives the lines of a list by number, read from the logbook a hundred
// at a time when they come into sight.

import "aligner/hulls/logbook"

// atATime is how many lines are read at once.
const atATime = 100

// mostKept is how many pages of lines are kept.
const mostKept = 8

// shelf is the boats that have the words looked for.
type shelf struct {
	book  *logbook.Book
	words string
	count int
	pages map[int][]logbook.HullLine
	err   error // of the last reading; nil: none
}

// find looks for words.
func (s *shelf) find(words string) {
	s.words, s.pages = words, map[int][]logbook.HullLine{}
	s.count, s.err = s.book.CountHulls(words)
}

// line is one boat's.
func (s *shelf) line(i int) (logbook.HullLine, bool) {
	if i < 0 || i >= s.count {
		return logbook.HullLine{}, false
	}
	n := i / atATime
	lines, kept := s.pages[n]
	if !kept {
		if len(s.pages) >= mostKept {
			clear(s.pages)
		}
		lines, s.err = s.book.Hulls(logbook.HullQuery{Words: s.words, Limit: atATime, Offset: n * atATime})
		s.pages[n] = lines
	}
	if i%atATime >= len(lines) { // another program changed the logbook
		return logbook.HullLine{}, false
	}
	return lines[i%atATime], true
}
