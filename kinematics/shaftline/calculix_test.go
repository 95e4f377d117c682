package shaftline_test

// This file holds the bending of every built-in hull's shaft against CalculiX.
// testdata/calculix holds the decks, what CalculiX made of them, and remake.sh,
// which makes both anew; CalculiX is not needed to run the tests. A deck is
// compared with the hull as it is today, so that a changed hull cannot pass on
// old answers.

import (
	"bufio"
	"bytes"
	"crypto/sha256"
	"flag"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/hulls/visit/builtin"
	"aligner/kinematics"
	"aligner/kinematics/shaftline"
)

var update = flag.Bool("update", false, "write the CalculiX decks from the built-in hulls")

const (
	deckDir = "testdata/calculix"
	remake  = "remake the decks: kinematics/shaftline/testdata/calculix/remake.sh (needs ccx, Debian's calculix-ccx)"
)

// answer is what CalculiX made of a deck: the travel of each node and the
// force in the front one.
type answer struct {
	y, z   []float64
	frontN [2]float64
}

// current compares a stored deck with what it would be today and reads its
// answer; with -update it writes the deck instead and there is no answer.
func (d *deck) current(t *testing.T, name string) (answer, bool) {
	t.Helper()
	path := filepath.Join(deckDir, name)
	text := d.text.String()
	if *update {
		if err := os.WriteFile(path+".inp", []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		return answer{}, false
	}
	stored, err := os.ReadFile(path + ".inp")
	if err != nil {
		t.Fatalf("%v\n%s", err, remake)
	}
	if line := firstDifference(string(stored), text); line > 0 {
		t.Fatalf("%s.inp no longer fits its hull from line %d on; %s", path, line, remake)
	}
	result, err := os.ReadFile(path + ".txt")
	if err != nil {
		t.Fatalf("%v\n%s", err, remake)
	}
	a, sum, err := readAnswer(result, len(d.nodes))
	if err != nil {
		t.Fatalf("%s.txt: %v; %s", path, err, remake)
	}
	if want := fmt.Sprintf("%x", sha256.Sum256(stored)); sum != want {
		t.Fatalf("%s.txt answers another deck; %s", path, remake)
	}
	return a, true
}

// firstDifference is the first line, from 1, where two decks differ by more
// than the last digits of a number, or 0.
func firstDifference(a, b string) int {
	as, bs := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range max(len(as), len(bs)) {
		if i >= len(as) || i >= len(bs) || !sameLine(as[i], bs[i]) {
			return i + 1
		}
	}
	return 0
}

func sameLine(a, b string) bool {
	return slices.EqualFunc(strings.Split(a, ","), strings.Split(b, ","), func(x, y string) bool {
		u, errX := strconv.ParseFloat(x, 64)
		v, errY := strconv.ParseFloat(y, 64)
		if errX != nil || errY != nil {
			return x == y
		}
		return math.Abs(u-v) <= 1e-7*max(math.Abs(u), math.Abs(v))
	})
}

// readAnswer reads "deck SHA256", "front Y Z" and one "NODE Y Z" a node.
func readAnswer(data []byte, nodes int) (a answer, deckSum string, err error) {
	scan := bufio.NewScanner(bytes.NewReader(data))
	for scan.Scan() {
		f := strings.Fields(scan.Text())
		if len(f) == 2 && f[0] == "deck" {
			deckSum = f[1]
		}
		if len(f) != 3 || f[0] == "#" {
			continue
		}
		y, errY := strconv.ParseFloat(f[1], 64)
		z, errZ := strconv.ParseFloat(f[2], 64)
		if errY != nil || errZ != nil {
			return a, "", fmt.Errorf("cannot read %q", scan.Text())
		}
		if f[0] == "front" {
			a.frontN = [2]float64{y, z}
			continue
		}
		if f[0] != strconv.Itoa(len(a.z)+1) {
			return a, "", fmt.Errorf("node %q where %d should be", f[0], len(a.z)+1)
		}
		a.y, a.z = append(a.y, y), append(a.z, z)
	}
	if len(a.z) != nodes {
		return a, "", fmt.Errorf("%d nodes, want %d", len(a.z), nodes)
	}
	return a, deckSum, scan.Err()
}

// turnAt is how far the section at an element's end i has turned: the slope of
// the element's parabola there, less what shear adds to it. In CalculiX's bars
// the centreline slopes by more than its sections turn, by V/GA; a coupling
// half turns with its section.
func (a *answer) turnAt(d *deck, i int) float64 {
	if i == 0 {
		slope := -(3*a.z[0] - 4*a.z[1] + a.z[2]) / (d.nodes[2] - d.nodes[0])
		return slope + a.upAftOf(d, d.nodes[0]+1e-3)/d.shearStiffnessN()
	}
	slope := (3*a.z[i] - 4*a.z[i-1] + a.z[i-2]) / (d.nodes[i] - d.nodes[i-2])
	return slope + a.upAftOf(d, d.nodes[i]-1e-3)/d.shearStiffnessN()
}

// upAftOf is the force up on the shaft aft of x: springs by CalculiX's own
// travel, less weights.
func (a *answer) upAftOf(d *deck, xMM float64) float64 {
	up := -d.line.WeightNPerMM * (xMM + d.line.LengthMM)
	for _, p := range d.line.Points {
		if p.AtMM < xMM {
			up -= p.WeightN
		}
	}
	for _, g := range grounds(d.line) {
		if g.xMM < xMM {
			up -= g.kNPerMM * (a.z[d.node(g.xMM)-1] - g.offsetMM[1])
		}
	}
	return up
}

// apart is a difference of two bendings, as shares of the largest deflection,
// of the largest turn, and of each reaction.
type apart struct{ deflection, turn, reaction float64 }

// CalculiX's bars give in shear and ours do not. That is all there is between
// them: with the shear modulus of the decks made 16 times as large, 0.1 to 0.4 %
// of the deflection becomes 0.003 to 0.012 %. A turn is read off three nodes
// close together and keeps more.
var (
	honestLimit = apart{deflection: 0.01, turn: 0.01, reaction: 0.01}
	stiffLimit  = apart{deflection: 0.0003, turn: 0.002, reaction: 0.0005}
)

func TestShaftsAgainstCalculix(t *testing.T) {
	for _, name := range assets.HullNames() {
		for _, clamped := range []bool{false, true} {
			for _, shear := range []float64{1, stiffShear} {
				hold := map[bool]string{false: "pinned", true: "clamped"}[clamped]
				if shear != 1 {
					hold += "-stiff-in-shear"
				}
				t.Run(name+"/"+hold, func(t *testing.T) {
					title := fmt.Sprintf("%s, front end %s, bearings as two-way springs", name, hold)
					d := newDeck(title, bilateral(builtInLine(t, name)), clamped, shear)
					a, ok := d.current(t, strings.ToLower(name)+"-"+hold)
					if !ok {
						return
					}
					limit := honestLimit
					if shear != 1 {
						limit = stiffLimit
					}
					w := compare(t, d, a, limit)
					t.Logf("deflection %.3f %%, turn %.3f %%, reaction %.3f %%", 100*w.deflection, 100*w.turn, 100*w.reaction)
				})
			}
		}
	}
}

func builtInLine(t *testing.T, name string) shaftline.Line {
	t.Helper()
	h := builtin.Hull(t, name)
	line, err := kinematics.Line(&h, false)
	if err != nil {
		t.Fatal(err)
	}
	return line
}

// compare bends the deck's line and holds deflections, turns and reactions
// against the answer. It reports the largest differences.
func compare(t *testing.T, d *deck, a answer, limit apart) (most apart) {
	t.Helper()
	m, err := shaftline.Prepare(d.line, shaftline.Settings{StationsPerBearing: deckStations})
	if err != nil {
		t.Fatal(err)
	}
	st := m.NewState()
	var front shaftline.Front = shaftline.Pinned{}
	if d.clamped {
		front = shaftline.Clamped{}
	}
	if err := m.Bend(st, front, shaftline.Limits{}).Err(); err != nil {
		t.Fatal(err)
	}
	share := func(what string, got, want, whole, limit float64, most *float64) {
		t.Helper()
		s := math.Abs(got-want) / math.Abs(whole)
		if !(s <= limit) {
			t.Errorf("%s: %.6g, CalculiX %.6g: %.3f %% of %.6g apart, limit %g %%", what, got, want, 100*s, whole, 100*limit)
		}
		*most = max(*most, s)
	}
	mostZ, mostTurn := 0.0, 0.0
	for i := range d.nodes {
		mostZ = max(mostZ, math.Abs(a.z[i]))
		if i%2 == 0 {
			mostTurn = max(mostTurn, math.Abs(a.turnAt(d, i)))
		}
	}
	for i, x := range d.nodes {
		s := m.At(st, x)
		share(fmt.Sprintf("deflection at %.1f mm", x), s.Z, a.z[i], mostZ, limit.deflection, &most.deflection)
		share(fmt.Sprintf("sideways at %.1f mm", x), s.Y, a.y[i], mostZ, limit.deflection, &most.deflection)
		if i%2 == 0 {
			share(fmt.Sprintf("turn at %.1f mm", x), s.DZ, a.turnAt(d, i), mostTurn, limit.turn, &most.turn)
		}
	}
	supports := make([]shaftline.Support, m.Supports())
	m.ReadSupports(st, supports)
	for i, theirs := range a.reactionsN(d, len(supports)) {
		if i != m.LogGroup() {
			share(fmt.Sprintf("reaction %d", i), supports[i].ForceN[1], theirs, theirs, limit.reaction, &most.reaction)
		}
	}
	held := a.frontForceN(d)
	share("force at the front end", m.FrontForce(st)[2], held, held, limit.reaction, &most.reaction)
	return most
}

// reactionsN are the forces up of the line's supports, by CalculiX's travel.
func (a *answer) reactionsN(d *deck, supports int) []float64 {
	r := make([]float64, supports)
	for _, g := range grounds(d.line) {
		r[g.support] -= g.kNPerMM * (a.z[d.node(g.xMM)-1] - g.offsetMM[1])
	}
	return r
}

// frontForceN is what holds the front end: CalculiX's force in the node, and
// the sixth of its element's weight that acts there.
func (a *answer) frontForceN(d *deck) float64 {
	last := len(d.nodes) - 1
	return a.frontN[1] + d.line.WeightNPerMM*(d.nodes[last]-d.nodes[last-2])/6
}
