package learners

// This file is the file of results: added to, and read.

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"
	"unicode"

	"aligner/kinematics/practice"
)

// Format is of one line.
const Format = "practice/1"

// Name is the file's, beside the logbook.
const Name = "practice.jsonl"

// Result is one piece of practice, handed over.
type Result struct {
	Format  string           `json:"format"`
	Learner string           `json:"learner"`
	Ended   time.Time        `json:"ended"`
	Task    practice.Task    `json:"task"`
	Acts    []practice.Act   `json:"acts"`
	Debrief practice.Debrief `json:"debrief"`
}

// File is the file at a path; it need not be there.
type File struct{ Path string }

// Beside is the file beside a logbook.
func Beside(logbook string) File { return File{filepath.Join(filepath.Dir(logbook), Name)} }

// mostName is how long a learner's name may be, in letters.
const mostName = 60

// CheckName tells what is wrong with a learner's name; nil: nothing.
func CheckName(name string) error {
	n := len([]rune(name))
	if strings.TrimSpace(name) == "" || n > mostName || strings.ContainsFunc(name, unicode.IsControl) {
		return fmt.Errorf("name %q: must be 1 to %d letters", name, mostName)
	}
	return nil
}

// Add adds a result. It is on the disk when Add returns.
func (f File) Add(r Result) error {
	if err := CheckName(r.Learner); err != nil {
		return err
	}
	r.Format = Format
	line, err := json.Marshal(r)
	if err != nil {
		return err
	}
	if err := os.MkdirAll(filepath.Dir(f.Path), 0o700); err != nil {
		return err
	}
	file, err := os.OpenFile(f.Path, os.O_RDWR|os.O_CREATE|os.O_APPEND, 0o600)
	if err != nil {
		return err
	}
	line = append(line, '\n')
	if cutOff(file) { // as the machine went down: it must not spoil this one
		line = append([]byte{'\n'}, line...)
	}
	_, err = file.Write(line)
	return errors.Join(err, file.Sync(), file.Close())
}

// cutOff reports whether a file's last line has no end.
func cutOff(file *os.File) bool {
	size, err := file.Seek(0, io.SeekEnd)
	if err != nil || size == 0 {
		return false
	}
	var last [1]byte
	_, err = file.ReadAt(last[:], size-1)
	return err == nil && last[0] != '\n'
}

// mostLine is the longest line read: some thousand acts.
const mostLine = 4 << 20

// All are the results, oldest first, and the numbers of the lines that could not be
// read. A file that is not there has none.
func (f File) All() (all []Result, damaged []int, err error) {
	file, err := os.Open(f.Path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil, nil
	}
	if err != nil {
		return nil, nil, err
	}
	defer file.Close()
	lines := bufio.NewScanner(file)
	lines.Buffer(nil, mostLine)
	for n := 1; lines.Scan(); n++ {
		var r Result
		switch bad := json.Unmarshal(lines.Bytes(), &r); {
		case len(lines.Bytes()) == 0:
		case bad != nil, r.Format != Format, CheckName(r.Learner) != nil, r.Task.Check() != nil:
			damaged = append(damaged, n)
		default:
			all = append(all, r)
		}
	}
	return all, damaged, lines.Err()
}

// Of are a learner's alone; "" means everybody's.
func Of(all []Result, learner string) []Result {
	var own []Result
	for _, r := range all {
		if learner == "" || strings.EqualFold(r.Learner, learner) {
			own = append(own, r)
		}
	}
	return own
}
