package rounds

// This file says what the mechanic's time is counted as: common practice, no
// source.

// Minutes of the work at the coupling. A move's come from Settings.MoveMinutes.
const (
	setUpMin   = 5   // shaft seated anew, faces wiped, pushed until they touch
	readingMin = 1   // leaves tried upward at one place until one stops
	trialMin   = 0.5 // one leaf tried at one place
	turnMin    = 2   // shaft and flange turned together, as far as it may be
	cleanMin   = 2   // one place wiped and filed
)
