package job

// This file says which mount pulled.

import (
	"math"

	"aligner/hulls"
)

// Text says it in sentences.
func (p *Pulled) Text(h *hulls.Hull) []Text {
	args := Args{"Change": GapMM(2 * math.Hypot(p.ChangeMM[0], p.ChangeMM[1]))}
	lines := []Text{text("pulled", string(p.Status), args)}
	for _, pull := range p.Alike {
		lines = append(lines, pull.text(h))
	}
	if p.Status == CannotTell || p.Status == NotOne {
		lines = append(lines, text("pulled", "one at a time", nil))
	}
	return lines
}

// text says one explanation with its mend.
func (p *Pull) text(h *hulls.Hull) Text {
	args := Args{"Mounts": names(h, p.Mounts), "Left": GapMM(p.ResidualMM), "Number": Number(math.Abs(p.Ease))}
	if p.Slide {
		args["Length"] = LengthMM(math.Abs(p.Steps))
		if p.Steps > 0 {
			return text("pull", "slid to port", args)
		}
		return text("pull", "slid to starboard", args)
	}
	unit := "flats"
	if h.Mounts[p.Mounts[0]].Kind == hulls.Solid {
		unit = "shims"
	}
	count := 2
	if math.Abs(p.Ease) == 1 {
		count = 1
	}
	args["Steps"] = text("pull", unit, Args{"Count": count, "Number": Number(math.Abs(p.Ease))})
	switch {
	case p.Ease > 0:
		return text("pull", "ease up", args)
	case p.Ease < 0:
		return text("pull", "ease down", args)
	}
	return text("pull", "too little", args)
}
