// Package outfile writes a file for the user: beside its place first, so that a
// failure leaves what was there.
package outfile

import (
	"fmt"
	"io"
	"os"

	"aligner/hulls"
)

// Write makes a file of what write gives. A refusal says what about the place is
// wrong.
func Write(path string, write func(io.Writer) error) error {
	fault := func(err error) error {
		return &hulls.Fault{File: path, Value: fmt.Sprintf("a file that cannot be written (%v)", err),
			Limit: "a place to write to", Mend: "check the folder and its permissions"}
	}
	f, err := os.Create(path + ".part")
	if err != nil {
		return fault(err)
	}
	if err := write(f); err != nil {
		f.Close()
		os.Remove(f.Name())
		return fault(err)
	}
	if err := f.Close(); err != nil {
		os.Remove(f.Name())
		return fault(err)
	}
	if err := os.Rename(f.Name(), path); err != nil {
		os.Remove(f.Name())
		return fault(err)
	}
	return nil
}
