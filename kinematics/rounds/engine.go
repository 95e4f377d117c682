package rounds

// This file puts an engine out of line: unknown lifts and slides that give the
// gap that was drawn.

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"

	"gonum.org/v1/gonum/mat"

	"aligner/hulls"
	"aligner/kinematics"
)

const (
	offsetMM     = 1    // standard deviation of each nut and slide before the gap is fitted
	mostOffsetMM = 12   // beyond this the boat would not be taken on
	gapErrorMM   = 1e-7 // how well the drawn gap is met
	stepMM       = 0.05 // of the response's differences
	mostFits     = 40
)

// drawEngineError draws the spread and where it opens, then offsets that give
// it.
func (b *Boat) drawEngineError(r *rand.Rand) error {
	spread := within(r, leastSpreadThou, mostSpreadThou) * mmPerThou
	sin, cos := math.Sincos(within(r, 0, 2*math.Pi))
	return b.standAt(spread/2*cos, spread/2*sin, r)
}

// standAt draws offsets that give a seated gap.
func (b *Boat) standAt(cosMM, sinMM float64, r *rand.Rand) error {
	b.CosMM, b.SinMM = cosMM, sinMM
	shape := patterns(&b.True)
	n, m := shape.Dims()
	c := mat.NewVecDense(m, nil)
	for i := range m {
		c.SetVec(i, offsetMM*r.NormFloat64())
	}
	var x mat.VecDense
	for range mostFits {
		x.MulVec(shape, c)
		b.setOffsets(x.RawVector().Data)
		a, s, err := b.engineGap(b.LiftMM, b.SlideMM)
		if err != nil {
			return err
		}
		if math.Hypot(b.CosMM-a, b.SinMM-s) < gapErrorMM {
			return b.judgeOffsets()
		}
		response, err := b.response(n)
		if err != nil {
			return err
		}
		var byPattern mat.Dense
		byPattern.Mul(response, shape)
		var step mat.VecDense // the least one: fewer equations than unknowns
		if err := step.SolveVec(&byPattern, mat.NewVecDense(2, []float64{b.CosMM - a, b.SinMM - s})); err != nil {
			return fmt.Errorf("response of the gap: %w", err)
		}
		c.AddVec(c, &step)
	}
	return errors.New("no offsets give the gap drawn")
}

// patterns are the ways an engine may be out, a column each over all lifts and
// then all slides: each nut and slide by itself on rubber; on solid feet only
// what leaves the feet in one plane, 1 mm at the foot farthest out.
func patterns(h *hulls.Hull) *mat.Dense {
	n := len(h.Mounts)
	if h.Mounts[0].Kind != hulls.Solid {
		eye := mat.NewDense(2*n, 2*n, nil)
		for i := range 2 * n {
			eye.Set(i, i, 1)
		}
		return eye
	}
	p := mat.NewDense(2*n, 5, nil)
	middle, x, y := 0.0, 0.0, 0.0
	for _, m := range h.Mounts {
		middle += m.AtMM[0] / float64(n)
	}
	for _, m := range h.Mounts {
		x, y = max(x, math.Abs(m.AtMM[0]-middle)), max(y, math.Abs(m.AtMM[1]))
	}
	for i, m := range h.Mounts {
		p.Set(i, 0, 1)
		p.Set(i, 1, (m.AtMM[0]-middle)/x)
		p.Set(i, 2, m.AtMM[1]/y)
		p.Set(n+i, 3, 1)
		p.Set(n+i, 4, (m.AtMM[0]-middle)/x)
	}
	return p
}

func (b *Boat) setOffsets(x []float64) {
	n := len(x) / 2
	b.LiftMM = append([]float64(nil), x[:n]...)
	b.SlideMM = append([]float64(nil), x[n:]...)
}

func (b *Boat) judgeOffsets() error {
	for i := range b.LiftMM {
		if off := max(math.Abs(b.LiftMM[i]), math.Abs(b.SlideMM[i])); off > mostOffsetMM {
			return fmt.Errorf("%s would stand %.3g mm out", b.True.Mounts[i].Name, off)
		}
	}
	return nil
}

// response is the change of [cos, sin] by each lift and slide, mm per mm, about
// where the engine stands.
func (b *Boat) response(columns int) (*mat.Dense, error) {
	j := mat.NewDense(2, columns, nil)
	n := columns / 2
	for k := range columns {
		at := &b.LiftMM[k%n]
		if k >= n {
			at = &b.SlideMM[k-n]
		}
		stood := *at
		*at = stood + stepMM
		a1, s1, err1 := b.engineGap(b.LiftMM, b.SlideMM)
		*at = stood - stepMM
		a0, s0, err0 := b.engineGap(b.LiftMM, b.SlideMM)
		*at = stood
		if err := errors.Join(err1, err0); err != nil {
			return nil, err
		}
		j.Set(0, k, (a1-a0)/(2*stepMM))
		j.Set(1, k, (s1-s0)/(2*stepMM))
	}
	return j, nil
}

// engineGap is the seated gap that the engine's position gives, without
// run-out.
func (b *Boat) engineGap(liftMM, slideMM []float64) (cosMM, sinMM float64, err error) {
	return b.heldGap(kinematics.Seated, liftMM, slideMM)
}

// heldGap is the same with the shaft held in another way.
func (b *Boat) heldGap(held kinematics.Held, liftMM, slideMM []float64) (cosMM, sinMM float64, err error) {
	state := kinematics.State{LiftMM: liftMM, SlideMM: slideMM, Held: held, Afloat: b.Afloat}
	var result kinematics.Result
	if err := b.line.Solve(&state, &result); err != nil {
		return 0, 0, fmt.Errorf("boat %d: %w", b.Number, err)
	}
	if !result.Gap.Known {
		// A hanging shaft pushed up until the faces touch: both faces' own slopes.
		radius := b.Nominal.Coupling.OuterDiameterMM / 2
		return radius * (result.RotationRad[1] + result.FrontEndSlope[1]), radius * (result.RotationRad[2] - result.FrontEndSlope[0]), nil
	}
	return result.Gap.CosMM, result.Gap.SinMM, nil
}
