package interval

import (
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
)

func TestTmp(t *testing.T) {
	raw, _ := os.ReadFile("testdata/moments.csv")
	type worst struct {
		e  float64
		at string
	}
	w := map[string]worst{}
	for _, l := range strings.Split(strings.TrimSpace(string(raw)), "\n")[1:] {
		var v []float64
		for _, f := range strings.Split(l, ",") {
			x, err := strconv.ParseFloat(f, 64)
			if err != nil {
				t.Fatal(err)
			}
			v = append(v, x)
		}
		a, b := v[0], v[1]
		g := between(a, b)
		kind := "ends"
		switch {
		case g.mean != g.mean:
			kind = "nan"
		case math.IsInf(b-a, 0):
			kind = "open"
			if math.Max(a, -b) > tailFrom {
				kind = "open>25"
			} else if math.Max(a, -b) > 3 {
				kind = "open3..25"
			}
		case (b-a)*math.Max(1, math.Abs(a+b)/2) <= shortTo:
			kind = "short"
		case math.Max(a, -b) > tailFrom:
			kind = "ends>25"
		case math.Max(a, -b) > 3:
			kind = "ends3..25"
		}
		cross := -(2*g.mean*g.curve - g.third)
		wcross := -(2*v[3]*v[8] - v[9])
		mm, vv := g.mean*g.mean, g.variance
		tt := -(2*(mm+vv) - (4*mm*vv + 4*g.mean*g.third + g.fourth - vv*vv))
		wtt := -(2*v[4] - (4*v[3]*v[3]*v[7] + 4*v[3]*v[9] + v[10] - v[7]*v[7]))
		sd := math.Sqrt(v[7])
		up := func(n string, got, want, scale float64) {
			e := math.Abs(got-want) / scale
			if want == got || (math.Abs(want) < 1e-300) {
				e = 0
			}
			key := kind + " " + n
			if !(e <= w[key].e) {
				w[key] = worst{e, fmt.Sprintf("%g %g got %g want %g", a, b, got, want)}
			}
		}
		up("log", g.log, v[2], math.Max(1e-300, math.Abs(v[2])))
		up("m1", g.mean, v[3], math.Max(sd, math.Abs(v[3])))
		up("m2", mm+vv, v[4], v[4])
		up("m3", g.mean*(mm+3*vv)+g.third, v[5], math.Max(sd*sd*sd, math.Abs(v[5])))
		up("m4", mm*mm+6*mm*vv+4*g.mean*g.third+g.fourth, v[6], v[6])
		up("var", vv, v[7], v[7])
		up("curve", g.curve, v[8], v[8])
		up("c3", g.third, v[9], sd*sd*sd)
		up("c4", g.fourth, v[10], v[10])
		up("cross", cross, wcross, math.Max(math.Abs(wcross), 1e-3))
		up("tt", tt, wtt, math.Max(math.Abs(wtt), 1e-3))
	}
	for _, k := range []string{"short", "ends", "ends3..25", "ends>25", "open", "open3..25", "open>25", "nan"} {
		for _, n := range []string{"log", "m1", "m2", "m3", "m4", "var", "curve", "c3", "c4", "cross", "tt"} {
			if x, ok := w[k+" "+n]; ok {
				fmt.Printf("%-18s %8.1e  %s\n", k+" "+n, x.e, x.at)
			}
		}
	}
}
