package hulls

// This file looks for port and starboard mounts that are no mirror images of each
// other. Nearly every boat is built symmetric about the shaft's plane, so a
// difference is as a rule a slip of the tape; a boat that is one-sided says so.

import (
	"fmt"
	"math"
	"strings"

	"aligner/hulls/strictjson"
)

// mirrorMM is how far apart, in mm, mirrored places may be: two readings of a
// tape measure.
const mirrorMM = 10

// Mirrored is a pair of mounts.
type Mirrored struct{ Port, Starboard int }

// MirroredPairs are the mounts that stand opposite each other: by their names
// ("fore port", "fore starboard"), or, where names tell nothing, the nearest on
// the other side within a fifth of the engine's mounts' length.
func MirroredPairs(h *Hull) []Mirrored {
	var all []Mirrored
	taken := map[int]bool{}
	for i, m := range h.Mounts {
		other, ok := swapped(m.Name)
		for j := range h.Mounts {
			if ok && strings.EqualFold(h.Mounts[j].Name, other) {
				all = append(all, Mirrored{i, j})
				taken[i], taken[j] = true, true
			}
		}
	}
	for i, m := range h.Mounts {
		if m.AtMM[1] <= 0 || taken[i] {
			continue
		}
		nearest, best := -1, lengthOfBed(h)/5
		for j, o := range h.Mounts {
			if off := math.Abs(o.AtMM[0] - m.AtMM[0]); o.AtMM[1] < 0 && !taken[j] && off < best {
				nearest, best = j, off
			}
		}
		if nearest >= 0 {
			all = append(all, Mirrored{i, nearest})
			taken[i], taken[nearest] = true, true
		}
	}
	return all
}

// swapped is a port mount's name with starboard for port; ok is false for others.
func swapped(name string) (other string, ok bool) {
	words := strings.Fields(strings.ToLower(name))
	for i, w := range words {
		if w == "port" {
			words[i], ok = "starboard", true
		}
	}
	return strings.Join(words, " "), ok
}

func lengthOfBed(h *Hull) float64 {
	low, high := math.Inf(1), math.Inf(-1)
	for _, m := range h.Mounts {
		low, high = min(low, m.AtMM[0]), max(high, m.AtMM[0])
	}
	return high - low
}

// MirrorDoubts doubts what is not symmetric about the shaft's plane: a pair by
// name with both values. None of a boat that is said to be one-sided.
func MirrorDoubts(h Hull) []Fault {
	if h.OneSided {
		return nil
	}
	c := &checker{h: &h}
	for _, pair := range MirroredPairs(&h) {
		c.pair(pair)
	}
	for i, b := range h.Bearings {
		c.amidships(fmt.Sprintf("bearings[%d].offset_mm[0]", i), b.OffsetMM[0])
	}
	c.amidships("log.offset_mm[0]", h.Log.OffsetMM[0])
	return c.report.Doubts
}

func (c *checker) pair(pair Mirrored) {
	p, s := c.h.Mounts[pair.Port], c.h.Mounts[pair.Starboard]
	place := fmt.Sprintf("mounts[%d]", pair.Port)
	unlike := func(key, port, starboard string) {
		c.doubt(place+key, fmt.Sprintf("%s on %s, %s on %s", port, strictjson.Quoted(p.Name), starboard, strictjson.Quoted(s.Name)),
			"mirror images as a rule", `measure both again; of a boat built so say "one_sided": true`)
	}
	number := func(key string, port, starboard, most float64, unit string) {
		if math.Abs(port-starboard) > most {
			unlike(key, with(port, unit), with(starboard, unit))
		}
	}
	number(".at_mm[0]", p.AtMM[0], s.AtMM[0], mirrorMM, "mm")
	if math.Abs(p.AtMM[1]+s.AtMM[1]) > mirrorMM {
		unlike(".at_mm[1]", with(p.AtMM[1], "mm"), with(s.AtMM[1], "mm"))
	}
	number(".at_mm[2]", p.AtMM[2], s.AtMM[2], mirrorMM, "mm")
	if p.Kind != s.Kind {
		unlike(".kind", string(p.Kind), string(s.Kind))
		return
	}
	if p.Kind == Solid {
		number(".shim_step_mm", p.ShimStepMM, s.ShimStepMM, 1e-6, "mm")
	} else if p.Thread != s.Thread {
		unlike(".thread", p.Thread, s.Thread)
	}
	for _, k := range []struct {
		key             string
		port, starboard float64
	}{
		{".stiffness_n_per_mm.along", p.StiffnessNPerMM.Along, s.StiffnessNPerMM.Along},
		{".stiffness_n_per_mm.fore_aft", p.StiffnessNPerMM.ForeAft, s.StiffnessNPerMM.ForeAft},
		{".stiffness_n_per_mm.athwart", p.StiffnessNPerMM.Athwart, s.StiffnessNPerMM.Athwart},
	} {
		number(k.key, k.port, k.starboard, 0.05*math.Abs(k.port), "N/mm")
	}
}

// amidships doubts what stands off the shaft's plane.
func (c *checker) amidships(place string, y float64) {
	if math.Abs(y) > 1 {
		c.doubt(place, with(y, "mm"), "0, in the shaft's plane, as a rule", `measure both again; of a boat built so say "one_sided": true`)
	}
}
