package fields_test

// Laws of adding and taking away, of copies and comparisons, and of the past.

import (
	"bytes"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/visit/builtin"
)

func TestMountsThereAndBack(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		h.Tolerance = map[string]float64{"/mounts/0/at_mm/0": 7, "/mounts/3/at_mm/1": 8, "/engine/mass_kg": 9}
		other := 10 - len(h.Mounts)
		changed, err := fields.SetMounts(h, other)
		if err != nil {
			t.Fatal(err)
		}
		if r := hulls.Validate(changed); r.Err() != nil || len(changed.Mounts) != other || len(hulls.MirrorDoubts(changed)) > 0 {
			t.Errorf("%s on %d mounts: %v, %v", name, other, r.Err(), hulls.MirrorDoubts(changed))
		}
		if len(h.Mounts) != 4 {
			continue
		}
		last := changed.Mounts[5] // what was the fourth, with its tolerance
		if last.Name != h.Mounts[3].Name || changed.Tolerance["/mounts/5/at_mm/1"] != 8 || changed.Tolerance["/mounts/0/at_mm/0"] != 7 {
			t.Errorf("%s: the fourth mount became %s, the table %v", name, last.Name, changed.Tolerance)
		}
		back, err := fields.SetMounts(changed, 4)
		if err != nil || !bytes.Equal(hulls.Encode(back), hulls.Encode(h)) {
			t.Errorf("%s: four, six, four mounts is another boat (%v)", name, err)
		}
	}
}

func TestBearingsThereAndBack(t *testing.T) {
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		h.Tolerance = map[string]float64{"/bearings/0/at_mm": 3}
		more, err := fields.AddBearing(h)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if r := hulls.Validate(more); r.Err() != nil {
			t.Errorf("%s with one more bearing: %v", name, r.Err())
		}
		if f, _ := fields.Find(&more, "/bearings/1/at_mm"); len(h.Bearings) == 1 && !f.Assumed {
			t.Errorf("%s: a bearing put in by the program counts as measured", name)
		}
		back, err := fields.RemoveBearing(more, len(h.Bearings))
		if err != nil || !bytes.Equal(hulls.Encode(back), hulls.Encode(h)) {
			t.Errorf("%s: a bearing more, and less, is another boat (%v)", name, err)
		}
	}
	h := builtin.Hull(t, "Kittiwake")
	if _, err := fields.RemoveBearing(h, 0); err == nil {
		t.Error("the only bearing was taken away")
	}
	for _, name := range assets.HullNames() {
		h := builtin.Hull(t, name)
		without := fields.SetBox(h, false)
		with := fields.SetBox(without, true)
		if r := hulls.Validate(with); r.Err() != nil || without.StuffingBox != nil || with.StuffingBox == nil {
			t.Errorf("%s: %v", name, r.Err())
		}
	}
}

func TestNewFromNearest(t *testing.T) {
	var all []hulls.Hull
	for _, name := range assets.HullNames() {
		if name != "Bench" {
			all = append(all, builtin.Hull(t, name))
		}
	}
	for _, c := range []struct {
		w    fields.Wanted
		want string
	}{
		{fields.Wanted{Layout: hulls.InLine, Mounts: 4, Bearings: 1}, "Kittiwake"},
		{fields.Wanted{Layout: hulls.DownAngle, Mounts: 4, Bearings: 2}, "Eider"},
		{fields.Wanted{Layout: hulls.VDrive, Mounts: 4, Bearings: 1}, "Avocet"},
		{fields.Wanted{Layout: hulls.InLine, Mounts: 6, Bearings: 2, Solid: true}, "Cormorant"},
		{fields.Wanted{Layout: hulls.VDrive, Mounts: 6, Bearings: 3}, "Avocet"},
		{fields.Wanted{Layout: hulls.DownAngle, Mounts: 6, Bearings: 1, Solid: true}, "Eider"},
	} {
		base := all[fields.Nearest(c.w, all)]
		if base.Name != c.want {
			t.Errorf("%+v: %s, want %s", c.w, base.Name, c.want)
		}
		h, err := fields.NewFrom(base, "Dunlin", c.w)
		if err != nil {
			t.Errorf("%+v: %v", c.w, err)
			continue
		}
		if r := hulls.Validate(h); r.Err() != nil || len(h.Mounts) != c.w.Mounts || len(h.Bearings) != c.w.Bearings || h.Layout != c.w.Layout || h.Name != "Dunlin" {
			t.Errorf("%+v: %v, %d mounts, %d bearings", c.w, r.Err(), len(h.Mounts), len(h.Bearings))
		}
		for _, f := range fields.List(&h) {
			if (f.Kind == fields.Length || f.Kind == fields.Mass) && !f.Assumed && f.Get(&h).Number != 0 {
				t.Errorf("%+v: %s counts as measured on a boat nobody has seen", c.w, f.Pointer)
			}
		}
	}
	if fields.Nearest(fields.Wanted{}, nil) != -1 {
		t.Error("the nearest of none")
	}
}

