package words

// This file lists the sentences of going from a symptom to its causes. Symptoms,
// causes and tests have theirs by their own words, see Of: "symptom",
// "trouble_cause", "trouble_does", "trouble_test", "trouble_how",
// "trouble_looks", "trouble_looks_bad", "trouble_grade".

const (
	HelpTrouble        ID = "help_trouble"
	HelpTroubleOf      ID = "help_trouble_of"
	HelpTroubleSymptom ID = "help_trouble_symptom"
	HelpTroubleTest    ID = "help_trouble_test"

	TroubleTitle      ID = "trouble_title"
	TroubleChoose     ID = "trouble_choose"
	TroubleSymptoms   ID = "trouble_symptoms"
	TroubleMayBe      ID = "trouble_may_be"
	TroubleCause      ID = "trouble_cause"  // Grade, Cause, Text
	TroubleOthers     ID = "trouble_others" // Grade, Causes
	TroubleNoVerdict  ID = "trouble_not_a_verdict"
	TroubleNext       ID = "trouble_next" // Test, Minutes
	TroubleNoNext     ID = "trouble_no_next"
	TroubleHow        ID = "trouble_how"   // Text
	TroubleGood       ID = "trouble_good"  // Text
	TroubleBad        ID = "trouble_bad"   // Text
	TroubleBears      ID = "trouble_bears" // Causes
	TroubleGoodButton ID = "trouble_good_button"
	TroubleBadButton  ID = "trouble_bad_button"
	TroubleSkipButton ID = "trouble_skip_button"
	TroubleUndoButton ID = "trouble_undo_button"
	TroubleMade       ID = "trouble_made"
	TroubleMadeLine   ID = "trouble_made_line"  // Test, Answer
	TroubleFromVisit  ID = "trouble_from_visit" // Test, Answer
	TroubleShakeTitle ID = "trouble_shake_title"
	TroubleShake      ID = "trouble_shake"      // Gap, Bend, Stress, Steady, Bearing
	TroubleShakeHalf  ID = "trouble_shake_half" // Gap, Swing, Bearing
)
