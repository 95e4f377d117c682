package visit

// This file reads and writes clock positions as people say them, from either
// direction of view. Stored they are degrees looking forward.

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"

	"aligner/hulls"
	"aligner/hulls/strictjson"
)

// Direction is which way one looks at the faces.
type Direction bool

// Looking forward from the propeller, 3 is starboard; looking aft from the
// engine, 3 is port. 12 and 6 stay where they are.
const (
	LookingForward Direction = false
	LookingAft     Direction = true
)

func (d Direction) String() string {
	if d == LookingAft {
		return "looking aft"
	}
	return "looking forward"
}

// turn changes a position seen in one direction into the same seen looking
// forward, and back.
func (d Direction) turn(deg float64) float64 {
	if d == LookingAft {
		deg = -deg
	}
	deg = math.Mod(deg, 360)
	if deg < 0 {
		deg += 360
	}
	if deg >= 360 { // a hair below 0
		deg = 0
	}
	return deg + 0 // -0 becomes 0
}

var (
	hourForm   = regexp.MustCompile(`^(\d{1,2})(?:[:.](\d{2}))?(?: ?o'?clock)?$`)
	degreeForm = regexp.MustCompile(`^([+-]?\d{1,4}(?:\.\d{1,9})?) ?(?:deg|degrees?|°)$`)
	sides      = map[string]float64{"top": 0, "starboard": 90, "stbd": 90, "bottom": 180, "port": 270}
)

// ParseClock reads a clock position: "1:30", "3", "3 o'clock", "45deg", or a
// side: top, bottom, port, starboard. Hours and degrees are as seen in the
// direction given; sides are the boat's. It gives degrees looking forward, from
// 0 to under 360.
func ParseClock(text string, seen Direction) (float64, error) {
	s := strings.ToLower(strings.TrimSpace(text))
	s = strings.ReplaceAll(s, "’", "'")
	if deg, ok := sides[s]; ok {
		return deg, nil
	}
	if m := degreeForm.FindStringSubmatch(s); m != nil {
		deg, err := strconv.ParseFloat(m[1], 64)
		if err == nil && math.Abs(deg) <= 360 {
			return seen.turn(deg), nil
		}
	}
	if m := hourForm.FindStringSubmatch(s); m != nil {
		hours, _ := strconv.Atoi(m[1]) // at most two digits
		minutes, _ := strconv.Atoi("0" + m[2])
		if hours <= 12 && minutes < 60 {
			return seen.turn(float64(hours%12)*30 + float64(minutes)/2), nil
		}
	}
	return 0, &hulls.Fault{Value: strictjson.Quoted(text), Limit: "a clock position of 12:00 to 11:59, or 0 to 360 degrees",
		Mend: `write 1:30, 3, 45deg, or top, bottom, port, starboard`}
}

// ClockText writes a position as hours and minutes, such as "1:30", as seen in
// a direction; to the nearest minute, which is half a degree.
func ClockText(deg float64, seen Direction) string {
	minutes := int(math.Round(seen.turn(deg)*2)) % 720
	hours := minutes / 60
	if hours == 0 {
		hours = 12
	}
	return fmt.Sprintf("%d:%02d", hours, minutes%60)
}
