package words

// This file lists the sentences of jobs other than the usual: soft couplings, wide
// gaps, a gap under power, two jobs that hang together.

const (
	EditSetUnderPower         ID = "edit_set_under_power"
	EditSetLinked             ID = "edit_set_linked"
	AsideSoftIn               ID = "aside_soft_in"
	EstimatePower             ID = "estimate_power"
	RunOutIndexed             ID = "run_out_indexed"
	JobProvisionalLinkedMoved ID = "job_provisional_linked_moved"
	JobProvisionalLinkedFirst ID = "job_provisional_linked_first"
	BeginPower                ID = "begin_power"
	BeginThrust               ID = "begin_thrust"
	BeginTorque               ID = "begin_torque"
	BeginShift                ID = "begin_shift"
	BeginShiftAt              ID = "begin_shift_at"
	BeginPowerSaid            ID = "begin_power_said"
	BeginLinked               ID = "begin_linked"
	BeginLinkedJob            ID = "begin_linked_job"
	BeginLinkedOther          ID = "begin_linked_other"
	BeginLinkedMoved          ID = "begin_linked_moved"
	LinkedStands              ID = "linked_stands"
	LinkedWasMoved            ID = "linked_was_moved"
	LinkedNone                ID = "linked_none"
	LinkedBoxToShaft          ID = "linked_box_to_shaft"
	LinkedEngineToBox         ID = "linked_engine_to_box"
	HoldBetween               ID = "hold_between"
	BetweenNone               ID = "between_none"
	BetweenDummy              ID = "between_dummy"
	BetweenSoftCoupling       ID = "between_soft_coupling"
	HoldUneven                ID = "hold_uneven"
	HoldThinAt                ID = "hold_thin_at"
	HoldBetweenSoft           ID = "hold_between_soft"
	HoldWide                  ID = "hold_wide"
)
