package lesson

// This file reads a lesson file, as strictly as the other formats.

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"aligner/hulls"
	"aligner/hulls/strictjson"
	"aligner/kinematics"
	"aligner/scene"
)

// MaxFileBytes is the largest lesson read.
const MaxFileBytes = 1 << 20

var lessonFormat = &strictjson.Format{Noun: "lesson", MaxBytes: MaxFileBytes,
	Units: map[string]string{"_mm": "millimetres", "_deg": "degrees", "_thou": "thousandths of an inch"}}

// languages a text may be in.
var languages = []string{"en", "de"}

// Most there may be of anything in a lesson.
const most = 50

// Check reads a lesson; find finds the hull it names. Faults of structure come first,
// then what only the hull can tell, then a question without one right answer.
func Check(data []byte, file string, find func(name string) (hulls.Hull, error)) (Lesson, hulls.Report) {
	root, f := strictjson.Parse(data, file, lessonFormat)
	if f != nil {
		return Lesson{}, hulls.Report{Refusals: []hulls.Fault{*f}}
	}
	d := &decoder{Decoder: strictjson.Decoder{File: file, Format: lessonFormat}}
	o := d.Object(root, "", "format", "title", "hull", "watch", "question")
	if n := o.Get("format"); n != nil && n.Text != Format {
		d.Refuse("format", n.Line, n.Show(), strictjson.Quoted(Format), "give a lesson file")
	}
	if len(d.Faults) > 0 {
		return Lesson{}, hulls.Report{Refusals: d.Faults}
	}
	l := Lesson{Title: d.text(o.Get("title"), "title"), HullName: o.Text("hull")}
	var err error
	if l.Hull, err = find(l.HullName); err != nil {
		d.Refuse("hull", o.Get("hull").Line, strictjson.Quoted(l.HullName), "a built-in hull", "correct the name")
		return l, hulls.Report{Refusals: d.Faults}
	}
	d.hull = &l.Hull
	items, path := o.List("watch", most)
	for i, item := range items {
		l.Watch = append(l.Watch, d.scene(item, fmt.Sprintf("%s[%d]", path, i)))
	}
	if len(items) == 0 {
		d.Refuse("watch", root.Line, "a list of 0", "one thing to watch at least", "add one")
	}
	l.Question = d.question(o.Get("question"), "question")
	if len(d.Faults) == 0 {
		d.answerable(&l, root)
	}
	return l, hulls.Report{Refusals: d.Faults}
}

type decoder struct {
	strictjson.Decoder
	hull *hulls.Hull
}

func (d *decoder) text(n *strictjson.Node, path string) Text {
	o := d.Object(n, path, "en", "de?")
	t := Text{}
	for _, l := range languages {
		if s := o.Text(l); s != "" {
			t[l] = s
		}
	}
	if n != nil && t["en"] == "" {
		d.Refuse(path+".en", n.Line, `""`, "a text", "say it in a few words")
	}
	return t
}

func (d *decoder) scene(n *strictjson.Node, path string) Scene {
	o := d.Object(n, path, "text", "state?", "view?", "times?")
	s := Scene{Text: d.text(o.Get("text"), path+".text"), State: d.state(o.Get("state"), path+".state"), View: o.Text("view"), Times: o.Number("times")}
	if s.Times < 0 || s.Times > 500 {
		d.Refuse(path+".times", n.Line, strictjson.Plain(s.Times), "1 to 500", "correct the number")
	}
	if v := o.Get("view"); v != nil && !slices.Contains(d.views(), s.View) {
		d.Refuse(path+".view", v.Line, v.Show(), "one of "+strings.Join(d.views(), ", "), "write one of these")
	}
	if s.Times == 0 {
		s.Times = 100
	}
	return s
}

// views are those of the picture that a boat has.
func (d *decoder) views() []string {
	return append([]string{scene.ViewWhole, scene.ViewFromPort, scene.ViewFromStarboard, scene.ViewFromAft, scene.ViewFromAhead, scene.ViewFromAbove,
		scene.ViewEngine, scene.ViewCoupling, scene.ViewStrut}, mountNames(d.hull)...)
}

