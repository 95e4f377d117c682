package visit

// This file holds the edits of what happens in a visit: gaugings, moves, things
// fastened.

import (
	"fmt"
	"slices"
)

func init() {
	register(
		func() Edit { return &BeginGauging{} },
		func() Edit { return &ChangeGauging{} },
		func() Edit { return &RecordMove{} },
		func() Edit { return &ChangeMove{} },
		func() Edit { return &RecordFastening{} },
		func() Edit { return &ChangeFastening{} },
		func() Edit { return &DateEvent{} },
		func() Edit { return &RemoveEvent{} },
	)
}

// happened adds an event at the end.
func (d Document) happened(e Event) (Document, error) {
	v := d.Visit
	v.Events = append(slices.Clone(v.Events), e)
	return d.withVisit(v)
}

// changed puts what change makes of event i in its place. wanted names what the
// event must be.
func (d Document) changed(i int, wanted string, change func(*Event) error) (Document, error) {
	v := d.Visit
	if i < 0 || i >= len(v.Events) {
		return d, fmt.Errorf("no event %d: this visit has %d, counted from 0", i, len(v.Events))
	}
	e := v.Events[i]
	if is := e.what(); wanted != "" && is != wanted {
		return d, fmt.Errorf("event %d is a %s; must be a %s", i, is, wanted)
	}
	if err := change(&e); err != nil {
		return d, err
	}
	v.Events = slices.Clone(v.Events)
	v.Events[i] = e
	return d.withVisit(v)
}

// what names the event as its key in a file does.
func (e Event) what() string {
	switch {
	case e.Gauging != nil:
		return "gauging"
	case e.Move != nil:
		return "move"
	}
	return "fasten"
}

// BeginGauging adds a gauging, as a rule without readings yet.
type BeginGauging struct {
	Date    string  `json:"date"` // "": that of the event before
	Gauging Gauging `json:"gauging"`
}

// Name is "begin gauging".
func (*BeginGauging) Name() string { return "begin gauging" }

// Words say "gauging begun, shaft seated".
func (e *BeginGauging) Words() (string, map[string]any) {
	return "edit_begin_gauging", map[string]any{"Held": e.Gauging.Held}
}

// Apply adds it.
func (e *BeginGauging) Apply(d Document) (Document, error) {
	return d.happened(Event{Date: e.Date, Gauging: &e.Gauging})
}

// ChangeGauging says anew how a gauging was made; its readings stay.
type ChangeGauging struct {
	Event   int     `json:"event"`
	Gauging Gauging `json:"gauging"` // without readings
}

// Name is "change gauging".
func (*ChangeGauging) Name() string { return "change gauging" }

// Words say "gauging: shaft seated".
func (e *ChangeGauging) Words() (string, map[string]any) {
	return "edit_change_gauging", map[string]any{"Held": e.Gauging.Held}
}

// Apply changes it.
func (e *ChangeGauging) Apply(d Document) (Document, error) {
	if len(e.Gauging.Readings) > 0 {
		return d, fmt.Errorf("a change of how a gauging was made holds %d readings; must hold none: the old ones stay", len(e.Gauging.Readings))
	}
	return d.changed(e.Event, "gauging", func(ev *Event) error {
		g := e.Gauging
		g.Readings = ev.Gauging.Readings
		ev.Gauging = &g
		return nil
	})
}

// RecordMove adds a move that was made.
type RecordMove struct {
	Date string `json:"date"`
	Move Move   `json:"move"`
}

// Name is "record move".
func (*RecordMove) Name() string { return "record move" }

// Words say "move recorded".
func (e *RecordMove) Words() (string, map[string]any) { return "edit_record_move", nil }

// Apply adds it.
func (e *RecordMove) Apply(d Document) (Document, error) {
	return d.happened(Event{Date: e.Date, Move: &e.Move})
}

// ChangeMove corrects a move.
type ChangeMove struct {
	Event int  `json:"event"`
	Move  Move `json:"move"`
}

// Name is "change move".
func (*ChangeMove) Name() string { return "change move" }

// Words say "move corrected".
func (e *ChangeMove) Words() (string, map[string]any) { return "edit_change_move", nil }

// Apply corrects it.
func (e *ChangeMove) Apply(d Document) (Document, error) {
	return d.changed(e.Event, "move", func(ev *Event) error { ev.Move = &e.Move; return nil })
}

// RecordFastening adds something tightened.
type RecordFastening struct {
	Date   string `json:"date"`
	Fasten Fasten `json:"fasten"`
}

// Name is "record fastening".
func (*RecordFastening) Name() string { return "record fastening" }

// Words say "fore port tightened".
func (e *RecordFastening) Words() (string, map[string]any) {
	return "edit_record_fastening", map[string]any{"What": e.Fasten.What}
}

// Apply adds it.
func (e *RecordFastening) Apply(d Document) (Document, error) {
	return d.happened(Event{Date: e.Date, Fasten: &e.Fasten})
}

// ChangeFastening corrects something tightened.
type ChangeFastening struct {
	Event  int    `json:"event"`
	Fasten Fasten `json:"fasten"`
}

// Name is "change fastening".
func (*ChangeFastening) Name() string { return "change fastening" }

// Words say "fore port: fastening corrected".
func (e *ChangeFastening) Words() (string, map[string]any) {
	return "edit_change_fastening", map[string]any{"What": e.Fasten.What}
}

// Apply corrects it.
func (e *ChangeFastening) Apply(d Document) (Document, error) {
	return d.changed(e.Event, "fasten", func(ev *Event) error { ev.Fasten = &e.Fasten; return nil })
}

// DateEvent dates an event; "" takes the date back.
type DateEvent struct {
	Event int    `json:"event"`
	Date  string `json:"date"`
}

// Name is "date event".
func (*DateEvent) Name() string { return "date event" }

// Words say "dated 2026-05-15".
func (e *DateEvent) Words() (string, map[string]any) {
	return "edit_date_event", map[string]any{"Date": e.Date}
}

// Apply dates it.
func (e *DateEvent) Apply(d Document) (Document, error) {
	return d.changed(e.Event, "", func(ev *Event) error { ev.Date = e.Date; return nil })
}

// RemoveEvent takes an event out.
type RemoveEvent struct {
	Event int `json:"event"`
}

// Name is "remove event".
func (*RemoveEvent) Name() string { return "remove event" }

// Words say "event taken out".
func (e *RemoveEvent) Words() (string, map[string]any) {
	return "edit_remove_event", map[string]any{"Number": e.Event + 1}
}

// Apply takes it out.
func (e *RemoveEvent) Apply(d Document) (Document, error) {
	v := d.Visit
	if e.Event < 0 || e.Event >= len(v.Events) {
		return d, fmt.Errorf("no event %d: this visit has %d, counted from 0", e.Event, len(v.Events))
	}
	v.Events = slices.Delete(slices.Clone(v.Events), e.Event, e.Event+1)
	return d.withVisit(v)
}
