package strictjson

// This file tells a file that is no JSON text: the wrong bytes as a whole, and
// the places where the decoder gives up.

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"unicode/utf8"
)

// screen refuses what is wrong with the bytes as a whole.
func (p *parser) screen() *Fault {
	switch {
	case len(p.data) > p.format.MaxBytes:
		return &Fault{File: p.file, Value: fmt.Sprintf("more than %d bytes", p.format.MaxBytes),
			Limit: fmt.Sprintf("at most %d bytes", p.format.MaxBytes), Mend: p.format.give()}
	case len(bytes.TrimSpace(p.data)) == 0:
		return &Fault{File: p.file, Value: "an empty file", Limit: p.format.a() + " in JSON", Mend: p.format.give()}
	case bytes.HasPrefix(p.data, []byte("\xef\xbb\xbf")):
		return &Fault{File: p.file, Line: 1, Value: "a byte order mark", Limit: "plain UTF-8", Mend: "save the file as UTF-8 without a byte order mark"}
	case bytes.HasPrefix(p.data, []byte("\xff\xfe")), bytes.HasPrefix(p.data, []byte("\xfe\xff")):
		return &Fault{File: p.file, Line: 1, Value: "UTF-16", Limit: "plain UTF-8", Mend: "save the file as UTF-8"}
	}
	if !utf8.Valid(p.data) {
		at := 0
		for at < len(p.data) {
			r, size := utf8.DecodeRune(p.data[at:])
			if r == utf8.RuneError && size <= 1 {
				break
			}
			at += size
		}
		return &Fault{File: p.file, Line: 1 + bytes.Count(p.data[:at], []byte("\n")),
			Value: fmt.Sprintf("the byte 0x%02x, which is not UTF-8", p.data[at]), Limit: "plain UTF-8", Mend: "save the file as UTF-8"}
	}
	return nil
}

// next reads a token and turns the decoder's complaints into faults.
func (p *parser) next(path string) (json.Token, *Fault) {
	tok, err := p.dec.Token()
	if err == nil {
		return tok, nil
	}
	if errors.Is(err, io.EOF) || errors.Is(err, io.ErrUnexpectedEOF) {
		line := 1 + bytes.Count(bytes.TrimRight(p.data, " \t\r\n"), []byte("\n"))
		return nil, &Fault{File: p.file, Place: path, Line: line, Value: "the end of the file",
			Limit: "the rest of the " + p.format.Noun, Mend: "the file is cut off: copy it again"}
	}
	// The decoder stops before the text it cannot read.
	line := p.line()
	rest := bytes.TrimLeft(p.data[p.countedTo:], " \t\r\n,:")
	line += bytes.Count(p.data[p.countedTo:len(p.data)-len(rest)], []byte("\n"))
	word := rest[:min(len(rest), 24)]
	if i := bytes.IndexAny(word, " \t\r\n,]}"); i >= 0 {
		word = word[:max(i, 1)]
	}
	value := Quoted(string(word))
	if bytes.HasPrefix(word, []byte(`"`)) {
		value = Printable(string(word), 60)
	}
	f := &Fault{File: p.file, Place: path, Line: line, Value: value, Limit: "JSON",
		Mend: "look there for a comma, colon or quote missing or too many, a decimal comma, a comment"}
	switch string(bytes.ToLower(bytes.Trim(word, "+-\""))) {
	case "nan", "inf", "infinity":
		f.Limit, f.Mend = "a finite number", "give the number in digits"
	}
	return nil, f
}
