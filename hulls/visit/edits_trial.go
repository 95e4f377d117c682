package visit

// This file holds the edits of what is being tried.

import (
	"fmt"
	"math"
	"slices"
)

func init() {
	register(
		func() Edit { return &TurnNut{} },
		func() Edit { return &TurnPair{} },
		func() Edit { return &SlideMount{} },
		func() Edit { return &HoldShaft{} },
		func() Edit { return &Float{} },
		func() Edit { return &Lever{} },
		func() Edit { return &Power{} },
		func() Edit { return &BackToDrawn{} },
		func() Edit { return &OpenHull{} },
		func() Edit { return &OpenVisit{} },
	)
}

// mostMM is further than any adjuster travels.
const mostMM = 100

// TurnNut puts a mount's adjuster to so many steps from drawn.
type TurnNut struct {
	Mount string  `json:"mount"`
	Steps float64 `json:"steps"`
	// By is how many of them this edit added, for words alone.
	By float64 `json:"by"`
}

// Name is "turn nut".
func (*TurnNut) Name() string { return "turn nut" }

// Words say "fore port up 2 flats".
func (e *TurnNut) Words() (string, map[string]any) {
	return "edit_turn_nut", map[string]any{"Mount": e.Mount, "By": e.By}
}

// Apply turns it.
func (e *TurnNut) Apply(d Document) (Document, error) { return d.turned(e.Mount, e.Steps) }

// turned has one adjuster at so many steps from drawn.
func (d Document) turned(mount string, steps float64) (Document, error) {
	i := d.mount(mount)
	if i < 0 {
		return d, noMount(&d, mount)
	}
	lift := steps * d.Hull.Mounts[i].LiftPerStepMM()
	if !(math.Abs(lift) < mostMM) {
		return d, fmt.Errorf("%s: %g steps are %.4g mm; must be within %d mm", mount, steps, lift, mostMM)
	}
	turned := d.clone()
	turned.Trial.Steps[i] = steps
	return turned, nil
}

func noMount(d *Document, name string) error {
	var known []string
	for _, m := range d.Hull.Mounts {
		known = append(known, m.Name)
	}
	return fmt.Errorf("no mount %q on %s: its mounts are %q", name, d.Hull.Name, known)
}

// TurnPair puts the adjusters of two mounts, as a rule a fore or aft pair, to
// so many steps each.
type TurnPair struct {
	First       string  `json:"first"`
	FirstSteps  float64 `json:"first_steps"`
	Second      string  `json:"second"`
	SecondSteps float64 `json:"second_steps"`
	// By is how many this edit added to each, for words alone.
	By float64 `json:"by"`
}

// Name is "turn pair".
func (*TurnPair) Name() string { return "turn pair" }

// Words say "fore port and fore starboard turned".
func (e *TurnPair) Words() (string, map[string]any) {
	return "edit_turn_pair", map[string]any{"First": e.First, "Second": e.Second, "By": e.By}
}

// Apply turns both or neither.
func (e *TurnPair) Apply(d Document) (Document, error) {
	if e.First == e.Second {
		return d, fmt.Errorf("a pair of %q with itself: must be two mounts", e.First)
	}
	one, err := d.turned(e.First, e.FirstSteps)
	if err != nil {
		return d, err
	}
	both, err := one.turned(e.Second, e.SecondSteps)
	if err != nil {
		return d, err
	}
	return both, nil
}

// SlideMount puts a mount's slide to so many mm from drawn, + to port.
type SlideMount struct {
	Mount string  `json:"mount"`
	MM    float64 `json:"slide_mm"`
	By    float64 `json:"by"`
}

// Name is "slide mount".
func (*SlideMount) Name() string { return "slide mount" }

// Words say "fore port 1 mm to port".
func (e *SlideMount) Words() (string, map[string]any) {
	return "edit_slide_mount", map[string]any{"Mount": e.Mount, "By": e.By}
}

