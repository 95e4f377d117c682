package visit

// This file holds the end of a visit: what is known of the coupling's bolts,
// what kind of thing was tightened, and the hand-over.

// Kinds of fastening, in the order of the job; "" says only what Fasten.What
// says.
const (
	FastenedClamps        = "clamps"         // of the slides
	FastenedJamNuts       = "jam nuts"       // against the adjusting nuts
	FastenedFootBolts     = "foot bolts"     // of solid feet
	FastenedCouplingBolts = "coupling bolts" // in rounds
	Slackened             = "slackened"      // jam nuts or foot bolts, to begin anew
)

// FastenKinds are all of them.
var FastenKinds = []string{FastenedClamps, FastenedJamNuts, FastenedFootBolts, FastenedCouplingBolts, Slackened}

// mostRounds is more than anybody needs to bring bolts to their torque.
const mostRounds = 9

// OfCoupling reports whether it is the coupling's bolts that were tightened,
// which moves no mount.
func (f *Fasten) OfCoupling() bool {
	return f.Kind == FastenedCouplingBolts || f.Kind == "" && f.What == FastenedCouplingBolts
}

// Bolts is what the visit knows of the coupling's bolts beside the hull's thread
// and grade.
type Bolts struct {
	Maker Torque // the maker's figure; left out (default): not known
	Oiled bool   // threads oiled; default: dry
}

// HandedOver is the hand-over, as far as it has come.
type HandedOver struct {
	Date         string // of the hand-over itself; "" (default): not yet
	TurnedByHand string // one of HandTurns, bolted up; "" (default): not turned
	TightAtDeg   Maybe  // where it goes heavily, as Finding.TightAtDeg; default: nowhere
	NutsMarked   bool   // every nut marked against its stud
	Note         string
}

// HandTurns are the words HandedOver.TurnedByHand may be.
var HandTurns = []string{"smooth", "heavy"}

// Done reports whether the boat was handed over.
func (h *HandedOver) Done() bool { return h.Date != "" }

// Net is what all moves of the visit come to, by mount: what is nought is left
// out.
func (v *Visit) Net() Move {
	m := Move{NutFlats: map[string]float64{}, SlideMM: map[string]float64{}}
	for _, e := range v.Events {
		if e.Move == nil {
			continue
		}
		addTo(m.NutFlats, e.Move.NutFlats)
		addTo(m.SlideMM, e.Move.SlideMM)
	}
	return m
}

func addTo(sum, more map[string]float64) {
	for name, v := range more {
		if sum[name] += v; sum[name] == 0 {
			delete(sum, name)
		}
	}
}
