package practice

// This file is a piece of work: acts done one after the other on a task's boat.

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics/rounds"
)

// Work is what was done on a task so far.
type Work struct {
	Task Task
	Acts []Act
	Told []Told // by act

	bench          *rounds.Bench
	hidden         hidden
	hull           *hulls.Hull // as drawn: what the learner is told
	afloat         bool
	tally          Tally
	nutsMM, slidMM []float64 // so far, by mount
	gauging        bool      // one goes on, and nothing was moved since
	tight          bool      // every mount
}

// Tally is work counted.
type Tally struct {
	Minutes  float64 `json:"minutes"`
	Steps    int     `json:"flats"` // or shims
	Rounds   int     `json:"rounds"`
	Readings int     `json:"readings"`
}

// Begin makes a task's boat ready.
func Begin(t Task) (*Work, error) {
	if err := t.Check(); err != nil {
		return nil, err
	}
	b, err := t.boat()
	if err != nil {
		return nil, err
	}
	h, err := t.hide(b)
	if err != nil {
		return nil, err
	}
	return t.begin(h)
}

// begin is the task's boat with a fault in it.
func (t Task) begin(h hidden) (*Work, error) {
	b, err := t.boat()
	if err != nil {
		return nil, err
	}
	w := &Work{Task: t, hidden: h, hull: b.Nominal, afloat: b.Afloat}
	if w.bench, err = rounds.NewBench(seed, b, Leaves, h.Fault); err != nil {
		return nil, fmt.Errorf("%s %d: %w", t.Grade, t.Number, err)
	}
	w.nutsMM, w.slidMM = make([]float64, len(w.hull.Mounts)), make([]float64, len(w.hull.Mounts))
	return w, nil
}

// Replay does acts on a task's boat anew.
func Replay(t Task, acts []Act) (*Work, error) {
	w, err := Begin(t)
	if err != nil {
		return nil, err
	}
	for i, a := range acts {
		if _, err := w.Do(a); err != nil {
			return nil, fmt.Errorf("act %d: %w", i+1, err)
		}
	}
	return w, nil
}

// Hull is the boat as drawn; Afloat where she lies.
func (w *Work) Hull() *hulls.Hull { return w.hull }

// Afloat reports whether she lies afloat.
func (w *Work) Afloat() bool { return w.afloat }

// Visit is what was done and read so far. It is not to be changed.
func (w *Work) Visit() *visit.Visit { return w.bench.Visit() }

// ClockDeg are the positions in reach.
func (w *Work) ClockDeg() []float64 { return w.bench.ClockDeg() }

// Tally is the work counted so far.
func (w *Work) Tally() Tally {
	t := w.tally
	t.Minutes = w.bench.Minutes()
	return t
}

// Gauging reports whether a gauging goes on.
func (w *Work) Gauging() bool { return w.gauging }

// Tight reports whether every mount is fastened.
func (w *Work) Tight() bool { return w.tight }

// MovedMM is what each mount was lifted and slid by nuts so far.
func (w *Work) MovedMM() (lift, slide []float64) { return w.nutsMM, w.slidMM }

// Ended reports whether the boat was handed over.
func (w *Work) Ended() bool {
	n := len(w.Acts)
	return n > 0 && w.Acts[n-1].HandOver != nil
}

// Why an act cannot be done.
var (
	ErrEnded     = errors.New("the boat was handed over")
	ErrNoGauging = errors.New("no gauging goes on: hold the shaft first")
	ErrNoReach   = errors.New("no leaf can be got in there")
	ErrNothing   = errors.New("nothing to turn")
	ErrBeyond    = errors.New("beyond the thread or the slot")
	ErrTight     = errors.New("all is tight already")
	ErrUnknown   = errors.New("no such act")
)

// Told is what an act tells the learner.
type Told struct {
	Reading visit.Leaf // of a reading or a leaf
	Burr    bool       // one was filed off
	Stuck   string     // this mount's nut did not turn, so nothing was turned
}

// Do does one act, or refuses it and changes nothing.
func (w *Work) Do(a Act) (Told, error) {
	if w.Ended() {
		return Told{}, ErrEnded
	}
	told, err := w.act(a)
	if err == nil {
		w.Acts, w.Told = append(w.Acts, a), append(w.Told, told)
	}
	return told, err
}

func (w *Work) act(a Act) (Told, error) {
	switch {
	case a.Gauge != nil:
		return Told{}, w.gauge(a.Gauge)
	case a.Read != nil:
		return w.atPlace(a.Read.ClockDeg, func(deg float64) Told { return w.reading(w.bench.Read(deg)) })
	case a.Leaf != nil:
		return w.atPlace(a.Leaf.ClockDeg, func(deg float64) Told { return w.reading(w.bench.Try(deg, visit.MM(a.Leaf.LeafMM))) })
	case a.Clean != nil:
		return w.atPlace(a.Clean.ClockDeg, func(deg float64) Told { return Told{Burr: w.bench.Clean(deg)} })
	case a.Turn != nil:
		return w.turn(a.Turn)
	case a.Fasten != nil:
		return Told{}, w.fasten()
	case a.HandOver != nil:
		if !slices.Contains(Causes, a.HandOver.Cause) {
			return Told{}, fmt.Errorf("cause %q: must be one of %q: %w", a.HandOver.Cause, Causes, ErrUnknown)
		}
		return Told{}, nil
	}
	return Told{}, fmt.Errorf("nothing to do: %w", ErrUnknown)
}

func (w *Work) gauge(g *Gauge) error {
	if !slices.Contains(HeldWays, g.Held) {
		return fmt.Errorf("shaft held %q: must be one of %q: %w", g.Held, HeldWays, ErrUnknown)
	}
	for _, deg := range []float64{g.ShaftTurnDeg, g.FlangeTurnDeg} {
		if !(math.Abs(deg) <= 360) {
			return fmt.Errorf("turned by %g: must be -360 to 360 degrees: %w", deg, ErrUnknown)
		}
	}
	if err := w.bench.Hold(g.Held, g.ShaftTurnDeg, g.FlangeTurnDeg); err != nil {
		return err
	}
	w.gauging = true
	return nil
}

// atPlace does something at one position of the gauging that goes on.
func (w *Work) atPlace(clockDeg float64, do func(clockDeg float64) Told) (Told, error) {
	switch {
	case !w.gauging:
		return Told{}, ErrNoGauging
	case !w.bench.Reaches(clockDeg):
		return Told{}, ErrNoReach
	}
	return do(clockDeg), nil
}

func (w *Work) reading(r visit.Leaf) Told {
	w.tally.Readings++
	return Told{Reading: r}
}

func (w *Work) fasten() error {
	if w.tight {
		return ErrTight
	}
	w.bench.Fasten()
	w.tight, w.gauging = true, false
	return nil
}
