package words

// This file lists the sentences of whose settings are used.

const (
	MechanicMenu   ID = "mechanic_menu"
	MechanicNobody ID = "mechanic_nobody"
	MechanicTitle  ID = "mechanic_title"
	MechanicWhat   ID = "mechanic_what"
	MechanicNoBook ID = "mechanic_no_book"
	MechanicChoose ID = "mechanic_choose"
	MechanicNew    ID = "mechanic_new"
	MechanicNow    ID = "mechanic_now"
	MechanicTake   ID = "mechanic_take"
	MechanicTaken  ID = "mechanic_taken"
)
