package words

// This file lists the sentences of the shaft's seal and of a heavy place in its
// turn.

const (
	EditSetSeal              ID = "edit_set_seal"
	SealTitle                ID = "seal_title"
	SealPacking              ID = "seal_packing"
	SealFace                 ID = "seal_face"
	SealLip                  ID = "seal_lip"
	SealPressed              ID = "seal_pressed"
	SealFreed                ID = "seal_freed"
	JobSealUnsaid            ID = "job_seal_unsaid"
	JobSealPacking           ID = "job_seal_packing"
	JobSealFace              ID = "job_seal_face"
	JobSealLip               ID = "job_seal_lip"
	JobFastenSetSealBack     ID = "job_fasten_set_seal_back"
	JobProvisionalSealPushes ID = "job_provisional_seal_pushes"
	JobProvisionalSealLeft   ID = "job_provisional_seal_left"
	LookTightAt              ID = "look_tight_at"
	LookTightHint            ID = "look_tight_hint"
	JobTightUnbolted         ID = "job_tight_unbolted"
	JobTightBolted           ID = "job_tight_bolted"
	JobTightSame             ID = "job_tight_same"
	JobTightOther            ID = "job_tight_other"
	JobTightNew              ID = "job_tight_new"
	JobTightGone             ID = "job_tight_gone"
)
