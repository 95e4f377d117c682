package visit

// This file holds the edit that takes what is tried on the screen as done on the
// boat.

import "fmt"

func init() { register(func() Edit { return &RecordTry{} }) }

// RecordTry records what is being tried as a move that was made, and tries
// nothing any more.
type RecordTry struct {
	Date string `json:"date"` // "": that of the event before
}

// Name is "record try".
func (*RecordTry) Name() string { return "record try" }

// Words say "move recorded as tried".
func (*RecordTry) Words() (string, map[string]any) { return "edit_record_try", nil }

// Apply records it.
func (e *RecordTry) Apply(d Document) (Document, error) {
	m := d.Tried()
	if len(m.NutFlats) == 0 && len(m.SlideMM) == 0 {
		return d, fmt.Errorf("nothing is being tried: turn a nut or slide a mount first")
	}
	next, err := d.happened(Event{Date: e.Date, Move: &m})
	if err != nil {
		return d, err
	}
	clean := drawn(&d.Hull)
	next.Trial.Steps, next.Trial.SlideMM, next.Trial.LeverOn = clean.Steps, clean.SlideMM, false
	return next, nil
}

// Tried is what is being tried, as a move by mount: what is nought is left out.
func (d *Document) Tried() Move {
	m := Move{NutFlats: map[string]float64{}, SlideMM: map[string]float64{}, LeverOn: d.Trial.LeverOn}
	for i, mount := range d.Hull.Mounts {
		if d.Trial.Steps[i] != 0 {
			m.NutFlats[mount.Name] = d.Trial.Steps[i]
		}
		if d.Trial.SlideMM[i] != 0 {
			m.SlideMM[mount.Name] = d.Trial.SlideMM[i]
		}
	}
	return m
}
