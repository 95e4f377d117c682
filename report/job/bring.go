package job

// This file lists what to bring, by the stage it is first wanted in, so that
// nobody crawls out of the bilge for a spanner.

import (
	"aligner/hulls"
	"aligner/hulls/visit"
)

// Item is one thing to bring.
type Item struct {
	Stage   Stage
	Text    Text
	Sources []Source
}

// bag collects items.
type bag struct{ items []Item }

func (b *bag) add(stage Stage, id string, args Args, sources ...Source) {
	if len(sources) == 0 {
		sources = []Source{CommonPractice}
	}
	b.items = append(b.items, Item{stage, text("bring", id, args), sources})
}

// Bring lists them for a hull and a visit, grouped by stage in the order of the
// job. makerNM is the maker's torque of the coupling bolts, 0 for none.
func Bring(h *hulls.Hull, v *visit.Visit, makerNM float64) []Item {
	b := &bag{}
	b.looking(h, v)
	b.gauging(h, v)
	b.moving(h, v)
	b.fastening(h, makerNM)
	b.add(HandingOver, "paint marker", nil)
	b.add(HandingOver, "camera", nil)
	return b.items
}

func (b *bag) looking(h *hulls.Hull, v *visit.Visit) {
	b.add(LookingOver, "locks and signs", nil, LockOut, ShipRepair)
	b.add(LookingOver, "lamp", nil)
	if blind := reached(h, hulls.Blind); len(blind) > 0 {
		b.add(LookingOver, "mirror for mounts", Args{"Mounts": blind})
	} else if h.Layout == hulls.VDrive {
		b.add(LookingOver, "mirror for faces", nil)
	}
	b.add(LookingOver, "strips", Args{"New": GapMM(NewRoomMM(h.Shaft.DiameterMM))}, CommonPractice, FromMemory)
	b.add(LookingOver, "dial", nil)
	b.add(LookingOver, "scraper and file", nil)
	if v.State.Afloat() {
		b.add(LookingOver, "packing and plugs", nil)
	}
}

func (b *bag) gauging(h *hulls.Hull, v *visit.Visit) {
	leaves := v.Leaves.SinglesMM()
	b.add(Gauging, "leaves", Args{"From": ThicknessMM(leaves[0]), "To": ThicknessMM(leaves[len(leaves)-1])})
	b.add(Gauging, "straightedge", nil)
	if h.Coupling.HasPilot() {
		b.add(Gauging, "wedges", nil)
	} else {
		b.add(Gauging, "block or scale", nil)
	}
	b.spanners(h, Gauging, hulls.BoltHead, hulls.BoltNut)
}

func (b *bag) moving(h *hulls.Hull, v *visit.Visit) {
	b.spanners(h, Moving, hulls.MountNut, hulls.JamNut)
	if hasKind(h, hulls.Solid) {
		b.add(Moving, "foot spanners", nil)
		b.add(Moving, "shims", Args{"Step": ThicknessMM(shimStepMM(h))}, WorkedOut)
	}
	b.add(Moving, "lever or screws", nil)
	b.add(Moving, "support", nil)
	var stuck []string
	for _, m := range v.Mounts {
		if m.Nut == visit.Stuck || m.Slide == visit.Stuck {
			stuck = append(stuck, m.Mount)
		}
	}
	if len(stuck) > 0 {
		b.add(Moving, "freeing oil", Args{"Mounts": stuck})
	}
}

func (b *bag) fastening(h *hulls.Hull, makerNM float64) {
	t, err := hulls.Tighten(h.Coupling.Bolts, true, makerNM)
	dry, _ := hulls.Tighten(h.Coupling.Bolts, false, makerNM)
	if err != nil {
		b.add(Fastening, "torque wrench", nil)
	} else {
		// From the first round of the oiled figure to the dry one.
		b.add(Fastening, "torque wrench to", Args{"From": TorqueNM(t.NM * rounds[0]), "To": TorqueNM(dry.NM)}, BoltStandards)
	}
	b.add(Fastening, "new nuts", Args{"Bolts": h.Coupling.Bolts.Count})
	b.add(Fastening, "thread oil", nil)
}

// spanners adds those that turn one of some uses and were not brought before.
func (b *bag) spanners(h *hulls.Hull, stage Stage, uses ...hulls.SpannerUse) {
	needed, untold := hulls.Spanners(*h)
	for _, n := range needed {
		var own []Text
		for _, u := range n.Uses {
			for _, wanted := range uses {
				if u == wanted {
					own = append(own, text("turns", string(u), nil))
				}
			}
		}
		if len(own) == 0 {
			continue
		}
		id := "spanner"
		if n.Older {
			id = "older spanner"
		}
		// Wanted again in a later stage, it is named again: the list is by stage.
		b.add(stage, id, Args{"Count": n.Count, "Size": n.Spanner, "Uses": own}, HexStandards)
	}
	for _, thread := range untold {
		if thread != "" && turnsOne(h, thread, uses) {
			b.add(stage, "unknown spanner", Args{"Thread": thread})
		}
	}
}

// turnsOne reports whether a thread belongs to one of some uses.
func turnsOne(h *hulls.Hull, thread string, uses []hulls.SpannerUse) bool {
	for _, u := range uses {
		if (u == hulls.BoltHead || u == hulls.BoltNut) == (h.Coupling.Bolts.Thread == thread) {
			return true
		}
	}
	return false
}

// reached are the mounts that are got at in one way.
func reached(h *hulls.Hull, how hulls.Reach) []string {
	var names []string
	for _, m := range h.Mounts {
		if m.Reach == how {
			names = append(names, m.Name)
		}
	}
	return names
}

func shimStepMM(h *hulls.Hull) float64 {
	for _, m := range h.Mounts {
		if m.Kind == hulls.Solid {
			return m.ShimStepMM
		}
	}
	return 0
}