func TestCompare(t *testing.T) {
	h := builtin.Hull(t, "Eider")
	if d := fields.Compare(&h, &h); len(d) > 0 {
		t.Errorf("a boat differs from herself: %+v", d)
	}
	other := h.Clone()
	other.Mounts[0], other.Mounts[1] = other.Mounts[1], other.Mounts[0] // order says nothing
	other.Engine.MassKg += 10
	other.Bearings = other.Bearings[:1]
	d := fields.Compare(&h, &other)
	if len(d) != 8 || d[0].Field.Pointer != "/engine/mass_kg" || d[0].B.Number != h.Engine.MassKg+10 {
		t.Errorf("%d differences: %+v", len(d), d)
	}
	for _, x := range d[1:] {
		if !x.OnA || x.OnB || x.Field.Group.Name != h.Bearings[1].Name {
			t.Errorf("%+v", x)
		}
	}
	if back := fields.Compare(&other, &h); len(back) != len(d) || !back[len(back)-1].OnB {
		t.Errorf("the other way round %d differences", len(back))
	}
}

func TestPast(t *testing.T) {
	h := builtin.Hull(t, "Eider")
	p, two := fields.NewPast(h), 2.0
	var files [][]byte
	keep := func() {
		now := p.Now()
		files = append(files, hulls.Encode(now))
	}
	keep()
	for _, e := range []fields.Edit{
		fields.Enter{Pointer: "/name", Value: fields.Value{Text: "Dunlin"}},
		fields.Mounts{Number: 6},
		fields.LeaveToUsual{Pointer: "/mounts/2/stiffness_n_per_mm/along"},
		fields.Enter{Pointer: "/mounts/0/at_mm/0", Value: fields.Value{Number: 733}, Plus: &two},
		fields.MoreBearings{},
		fields.LessBearings{Index: 0},
		fields.Box{},
		fields.Lopsided{On: true},
		fields.Answered{Measured: hulls.Measured{NutFlats: map[string]float64{"fore port": 3}, Held: "seated", ErrorMM: 0.01}},
		fields.Enter{Pointer: "/mounts/0/name", Value: fields.Value{Text: "bow port"}},
		fields.Forget{},
		fields.Replace{Hull: h},
	} {
		if err := p.Do(e); err != nil {
			t.Fatalf("%T: %v", e, err)
		}
		keep()
		if bytes.Equal(files[len(files)-1], files[len(files)-2]) {
			t.Errorf("%+v did nothing", e)
		}
	}
	if err := p.Do(fields.Forget{}); err == nil {
		t.Error("what is not there was forgotten")
	}
	for i := len(files) - 2; i >= 0; i-- {
		p.Undo()
		if now := p.Now(); !bytes.Equal(hulls.Encode(now), files[i]) {
			t.Fatalf("undone to %d: another file", i)
		}
	}
	if p.Undo() != nil {
		t.Error("undone before the beginning")
	}
	for i := 1; i < len(files); i++ {
		p.Redo()
		if now := p.Now(); !bytes.Equal(hulls.Encode(now), files[i]) {
			t.Fatalf("done again to %d: another file", i)
		}
	}
	if p.Redo() != nil {
		t.Error("done again beyond the end")
	}
}
