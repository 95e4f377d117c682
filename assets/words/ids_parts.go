package words

// This file lists what mounts and bearings are usually called.

const (
	BoatPartForePort        ID = "boat_part_fore_port"
	BoatPartForeStarboard   ID = "boat_part_fore_starboard"
	BoatPartMiddlePort      ID = "boat_part_middle_port"
	BoatPartMiddleStarboard ID = "boat_part_middle_starboard"
	BoatPartAftPort         ID = "boat_part_aft_port"
	BoatPartAftStarboard    ID = "boat_part_aft_starboard"
	BoatPartStrut           ID = "boat_part_strut"
	BoatPartMiddle          ID = "boat_part_middle"
	BoatPartStern           ID = "boat_part_stern"
)
