package window

// This file is how a person wants to look at things: kept between runs, and no
// part of any document.

import (
	"math"

	"fyne.io/fyne/v2"
)

// Settings are kept in the program's preferences.
type Settings struct {
	Language     string  // BCP 47: "en", "de"
	Metric       bool    // mm, N, N m; otherwise thou, pounds, lb-ft
	LookingAft   bool    // clock seen looking aft; otherwise forward
	Dark         bool    // dark colours
	NoMotion     bool    // views are jumped to, not turned to
	TextSize     float64 // times the usual
	Exaggeration float64 // 1 to 500
	Boat         string  // last boat: a built-in name or a file
	Folder       string  // files were saved to last; "": not yet
	Width        float64 // of the window
	Height       float64
}

// The bounds of what can be chosen.
const (
	LeastTextSize, MostTextSize         = 0.8, 2.0
	LeastExaggeration, MostExaggeration = 1.0, 500.0
)

// DefaultSettings are a newcomer's.
func DefaultSettings() Settings {
	return Settings{Language: "en", TextSize: 1, Exaggeration: 100, Boat: "Eider", Width: 1280, Height: 800}
}

// BeginIn is the language of somebody who has not chosen one yet.
func BeginIn(p fyne.Preferences, language string) {
	if p.String("language") == "" {
		p.SetString("language", language)
	}
}

// Load reads the settings kept, each within its bounds.
func Load(p fyne.Preferences) Settings {
	d := DefaultSettings()
	within := func(key string, least, most, fallback float64) float64 {
		v := p.FloatWithFallback(key, fallback)
		if math.IsNaN(v) || v < least || v > most {
			return fallback
		}
		return v
	}
	return Settings{
		Language:     p.StringWithFallback("language", d.Language),
		Metric:       p.BoolWithFallback("metric", d.Metric),
		LookingAft:   p.BoolWithFallback("looking_aft", d.LookingAft),
		Dark:         p.BoolWithFallback("dark", d.Dark),
		NoMotion:     p.BoolWithFallback("no_motion", d.NoMotion),
		TextSize:     within("text_size", LeastTextSize, MostTextSize, d.TextSize),
		Exaggeration: within("exaggeration", LeastExaggeration, MostExaggeration, d.Exaggeration),
		Boat:         p.StringWithFallback("boat", d.Boat),
		Folder:       p.StringWithFallback("folder", d.Folder),
		Width:        within("width", 400, 10000, d.Width),
		Height:       within("height", 300, 10000, d.Height),
	}
}

// Save keeps the settings.
func (s Settings) Save(p fyne.Preferences) {
	s.SaveOfMachine(p)
	p.SetString("language", s.Language)
	p.SetBool("metric", s.Metric)
	p.SetBool("looking_aft", s.LookingAft)
	p.SetBool("dark", s.Dark)
	p.SetBool("no_motion", s.NoMotion)
	p.SetFloat("text_size", s.TextSize)
	p.SetFloat("exaggeration", s.Exaggeration)
}

// SaveOfMachine keeps those that are this machine's, whoever is at work.
func (s Settings) SaveOfMachine(p fyne.Preferences) {
	p.SetString("boat", s.Boat)
	p.SetString("folder", s.Folder)
	p.SetFloat("width", s.Width)
	p.SetFloat("height", s.Height)
}
