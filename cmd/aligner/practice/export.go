package practice

// This file writes the results kept as a table, for a teacher's spreadsheet.

import (
	"io"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"

	"aligner/assets/words"
	"aligner/cmd/aligner/outfile"
	"aligner/report/learners"
)

// exportName is offered for the file.
const exportName = "practice.csv"

// askExport asks where the table is to go.
func (p *Page) askExport() {
	d := dialog.NewFileSave(func(to fyne.URIWriteCloser, err error) {
		if to == nil || err != nil {
			return
		}
		path := to.URI().Path()
		to.Close()
		p.writeResults(path)
	}, p.desk.Window)
	d.SetFileName(exportName)
	d.Show()
}

// writeResults writes all results, oldest first.
func (p *Page) writeResults(path string) {
	all := slices.Clone(p.results)
	slices.Reverse(all)
	err := outfile.Write(path, func(w io.Writer) error { return learners.WriteRows(w, all) })
	if err != nil {
		p.tell(p.desk.Speaker.Retell(err.Error()), true)
		return
	}
	p.tell(p.say(words.PracticeExported, words.Args{"File": path}), false)
}
