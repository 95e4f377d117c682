package shaftline_test

// This file writes a shaft line as an input deck of CalculiX, a general finite
// element program (Dhondt, The Finite Element Method for Three-Dimensional
// Thermomechanical Applications; CalculiX CrunchiX User's Manual).
//
// The deck is the line as it stands with its bearings made into two-way
// springs: B32 beams, SPRING1 springs to ground at a bearing's stations, GRAV
// for the shaft's own weight, CLOAD for weights hung on it. What was found out
// about them on cantilevers, and is held by TestSectionsOfTheDecks:
//
//   - SECTION=CIRC takes the diameter, but the solid it expands to has four
//     parabolas for an outline: area 1.2 % and second moment 2.2 % short of the
//     circle's. SECTION=RECT is exact, so a deck is of a square bar of the
//     shaft's EI and weight.
//   - A clamped section cannot shrink across, which stiffens the bar beside it
//     unless Poisson's ratio is nil. With it nil, G is E/2.
//   - A spring constant needs a decimal point: without one ccx misses the
//     springs' material.
//   - A pinned end is held in travel alone. Holding its rotation about the axis
//     as well is not needed, and makes its section rigid.
//   - RF is the force inside the beam at a node: the support's, less what
//     weight the element puts on that node (a sixth of its own).

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"aligner/kinematics/shaftline"
)

// deckStations is how many springs a bearing is laid out as.
const deckStations = 9

// longestElement of a deck's beams, in diameters. At half, answers have settled
// to some 0.02 % of the deflection.
const longestElement = 0.5

// stiffShear is how many times the shear modulus of a deck that is stiff in
// shear is that of an honest one. Ours is stiff without limit; many more times
// and CalculiX's beams lock.
const stiffShear = 16

// deck is a mesh and the line it was made of.
type deck struct {
	line    shaftline.Line
	clamped bool
	shear   float64   // times the shear modulus
	nodes   []float64 // x, aft to fore, every other one in the middle of an element
	text    strings.Builder
}

// bilateral is a line without clearance, log or water.
func bilateral(line shaftline.Line) shaftline.Line {
	line.AftWeightNPerMM = line.WeightNPerMM
	line.Lips = nil
	bearings := append([]shaftline.Bearing(nil), line.Bearings...)
	for i := range bearings {
		bearings[i].ClearanceMM = 0
	}
	line.Bearings = bearings
	return line
}

// ground is a spring of the deck: one station of a bearing, or a hose.
type ground struct {
	xMM, kNPerMM float64
	offsetMM     [2]float64
	support      int // among shaftline's supports
}

// grounds are a bilateral line's springs, as package shaftline's comment lays a
// bearing out: evenly spaced, the end ones at half weight.
func grounds(line shaftline.Line) []ground {
	var all []ground
	for i, b := range line.Bearings {
		for j := range deckStations {
			k := b.StiffnessNPerMM / (deckStations - 1)
			if j == 0 || j == deckStations-1 {
				k /= 2
			}
			x := b.AtMM + b.LengthMM*(float64(j)/(deckStations-1)-0.5)
			all = append(all, ground{x, k, b.OffsetMM, i})
		}
	}
	for i, s := range line.Springs {
		all = append(all, ground{s.AtMM, s.StiffnessNPerMM, s.OffsetMM, len(line.Bearings) + 1 + i})
	}
	return all
}

// newDeck lays out and writes a deck.
func newDeck(title string, line shaftline.Line, clamped bool, shear float64) *deck {
	d := &deck{line: line, clamped: clamped, shear: shear}
	d.nodes = meshNodes(line)
	d.printf("** %s\n** Lengths in mm, forces in N, x forward from the coupling face, z up.\n", title)
	d.mesh()
	d.section("RECT", d.sideMM(), d.youngMPa())
	d.holds()
	d.loads(d.sideMM() * d.sideMM())
	return d
}

// sideMM is the side of a square bar of the round one's second moment:
// side^4/12 = pi d^4/64.
func (d *deck) sideMM() float64 { return math.Pow(12*math.Pi/64, 0.25) * d.line.DiameterMM }

func (d *deck) youngMPa() float64 { return d.line.BendingStiffnessNMM2 / math.Pow(d.sideMM(), 4) * 12 }

// shearStiffnessN is G A. CalculiX's B32 bars carry shear evenly over their
// section: there is no shape factor.
func (d *deck) shearStiffnessN() float64 {
	return d.shear * d.youngMPa() / 2 * d.sideMM() * d.sideMM()
}

