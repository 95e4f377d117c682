package plan

// This file prepares a planner and says where the engine stands.

import (
	"fmt"

	"gonum.org/v1/gonum/mat"

	"aligner/hulls"
	"aligner/hulls/visit"
	"aligner/kinematics"
	"aligner/kinematics/gauge"
	"aligner/kinematics/response"
)

// NewPlanner works a hull out, dry or afloat.
func NewPlanner(h *hulls.Hull, afloat bool) (*Planner, error) {
	held := kinematics.Seated
	if !h.Coupling.HasPilot() {
		held = kinematics.Centred
	}
	m, err := response.NewModel(h, held, afloat)
	if err != nil {
		return nil, err
	}
	p := &Planner{hull: h, model: m}
	if p.drawn, err = m.At(nil, nil); err != nil {
		return nil, err
	}
	p.loads, err = newLoads(m)
	return p, err
}

// stand is where the engine is taken to stand, as lifts and slides by mount
// from drawn.
type stand struct{ liftMM, slideMM []float64 }

func (p *Planner) noStand() stand {
	n := len(p.hull.Mounts)
	return stand{make([]float64, n), make([]float64, n)}
}

// plus adds moves in steps.
func (s stand) plus(items []response.Item, moves []float64) stand {
	c := stand{append([]float64(nil), s.liftMM...), append([]float64(nil), s.slideMM...)}
	response.Add(items, moves, c.liftMM, c.slideMM)
	return c
}

// closing is the move, in parts of steps, of least spread in mm that changes
// the gap by ab.
func closing(r *response.Response, ab [2]float64) []float64 {
	var g [2][2]float64 // R W^-1 R', W the squares of the steps in mm
	for j, it := range r.Items {
		w := 1 / (it.MM * it.MM)
		for a := range 2 {
			for b := range 2 {
				g[a][b] += w * r.Mean[2*j+a] * r.Mean[2*j+b]
			}
		}
	}
	moves := make([]float64, len(r.Items))
	det := g[0][0]*g[1][1] - g[0][1]*g[1][0]
	if det == 0 {
		return moves
	}
	y := [2]float64{(g[1][1]*ab[0] - g[0][1]*ab[1]) / det, (g[0][0]*ab[1] - g[1][0]*ab[0]) / det}
	for j, it := range r.Items {
		moves[j] = (r.Mean[2*j]*y[0] + r.Mean[2*j+1]*y[1]) / (it.MM * it.MM)
	}
	return moves
}

// story turns the estimate's states into what a response learns from.
func (p *Planner) story(e *gauge.Estimate) response.Story {
	s := response.Story{CovMM2: e.StateCovMM2}
	for k, state := range e.States {
		s.GapMM = append(s.GapMM, [2]float64{state.CosMM, state.SinMM})
		if k > 0 {
			s.Moves = append(s.Moves, response.MovesOf(p.hull, p.model.Items, state.NutFlats, state.SlideMM))
			s.Fastened = append(s.Fastened, state.Fastened)
		}
	}
	return s
}

// done is what the visit's moves come to.
func (p *Planner) done(v *visit.Visit) []float64 {
	var moves []visit.Move
	for _, event := range v.Events {
		if event.Move != nil {
			moves = append(moves, *event.Move)
		}
	}
	return p.moves(moves)
}

// moves is what some moves come to, by item.
func (p *Planner) moves(all []visit.Move) []float64 {
	sum := make([]float64, len(p.model.Items))
	for _, move := range all {
		for j, m := range response.MovesOf(p.hull, p.model.Items, move.NutFlats, move.SlideMM) {
			sum[j] += m
		}
	}
	return sum
}

// found is the stand that gives the gap found: the visit's moves, and beside
// them the unknown error of least spread.
func (p *Planner) found(done []float64, gapMM [2]float64) (stand, error) {
	s := p.noStand().plus(p.model.Items, done)
	for range 3 {
		r, err := p.model.Solve(kinematics.State{LiftMM: s.liftMM, SlideMM: s.slideMM})
		if err != nil {
			return s, fmt.Errorf("the engine as found: %w", err)
		}
		s = s.plus(p.model.Items, closing(p.drawn, [2]float64{gapMM[0] - r.Gap.CosMM, gapMM[1] - r.Gap.SinMM}))
	}
	return s, nil
}

