package say

// This file says places on the clock.

import (
	"fmt"
	"math"

	"aligner/assets/words"
)

// Clock writes a clock angle in degrees as a time, to the quarter of an hour:
// "1:30", "12:00" as "12". View is the direction it is read in.
func Clock(deg float64, lookingAft bool) string {
	if lookingAft {
		deg = 360 - deg
	}
	quarters := int(math.Round(math.Mod(deg+360, 360) / 7.5))
	hour, minute := quarters/4%12, quarters%4*15
	if hour == 0 {
		hour = 12
	}
	if minute == 0 {
		return fmt.Sprint(hour)
	}
	return fmt.Sprintf("%d:%02d", hour, minute)
}

// place says an hour in words: top, bottom, port and starboard by name, the
// others by the clock.
func place(s words.Speaker, hour int) string {
	switch hour % 12 {
	case 0:
		return s.Say(words.Top, nil)
	case 3:
		return s.Say(words.Starboard, nil)
	case 6:
		return s.Say(words.Bottom, nil)
	case 9:
		return s.Say(words.Port, nil)
	}
	return s.Say(words.OClock, words.Args{"Hour": hour})
}

func opposite(hour int) int { return (hour+5)%12 + 1 }
