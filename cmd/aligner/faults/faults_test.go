package faults

// This file checks what the log keeps and what a report holds.

import (
	"archive/zip"
	"bytes"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

func TestLogKeepsTheLastRunWithFaults(t *testing.T) {
	t.Setenv("HOME", "/home/somebody")
	l := In(filepath.Join(t.TempDir(), "made when needed"))
	if l.LastRun() != "" {
		t.Error("nothing written reads as something")
	}
	l.Begin("aligner 1")
	l.Note("keeping", errors.New("open /home/somebody/x: denied\nsecond line"))
	l.Begin("aligner 2")
	got := l.LastRun()
	if !strings.HasPrefix(got, "== ") || !strings.Contains(got, "aligner 1\n") || !strings.Contains(got, "keeping: open ~/x: denied\n    second line\n") {
		t.Errorf("the last run with a fault reads %q", got)
	}
	if strings.Contains(got, "somebody") || strings.Contains(got, "aligner 2") {
		t.Errorf("too much: %q", got)
	}
	l.Begin("aligner 3")
	func() {
		defer func() { recover() }()
		defer l.Panic()
		panic("out of range")
	}()
	if got = l.LastRun(); !strings.Contains(got, "panic: out of range") || !strings.Contains(got, "faults_test.go") || !strings.Contains(got, "aligner 3") {
		t.Errorf("after a panic: %q", got)
	}
}

func TestLogStaysSmall(t *testing.T) {
	dir := t.TempDir()
	l := In(dir)
	for range 40 {
		l.Begin("aligner")
		l.Note("drawing", strings.Repeat("x", 3*mostEntryBytes))
	}
	info, err := os.Stat(filepath.Join(dir, FileName))
	if err != nil || info.Size() > mostBytes || info.Size() < mostBytes/2 {
		t.Errorf("the log has %v bytes (%v)", info.Size(), err)
	}
	if left, _ := os.ReadDir(dir); len(left) != 1 {
		t.Errorf("%d files", len(left))
	}
}

func TestALogThatCannotBeWrittenIsSilent(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	for _, folder := range []string{filepath.Join(file, "below"), ""} {
		l := In(folder)
		l.Begin("aligner")
		l.Note("x", "y")
		if l.LastRun() != "" {
			t.Errorf("something was written in %q", folder)
		}
	}
}

func TestAReportHoldsWhatItSays(t *testing.T) {
	r := Report{When: time.Date(2026, 5, 14, 8, 0, 0, 0, time.UTC), Program: "aligner 1", ReadMe: "what is inside", Hull: []byte("{}"), Faults: "== x\n"}
	var out bytes.Buffer
	if err := r.Pack(&out); err != nil {
		t.Fatal(err)
	}
	z, err := zip.NewReader(bytes.NewReader(out.Bytes()), int64(out.Len()))
	if err != nil {
		t.Fatal(err)
	}
	held := map[string]string{}
	for _, f := range z.File {
		in, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		data, _ := io.ReadAll(in)
		held[f.Name] = string(data)
	}
	if len(held) != 4 || held[ReadMeFile] != "what is inside" || held[HullFile] != "{}" || held[FaultsFile] != "== x\n" {
		t.Errorf("holds %v", held)
	}
	if about := held[AboutFile]; !strings.Contains(about, "aligner 1") || !strings.Contains(about, "2026-05-14T08:00:00Z") || !strings.Contains(about, "go1.") {
		t.Errorf("about reads %q", about)
	}
}
