package words

// This file lists the sentences of the verb picture and the names of what is
// drawn; they stand in picture.en.json.

const (
	HelpPicture            ID = "help_picture"
	HelpPictureOf          ID = "help_picture_of"
	HelpPictureOut         ID = "help_picture_out"
	HelpPictureView        ID = "help_picture_view"
	HelpPictureTimes       ID = "help_picture_times"
	HelpPictureWidth       ID = "help_picture_width"
	HelpPictureHeight      ID = "help_picture_height"
	HelpPictureDark        ID = "help_picture_dark"
	HelpPictureQuick       ID = "help_picture_quick"
	HelpPictureAsGauged    ID = "help_picture_as_gauged"
	HelpPictureGaugedNut   ID = "help_picture_gauged_nut"
	HelpPictureGaugedSlide ID = "help_picture_gauged_slide"
	HelpPicturePlanNut     ID = "help_picture_plan_nut"
	HelpPicturePlanSlide   ID = "help_picture_plan_slide"
	HelpPictureLooking     ID = "help_picture_looking"
	PictureNoStand         ID = "picture_no_stand"
	PictureDone            ID = "picture_done"  // File, Times
	PictureFaces           ID = "picture_faces" // File
	PictureModel           ID = "picture_model" // File, Times

	CaptionGauged  ID = "caption_gauged"
	CaptionPlanned ID = "caption_planned"
	ViewNamed      ID = "view_named" // View

	PartEngine      ID = "part_engine"
	PartGearbox     ID = "part_gearbox"
	PartEngineHalf  ID = "part_engine_half"
	PartShaftHalf   ID = "part_shaft_half"
	PartMount       ID = "part_mount" // Name
	PartNut         ID = "part_nut"   // Name
	PartShims       ID = "part_shims" // Name
	PartShaft       ID = "part_shaft"
	PartLog         ID = "part_log"
	PartStuffingBox ID = "part_stuffing_box"
	PartBearing     ID = "part_bearing" // Name
	PartPropeller   ID = "part_propeller"
	PartBed         ID = "part_bed"
	PartHull        ID = "part_hull"
	PartStands      ID = "part_stands"
	PartWater       ID = "part_water"
	PartPlanned     ID = "part_planned" // What
	PartAsGauged    ID = "part_as_gauged"

	TouchLog     ID = "touch_log"     // Force
	TouchBearing ID = "touch_bearing" // Bearing, Force
)
