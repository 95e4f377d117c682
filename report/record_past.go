package report

// This file puts on the record what came with the visit from the logbook: the
// boat's past, and photos.

import (
	"bytes"
	"image"
	_ "image/jpeg" // photos are kept as JPEG

	"gonum.org/v1/plot/vg/draw"

	"aligner/assets/words"
	"aligner/report/history"
	"aligner/report/paper"
)

// Photo is a photograph of the visit.
type Photo struct {
	JPEG    []byte
	Caption string
}

// A plot's height on the page, and a photo's, two of which stand in a row.
const (
	plotsMM = 120.0
	photoMM = 68.0
)

// recordPast is what the boat's visits found and left, where there is more than
// this one.
func (f *flow) recordPast() error {
	p := f.o.Past
	if p == nil || len(p.Entries) < 2 {
		return nil
	}
	f.sectionWith(words.PaperSecPast, plotsMM+20)
	x, _, w, _ := f.InsideMM()
	d := history.Drawing{Past: p, Speaker: f.s, Units: f.u, Points: 7.5}
	if err := d.Draw(draw.New(f.PlotArea(x, f.y, w, plotsMM))); err != nil {
		return err
	}
	f.y += plotsMM + 2
	speech := history.Speech{Speaker: f.s, Units: f.u, Past: p}
	for i := range p.Entries {
		lines := speech.Visit(i)
		f.under(lines[0], 12)
		f.paragraphs(append(lines[1:], speech.Change(i)...)...)
	}
	return nil
}

// recordAnswers is the table of what one flat, or a slide, does.
func (f *flow) recordAnswers() error {
	f.sectionWith(words.SheetSecAnswers, 60)
	f.paragraphs(f.say(words.SheetAnswersHow, nil))
	return f.stepTable()
}

// recordPhotos are the photos, each with its caption below.
func (f *flow) recordPhotos() error {
	if len(f.o.Photos) == 0 {
		return nil
	}
	f.sectionWith(words.PaperSecPhotos, photoMM+16)
	x, _, w, _ := f.InsideMM()
	const between = 6.0
	column := (w - between) / 2
	for i, photo := range f.o.Photos {
		picture, _, err := image.Decode(bytes.NewReader(photo.JPEG))
		if err != nil {
			return err
		}
		if i%2 == 0 && f.need(photoMM+10) {
			f.y += 2
		}
		at := x + float64(i%2)*(column+between)
		b := picture.Bounds()
		wide, tall := column, column*float64(b.Dy())/float64(b.Dx())
		if tall > photoMM {
			wide, tall = photoMM*float64(b.Dx())/float64(b.Dy()), photoMM
		}
		if err := f.Photo(at, f.y, wide, tall, picture); err != nil {
			return err
		}
		f.Paragraph(at, f.y+tall+1, column, paper.Type{Points: 8.5}, photo.Caption)
		if i%2 == 1 || i == len(f.o.Photos)-1 {
			f.y += photoMM + 10
		}
	}
	return nil
}
