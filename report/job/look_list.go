package job

// This file is the list of checks, by layout and by what the hull has.

import (
	"aligner/hulls"
)

// Run-out that is let pass, as total indicator reading: of a shaft about 3 thou
// (US Army TM 55-1905-221-14-3), of a coupling's face and pilot 2 thou each (a
// gearbox maker's manual).
const (
	shaftRunOutMM = 3 * 0.0254
	faceRunOutMM  = 2 * 0.0254
)

// softFootMM is the leaf that must not enter under a solid foot with its bolt
// slack (common practice, no source).
const softFootMM = 0.05

// lister collects checks.
type lister struct{ list []Check }

func (l *lister) add(id string, stops Stage, args Args, sources ...Source) {
	l.list = append(l.list, Check{ID: id, Stops: stops, Sources: sources,
		Title: text("look", id, nil), How: text("look_how", id, args), Looks: text("look_good", id, args), Means: text("look_bad", id, nil)})
}

func checks(h *hulls.Hull, afloat bool) []Check {
	l := &lister{}
	l.add(SafeToWork, Gauging, nil, LockOut, ShipRepair)
	l.line(h)
	l.coupling(h)
	l.engine(h)
	l.log(h, afloat)
	l.around(h)
	return l.list
}

// line is the strut, its bearing and the shaft in it.
func (l *lister) line(h *hulls.Hull) {
	names := make([]string, len(h.Bearings))
	for i, b := range h.Bearings {
		names[i] = b.Name
	}
	l.add(StrutFirm, Moving, nil, CommonPractice)
	l.add(BearingEven, Moving, Args{"Bearings": names, "New": GapMM(NewRoomMM(h.Shaft.DiameterMM))}, CommonPractice, FromMemory)
	l.add(ShaftFree, "", nil, CommonPractice)
	l.add(ShaftTrue, "", Args{"Shaft": GapMM(shaftRunOutMM), "Face": GapMM(faceRunOutMM)}, ArmyShaft, GearManual)
}

func (l *lister) coupling(h *hulls.Hull) {
	l.add(CouplingTight, Gauging, nil, CommonPractice)
	l.add(KeyAndBolts, Fastening, Args{"Bolts": h.Coupling.Bolts.Count}, CommonPractice)
	l.add(FacesClean, Gauging, Args{"Pilot": h.Coupling.HasPilot()}, CommonPractice)
}

// engine is what carries the engine. Faces do not show a soft foot, so that is
// looked for before they are gauged.
func (l *lister) engine(h *hulls.Hull) {
	l.add(BedSound, Moving, nil, CommonPractice)
	if hasKind(h, hulls.Solid) {
		l.add(FeetFlat, Gauging, Args{"Leaf": ThicknessMM(softFootMM)}, CommonPractice)
	}
	if hasKind(h, hulls.Rubber) {
		l.add(MountsSound, Moving, nil, CommonPractice)
		l.add(NutsFree, "", nil, CommonPractice)
	}
}

// log comes after the shaft in its bearings, for it does not bear the shaft.
func (l *lister) log(h *hulls.Hull, afloat bool) {
	l.add(ShaftCentral, "", nil, CommonPractice)
	stops := Stage("")
	if afloat {
		stops = Gauging // the shaft is about to be moved in it
	}
	l.add(BoxSound, stops, nil, CommonPractice)
}

// around is what may touch, and how the boat lies. In a V-drive the shaft runs
// under the engine.
func (l *lister) around(h *hulls.Hull) {
	l.add(EngineClear, Moving, nil, CommonPractice)
	if h.Layout == hulls.VDrive {
		l.add(ShaftUnderEngine, Gauging, nil, CommonPractice)
	}
	l.add(BoatAsUsed, "", Args{"Hours": StandingHours}, ArmyCraft, CommonPractice)
	if hasKind(h, hulls.Rubber) {
		l.add(MountsStood, "", Args{"Hours": StandingHours}, CommonPractice)
	}
}

func hasKind(h *hulls.Hull, kind hulls.MountKind) bool {
	for _, m := range h.Mounts {
		if m.Kind == kind {
			return true
		}
	}
	return false
}
