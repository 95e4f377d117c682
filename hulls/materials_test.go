package hulls

// Shaft alloys against handbook figures.

import (
	"math"
	"strings"
	"testing"
)

// Young's modulus and density as printed in a handbook table of propeller
// shafting (psi, pounds per cubic inch). The table rounds the modulus to a
// million psi or half of it, and shows S20910 at 28.0 where data sheets give
// 200 GPa = 29.0: 4 % is what the two sources leave.
func TestMaterialsAgreeWithHandbook(t *testing.T) {
	const psi, lbPerIn3 = 0.006894757293168361, 27.679904710203122 // MPa; g/cm3
	for _, row := range []struct {
		uns              string
		youngPsi, lbPer3 float64
	}{
		{"UNS S30400", 28.0e6, 0.286}, {"UNS S17400", 28.5e6, 0.284}, {"UNS S20910", 28.0e6, 0.285},
		{"UNS N04400", 26.0e6, 0.319}, {"UNS N05500", 26.0e6, 0.306},
	} {
		m, err := MaterialOf(row.uns, "")
		if err != nil {
			t.Fatal(err)
		}
		if e := row.youngPsi * psi / 1000; math.Abs(m.YoungGPa/e-1) > 0.04 {
			t.Errorf("%s: E %g GPa, handbook %.1f", row.uns, m.YoungGPa, e)
		}
		if rho := row.lbPer3 * lbPerIn3; math.Abs(m.DensityGPerCM3/rho-1) > 0.015 {
			t.Errorf("%s: density %g, handbook %.3f", row.uns, m.DensityGPerCM3, rho)
		}
	}
}

// Naval brass against an alloy sheet to ASTM B21: 27 and 60 ksi, over an inch
// 26 and 58; 0.304 lb/in3.
func TestNavalBrass(t *testing.T) {
	const ksi = 6.894757293168361
	for condition, want := range map[string][2]float64{"": {27, 60}, "H02 over 1-2 in": {26, 58}} {
		m, err := MaterialOf("UNS C46400", condition)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(m.YieldMinMPa-want[0]*ksi) > 0.5 || math.Abs(m.TensileMinMPa-want[1]*ksi) > 0.5 {
			t.Errorf("%q: %g, %g MPa; want %.1f, %.1f", condition, m.YieldMinMPa, m.TensileMinMPa, want[0]*ksi, want[1]*ksi)
		}
		if math.Abs(m.DensityGPerCM3-0.304*27.679904710203122) > 0.01 {
			t.Errorf("%q: density %g", condition, m.DensityGPerCM3)
		}
	}
}

// Every row is a metal: a density printed as 0.206 lb/in3 for 0.286 would not
// pass, nor a modulus in the wrong unit, nor Poisson's ratio outside metals'.
func TestMaterialsArePlausible(t *testing.T) {
	seen := map[string]bool{}
	for _, m := range materials {
		if m.DensityGPerCM3 < 7.5 || m.DensityGPerCM3 > 9 {
			t.Errorf("%s: density %g", m.UNS, m.DensityGPerCM3)
		}
		if nu := m.YoungGPa/(2*m.ShearGPa) - 1; nu < 0.23 || nu > 0.40 {
			t.Errorf("%s: Poisson's ratio %.3f", m.UNS, nu)
		}
		if !(m.YieldMinMPa < m.TensileMinMPa && m.EnduranceMPa[0] < m.EnduranceMPa[1] && m.EnduranceMPa[1] < m.TensileMinMPa/2) {
			t.Errorf("%s %s: strengths out of order: %+v", m.UNS, m.Condition, m)
		}
		if !strings.HasPrefix(m.UNS, "UNS ") || len(m.UNS) != 10 || seen[m.UNS+m.Condition] {
			t.Errorf("%s %s: no UNS number, or twice", m.UNS, m.Condition)
		}
		seen[m.UNS+m.Condition] = true
	}
}

func TestMaterialOf(t *testing.T) {
	for _, uns := range []string{"S20910", "UNS S20910"} {
		m, err := MaterialOf(uns, "")
		if err != nil || m.Condition != "annealed" || m.UNS != "UNS S20910" {
			t.Errorf("MaterialOf(%q): %+v, %v; want the first row", uns, m, err)
		}
	}
	if m, err := MaterialOf("UNS S20910", "high-strength bar <=2 in"); err != nil || m.YieldMinMPa != 725 {
		t.Errorf("%+v, %v", m, err)
	}
	for _, uns := range []string{"S31803", "S32205"} {
		if m, err := MaterialOf(uns, ""); err != nil || m.Family != "duplex stainless" {
			t.Errorf("%s: %+v, %v", uns, m, err)
		}
	}
	for _, bad := range [][2]string{{"", ""}, {"UNS ", ""}, {"UNS S99999", ""}, {"s20910", ""}, {"UNS S20910", "hard"}} {
		m, err := MaterialOf(bad[0], bad[1])
		if err == nil || !strings.Contains(err.Error(), "known are") || m != (Material{}) {
			t.Errorf("MaterialOf(%q, %q) = %+v, %v", bad[0], bad[1], m, err)
		}
	}
}
