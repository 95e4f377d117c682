// Package sensitivity says how much each number of a hull matters to the answer, so
// that a mechanic knows what is worth measuring well.
//
// The answer is what one flat of each nut, and one step of each slide, does to the
// gap (package response). A number p is moved a little both ways and the whole
// answer taken again through the model:
//
//	per unit = largest over the nuts j of  |R_j(p + h) - R_j(p - h)| / 2h
//
// |R| being the length of [A, B], the most it does anywhere round the rim. h is the
// number's plus-or-minus measured with care (fields.CarePlus), so that what is told
// is true over the range that matters, not only beside the point.
//
// A share puts it in proportion: the change made by a plus-or-minus, over what the
// most telling nut (or slide) does. Numbers under a share of 0.03, a few hundredths
// of a thou for a flat, are told as not mattering.
//
// What it leaves out: texts have no effect; a thread has, by its pitch. What a
// number does to the forces, to clearances and to the shaft's hang is not asked.
package sensitivity