// state reads what is done to the boat; left out, she is as drawn, seated or centred.
func (d *decoder) state(n *strictjson.Node, path string) kinematics.State {
	s := kinematics.State{Held: kinematics.Seated, LiftMM: make([]float64, len(d.hull.Mounts)), SlideMM: make([]float64, len(d.hull.Mounts))}
	if !d.hull.Coupling.HasPilot() {
		s.Held = kinematics.Centred
	}
	if n == nil {
		return s
	}
	o := d.Object(n, path, "held?", "nut_flats?", "slide_mm?", "afloat?", "lever_on?", "shaft_runs_out_thou?", "shaft_low_deg?", "flange_runs_out_thou?", "flange_low_deg?", "shaft_turn_deg?", "flange_turn_deg?", "thrust_n?", "torque_nm?")
	ways := make([]string, len(kinematics.HeldWays))
	for i, w := range kinematics.HeldWays {
		ways[i] = string(w)
	}
	s.Held = kinematics.Held(o.OneOf("held", string(s.Held), ways...))
	s.Afloat, s.LeverOn = o.Bool("afloat"), o.Bool("lever_on")
	s.ThrustN, s.TorqueNMM = o.Number("thrust_n"), 1000*o.Number("torque_nm")
	s.RunOut = kinematics.RunOut{ShaftMM: o.Number("shaft_runs_out_thou") / 2 * thouMM, ShaftLowDeg: o.Number("shaft_low_deg"), ShaftTurnDeg: o.Number("shaft_turn_deg"),
		FlangeMM: o.Number("flange_runs_out_thou") / 2 * thouMM, FlangeLowDeg: o.Number("flange_low_deg"), FlangeTurnDeg: o.Number("flange_turn_deg")}
	d.byMount(o, "nut_flats", func(i int, v float64) { s.LiftMM[i] = v * d.hull.Mounts[i].LiftPerStepMM() })
	d.byMount(o, "slide_mm", func(i int, v float64) { s.SlideMM[i] = v })
	if why := s.Invalid(d.hull); why != "" && len(d.Faults) == 0 {
		d.Refuse(path, n.Line, why, "a state of this boat", "correct it")
	}
	return s
}

func (d *decoder) byMount(o strictjson.Object, key string, take func(i int, v float64)) {
	n := o.Of(key, strictjson.IsObject)
	if n == nil {
		return
	}
	for k, name := range n.Keys {
		path := strictjson.Join(strictjson.Join(o.Path, key), name)
		i := slices.IndexFunc(d.hull.Mounts, func(m hulls.Mount) bool { return m.Name == name })
		switch item := n.Items[k]; {
		case i < 0:
			d.Refuse(path, item.Line, strictjson.Quoted(name), "a mount of "+d.hull.Name+": "+strings.Join(mountNames(d.hull), ", "), "write one of these")
		case item.Kind != strictjson.IsNumber:
			d.WrongKind(item, path, strictjson.IsNumber)
		default:
			take(i, item.Number)
		}
	}
}

func mountNames(h *hulls.Hull) []string {
	var names []string
	for _, m := range h.Mounts {
		names = append(names, m.Name)
	}
	return names
}

func (d *decoder) question(n *strictjson.Node, path string) (q Question) {
	o := d.Object(n, path, "text", "of", "tolerance?", "choices?", "why?")
	q.Text, q.Tolerance = d.text(o.Get("text"), path+".text"), o.Number("tolerance")
	if why := o.Get("why"); why != nil {
		q.Why = d.text(why, path+".why")
	}
	of := d.Object(o.Get("of"), path+".of", "quantity", "clock_deg?", "mount?", "state?", "before?")
	q.Of = Asked{Quantity: of.OneOf("quantity", "", slices.Sorted(maps.Keys(Quantities))...), ClockDeg: of.Number("clock_deg"), Mount: of.Text("mount"),
		State: d.state(of.Get("state"), path+".of.state"), Before: d.state(of.Get("before"), path+".of.before")}
	items, list := o.List("choices", most)
	for i, item := range items {
		at := fmt.Sprintf("%s[%d]", list, i)
		c := d.Object(item, at, "text", "from?", "below?")
		choice := Choice{Text: d.text(c.Get("text"), at+".text"), From: math.Inf(-1), Below: math.Inf(1)}
		if c.Has("from") {
			choice.From = c.Number("from")
		}
		if c.Has("below") {
			choice.Below = c.Number("below")
		}
		if choice.From >= choice.Below && q.Of.Quantity != OpensAt {
			d.Refuse(at, item.Line, fmt.Sprintf("from %s below %s", strictjson.Plain(choice.From), strictjson.Plain(choice.Below)), "from less than below", "exchange or correct them")
		}
		q.Choices = append(q.Choices, choice)
	}
	return q
}

// answerable sees that the question has one right answer.
func (d *decoder) answerable(l *Lesson, root *strictjson.Node) {
	q, line := &l.Question, root.Member("question").Line
	if q.Of.ofMount() && !slices.Contains(mountNames(&l.Hull), q.Of.Mount) {
		d.Refuse("question.of.mount", line, strictjson.Quoted(q.Of.Mount), "a mount of "+l.Hull.Name+": "+strings.Join(mountNames(&l.Hull), ", "), "write one of these")
		return
	}
	_, value, err := l.Right()
	if err != nil {
		d.Refuse("question.of", line, err.Error(), "a state that can be worked out", "correct it")
		return
	}
	right := 0
	for _, c := range q.Choices {
		if q.Of.in(&c, value) {
			right++
		}
	}
	switch {
	case len(q.Choices) == 0 && !(q.Tolerance > 0):
		d.Refuse("question.tolerance", line, strictjson.Plain(q.Tolerance), "more than 0", "say how near is near enough, or give choices")
	case len(q.Choices) > 0 && q.Tolerance != 0:
		d.Refuse("question.tolerance", line, strictjson.Plain(q.Tolerance), "none beside choices", "delete it, or the choices")
	case len(q.Choices) > 0 && right != 1:
		d.Refuse("question.choices", line, fmt.Sprintf("%d right ones: %s %s is worked out", right, strictjson.Plain(value), Quantities[q.Of.Quantity]), "one right choice", "correct from and below")
	}
}
