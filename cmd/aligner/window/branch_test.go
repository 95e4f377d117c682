package window

// This file types in what makes a job other than the usual.

import (
	"math"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"aligner/hulls/visit"
)

// fill types into a field and presses Enter.
func fill(f *field, text string) {
	f.SetText("")
	test.Type(f, text)
	f.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
}

func TestUnderPowerAndLinkedAreTyped(t *testing.T) {
	w := opened(t, "Avocet")
	w.enter(stageBegin)
	b := w.beginning.branch
	w.win.Canvas().Focus(b.thrust)
	fill(b.thrust, "900 N")
	fill(b.torque, "180,5 N m")
	fill(b.shift, "2")
	fill(b.at, "6")
	v := w.history.Now().Visit
	if p := v.UnderPower; p.ThrustN != 900 || p.TorqueNM != 180.5 || p.Shift.Thou() != 2 || p.ShiftOpensAtDeg != 180 {
		t.Errorf("under power %+v", p)
	}
	if b.thrust.Text != "202.3" || b.torque.Text != "133.1" || b.units[0].Text != "Thrust, lb" || b.units[1].Text != "Torque, lb-ft" {
		t.Errorf("shown as %q and %q, %q and %q", b.thrust.Text, b.torque.Text, b.units[0].Text, b.units[1].Text)
	}
	fill(b.thrust, "200")
	if n := w.history.Now().Visit.UnderPower.ThrustN; math.Abs(n-889.644) > 0.001 { // 200 lbf, NIST SP 811
		t.Errorf("200 lb come to %v N", n)
	}
	if b.linked.Visible() {
		t.Error("another job is asked for though this is one of its own")
	}
	b.job.SetSelectedIndex(1)
	fill(b.other, "engine to box")
	b.moved.SetSelectedIndex(1)
	if l := w.history.Now().Visit.Linked; l.Job != visit.BoxToShaft || l.Other != "engine to box" || !l.OtherMoved {
		t.Errorf("linked %+v", l)
	}
	b.job.SetSelectedIndex(0)
	if l := w.history.Now().Visit.Linked; l != (visit.Linked{}) {
		t.Errorf("of its own again: %+v", l)
	}
}

func TestADummyIsTyped(t *testing.T) {
	w := opened(t, "Kittiwake")
	w.enter(stageGauge)
	call(w, eight...)
	f := w.gauging.hold.between
	f.what.SetSelectedIndex(1)
	fill(f.uneven, "1.5")
	fill(f.thin, "3")
	d := w.history.Now()
	g := d.Visit.Events[0].Gauging
	if g.Between.What != visit.Dummy || g.Between.Uneven.Thou() != 1.5 || g.Between.ThinAtDeg != 90 || len(g.Readings) != 8 {
		t.Errorf("between %+v, %d readings", g.Between, len(g.Readings))
	}
	if f.told.Visible() {
		t.Errorf("told %q of a boat without a soft coupling", f.told.Text)
	}
}
