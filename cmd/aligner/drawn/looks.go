package drawn

// This file is how a person wants to look at things, as far as what is drawn
// depends on it.

import "aligner/report/say"

// Looks are one person's.
type Looks struct {
	Units      say.Units
	LookingAft bool    // the clock is seen looking aft; otherwise forward
	Dark       bool    // dark colours
	NoMotion   bool    // views are jumped to, not turned to
	TextSize   float64 // times the usual
}