// learn takes the response half way from the engine as found to the target, and
// corrects it by what the boat has answered.
func (p *Planner) learn(e *gauge.Estimate, found stand) (*response.Learnt, error) {
	back := closing(p.drawn, [2]float64{e.TargetMM[0] - e.Gap.MeanMM[0], e.TargetMM[1] - e.Gap.MeanMM[1]})
	for j := range back {
		back[j] /= 2
	}
	half := found.plus(p.model.Items, back)
	r, err := p.model.At(half.liftMM, half.slideMM)
	if err != nil {
		return nil, fmt.Errorf("the response: %w", err)
	}
	return r.Learn(p.story(e))
}

// chance is the gap that will be found after a move, as package doc tells it.
type chance struct {
	r        *response.Response
	v        [2]float64
	cov      [2][2]float64
	cross    [2][]float64
	crossed  bool
	cr       []float64 // Cov R by rows
	n        int       // items
	target   [2]float64
	radiusMM float64
	within   bool           // the estimate's verdict
	read     gauge.Gaussian // the estimate's own gap
}

// provingMM is the error of the gauging that will follow, as a standard deviation
// of A and B: a move aimed right at the rule's edge would leave a gap that no
// gauging can prove.
const provingMM = 0.3 * 0.0254

func newChance(l *response.Learnt, target [2]float64, radiusMM float64) *chance {
	c := &chance{r: l.Response, v: l.GapMM, cov: l.GapCov, cross: l.Cross, n: len(l.Response.Items), target: target, radiusMM: radiusMM}
	for a := range 2 {
		c.cov[a][a] += provingMM * provingMM
	}
	n := 2 * c.n
	c.cr = make([]float64, n*n)
	for i := range n {
		c.crossed = c.crossed || c.cross[0][i] != 0 || c.cross[1][i] != 0
		for j := range n {
			c.cr[i*n+j] = l.Response.Cov.At(i, j)
		}
	}
	return c
}

// after is the gap after moves.
func (c *chance) after(moves []float64) gauge.Gaussian {
	g := gauge.Gaussian{MeanMM: c.v, CovMM2: c.cov}
	n := 2 * c.n
	for i, mi := range moves {
		if mi == 0 {
			continue
		}
		for a := range 2 {
			g.MeanMM[a] += c.r.Mean[2*i+a] * mi
			for b := range 2 {
				g.CovMM2[a][b] += mi * (c.cross[a][2*i+b] + c.cross[b][2*i+a])
				row := c.cr[(2*i+a)*n:]
				for j, mj := range moves {
					g.CovMM2[a][b] += mi * mj * row[2*j+b]
				}
			}
		}
	}
	return g
}

// surest is the move, in parts of steps and heedless of ranges, that keeps the
// mean square of the gap after it least; items not free stay.
func (c *chance) surest(free []bool) []float64 {
	var index []int
	for j, f := range free {
		if f {
			index = append(index, j)
		}
	}
	moves := make([]float64, c.n)
	k := len(index)
	if k == 0 {
		return moves
	}
	h, b := mat.NewSymDense(k, nil), mat.NewVecDense(k, nil)
	n := 2 * c.n
	for p, i := range index {
		for a := range 2 {
			b.SetVec(p, b.AtVec(p)-c.r.Mean[2*i+a]*(c.v[a]-c.target[a])-c.cross[a][2*i+a])
			for q := p; q < k; q++ {
				j := index[q]
				h.SetSym(p, q, h.At(p, q)+c.r.Mean[2*i+a]*c.r.Mean[2*j+a]+c.cr[(2*i+a)*n+2*j+a])
			}
		}
	}
	var chol mat.Cholesky
	var x mat.VecDense
	if !chol.Factorize(h) || chol.SolveVecTo(&x, b) != nil {
		return moves
	}
	for p, i := range index {
		moves[i] = x.AtVec(p)
	}
	return moves
}

// AsFound is where the engine is taken to stand, as lifts and slides by mount
// from drawn: what makes the gap that the estimate tells.
func (p *Planner) AsFound(v *visit.Visit, e *gauge.Estimate) (liftMM, slideMM []float64, err error) {
	s, err := p.found(p.done(v), e.Gap.MeanMM)
	return s.liftMM, s.slideMM, err
}

// Response is the hull's about its drawn state, nothing learnt.
func (p *Planner) Response() (*response.Response, error) { return p.model.At(nil, nil) }
