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
	// counted: count is all there are; until then, as many as were read.
	counted bool
	turn    int // of finding
	pages   map[int][]logbook.HullLine
	err     error // of the last reading; nil: none
}

// find looks for words. The first lines are there at once; where there may be
// more, they are counted by aside, and then is called.
func (s *shelf) find(words string, aside func(work, rest func()), then func()) {
	s.words, s.pages = words, map[int][]logbook.HullLine{}
	s.turn++
	var lines []logbook.HullLine
	lines, s.err = s.book.Hulls(logbook.HullQuery{Words: words, Limit: atATime})
	s.pages[0], s.count, s.counted = lines, len(lines), len(lines) < atATime
	if s.counted {
		return
	}
	turn, book := s.turn, s.book
	var n int
	var err error
	aside(func() { n, err = book.CountHulls(words) }, func() {
		if turn != s.turn {
			return // other words were typed meanwhile
		}
		s.counted = true
		if err != nil {
			s.err = err
		} else {
			s.count = max(n, len(lines))
		}
		then()
	})
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

// place is where a boat stands now that stood in a line: there, or among the first
// read; else the line itself, and -1 where there is none.
func (s *shelf) place(id logbook.HullID, was int) int {
	if l, ok := s.line(was); ok && l.ID == id {
		return was
	}
	for i, l := range s.pages[0] {
		if l.ID == id {
			return i
		}
	}
	if was >= s.count {
		return -1
	}
	return was
}
