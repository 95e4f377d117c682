package history

// This file works a boat's visits out, one after the other.

import (
	"cmp"
	"fmt"
	"reflect"
	"slices"
	"time"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics"
	"aligner/kinematics/gauge"
	"aligner/kinematics/response"
)

// Visit is one visit as it was kept. Date stands for one whose document has none.
type Visit struct {
	Number   int64
	Date     string
	Document visit.Document
}

// Past is a boat's visits, the first one first. Numbers by mount are in the order
// of Hull's mounts.
type Past struct {
	Hull    hulls.Hull // as measured last
	Entries []Entry
}

// Entry is one visit.
type Entry struct {
	Number      int64
	Date        string // "": none
	EngineHours visit.Maybe
	Afloat      bool

	Begin, HandOver Gap
	LimitMM         float64 // the rule's
	Rule            visit.Rule
	Verdict         gauge.Verdict
	Flat            bool   // all its readings can be two flat faces
	Trouble         string // why its readings could not be worked out; "": they were

	// NutsBeforeMM and NutsAfterMM are how far each nut has been raised by all
	// moves since the first visit here; mounts of another name than Hull's count
	// for nothing.
	NutsBeforeMM, NutsAfterMM []float64
	NutsBefore, NutsAfter     []float64 // the same in flats, or shims
	StudFoundMM, StudLeftMM   []visit.Maybe
	Marks                     []string
	NutsMarked                bool

	Since *Change // since the visit before; nil: the first, or nothing to compare
}

// Work works the visits of one boat out. They are put in order of their dates.
func Work(list []Visit) (*Past, error) {
	var models modelShelf
	return work(list, &models)
}

func work(list []Visit, models *modelShelf) (*Past, error) {
	list = slices.Clone(list)
	for i := range list {
		if d := list[i].Document.Visit.Date; d != "" {
			list[i].Date = d
		}
		list[i].Document.Hull.MeasuredResponse = nil // what she has answered is no measure of her
	}
	slices.SortStableFunc(list, func(a, b Visit) int {
		return cmp.Or(cmp.Compare(a.Date, b.Date), cmp.Compare(a.Number, b.Number))
	})
	p := &Past{}
	if len(list) == 0 {
		return p, nil
	}
	p.Hull = list[len(list)-1].Document.Hull
	for i := range list {
		if err := p.add(&list[i], models); err != nil {
			return nil, fmt.Errorf("visit %d: %w", list[i].Number, err)
		}
		if i > 0 {
			if err := p.compare(i, list, models); err != nil {
				return nil, fmt.Errorf("visit %d: %w", list[i].Number, err)
			}
		}
	}
	return p, nil
}

// add works one visit out by itself.
func (p *Past) add(v *Visit, models *modelShelf) error {
	doc := &v.Document
	n := len(p.Hull.Mounts)
	e := Entry{Number: v.Number, Date: v.Date, EngineHours: doc.Visit.State.EngineHours, Afloat: doc.Visit.State.Afloat(),
		NutsBefore: make([]float64, n), NutsAfter: make([]float64, n), NutsBeforeMM: make([]float64, n), NutsAfterMM: make([]float64, n),
		StudFoundMM: make([]visit.Maybe, n), StudLeftMM: make([]visit.Maybe, n), Marks: make([]string, n), NutsMarked: doc.Visit.HandedOver.NutsMarked}
	if k := len(p.Entries); k > 0 {
		copy(e.NutsBefore, p.Entries[k-1].NutsAfter)
		copy(e.NutsBeforeMM, p.Entries[k-1].NutsAfterMM)
	}
	net := doc.Visit.Net()
	for i, m := range p.Hull.Mounts {
		flats := net.NutFlats[m.Name]
		e.NutsAfter[i] = e.NutsBefore[i] + flats
		mm := flats * m.LiftPerStepMM()
		e.NutsAfterMM[i] = e.NutsBeforeMM[i] + mm
		found := doc.Visit.Found(m.Name)
		e.StudFoundMM[i], e.StudLeftMM[i], e.Marks[i] = found.StudFoundMM, found.StudLeftMM, found.Mark
		if found.StudFoundMM.Known && !found.StudLeftMM.Known {
			// The nut is raised up the stud by what it was turned.
			e.StudLeftMM[i] = visit.Known(found.StudFoundMM.Value - mm)
		}
	}
	m, err := models.gauge(&doc.Hull, e.Afloat)
	if err != nil {
		return err
	}
	est, err := m.Estimate(&doc.Visit)
	if err != nil { // this visit's readings alone
		e.Trouble = err.Error()
	} else {
		e.Begin, e.HandOver, e.LimitMM, e.Rule, e.Verdict, e.Flat = begun(est), left(est), est.LimitMM, est.Rule, est.Verdict, est.Flat && len(est.Odd) == 0
	}
	p.Entries = append(p.Entries, e)
	return nil
}

// Days are from one entry to another; known where both have a date.
func (p *Past) days(from, to int) visit.Maybe {
	a, err := time.Parse(time.DateOnly, p.Entries[from].Date)
	b, other := time.Parse(time.DateOnly, p.Entries[to].Date)
	if err != nil || other != nil {
		return visit.Maybe{}
	}
	return visit.Known(b.Sub(a).Hours() / 24)
}

// modelShelf keeps models: a boat's visits mostly share one hull.
type modelShelf struct {
	gauges    []gaugeModel
	responses []responseModel
}

type gaugeModel struct {
	hull   *hulls.Hull
	afloat bool
	model  *gauge.Model
}

type responseModel struct {
	hull     *hulls.Hull
	afloat   bool
	response *response.Response
	sagMM    []float64 // of each mount under its load, at rest
}

func (s *modelShelf) gauge(h *hulls.Hull, afloat bool) (*gauge.Model, error) {
	for _, g := range s.gauges {
		if g.afloat == afloat && reflect.DeepEqual(*g.hull, *h) {
			return g.model, nil
		}
	}
	m, err := gauge.NewModel(h, afloat)
	if err == nil {
		s.gauges = append(s.gauges, gaugeModel{h, afloat, m})
	}
	return m, err
}

func (s *modelShelf) response(h *hulls.Hull, afloat bool) (responseModel, error) {
	for _, r := range s.responses {
		if r.afloat == afloat && reflect.DeepEqual(*r.hull, *h) {
			return r, nil
		}
	}
	held := kinematics.Seated
	if !h.Coupling.HasPilot() {
		held = kinematics.Centred
	}
	m, err := response.NewModel(h, held, afloat)
	if err != nil {
		return responseModel{}, err
	}
	r := responseModel{hull: h, afloat: afloat, sagMM: make([]float64, len(h.Mounts))}
	if r.response, err = m.At(nil, nil); err != nil {
		return r, err
	}
	rest, err := m.Solve(kinematics.State{})
	if err != nil {
		return r, err
	}
	for i, mount := range h.Mounts {
		r.sagMM[i] = rest.MountLoadN[i] / mount.StiffnessNPerMM.Along
	}
	s.responses = append(s.responses, r)
	return r, nil
}
