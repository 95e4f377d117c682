package plan

// This file counts a plan from where moves already made have taken the engine:
// nothing was gauged since, so the gap there is the gauged one and what the
// moves are expected to have done.
//
//	v' = v + R d      cov v' = cov(v + R d)      cov(v', R) = cov(v, R) + d cov R

import "aligner/kinematics/gauge"

// count counts the chance from after moves d.
func (c *chance) count(d []float64) {
	g := c.after(d)
	n := 2 * c.n
	var cross [2][]float64
	for a := range 2 {
		cross[a] = append([]float64(nil), c.cross[a]...)
		for j, m := range d {
			for i := range n {
				cross[a][i] += m * c.cr[(2*j+a)*n+i]
			}
		}
		c.read.MeanMM[a] += g.MeanMM[a] - c.v[a]
	}
	// What the readings alone say goes through the same uncertain response.
	for a := range 2 {
		for b := range 2 {
			c.read.CovMM2[a][b] += g.CovMM2[a][b] - c.cov[a][b]
		}
	}
	c.v, c.cov, c.cross = g.MeanMM, g.CovMM2, cross
	c.crossed = true
	// To do no more is not to let it be: it is gauged again either way.
	c.within = true
}

// present is the gap that the plan starts from.
func (j *job) present() gauge.Gaussian {
	g := gauge.Gaussian{MeanMM: j.chance.v, CovMM2: j.chance.cov}
	for a := range 2 {
		g.CovMM2[a][a] -= provingMM * provingMM
	}
	return g
}
