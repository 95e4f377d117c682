package learners

// This file keeps the work that goes on, so that it is there again after the program
// was closed or the machine went down.

import (
	"encoding/json"
	"errors"
	"io/fs"
	"os"
	"path/filepath"

	"aligner/kinematics/practice"
)

// Unfinished is a piece of work that goes on.
type Unfinished struct {
	Learner string         `json:"learner"`
	Task    practice.Task  `json:"task"`
	Acts    []practice.Act `json:"acts"`
}

func (f File) unfinished() string { return f.Path + ".unfinished" }

// Keep keeps the work that goes on, in place of what was kept before.
func (f File) Keep(u Unfinished) error {
	data, err := json.Marshal(u)
	if err != nil {
		return err
	}
	if err := os.MkdirAll(filepath.Dir(f.Path), 0o700); err != nil {
		return err
	}
	beside := f.unfinished() + ".new"
	file, err := os.OpenFile(beside, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o600)
	if err != nil {
		return err
	}
	_, err = file.Write(data)
	if err = errors.Join(err, file.Sync(), file.Close()); err != nil {
		return err
	}
	return os.Rename(beside, f.unfinished())
}

// GoOn is the work that was kept; nil: none, or none that can be gone on with.
func (f File) GoOn() (*Unfinished, *practice.Work) {
	data, err := os.ReadFile(f.unfinished())
	var u Unfinished
	if err != nil || json.Unmarshal(data, &u) != nil {
		return nil, nil
	}
	w, err := practice.Replay(u.Task, u.Acts)
	if err != nil || w.Ended() {
		return nil, nil
	}
	return &u, w
}

// Done forgets the work that went on.
func (f File) Done() error {
	if err := os.Remove(f.unfinished()); !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return nil
}
