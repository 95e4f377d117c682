package plan

// This file is how mounts share the engine's weight, and how far a plan may
// shift that.

import (
	"math"

	"gonum.org/v1/gonum/mat"

	"aligner/hulls"
	"aligner/kinematics"
	"aligner/kinematics/plan/search"
	"aligner/kinematics/response"
)

// loads is each mount's load as drawn, and how it answers each item; for solid
// feet, how far each item lifts a foot out of the plane of all.
type loads struct {
	solid   bool
	planeOf [][]float64 // solid: by foot, by item, in steps
	drawnN  []float64
	perN    [][]float64 // by mount, by item, N a step
	roomN   []float64   // how far each may shift
}

// shareMay is the part of its own load by which a mount's may shift: a nut's
// own doing on its diagonal is spring rate by lift, and past a quarter of the load
// rubber begins to stand visibly uneven (our own judgement).
const shareMay = 0.25

// listMM is how far one side of the engine may be raised over the other, all
// moves of the visit together: more would be seen, and felt by hoses and linkage
// (our own judgement).
const listMM = 4.0

// listRows bound the engine's list, counted from what was done.
func listRows(h *hulls.Hull, items []response.Item, done []float64) []search.Row {
	per := make([]float64, len(items))
	var port, starboard float64
	for _, m := range h.Mounts {
		if m.AtMM[1] > 0 {
			port++
		} else {
			starboard++
		}
	}
	for j, it := range items {
		if it.Slide {
			continue
		}
		if h.Mounts[it.Mounts[0]].AtMM[1] > 0 {
			per[j] = it.MM / port
		} else {
			per[j] = -it.MM / starboard
		}
	}
	now := dot(per, done)
	rows := []search.Row{{Of: per, Most: math.Max(listMM-now, 0)}, {Of: make([]float64, len(per)), Most: math.Max(listMM+now, 0)}}
	for j, v := range per {
		rows[1].Of[j] = -v
	}
	return rows
}

// planeMay is how far, in shims, a solid foot may be out of the plane of all:
// rounded to whole shims, a plane is out by half of one.
const planeMay = 0.75

// newPlane projects each foot's lift on what no plane through the feet gives.
func newPlane(m *response.Model) [][]float64 {
	n := len(m.Hull.Mounts)
	x := mat.NewDense(n, 3, nil)
	for i, mount := range m.Hull.Mounts {
		x.SetRow(i, []float64{1, mount.AtMM[0], mount.AtMM[1]})
	}
	var q mat.Dense
	var qr mat.QR
	qr.Factorize(x)
	qr.QTo(&q)
	of := make([][]float64, n)
	for i := range of {
		of[i] = make([]float64, len(m.Items))
		for j := range n {
			v := 0.0
			for k := range 3 {
				v -= q.At(i, k) * q.At(j, k)
			}
			if i == j {
				v++
			}
			of[i][j] = v
		}
	}
	return of
}

// newLoads takes them by differences through the model.
func newLoads(m *response.Model) (loads, error) {
	var l loads
	for _, mount := range m.Hull.Mounts {
		l.solid = l.solid || mount.Kind == hulls.Solid
	}
	if l.solid {
		l.planeOf = newPlane(m)
	}
	r, err := m.Solve(kinematics.State{})
	if err != nil {
		return l, err
	}
	l.drawnN = append([]float64(nil), r.MountLoadN...)
	n := len(l.drawnN)
	mean := 0.0
	for _, f := range l.drawnN {
		mean += f / float64(n)
	}
	for _, f := range l.drawnN {
		l.roomN = append(l.roomN, shareMay*math.Max(math.Abs(f), math.Abs(mean)/2))
		l.perN = append(l.perN, make([]float64, len(m.Items)))
	}
	moves := make([]float64, len(m.Items))
	for j := range m.Items {
		moves[j] = 1
		s := kinematics.State{LiftMM: make([]float64, n), SlideMM: make([]float64, n)}
		response.Add(m.Items, moves, s.LiftMM, s.SlideMM)
		moves[j] = 0
		if r, err = m.Solve(s); err != nil {
			return l, err
		}
		for i, f := range r.MountLoadN {
			l.perN[i][j] = f - l.drawnN[i]
		}
	}
	return l, nil
}

// rows bound each mount's shift after moves, counted from what was done. What
// is past its bound already may stay there, not grow.
func (l *loads) rows(done []float64) []search.Row {
	var rows []search.Row
	for i, room := range l.roomN {
		per := l.perN[i]
		if l.solid {
			per, room = l.planeOf[i], planeMay
		}
		now := dot(per, done)
		for _, sign := range [2]float64{1, -1} {
			of := make([]float64, len(per))
			for j, v := range per {
				of[j] = sign * v
			}
			rows = append(rows, search.Row{Of: of, Most: math.Max(room-sign*now, 0)})
		}
	}
	return rows
}

// uneven is how far moves leave the loads from drawn: the sum of the squared
// shares they shift.
func (l *loads) uneven(done []float64, moves []int) float64 {
	sum := 0.0
	for i, per := range l.perN {
		shift := 0.0
		for j, v := range per {
			shift += v * (done[j] + float64(moves[j]))
		}
		sum += shift * shift / (l.roomN[i] * l.roomN[i])
	}
	return sum
}

func dot(a, b []float64) float64 {
	sum := 0.0
	for i, v := range a {
		sum += v * b[i]
	}
	return sum
}
