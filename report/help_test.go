package report

// This file makes sheets for the tests and reads them with other people's tools.

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"aligner/hulls/visit"
	"aligner/hulls/visit/builtin"
)

// document opens a built-in visit.
func document(t testing.TB, name string) visit.Document {
	t.Helper()
	return builtin.Visit(t, name)
}

// worked is a document with its estimate and plan.
func worked(t testing.TB, d visit.Document) Input {
	t.Helper()
	in, err := Work(d)
	if err != nil {
		t.Fatal(err)
	}
	return in
}

func made(t testing.TB, in Input, o Options) []byte {
	t.Helper()
	if o.Program == "" {
		o.Program = "aligner"
	}
	pdf, err := PDF(in, o)
	if err != nil {
		t.Fatal(err)
	}
	return pdf
}

// tool runs one of Debian's poppler-utils or qpdf, named beside each use, on a
// PDF; the test fails, with a word, where it is not installed.
func tool(t *testing.T, pdf []byte, name string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil {
		t.Fatalf("%s is not installed: .ci/setup test installs it on Debian", name)
	}
	file := filepath.Join(t.TempDir(), "sheet.pdf")
	if err := os.WriteFile(file, pdf, 0o644); err != nil {
		t.Fatal(err)
	}
	for i, a := range args {
		if a == "FILE" {
			args[i] = file
		}
	}
	out, err := exec.Command(name, args...).CombinedOutput()
	if err != nil {
		t.Fatalf("%s: %v\n%s", name, err, out)
	}
	return string(out)
}

// text is what pdftotext (poppler) reads on the pages from first to last; 0, 0
// for all of them.
func text(t *testing.T, pdf []byte) string {
	t.Helper()
	return tool(t, pdf, "pdftotext", "-layout", "FILE", "-")
}
