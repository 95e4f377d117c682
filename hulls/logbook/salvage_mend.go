package logbook

// This file fills gaps of a damaged logbook by what is told twice in it: a
// snapshot holds its hull too, and the list of visits says whose each one is.

import (
	"maps"
	"slices"

	"aligner/hulls"
	"aligner/hulls/visit"
)

func (r *remains) mend(s *Salvaged) {
	for _, id := range slices.Sorted(maps.Keys(r.versions)) {
		if _, err := hulls.Parse([]byte(r.versions[id].file), ""); err != nil {
			s.lose("a version of hull %d", r.versions[id].hull)
			delete(r.versions, id)
		}
	}
	for _, id := range slices.Sorted(maps.Keys(r.lines)) {
		r.mendVisit(id, s)
	}
	for _, id := range slices.Sorted(maps.Keys(r.visits)) {
		r.mendVersion(r.visits[id], r.snapshots[id])
	}
}

// mendVisit makes up the beginning of a visit of which edits are left: that of a
// new visit of its hull, as that was measured last before.
func (r *remains) mendVisit(id int64, s *Salvaged) {
	if _, ok := r.visits[id]; ok || len(r.edits[id]) == 0 {
		return
	}
	line := r.lines[id]
	v := foundVisit{uid: newUID(), hull: line.hull, added: firstMoment(r.moments[id])}
	name := ""
	for _, version := range slices.Sorted(maps.Keys(r.versions)) {
		if of := r.versions[version]; of.hull == line.hull && (v.version == 0 || of.added <= v.added) {
			h, _ := hulls.Parse([]byte(of.file), "") // those that cannot be read are gone by now
			v.version, name = version, h.Name
		}
	}
	if v.version == 0 {
		return
	}
	v.base = string(visit.Encode(visit.Visit{HullName: name, Date: line.date}))
	r.visits[id] = v
	s.lose("how the visit of %s on %s began; a new one is taken, with what was done since", line.date, name)
}

func firstMoment(moments map[int]string) string {
	numbers := slices.Sorted(maps.Keys(moments))
	return moments[numbers[0]]
}

// mendVersion takes the version a visit began with from its snapshot.
func (r *remains) mendVersion(v foundVisit, snap foundSnapshot) {
	if _, ok := r.versions[v.version]; ok {
		return
	}
	if d, err := visit.ParseDocument([]byte(snap.document), ""); err == nil {
		r.versions[v.version] = foundVersion{v.hull, v.added, string(hulls.Encode(d.Hull))}
	}
}
