package history

// This file is a past for programs: one JSON object, units in its keys.

import "aligner/hulls/visit"

// JSON is the object. Numbers not known are null; directions are clockwise
// looking forward; mounts go by their names.
func (p *Past) JSON() any {
	visits := []any{}
	for i := range p.Entries {
		e := &p.Entries[i]
		visits = append(visits, map[string]any{
			"number": e.Number, "date": e.Date, "engine_hours": maybe(e.EngineHours), "afloat": e.Afloat,
			"found": e.Begin.json(), "left": e.HandOver.json(), "verdict": string(e.Verdict), "limit_mm": e.LimitMM, "trouble": e.Trouble,
			"nuts_before_flats": p.named(known0(e.NutsBefore)), "nuts_after_flats": p.named(known0(e.NutsAfter)),
			"stud_found_mm": p.named(e.StudFoundMM), "stud_left_mm": p.named(e.StudLeftMM), "since": e.Since.json(p),
		})
	}
	return map[string]any{"hull": p.Hull.Name, "visits": visits}
}

func (g Gap) json() any {
	if !g.Known {
		return nil
	}
	m := map[string]any{"cos_mm": g.MeanMM[0], "sin_mm": g.MeanMM[1], "covariance_mm2": g.CovMM2, "spread_mm": g.SpreadMM, "spread_sd_mm": g.SpreadSDMM,
		"opens_at_deg": g.OpensAtDeg, "opens_sd_deg": g.OpensSDDeg, "opens_known": g.OpensKnown}
	return m
}

func (c *Change) json(p *Past) any {
	if c == nil {
		return nil
	}
	causes := []any{}
	for _, l := range c.Likely {
		causes = append(causes, map[string]any{"cause": string(l.Cause), "mounts": p.names(l.Mounts), "side": sides[l.Side],
			"probability": l.Chance, "grade": string(l.Grade), "mm": l.MM, "sd_mm": l.SDMM})
	}
	told := c.Told()
	return map[string]any{"visit": p.Entries[c.From].Number, "days": maybe(c.Days), "engine_hours": maybe(c.Hours), "change": c.Gap.json(), "moved": c.Moved,
		"why_not": string(c.WhyNot), "stud_mm": p.named(c.StudMM), "causes": causes, "likely": string(told.Cause), "likely_mounts": p.names(told.Mounts),
		"mounts_told_apart": told.Cause != "" && !c.Open(told), "caveats": listed(c.Caveats), "advice": listed(c.Advice)}
}

var sides = map[int]string{1: "port", -1: "starboard"}

func listed[T ~string](words []T) []string {
	list := []string{}
	for _, w := range words {
		list = append(list, string(w))
	}
	return list
}

func (p *Past) names(at []int) []string {
	list := []string{}
	for _, i := range at {
		list = append(list, p.Hull.Mounts[i].Name)
	}
	return list
}

func (p *Past) named(v []visit.Maybe) map[string]any {
	m := map[string]any{}
	for i, v := range v {
		m[p.Hull.Mounts[i].Name] = maybe(v)
	}
	return m
}

func known0(v []float64) []visit.Maybe {
	list := make([]visit.Maybe, len(v))
	for i, v := range v {
		list[i] = visit.Known(v)
	}
	return list
}

func maybe(m visit.Maybe) *float64 {
	if !m.Known {
		return nil
	}
	return &m.Value
}
