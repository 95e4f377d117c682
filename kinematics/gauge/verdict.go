package gauge

// This file is the chance that a gap known only with an error keeps a rule, and
// what is said of it.

import "math"

// Verdict is what the readings say against a rule.
type Verdict string

// The verdicts.
const (
	Within     Verdict = "within"
	Outside    Verdict = "outside"
	CannotTell Verdict = "cannot tell yet"
)

// Gaussian is a gap's [A, B] in mm with its error.
type Gaussian struct {
	MeanMM [2]float64
	CovMM2 [2][2]float64
}

// Axes are the standard deviations along the principal axes, the larger first,
// and the larger one's direction as a clock angle in radians.
func (g Gaussian) Axes() (largeMM, smallMM, largeAtRad float64) {
	a, b, c := g.CovMM2[0][0], g.CovMM2[0][1], g.CovMM2[1][1]
	middle, half := (a+c)/2, math.Hypot((a-c)/2, b)
	return math.Sqrt(math.Max(0, middle+half)), math.Sqrt(math.Max(0, middle-half)), math.Atan2(2*b, a-c) / 2
}

// legendre20 are the abscissae and weights of Gauss-Legendre quadrature on (-1,
// 1), 20 points (Abramowitz and Stegun, Handbook of Mathematical Functions,
// table 25.4).
var legendre20 = [10][2]float64{
	{0.076526521133497333755, 0.152753387130725850698},
	{0.227785851141645078080, 0.149172986472603746788},
	{0.373706088715419560673, 0.142096109318382051329},
	{0.510867001950827098004, 0.131688638449176626898},
	{0.636053680726515025453, 0.118194531961518417312},
	{0.746331906460150792614, 0.101930119817240435037},
	{0.839116971822218823395, 0.083276741576704748725},
	{0.912234428251325905868, 0.062672048334109063570},
	{0.963971927277913791268, 0.040601429800386941331},
	{0.993128599185094924786, 0.017614007139152118312},
}

// Inside is the chance that the gap's amplitude about a target is at most
// radiusMM: a Gaussian over a disc. Along the smaller axis it is integrated, over
// the stretch that matters, and along the larger told by the error function,
// which is the smoother way round.
func (g Gaussian) Inside(targetMM [2]float64, radiusMM float64) float64 {
	large, small, at := g.Axes()
	sin, cos := math.Sincos(at)
	x, y := g.MeanMM[0]-targetMM[0], g.MeanMM[1]-targetMM[1]
	m1, m2 := -x*sin+y*cos, x*cos+y*sin // along the smaller, along the larger
	large, small = math.Max(large, 1e-9), math.Max(small, 1e-9)
	// x = R sin theta takes the root out of the disc's edge.
	from := math.Asin(clamp((m1 - 8*small) / radiusMM))
	to := math.Asin(clamp((m1 + 8*small) / radiusMM))
	half, middle, sum := (to-from)/2, (to+from)/2, 0.0
	panels := 1.0
	if half*radiusMM > 3*small {
		panels = 2
	}
	half /= panels
	for p := range int(panels) {
		centre := middle + half*(2*float64(p)+1-panels)
		for _, q := range legendre20 {
			for _, t := range [2]float64{centre - half*q[0], centre + half*q[0]} {
				s, c := math.Sincos(t)
				z := (radiusMM*s - m1) / small
				h := radiusMM * c
				across := math.Erf((h-m2)/large/math.Sqrt2) - math.Erf((-h-m2)/large/math.Sqrt2)
				sum += q[1] * h * math.Exp(-z*z/2) * across
			}
		}
	}
	return math.Min(1, math.Max(0, sum*half/small/2/math.Sqrt(2*math.Pi)))
}

func clamp(v float64) float64 { return math.Max(-1, math.Min(1, v)) }

// untoldMM is the error along an axis from which the readings are said not to
// tell anything there: a quarter of what was believed before.
const untoldMM = tiltBeliefMM / 4

// verdict is given when the readings leave little doubt. Outside must be told
// by what was read: along an axis the readings do not reach, the gap could be
// what the rule likes best.
func (g Gaussian) verdict(targetMM [2]float64, radiusMM float64) (Verdict, float64) {
	p := g.Inside(targetMM, radiusMM)
	if p >= Sure {
		return Within, p
	}
	best := p
	large, small, at := g.Axes()
	switch {
	case small > untoldMM:
		return CannotTell, p
	case large > untoldMM:
		sin, cos := math.Sincos(at)
		across := -(g.MeanMM[0]-targetMM[0])*sin + (g.MeanMM[1]-targetMM[1])*cos
		s := small * math.Sqrt2
		best = (math.Erf((radiusMM-across)/s) - math.Erf((-radiusMM-across)/s)) / 2
	}
	if best <= 1-Sure {
		return Outside, p
	}
	return CannotTell, p
}
