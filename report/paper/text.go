package paper

// This file sets type: single lines that shrink to their room, and paragraphs.

import "strings"

// MMPerPoint is a typographic point, 1/72 in.
const MMPerPoint = 25.4 / 72

// Align is where a line stands in its room.
type Align int

// The alignments.
const (
	Left Align = iota
	Centre
	Right
)

// Type is how text is set.
type Type struct {
	Points float64
	Bold   bool
	Align  Align
	Grey   uint8 // 0 is black, 255 white
}

// leading is from line to line, and capHeight that of a capital, as parts of the
// size of type.
const (
	leading   = 1.28
	capHeight = 0.73
)

// leastPoints is the smallest a line is shrunk to, or leastPart of its size where
// that is small already; what is longer still is cut.
const leastPoints, leastPart = 5.5, 0.75

// LineMM is the height of a line.
func (t Type) LineMM() float64 { return t.Points * MMPerPoint * leading }

func (s *Sheet) use(t Type) {
	style := ""
	if t.Bold {
		style = "B"
	}
	// A page gone back to does not know the font last used: choosing another
	// size first makes the library write it out.
	s.pdf.SetFont(family, style, t.Points+1)
	s.pdf.SetFont(family, style, t.Points)
	s.pdf.SetTextColor(int(t.Grey), int(t.Grey), int(t.Grey))
}

// WidthMM is how wide a text stands on one line.
func (s *Sheet) WidthMM(t Type, text string) float64 {
	s.use(t)
	return s.pdf.GetStringWidth(text)
}

// Line sets one line in a room w wide whose top is y, smaller if it must be,
// and gives its height. A room of no width is as wide as the text.
func (s *Sheet) Line(x, y, w float64, t Type, text string) float64 {
	height := t.LineMM()
	if w > 0 {
		t, text = s.fitted(w, t, text)
	}
	baseline := y + height/2 + t.Points*MMPerPoint*capHeight/2
	s.put(x, baseline, w, t, text)
	return height
}

// Mid sets one line whose capitals are centred on y.
func (s *Sheet) Mid(x, y, w float64, t Type, text string) {
	if w > 0 {
		t, text = s.fitted(w, t, text)
	}
	s.put(x, y+t.Points*MMPerPoint*capHeight/2, w, t, text)
}

// fitted makes type small enough for a width, and cuts what still is too long.
func (s *Sheet) fitted(w float64, t Type, text string) (Type, string) {
	width := s.WidthMM(t, text)
	if width <= w {
		return t, text
	}
	t.Points = max(min(leastPoints, leastPart*t.Points), t.Points*w/width*0.999)
	if s.WidthMM(t, text) <= w {
		return t, text
	}
	runes := []rune(text)
	for len(runes) > 0 && s.WidthMM(t, string(runes)+"…") > w {
		runes = runes[:len(runes)-1]
	}
	return t, string(runes) + "…"
}

func (s *Sheet) put(x, baseline, w float64, t Type, text string) {
	if text == "" {
		return
	}
	s.use(t)
	switch width := s.pdf.GetStringWidth(text); t.Align {
	case Centre:
		x += (w - width) / 2
	case Right:
		x += w - width
	}
	s.pdf.Text(x, baseline, text)
}

// Paragraph sets text over as many lines as it takes and gives its height.
func (s *Sheet) Paragraph(x, y, w float64, t Type, text string) float64 {
	lines := s.Wrap(w, t, text)
	for i, line := range lines {
		s.put(x, y+float64(i)*t.LineMM()+t.LineMM()/2+t.Points*MMPerPoint*capHeight/2, w, t, line)
	}
	return float64(len(lines)) * t.LineMM()
}

// ParagraphMM is the height a paragraph takes.
func (s *Sheet) ParagraphMM(w float64, t Type, text string) float64 {
	return float64(len(s.Wrap(w, t, text))) * t.LineMM()
}

// Wrap breaks text into lines at its spaces.
func (s *Sheet) Wrap(w float64, t Type, text string) []string {
	s.use(t)
	space := s.pdf.GetStringWidth(" ")
	var lines []string
	line, width := "", 0.0
	for _, word := range strings.Fields(text) {
		wide := s.pdf.GetStringWidth(word)
		if line != "" && width+space+wide > w {
			lines = append(lines, line)
			line, width = "", 0
		}
		if line != "" {
			line, width = line+" "+word, width+space+wide
			continue
		}
		for wide > w && len([]rune(word)) > 1 {
			head := s.head(w, word)
			lines = append(lines, head)
			word = word[len(head):]
			wide = s.pdf.GetStringWidth(word)
		}
		line, width = word, wide
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// head is as much of a word as fits a line, one letter at least.
func (s *Sheet) head(w float64, word string) string {
	end := 0
	for i, r := range word {
		next := i + len(string(r))
		if end > 0 && s.pdf.GetStringWidth(word[:next]) > w {
			break
		}
		end = next
	}
	return word[:end]
}