func (d *deck) printf(format string, args ...any) { fmt.Fprintf(&d.text, format, args...) }

// meshNodes puts a node wherever something happens, cuts what is longer than
// an element, and adds the nodes in the middle.
func meshNodes(line shaftline.Line) []float64 {
	at := []float64{-line.LengthMM, 0}
	for _, p := range line.Points {
		at = append(at, p.AtMM)
	}
	for _, g := range grounds(line) {
		at = append(at, g.xMM)
	}
	at = sortedPlaces(at)
	nodes := at[:1:1]
	for i := 1; i < len(at); i++ {
		halves := 2 * int(math.Ceil((at[i]-at[i-1])/(longestElement*line.DiameterMM)))
		for j := 1; j <= halves; j++ {
			nodes = append(nodes, at[i-1]+(at[i]-at[i-1])*float64(j)/float64(halves))
		}
	}
	return nodes
}

// sortedPlaces sorts and drops what stands twice.
func sortedPlaces(xs []float64) []float64 {
	slices.Sort(xs)
	return slices.CompactFunc(xs, func(a, b float64) bool { return math.Abs(a-b) < 1e-6 })
}

// node is the number of the node at x, from 1.
func (d *deck) node(xMM float64) int {
	for i, x := range d.nodes {
		if math.Abs(x-xMM) < 1e-6 {
			return i + 1
		}
	}
	panic(fmt.Sprintf("no node at %g mm", xMM))
}

func (d *deck) front() int { return len(d.nodes) }

func (d *deck) mesh() {
	d.printf("*NODE,NSET=ALL\n")
	for i, x := range d.nodes {
		d.printf("%d,%.9g,0.,0.\n", i+1, x)
	}
	d.printf("*NSET,NSET=FRONT\n%d\n*ELEMENT,TYPE=B32,ELSET=SHAFT\n", d.front())
	for i := 0; i+2 < len(d.nodes); i += 2 {
		d.printf("%d,%d,%d,%d\n", i/2+1, i+1, i+2, i+3)
	}
}

// section is a round bar's diameter or a square bar's side, and Young's modulus.
func (d *deck) section(kind string, sizeMM, youngMPa float64) {
	d.printf("*BEAM SECTION,ELSET=SHAFT,MATERIAL=METAL,SECTION=%s\n%.9g,%.9g\n0.,1.,0.\n", kind, sizeMM, sizeMM)
	e, g := youngMPa, d.shear*youngMPa/2
	d.printf("*MATERIAL,NAME=METAL\n*ELASTIC,TYPE=ENGINEERING CONSTANTS\n")
	d.printf("%.9g,%.9g,%.9g,0.,0.,0.,%.9g,%.9g\n%.9g\n*DENSITY\n1.\n", e, e, e, g, g, g)
}

func (d *deck) holds() {
	element := len(d.nodes)
	for _, g := range grounds(d.line) {
		for _, direction := range [...]int{2, 3} {
			element++
			d.printf("*ELEMENT,TYPE=SPRING1,ELSET=S%d\n%d,%d\n*SPRING,ELSET=S%d\n%d\n%.6f\n",
				element, element, d.node(g.xMM), element, direction, g.kNPerMM)
		}
	}
	d.printf("*BOUNDARY\n%d,1,3\n", d.front())
	if d.clamped {
		d.printf("%d,4,6\n", d.front())
	}
}

// loads are the shaft's weight, as an acceleration of a bar of unit density,
// the weights hung on it, and the push of springs whose axis is off the line.
func (d *deck) loads(areaMM2 float64) {
	d.printf("*STEP\n*STATIC\n*DLOAD\nSHAFT,GRAV,%.9g,0.,0.,-1.\n", d.line.WeightNPerMM/areaMM2)
	d.printf("*CLOAD\n")
	for _, p := range d.line.Points {
		d.printf("%d,3,%.9g\n", d.node(p.AtMM), -p.WeightN)
	}
	for _, g := range grounds(d.line) {
		for plane, off := range g.offsetMM {
			if off != 0 {
				d.printf("%d,%d,%.9g\n", d.node(g.xMM), 2+plane, g.kNPerMM*off)
			}
		}
	}
	d.printf("*NODE PRINT,NSET=ALL\nU\n*NODE PRINT,NSET=FRONT\nRF\n*END STEP\n")
}
