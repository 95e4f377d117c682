package words

// This file lists the sentences of lessons.

const (
	LessonTitle      ID = "lesson_title"
	LessonLanguage   ID = "lesson_language"
	LessonFurther    ID = "lesson_further"
	LessonBack       ID = "lesson_back"
	LessonOpen       ID = "lesson_open"
	LessonChoice     ID = "lesson_choice"
	LessonRight      ID = "lesson_right"
	LessonWrong      ID = "lesson_wrong"
	HelpLessons      ID = "help_lessons"
	HelpLessonsList  ID = "help_lessons_list"
	HelpLessonsShow  ID = "help_lessons_show"
	HelpLesson       ID = "help_lesson"
	HelpLessonAnswer ID = "help_lesson_answer"
	LessonLine       ID = "lesson_line"
	LessonQuestion   ID = "lesson_question"
	LessonAnswer     ID = "lesson_answer"
	CheckLessonOk    ID = "check_lesson_ok"
	LessonNone       ID = "lesson_none"
	LessonKnown      ID = "lesson_known"
	LessonTry        ID = "lesson_try"
	LessonDone       ID = "lesson_done"
	LessonUndo       ID = "lesson_undo"
)
