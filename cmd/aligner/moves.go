package main

// This file reads nuts turned and slides made, as typed.

import (
	"math"
	"strconv"
	"strings"

	"aligner/assets/words"
	"aligner/hulls"
	"aligner/kinematics"
	"aligner/report/say"
)

// moveFlags are the moves a verb may be asked to try. Kong must not split them
// at commas: mount names may hold any.
type moveFlags struct {
	Nut   []string `sep:"none" placeholder:"MOUNT=FLATS" help:"${help_predict_nut}"`
	Slide []string `sep:"none" placeholder:"MOUNT=MM" help:"${help_predict_slide}"`
}

// mostMM is the furthest travel worked out.
const mostMM = 100

// steps are the nut steps (flats or shims) and slides in mm, by mount.
// Repeated ones add up.
func (f moveFlags) steps(h *hulls.Hull) (nuts, slidesMM []float64, err error) {
	nuts, slidesMM = make([]float64, len(h.Mounts)), make([]float64, len(h.Mounts))
	for _, text := range f.Nut {
		i, v, err := readMove(h, "--nut 'fore port=+2'", text, func(s string) (float64, error) { return strconv.ParseFloat(s, 64) })
		if err != nil {
			return nil, nil, err
		}
		nuts[i] += v
	}
	for _, text := range f.Slide {
		i, v, err := readMove(h, "--slide 'fore port=+1.5mm'", text, lengthMM)
		if err != nil {
			return nil, nil, err
		}
		slidesMM[i] += v
	}
	for i, m := range h.Mounts {
		if math.Abs(nuts[i]*m.LiftPerStepMM()) >= mostMM || math.Abs(slidesMM[i]) >= mostMM {
			return nil, nil, moveFault(m.Name, number(nuts[i])+", "+mm(slidesMM[i]), speaker.Say(words.MoveLimit, nil), speaker.Say(words.MoveMend, words.Args{"Flag": "--nut 'fore port=+2'"}))
		}
	}
	return nuts, slidesMM, nil
}

// readMove splits at the last "=", so that a name may hold one.
func readMove(h *hulls.Hull, form, text string, number func(string) (float64, error)) (mount int, v float64, err error) {
	mend := speaker.Say(words.MoveMend, words.Args{"Flag": form})
	cut := strings.LastIndex(text, "=")
	if cut < 0 {
		return 0, 0, moveFault("", strconv.Quote(text), form, mend)
	}
	name, amount := strings.TrimSpace(text[:cut]), strings.TrimSpace(text[cut+1:])
	mount = -1
	var known []string
	for i, m := range h.Mounts {
		known = append(known, m.Name)
		if m.Name == name {
			mount = i
		}
	}
	if mount < 0 {
		return 0, 0, moveFault("", speaker.Say(words.MoveNoMount, words.Args{"Mount": name, "Hull": h.Name}),
			speaker.Say(words.MoveMounts, words.Args{"Known": strings.Join(known, ", ")}), speaker.Say(words.MovePickMount, nil))
	}
	v, err = number(amount)
	if err != nil || math.IsNaN(v) || math.IsInf(v, 0) {
		return 0, 0, moveFault(name, speaker.Say(words.MoveNumber, words.Args{"Text": amount}), form, mend)
	}
	return mount, v, nil
}

// lengthMM reads "1.5mm", "60 thou" or "0.06in"; bare numbers are mm.
func lengthMM(s string) (float64, error) {
	for _, unit := range []struct {
		name string
		mm   float64
	}{{"mm", 1}, {"thou", say.MMPerThou}, {"in", 25.4}} {
		if number, ok := strings.CutSuffix(s, unit.name); ok {
			v, err := strconv.ParseFloat(strings.TrimSpace(number), 64)
			return v * unit.mm, err
		}
	}
	return strconv.ParseFloat(s, 64)
}

func moveFault(place, value, limit, mend string) error {
	return &hulls.Fault{Place: place, Value: value, Limit: limit, Mend: mend}
}

// apply puts the moves into a state and warns of what leaves a mount's range.
func apply(e *env, h *hulls.Hull, nuts, slidesMM []float64, s *kinematics.State) {
	s.LiftMM, s.SlideMM = make([]float64, len(nuts)), slidesMM
	for i, m := range h.Mounts {
		s.LiftMM[i] = nuts[i] * m.LiftPerStepMM()
		one, none := make([]float64, i+1), make([]float64, i+1)
		if one[i] = nuts[i]; outside(s.LiftMM[i], m.NutRangeMM) {
			e.warnRange(say.Move(speaker, say.Units{}, h, one, none), m.NutRangeMM)
		}
		if one[i] = slidesMM[i]; outside(slidesMM[i], m.SlideRangeMM) {
			e.warnRange(say.Move(speaker, say.Units{}, h, none, one), m.SlideRangeMM)
		}
	}
}

// outside reports whether v is beyond a range by more than rounding.
func outside(v float64, r [2]float64) bool { return v < r[0]-1e-9 || v > r[1]+1e-9 }

func (e *env) warnRange(move string, r [2]float64) {
	e.warn(speaker.Say(words.OutOfRange, words.Args{"Move": move, "Low": number(r[0]), "High": number(r[1])}))
}
