package logbook

// This file reads the pages of a damaged logbook without asking SQLite, which
// gives up where a page that leads to others is lost. Every page that holds rows
// is found by its own form (https://www.sqlite.org/fileformat2.html, sections 1.6
// and 2 for pages and records, 4 for the log).

import (
	"encoding/binary"
	"math"
	"os"
)

// pages are a file's, by number from 1, as the log ahead of the file has them.
type pages struct {
	file   []byte
	logged map[int][]byte
}

func readPages(path string) (*pages, error) {
	file, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	log, err := os.ReadFile(path + "-wal")
	if err != nil && !os.IsNotExist(err) {
		return nil, err
	}
	return &pages{file, committed(log)}, nil
}

// committed are the pages of a log up to the last transaction it holds whole.
func committed(log []byte) map[int][]byte {
	const header, frameHeader = 32, 24
	all, latest := map[int][]byte{}, map[int][]byte{}
	if len(log) < header {
		return all
	}
	salts := string(log[16:24])
	for at := header; at+frameHeader+pageBytes <= len(log); at += frameHeader + pageBytes {
		frame := log[at:]
		if string(frame[8:16]) != salts { // left over from before the log was begun anew
			break
		}
		latest[int(binary.BigEndian.Uint32(frame))] = frame[frameHeader : frameHeader+pageBytes]
		if binary.BigEndian.Uint32(frame[4:]) == 0 {
			continue
		}
		for n, page := range latest { // the last frame of a transaction
			all[n] = page
		}
		clear(latest)
	}
	return all
}

// count is the number of the last page there is.
func (p *pages) count() int {
	n := len(p.file) / pageBytes
	for logged := range p.logged {
		n = max(n, logged)
	}
	return n
}

// page is nil where there is none.
func (p *pages) page(n int) []byte {
	if page := p.logged[n]; page != nil {
		return page
	}
	if n < 1 || n > len(p.file)/pageBytes {
		return nil
	}
	return p.file[(n-1)*pageBytes : n*pageBytes]
}

// Kinds of pages that hold rows.
const (
	indexInterior = 0x02
	indexLeaf     = 0x0a
	tableLeaf     = 0x0d
)

// cell is one row of a table (number and columns) or of an index (columns).
type cell struct {
	table   bool
	number  int64
	columns []any // nil, int64, float64, string or []byte
}

// cells calls back with each row of a page that can be read.
func (p *pages) cells(n int, each func(cell)) {
	page := p.page(n)
	if page == nil || n == 1 {
		return
	}
	kind, header := page[0], 8
	switch kind {
	case indexInterior:
		header = 12
	case indexLeaf, tableLeaf:
	default:
		return
	}
	for i := range int(binary.BigEndian.Uint16(page[3:])) {
		at := header + 2*i
		if at+2 > pageBytes {
			return
		}
		if c, ok := p.cell(page, kind, int(binary.BigEndian.Uint16(page[at:]))); ok {
			each(c)
		}
	}
}

func (p *pages) cell(page []byte, kind byte, at int) (c cell, ok bool) {
	if kind == indexInterior {
		at += 4 // the child's number
	}
	r := reader{data: page, at: at}
	size := r.varint()
	if c.table = kind == tableLeaf; c.table {
		c.number = r.varint()
	}
	if r.bad || size <= 0 || size > mostPhotoBytes {
		return c, false
	}
	payload := p.payload(page, r.at, int(size), kind)
	if payload == nil {
		return c, false
	}
	c.columns, ok = columnsOf(payload)
	return c, ok
}

// payload puts a row together that goes on in other pages; nil where one lacks.
func (p *pages) payload(page []byte, at, size int, kind byte) []byte {
	most := (pageBytes-12)*64/255 - 23
	if kind == tableLeaf {
		most = pageBytes - 35
	}
	least := (pageBytes-12)*32/255 - 23
	here := size
	if size > most {
		if here = least + (size-least)%(pageBytes-4); here > most {
			here = least
		}
	}
	if at+here > pageBytes {
		return nil
	}
	out := append([]byte(nil), page[at:at+here]...)
	if here == size {
		return out
	}
	if at+here+4 > pageBytes {
		return nil
	}
	next := int(binary.BigEndian.Uint32(page[at+here:]))
	for len(out) < size {
		more := p.page(next)
		if more == nil {
			return nil
		}
		out = append(out, more[4:min(pageBytes, 4+size-len(out))]...)
		next = int(binary.BigEndian.Uint32(more))
	}
	return out
}

// columnsOf takes a record apart.
func columnsOf(record []byte) (columns []any, ok bool) {
	header := reader{data: record}
	size := header.varint()
	if header.bad || size < 1 || size > int64(len(record)) {
		return nil, false
	}
	body := reader{data: record, at: int(size)}
	header.data = record[:size]
	for header.at < len(header.data) {
		columns = append(columns, body.value(header.varint()))
	}
	return columns, !header.bad && !body.bad && body.at == len(record)
}

// reader takes numbers and texts out of bytes; bad once it ran out of them.
type reader struct {
	data []byte
	at   int
	bad  bool
}

func (r *reader) take(n int64) []byte {
	if n < 0 || n > int64(len(r.data)-r.at) {
		r.bad = true
		return nil
	}
	r.at += int(n)
	return r.data[r.at-int(n) : r.at]
}

// varint is up to nine bytes of seven bits, the ninth of eight.
func (r *reader) varint() int64 {
	var v uint64
	for i := range 9 {
		b := r.take(1)
		if b == nil {
			return 0
		}
		if i == 8 {
			return int64(v<<8 | uint64(b[0]))
		}
		v = v<<7 | uint64(b[0]&0x7f)
		if b[0] < 0x80 {
			break
		}
	}
	return int64(v)
}

// value is one column by its serial type.
func (r *reader) value(serial int64) any {
	switch {
	case serial == 0:
		return nil
	case serial == 8, serial == 9:
		return serial - 8
	case serial == 7:
		if b := r.take(8); b != nil {
			return math.Float64frombits(binary.BigEndian.Uint64(b))
		}
		return nil
	case serial >= 12:
		b := r.take((serial - 12) / 2)
		if serial%2 == 1 {
			return string(b)
		}
		return b
	case serial < 0, serial > 6:
		r.bad = true
		return nil
	}
	b := r.take([...]int64{1: 1, 2, 3, 4, 6, 8}[serial])
	if b == nil {
		return nil
	}
	v := int64(int8(b[0]))
	for _, next := range b[1:] {
		v = v<<8 | int64(next)
	}
	return v
}
