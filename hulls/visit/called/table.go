package called

// This file reads several lines at once: a table copied out of a spreadsheet,
// or lines as they were called. Either all of it is readings or none.
//
//	Clock   Goes thou   Stops thou        Uhr;geht mm;stoppt mm
//	12      8           10                12;0,2;0,25
//	1:30    4           5                 1:30;0,1;
//
// Cells are parted by tabs, else by semicolons, else by commas (a decimal comma
// then stands in quotes). Text with neither, or with a slash between goes and
// stops, is lines as they are called. A first row without a place is a header:
// it may name columns in any order, and the unit. Without one the columns are
// place, goes, stops, note. An empty goes: not even the thinnest entered; an
// empty stops: nothing thicker was tried; no such column: the next leaf of the
// set stopped.

import (
	"encoding/csv"
	"strings"

	"aligner/hulls/visit"
)

// column is what stands in one.
type column int

const (
	place column = iota
	goes
	stops
	note
	other
)

// columnWords name a column, in English and German, by how they begin.
var columnWords = []struct {
	word string
	is   column
}{
	{"clock", place}, {"place", place}, {"position", place}, {"uhr", place}, {"ort", place}, {"stelle", place},
	{"no-go", stops}, {"nogo", stops}, {"no go", stops}, {"stop", stops}, {"steht", stops}, {"hält", stops}, {"geht nicht", stops},
	{"goes", goes}, {"go", goes}, {"geht", goes}, {"gut", goes},
	{"note", note}, {"remark", note}, {"notiz", note}, {"bemerkung", note},
}

// Table reads text of one line or several. With any fault there are no readings.
func Table(text string, s Setting) ([]visit.Reading, []*Fault) {
	lines := strings.Split(strings.ReplaceAll(strings.ReplaceAll(text, "\r\n", "\n"), "\r", "\n"), "\n")
	t := &table{Setting: s, cut: separator(text, s.kind()), columns: []column{place, goes, stops, note}}
	first := true
	for i, line := range lines {
		if strings.TrimSpace(line) == "" {
			continue
		}
		t.row(i+1, line, first)
		first = false
	}
	if len(t.readings) == 0 && len(t.faults) == 0 {
		t.faults = []*Fault{{Why: NothingYet, Text: strings.TrimSpace(text)}}
	}
	if len(t.faults) > 0 {
		return nil, t.faults
	}
	return t.readings, nil
}

// separator is what parts cells, or 0: the text is lines as they are called.
func separator(text, kind string) rune {
	switch {
	case kind != "leaf": // other kinds have no columns of their own
		return 0
	case strings.Contains(text, "\t"):
		return '\t'
	case strings.Contains(text, ";"):
		return ';'
	case strings.Contains(text, "/"):
		return 0
	case strings.Contains(text, ","):
		return ','
	}
	return 0
}

// table is what was read so far.
type table struct {
	Setting
	cut      rune
	columns  []column
	readings []visit.Reading
	faults   []*Fault
}

func (t *table) fault(line int, text string, why Why) {
	t.faults = append(t.faults, &Fault{Why: why, Line: line, Text: strings.TrimSpace(text)})
}

func (t *table) row(number int, text string, first bool) {
	if t.cut == 0 {
		if first && t.header([]string{text}) {
			return
		}
		r, err := Line(text, t.Setting)
		if err != nil {
			t.fault(number, text, err.(*Fault).Why)
			return
		}
		t.readings = append(t.readings, r)
		if deg, ok := visit.ClockOf(r); ok && deg == t.AskedDeg && len(t.Then) > 0 {
			t.AskedDeg, t.Then = t.Then[0], t.Then[1:]
		}
		return
	}
	c := csv.NewReader(strings.NewReader(text))
	c.Comma, c.LazyQuotes, c.TrimLeadingSpace = t.cut, true, t.cut != '\t'
	cells, err := c.Read()
	if err != nil {
		t.fault(number, text, NoColumns)
		return
	}
	for i := range cells {
		cells[i] = strings.TrimSpace(cells[i])
	}
	if first && t.header(cells) {
		return
	}
	if r, why := t.leaf(cells); why != "" {
		t.fault(number, text, why)
	} else {
		t.readings = append(t.readings, r)
	}
}

// header takes a first row whose cells are no place: it names columns, the
// unit, or both.
func (t *table) header(cells []string) bool {
	if _, ok := Place(strings.Fields(cells[0] + " x")[0], t.Seen); ok {
		return false
	}
	var columns []column
	known := false
	for _, cell := range cells {
		low, is := strings.ToLower(cell), other
		for _, w := range columnWords {
			if strings.HasPrefix(low, w.word) {
				is, known = w.is, true
				break
			}
		}
		columns = append(columns, is)
		for _, u := range []visit.Unit{visit.InMM, visit.InThou} {
			if strings.Contains(low, string(u)) {
				t.useUnit(u)
				known = true
			}
		}
	}
	if !known {
		return false
	}
	if t.cut != 0 && has(columns, place) {
		t.columns = columns
	}
	return true
}

// useUnit changes the unit; the set's leaves go with it.
func (t *table) useUnit(u visit.Unit) {
	from := (&line{Setting: t.Setting}).unit()
	if from == u {
		return
	}
	var leaves []float64
	for _, leaf := range t.Leaves {
		leaves = append(leaves, rounded(in(visit.Length{Value: leaf, Unit: from}, u)))
	}
	t.Unit, t.Leaves = u, leaves
}

func has(columns []column, c column) bool {
	for _, is := range columns {
		if is == c {
			return true
		}
	}
	return false
}

// leaf makes a reading of a row's cells.
func (t *table) leaf(cells []string) (visit.Reading, Why) {
	by := map[column]string{}
	for i, cell := range cells {
		if i >= len(t.columns) {
			if cell != "" {
				return nil, NoColumns
			}
			continue
		}
		by[t.columns[i]] = cell
	}
	if by[place] == "" {
		return nil, NoPlace
	}
	limits := or(by[goes], "-")
	if _, told := by[stops]; told {
		limits += "/" + or(by[stops], "-")
	} else if limits == "-" {
		limits = "0"
	}
	if strings.ContainsAny(by[place]+limits, "#@") || strings.Contains(by[goes]+by[stops], "/") {
		return nil, Unreadable
	}
	l, err := take(strings.ReplaceAll(by[place], " ", "")+" "+strings.ReplaceAll(limits, " ", ""), t.Setting)
	if err != nil {
		return nil, Unreadable
	}
	r, err := l.leaf()
	if err != nil {
		return nil, err.(*Fault).Why
	}
	leaf := r.(visit.Leaf)
	leaf.Note = by[note]
	return leaf, ""
}