// Apply slides it.
func (e *SlideMount) Apply(d Document) (Document, error) {
	i := d.mount(e.Mount)
	if i < 0 {
		return d, noMount(&d, e.Mount)
	}
	if !(math.Abs(e.MM) < mostMM) {
		return d, fmt.Errorf("%s: slid %g mm; must be within %d mm", e.Mount, e.MM, mostMM)
	}
	d = d.clone()
	d.Trial.SlideMM[i] = e.MM
	return d, nil
}

// HoldShaft says how the shaft's front end is held.
type HoldShaft struct {
	Held string `json:"held"`
}

// Name is "hold shaft".
func (*HoldShaft) Name() string { return "hold shaft" }

// Words say "shaft seated".
func (e *HoldShaft) Words() (string, map[string]any) {
	return "edit_hold_shaft", map[string]any{"Held": e.Held}
}

// Apply holds it.
func (e *HoldShaft) Apply(d Document) (Document, error) {
	if !slices.Contains(HeldWays, e.Held) {
		return d, fmt.Errorf("shaft held %q: must be one of %q", e.Held, HeldWays)
	}
	if e.Held == "seated" && !d.Hull.Coupling.HasPilot() {
		return d, fmt.Errorf("%s has no pilot to seat the shaft on: centre it instead", d.Hull.Name)
	}
	d.Trial.Held = e.Held
	return d, nil
}

// Float puts the boat afloat or takes it out.
type Float struct {
	Afloat bool `json:"afloat"`
}

// Name is "float".
func (*Float) Name() string { return "float" }

// Words say "afloat" or "out of the water".
func (e *Float) Words() (string, map[string]any) {
	if e.Afloat {
		return "edit_afloat", nil
	}
	return "edit_dry", nil
}

// Apply floats it.
func (e *Float) Apply(d Document) (Document, error) {
	d.Trial.Afloat = e.Afloat
	return d, nil
}

// Lever puts the lever on the mounts being slid, or lets it off.
type Lever struct {
	On bool `json:"on"`
}

// Name is "lever".
func (*Lever) Name() string { return "lever" }

// Words say "lever on" or "lever off".
func (e *Lever) Words() (string, map[string]any) {
	if e.On {
		return "edit_lever_on", nil
	}
	return "edit_lever_off", nil
}

// Apply levers.
func (e *Lever) Apply(d Document) (Document, error) {
	d.Trial.LeverOn = e.On
	return d, nil
}

// Power puts thrust and torque on the face.
type Power struct {
	ThrustN  float64 `json:"thrust_n"`
	TorqueNM float64 `json:"torque_nm"`
}

// Name is "power".
func (*Power) Name() string { return "power" }

// Words say "thrust and torque".
func (e *Power) Words() (string, map[string]any) { return "edit_power", nil }

// mostPower bounds both: ten times any boat here.
const mostPower = 1e5

// Apply loads the face.
func (e *Power) Apply(d Document) (Document, error) {
	if !(math.Abs(e.ThrustN) <= mostPower) || !(math.Abs(e.TorqueNM) <= mostPower) {
		return d, fmt.Errorf("thrust %g N, torque %g N m: each must be within %g", e.ThrustN, e.TorqueNM, mostPower)
	}
	d.Trial.ThrustN, d.Trial.TorqueNM = e.ThrustN, e.TorqueNM
	return d, nil
}

// BackToDrawn takes back every nut and slide.
type BackToDrawn struct{}

// Name is "back to drawn".
func (*BackToDrawn) Name() string { return "back to drawn" }

// Words say "back to drawn".
func (*BackToDrawn) Words() (string, map[string]any) { return "edit_back_to_drawn", nil }

// Apply takes them back.
func (*BackToDrawn) Apply(d Document) (Document, error) {
	clean := drawn(&d.Hull)
	d.Trial.Steps, d.Trial.SlideMM, d.Trial.LeverOn = clean.Steps, clean.SlideMM, false
	return d, nil
}
