// Package lesson is lessons as data: a boat, a few things to watch, and a question
// whose answer the program works out.
//
//	{"format": "lesson/1",
//	 "title": {"en": "...", "de": "..."},
//	 "hull": "Kittiwake",
//	 "watch": [{"text": {...}, "state": {...}, "view": "coupling", "times": 100}, ...],
//	 "question": {"text": {...}, "of": {"quantity": "gap", "clock_deg": 180, "state": {...}},
//	              "choices": [{"text": {...}, "below": -0.5}, {"text": {...}, "from": -0.5}]}}
//
// A state is what is done to the boat: how the shaft is held, nuts by flats, slides by
// mm, run-out of the halves in thou, afloat, how far the shaft is turned. A question
// asks for one of a few quantities (quantity.go), as a number within a tolerance or as
// one of a few choices, of which the one is right that the worked-out value falls
// into. So a lesson never holds its own answer: on another hull it is another.
//
// A text is in English and may be in other languages; what a language lacks is said
// in English.
package lesson
