package report

// This file makes a sheet of any kind.

import (
	"bytes"
	"fmt"

	"aligner/hulls"
)

// PDF makes a sheet.
func PDF(in Input, o Options) ([]byte, error) {
	var d *drawer
	var err error
	switch o.Kind {
	case Bay:
		d = bay(in, o)
	case Customer:
		d, err = customer(in, o)
	case Record:
		d, err = record(in, o)
	case Class:
		d, err = class(in, o)
	default:
		err = &hulls.Fault{Place: "kind", Value: fmt.Sprintf("%q", string(o.Kind)), Limit: fmt.Sprint("one of ", Kinds), Mend: "correct the kind"}
	}
	if err != nil {
		return nil, err
	}
	return d.Bytes()
}

// pageMark begins each page's object in the files made here.
var pageMark = []byte("<</Type /Page\n")

// Pages is how many pages a sheet made by PDF has.
func Pages(pdf []byte) int { return bytes.Count(pdf, pageMark) }
