package words

// This file lists what one boat tells of a trouble beforehand.

const (
	TroubleBoatTitle         ID = "trouble_boat_title"
	TroubleBoatWhirlFar      ID = "trouble_boat_whirl_far"
	TroubleBoatWhirlNear     ID = "trouble_boat_whirl_near"
	TroubleBoatSteady        ID = "trouble_boat_steady"
	TroubleBoatSettled       ID = "trouble_boat_settled"
	TroubleBoatMountDown     ID = "trouble_boat_mount_down"
	TroubleBoatNutBacked     ID = "trouble_boat_nut_backed"
	TroubleBoatCornerDown    ID = "trouble_boat_corner_down"
	TroubleBoatSomethingElse ID = "trouble_boat_something_else"
)
