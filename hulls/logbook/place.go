package logbook

// This file says where the logbook is unless another place is named.

import (
	"os"
	"path/filepath"
	"runtime"
)

// FileName is the logbook's name in its default place.
const FileName = "logbook.db"

// DefaultPath is where this person's logbook is: a folder for data that stays on
// this machine. It is no setting, so not with the configuration; it cannot be
// made again, so not with what may be cleared; and a file under lock must not
// roam between machines.
//
//   - Windows: %LocalAppData%\aligner
//   - macOS: ~/Library/Application Support/aligner
//   - elsewhere: $XDG_DATA_HOME/aligner, or ~/.local/share/aligner, by the XDG
//     Base Directory Specification
func DefaultPath() (string, error) {
	folder, err := dataFolder(runtime.GOOS, os.Getenv)
	if err != nil {
		return "", trouble(ErrMissing, FileName, "no home folder ("+err.Error()+")", "a place for the logbook", "name one with --logbook")
	}
	return filepath.Join(folder, "aligner", FileName), nil
}

func dataFolder(system string, environment func(string) string) (string, error) {
	switch system {
	case "windows":
		return os.UserCacheDir() // %LocalAppData%, which holds data too there
	case "darwin", "ios":
		return os.UserConfigDir() // Application Support
	}
	if folder := environment("XDG_DATA_HOME"); filepath.IsAbs(folder) { // the specification has relative ones ignored
		return folder, nil
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return "", err
	}
	return filepath.Join(home, ".local", "share"), nil
}
