package faults

// This file is the log: a text file in which each run that had a fault has a line
// of its own, and which forgets the oldest when it grows.

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime/debug"
	"strings"
	"sync"
	"time"
)

// Log is a file of faults. Its methods may be called from anywhere; a log that
// cannot be written stays silent, for a fault of the log must not be another
// one.
type Log struct {
	mu    sync.Mutex
	path  string
	begun string // the line of this run, until it is written
	now   func() time.Time
}

// Bounds of the file: what is kept, and one entry. A stack of calls takes some
// kilobytes.
const (
	mostBytes      = 64 << 10
	mostEntryBytes = 8 << 10
)

// FileName is the log's, beside the logbook.
const FileName = "faults.txt"

// In is the log in a folder, which is made when something is to be written; ""
// is nowhere.
func In(folder string) *Log {
	l := &Log{now: time.Now}
	if folder != "" {
		l.path = filepath.Join(folder, FileName)
	}
	return l
}

// runMark begins the line of a run.
const runMark = "== "

// Begin begins a run. Its line is written with the first fault.
func (l *Log) Begin(program string) {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.begun = runMark + l.stamp() + " " + program + "\n"
}

// Note writes down one fault: where it came up, and what.
func (l *Log) Note(where string, what any) {
	l.append(entry(l.stamp() + " " + where + ": " + fmt.Sprint(what)))
}

// Panic writes down a panic with its calls, and panics on.
func (l *Log) Panic() {
	if r := recover(); r != nil {
		l.Panicked(r)
		panic(r)
	}
}

// Panicked writes down what a panic gave, with the calls that led there.
func (l *Log) Panicked(r any) {
	l.append(entry(fmt.Sprintf("%s panic: %v\n%s", l.stamp(), r, debug.Stack())))
}

func (l *Log) stamp() string { return l.now().UTC().Format("2006-01-02T15:04:05Z") }

// entry bounds a text, and keeps what follows its first line apart from other
// entries.
func entry(text string) string {
	text = strings.ReplaceAll(strings.TrimRight(text, "\n"), "\n", "\n    ")
	if len(text) > mostEntryBytes {
		text = strings.ToValidUTF8(text[:mostEntryBytes], "") + " ..."
	}
	return text + "\n"
}

// append adds text at the end, dropping the oldest lines where it grows too
// long.
func (l *Log) append(text string) {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.path == "" {
		return
	}
	old, _ := os.ReadFile(l.path)
	all := string(old) + WithoutHome(l.begun+text)
	l.begun = ""
	if len(all) > mostBytes {
		all = all[len(all)-mostBytes:]
		if i := strings.IndexByte(all, '\n'); i >= 0 {
			all = all[i+1:]
		}
	}
	if os.MkdirAll(filepath.Dir(l.path), 0o700) != nil {
		return
	}
	part := l.path + ".part"
	if os.WriteFile(part, []byte(all), 0o600) == nil {
		os.Rename(part, l.path)
	}
}

// LastRun is what the log holds of the last run that had a fault, the present one
// or one before it; "": nothing.
func (l *Log) LastRun() string {
	l.mu.Lock()
	defer l.mu.Unlock()
	data, err := os.ReadFile(l.path)
	if err != nil {
		return ""
	}
	runs := strings.Split("\n"+string(data), "\n"+runMark)
	if last := runs[len(runs)-1]; len(runs) > 1 {
		return runMark + last
	}
	return strings.TrimLeft(runs[0], "\n")
}

// WithoutHome writes a person's own folder as "~": its path holds a name.
func WithoutHome(text string) string {
	home, err := os.UserHomeDir()
	if err != nil || len(home) < 2 {
		return text
	}
	return strings.ReplaceAll(text, home, "~")
}
