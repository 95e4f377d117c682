package paper

// This file holds the document: its size, fonts, title, pages and attachments.

import (
	"bytes"
	"fmt"
	"time"

	"github.com/jung-kurt/gofpdf"
)

// Size is a size of paper.
type Size string

// The sizes there are.
const (
	A4     Size = "a4"
	Letter Size = "letter"
)

// MarginMM is left free on every side: what printers do not reach, and room for
// a thumb.
const MarginMM = 12.0

// Head says what a document is.
type Head struct {
	Title, Subject string
	Program        string // what made it, with its version
	Size           Size   // "": A4
	Date           time.Time
	Regular, Bold  []byte // TrueType fonts
}

// Sheet is a document being drawn, its last page the current one.
type Sheet struct {
	pdf         *gofpdf.Fpdf
	attachments []gofpdf.Attachment
	images      int
	widths      map[int]bool // of pictures, in pixels
}

// New begins a document without pages.
func New(h Head) *Sheet {
	size := "A4"
	if h.Size == Letter {
		size = "Letter"
	}
	pdf := gofpdf.New("P", "mm", size, "")
	pdf.SetCatalogSort(true)
	pdf.SetCreationDate(h.Date)
	pdf.SetModificationDate(h.Date)
	pdf.SetTitle(h.Title, true)
	pdf.SetSubject(h.Subject, true)
	pdf.SetCreator(h.Program, true)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetMargins(MarginMM, MarginMM, MarginMM)
	pdf.AddUTF8FontFromBytes(family, "", h.Regular)
	pdf.AddUTF8FontFromBytes(family, "B", h.Bold)
	pdf.SetLineCapStyle("round")
	pdf.SetLineJoinStyle("round")
	return &Sheet{pdf: pdf, widths: map[int]bool{}}
}

const family = "sheet"

// AddPage begins a page.
func (s *Sheet) AddPage() { s.pdf.AddPage() }

// Pages is how many there are.
func (s *Sheet) Pages() int { return s.pdf.PageCount() }

// GoTo makes a page the current one, counted from 1.
func (s *Sheet) GoTo(page int) { s.pdf.SetPage(page) }

// SizeMM is the page's width and height.
func (s *Sheet) SizeMM() (width, height float64) { return s.pdf.GetPageSize() }

// InsideMM is the part of the page within the margins.
func (s *Sheet) InsideMM() (left, top, width, height float64) {
	w, h := s.SizeMM()
	return MarginMM, MarginMM, w - 2*MarginMM, h - 2*MarginMM
}

// Attach puts a file into the document.
func (s *Sheet) Attach(name, about string, data []byte) {
	s.attachments = append(s.attachments, gofpdf.Attachment{Content: data, Filename: name, Description: about})
}

// Bookmark names a place of the current page in the reader's side bar.
func (s *Sheet) Bookmark(text string, yMM float64) { s.pdf.Bookmark(text, 0, yMM) }

// Target makes a place of the current page to jump to.
func (s *Sheet) Target(yMM float64) int {
	link := s.pdf.AddLink()
	s.pdf.SetLink(link, yMM, -1)
	return link
}

// LinkTo makes a part of the current page jump to a target.
func (s *Sheet) LinkTo(target int, x, y, w, h float64) { s.pdf.Link(x, y, w, h, target) }

// Bytes is the finished document.
func (s *Sheet) Bytes() ([]byte, error) {
	s.pdf.SetAttachments(s.attachments)
	var out bytes.Buffer
	if err := s.pdf.Output(&out); err != nil {
		return nil, fmt.Errorf("PDF: %w", err)
	}
	return out.Bytes(), nil
}
