package faults

// This file packs a report of a problem: a zip file (ISO/IEC 21320-1 names the
// profile: stored or deflated, no encryption) whose first file says what is
// inside.

import (
	"archive/zip"
	"fmt"
	"io"
	"runtime"
	"strings"
	"time"
)

// Report is what goes into one. What is empty is left out.
type Report struct {
	When    time.Time
	Program string // with its version
	ReadMe  string // says what is inside, in the user's language
	Screen  string // language, scale, units: how things were shown
	Visit   []byte // as a visit file
	Hull    []byte // as a hull file
	Faults  string // of the last run
}

// The names of the files inside.
const (
	ReadMeFile = "READ-ME.txt"
	AboutFile  = "about.txt"
	VisitFile  = "visit.visit.json"
	HullFile   = "hull.hull.json"
	FaultsFile = FileName
)

// Pack writes the report.
func (r *Report) Pack(w io.Writer) error {
	z := zip.NewWriter(w)
	for _, f := range []struct {
		name string
		data []byte
	}{
		{ReadMeFile, []byte(r.ReadMe)}, {AboutFile, []byte(r.about())}, {VisitFile, r.Visit},
		{HullFile, r.Hull}, {FaultsFile, []byte(r.Faults)},
	} {
		if len(f.data) == 0 {
			continue
		}
		out, err := z.CreateHeader(&zip.FileHeader{Name: f.name, Method: zip.Deflate, Modified: r.When})
		if err != nil {
			return err
		}
		if _, err := out.Write(f.data); err != nil {
			return err
		}
	}
	return z.Close()
}

// about is version and platform.
func (r *Report) about() string {
	lines := []string{"program: " + r.Program, fmt.Sprintf("platform: %s/%s, %s, %d processors", runtime.GOOS, runtime.GOARCH, runtime.Version(), runtime.NumCPU()),
		"made: " + r.When.UTC().Format(time.RFC3339)}
	if r.Screen != "" {
		lines = append(lines, "shown: "+r.Screen)
	}
	return WithoutHome(strings.Join(lines, "\n") + "\n")
}
