package words

// This file says in another language what packages without words of their own
// say in English: the faults of hull and visit files, refused edits, why a solver
// stopped. Those packages may import the standard library alone and are read by
// engineers, so their lines stay where they are made; here stand the forms of
// these lines, with {} where a number or a name comes, and what each becomes.
//
//	"at most {} mm, the faces' edge"   "höchstens {1} mm, der Rand der Flächen"
//
// A line made of lines ("{}: {}") is retold piece by piece. A test reads the
// forms out of the source of those packages, so none can be forgotten.

import (
	"cmp"
	"embed"
	"encoding/json"
	"fmt"
	"math"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
)

//go:embed retold/*.json
var retoldFiles embed.FS

// form is one kind of line in another language.
type form struct {
	english *regexp.Regexp // a group for each {}
	literal int            // letters that are the form's own
	own     string         // with {1}, {2}, ...
}

// retoldForms are those of a language ("de"), the most particular first; nil: none.
var retoldForms = sync.OnceValue(func() map[string][]form {
	all := map[string][]form{}
	entries, err := retoldFiles.ReadDir("retold")
	if err != nil {
		panic("words: " + err.Error())
	}
	for _, e := range entries {
		table, err := readForms(path.Join("retold", e.Name()))
		if err != nil {
			panic(fmt.Sprintf("words: %s: %v", e.Name(), err)) // embedded, so only ever seen by its writer
		}
		all[strings.TrimSuffix(e.Name(), ".json")] = table
	}
	return all
})

// retoldLines are a language's forms as its file has them.
func retoldLines(name string) (lines map[string]string, err error) {
	data, err := retoldFiles.ReadFile(name)
	if err != nil {
		return nil, err
	}
	return lines, json.Unmarshal(data, &lines)
}

func readForms(name string) ([]form, error) {
	lines, err := retoldLines(name)
	if err != nil {
		return nil, err
	}
	var table []form
	for english, own := range lines {
		parts := strings.Split(english, "{}")
		for i := range parts {
			parts[i] = regexp.QuoteMeta(parts[i])
		}
		re, err := regexp.Compile("(?s)^" + strings.Join(parts, "(.+?)") + "$")
		if err != nil {
			return nil, err
		}
		f := form{english: re, literal: len(english) - 2*(len(parts)-1), own: own}
		if strings.HasSuffix(english, "found {}; wanted {}; {}") {
			f.literal = math.MaxInt // a whole fault is taken apart before any part of it is looked for
		}
		table = append(table, f)
	}
	slices.SortFunc(table, func(a, b form) int {
		return cmp.Or(cmp.Compare(b.literal, a.literal), cmp.Compare(a.own, b.own))
	})
	return table, nil
}

// Retell says an English line of a package without words, such as an error, in
// the speaker's language, as far as its form is known.
func (s Speaker) Retell(english string) string {
	return retell(retoldForms()[s.language], english, 0)
}

// deepest is how far lines may stand in lines.
const deepest = 8

func retell(table []form, line string, depth int) string {
	if len(table) == 0 || depth == deepest {
		return line
	}
	if _, err := strconv.ParseFloat(line, 64); err == nil {
		return strings.Replace(line, ".", ",", 1) // every language here but English has a decimal comma
	}
	for i := range table {
		f := &table[i]
		found := f.english.FindStringSubmatch(line)
		if found == nil {
			continue
		}
		var fill []string
		for k, part := range found[1:] {
			fill = append(fill, fmt.Sprintf("{%d}", k+1), retell(table, part, depth+1))
		}
		return strings.NewReplacer(fill...).Replace(f.own)
	}
	return line
}
