package visit

// This file holds the edits of readings.

import (
	"fmt"
	"slices"
)

func init() {
	register(
		func() Edit { return &AddReading{} },
		func() Edit { return &AddReadings{} },
		func() Edit { return &ChangeReading{} },
		func() Edit { return &RemoveReading{} },
	)
}

// readings puts what change makes of a gauging's readings in their place.
// change is given a list of its own.
func (d Document) readings(event int, change func([]Reading) ([]Reading, error)) (Document, error) {
	return d.changed(event, "gauging", func(ev *Event) error {
		list, err := change(slices.Clone(ev.Gauging.Readings))
		if err != nil {
			return err
		}
		g := *ev.Gauging
		g.Readings = list
		ev.Gauging = &g
		return nil
	})
}

// argsOf say a reading in words: its kind, and where, if it has one clock
// position.
func argsOf(r Reading) map[string]any {
	args := map[string]any{"Kind": ""}
	if r != nil {
		args["Kind"] = r.Kind()
	}
	if deg, ok := ClockOf(r); ok {
		args["ClockDeg"] = deg
	}
	return args
}

// ClockOf is a reading's clock position, if it has one.
func ClockOf(r Reading) (deg float64, ok bool) {
	switch r := r.(type) {
	case Leaf:
		return r.ClockDeg, true
	case RimStep:
		return r.ClockDeg, true
	case Dial:
		return r.ClockDeg, true
	case Clearance:
		return r.ClockDeg, true
	}
	return 0, false
}

// AddReading adds a reading to a gauging.
type AddReading struct {
	Event   int        `json:"event"`
	Reading OneReading `json:"reading"`
}

// Name is "add reading".
func (*AddReading) Name() string { return "add reading" }

// Words say "leaf reading".
func (e *AddReading) Words() (string, map[string]any) {
	return "edit_add_reading", argsOf(e.Reading.Reading)
}

// Apply adds it.
func (e *AddReading) Apply(d Document) (Document, error) {
	if e.Reading.Reading == nil {
		return d, errNoReading
	}
	return d.readings(e.Event, func(list []Reading) ([]Reading, error) {
		return append(list, e.Reading.Reading), nil
	})
}

// AddReadings adds several at once, such as a table pasted: all or none.
type AddReadings struct {
	Event    int          `json:"event"`
	Readings []OneReading `json:"readings"`
}

// Name is "add readings".
func (*AddReadings) Name() string { return "add readings" }

// Words say "5 readings added".
func (e *AddReadings) Words() (string, map[string]any) {
	return "edit_add_readings", map[string]any{"Count": len(e.Readings)}
}

// Apply adds them.
func (e *AddReadings) Apply(d Document) (Document, error) {
	if len(e.Readings) == 0 {
		return d, errNoReading
	}
	return d.readings(e.Event, func(list []Reading) ([]Reading, error) {
		for _, r := range e.Readings {
			if r.Reading == nil {
				return nil, errNoReading
			}
			list = append(list, r.Reading)
		}
		return list, nil
	})
}

// ChangeReading puts a reading in the place of another.
type ChangeReading struct {
	Event   int        `json:"event"`
	At      int        `json:"at"`
	Reading OneReading `json:"reading"`
}

// Name is "change reading".
func (*ChangeReading) Name() string { return "change reading" }

// Words say "leaf reading corrected".
func (e *ChangeReading) Words() (string, map[string]any) {
	return "edit_change_reading", argsOf(e.Reading.Reading)
}

// Apply puts it there.
func (e *ChangeReading) Apply(d Document) (Document, error) {
	if e.Reading.Reading == nil {
		return d, errNoReading
	}
	return d.readings(e.Event, func(list []Reading) ([]Reading, error) {
		if e.At < 0 || e.At >= len(list) {
			return nil, noReading(e.At, len(list))
		}
		list[e.At] = e.Reading.Reading
		return list, nil
	})
}

func noReading(at, n int) error {
	return fmt.Errorf("no reading %d: the gauging has %d, counted from 0", at, n)
}

// RemoveReading takes a reading out.
type RemoveReading struct {
	Event int `json:"event"`
	At    int `json:"at"`
}

// Name is "remove reading".
func (*RemoveReading) Name() string { return "remove reading" }

// Words say "reading taken out".
func (e *RemoveReading) Words() (string, map[string]any) {
	return "edit_remove_reading", map[string]any{"Number": e.At + 1}
}

// Apply takes it out.
func (e *RemoveReading) Apply(d Document) (Document, error) {
	return d.readings(e.Event, func(list []Reading) ([]Reading, error) {
		if e.At < 0 || e.At >= len(list) {
			return nil, noReading(e.At, len(list))
		}
		return slices.Delete(list, e.At, e.At+1), nil
	})
}
