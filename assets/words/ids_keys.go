package words

// This file lists what keys are called, and what more of them the help tells.

const (
	HelpKeyWhys    ID = "help_key_whys"
	HelpKeyCounter ID = "help_key_counter"
	HelpKeyLessons ID = "help_key_lessons"
	HelpKeyScroll  ID = "help_key_scroll"
	KeyCtrl        ID = "key_ctrl"
	KeyShift       ID = "key_shift"
	KeyDel         ID = "key_del"
	KeyEnter       ID = "key_enter"
	KeyPageUp      ID = "key_page_up"
	KeyPageDown    ID = "key_page_down"
)
