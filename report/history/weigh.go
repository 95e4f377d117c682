package history

// This file holds what two visits show against the causes: how well each would
// have made it, whatever its amount.

import (
	"math"
	"slices"

	"aligner/hulls/visit"
	"aligner/kinematics/response"
)

// shown is what two visits show of what happened between them.
type shown struct {
	gap   Gap           // found less left
	studs []visit.Maybe // what more of a stud shows, by mount
	marks []string      // as found, by mount: visit.Marks or ""
}

// Errors beside the gaps' own; our own judgement.
const (
	reseatSDMM = 0.012 // the shaft seated anew, fuel, warmth: half a thou
	studSDMM   = 0.5   // of the change of a stud's height, a rule held in the bilge twice
	slipChance = 0.03  // that a stud's height, or a mark, was taken or written wrongly
	slipSDMM   = 5.0
)

// steps is how many amounts of a cause are tried, equally likely each.
const steps = 400

// weighed is a cause after the evidence.
type weighed struct {
	candidate
	chance       float64
	meanMM, sdMM float64 // of s
}

// weigh gives each cause its chance. They add up to 1.
func weigh(list []candidate, s shown, r *response.Response, moreSDMM [2]float64) []weighed {
	out := make([]weighed, len(list))
	total, top := 0.0, math.Inf(-1)
	logs := make([]float64, len(list))
	for i, c := range list {
		var log float64
		out[i] = weighed{candidate: c}
		log, out[i].meanMM, out[i].sdMM = evidence(&c, s, r, moreSDMM)
		logs[i] = log + math.Log(c.prior)
		top = max(top, logs[i])
	}
	for i := range out {
		out[i].chance = math.Exp(logs[i] - top)
		total += out[i].chance
	}
	for i := range out {
		out[i].chance /= total
	}
	slices.SortStableFunc(out, func(a, b weighed) int {
		switch {
		case a.chance > b.chance:
			return -1
		case a.chance < b.chance:
			return 1
		}
		return 0
	})
	return out
}

// evidence is the logarithm of how likely a cause makes what is shown, and its
// amount.
func evidence(c *candidate, s shown, r *response.Response, moreSDMM [2]float64) (log, meanMM, sdMM float64) {
	e := effectOf(c, r)
	noise := s.gap.CovMM2
	for k := range 2 {
		noise[k][k] += reseatSDMM*reseatSDMM + moreSDMM[k]*moreSDMM[k]
		if c.cause == SomethingElse {
			noise[k][k] += elseGapMM * elseGapMM
		}
	}
	n := steps
	if c.amount == 0 {
		n = 1
	}
	at, logs := make([]float64, n), make([]float64, n)
	top := math.Inf(-1)
	for i := range n {
		if c.amount > 0 {
			at[i] = c.amount * math.Sqrt2 * math.Erfinv((float64(i)+0.5)/float64(n))
		}
		logs[i] = e.log(s.gap.MeanMM, noise, at[i]) + studLog(c, s, at[i])
		top = max(top, logs[i])
	}
	var sum, first, second float64
	for i := range n {
		w := math.Exp(logs[i] - top)
		sum, first, second = sum+w, first+w*at[i], second+w*at[i]*at[i]
	}
	meanMM = first / sum
	return top + math.Log(sum/float64(n)), meanMM, math.Sqrt(max(0, second/sum-meanMM*meanMM))
}

// effect is what a cause does to [A, B] by s = 1, and how sure that is: the
// response's covariance, and seats that do not move quite alike.
type effect struct {
	mean [2]float64
	cov  [2][2]float64
}

func effectOf(c *candidate, r *response.Response) (e effect) {
	moves := make([]float64, len(r.Items))
	for j, it := range r.Items {
		for _, i := range it.Mounts {
			if it.Slide {
				moves[j] += c.slide[i] / it.MM / float64(len(it.Mounts))
			} else {
				moves[j] += c.lift[i] / it.MM
			}
		}
	}
	e.mean = r.Change(moves)
	together := len(c.mounts) > 1
	for j, m := range moves {
		for k, o := range moves {
			for a := range 2 {
				for b := range 2 {
					e.cov[a][b] += m * o * r.Cov.At(2*j+a, 2*k+b)
				}
			}
		}
		if together {
			for a := range 2 {
				for b := range 2 {
					e.cov[a][b] += unevenPart * unevenPart * m * m * r.Mean[2*j+a] * r.Mean[2*j+b]
				}
			}
		}
	}
	return e
}

// log is the logarithm of N(d; s mean, noise + s^2 cov).
func (e *effect) log(d [2]float64, noise [2][2]float64, s float64) float64 {
	xx, xy, yy := noise[0][0]+s*s*e.cov[0][0], noise[0][1]+s*s*e.cov[0][1], noise[1][1]+s*s*e.cov[1][1]
	x, y := d[0]-s*e.mean[0], d[1]-s*e.mean[1]
	det := xx*yy - xy*xy
	return -(x*x*yy-2*x*y*xy+y*y*xx)/(2*det) - math.Log(det)/2 - math.Log(2*math.Pi)
}

// studLog is the logarithm of how likely an amount shows what the studs and their
// marks show.
func studLog(c *candidate, s shown, amount float64) (log float64) {
	for i, change := range s.studs {
		if change.Known {
			sd := studSDMM
			if len(c.mounts) > 1 {
				sd = math.Hypot(sd, unevenPart*amount*c.stud[i])
			}
			log += math.Log((1-slipChance)*bell(change.Value-amount*c.stud[i], sd) + slipChance*bell(change.Value, slipSDMM))
		}
	}
	for i, mark := range s.marks {
		turned := c.stud[i] != 0
		switch {
		case mark == "":
		case (mark == visit.MarkTurned) == turned:
			log += math.Log(1 - slipChance)
		default:
			log += math.Log(slipChance)
		}
	}
	return log
}

func bell(x, sd float64) float64 { return math.Exp(-x*x/(2*sd*sd)) / (sd * math.Sqrt(2*math.Pi)) }
