package words

// This file lists the sentences of the page of all boats.

const (
	PageBack ID = "page_back" // every page's way back

	BoatsTitle       ID = "boats_title"
	BoatsFind        ID = "boats_find"
	BoatsCount       ID = "boats_count" // Count
	BoatsMany        ID = "boats_many"
	BoatsDue         ID = "boats_due"     // Date
	BoatsOverdue     ID = "boats_overdue" // Date
	BoatsNone        ID = "boats_none"
	BoatsBegin       ID = "boats_begin"
	BoatsTakeOut     ID = "boats_take_out"
	BoatsTakeIn      ID = "boats_take_in"
	BoatsTakeInTitle ID = "boats_take_in_title" // Name
	BoatsTakeNew     ID = "boats_take_new"
	BoatsTakeAll     ID = "boats_take_all"
	BoatsBuiltIn     ID = "boats_built_in"
	BoatsVisit       ID = "boats_visit" // Date
	BoatsOpens       ID = "boats_opens" // Clock
	BoatsNoBook      ID = "boats_no_book"
)
