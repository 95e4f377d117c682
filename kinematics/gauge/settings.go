package gauge

// This file holds the numbers that are judgement, each with where it is from.

// thouMM is a thousandth of an inch.
const thouMM = 0.0254

// What is believed before anything is read, as standard deviations.
const (
	tiltBeliefMM   = 1.0 // of A and B: 80 thou of spread
	offsetBeliefMM = 3.0
	openBeliefMM   = 1.0 // of g0 where the faces need not touch
	// A face that runs out by 2 thou (TIR) is commonly let pass (common
	// practice, no source): an amplitude of up to 1 thou, spread over two axes.
	letPassMM    = 1.0 * thouMM
	trueFaceMM   = 0.4 * letPassMM
	untrueFaceMM = 4 * thouMM
	// Pushed by hand until first touch, g0 is the amplitude within this (our
	// own judgement: a film of oil, a first touch felt a little early).
	touchMM = 0.4 * thouMM
	// throughMM is how far two faces may seem to stand in one another.
	throughMM = 0.1 * thouMM
	// How well a stated distance between the faces is known: shims, or of a wide
	// gap a part of what a rule or inside calipers show (own judgement).
	apartMM   = 1.0 * thouMM
	apartPart = 0.02
)

// Odds, as natural logarithms, against the unusual: 20 to 1 that faces said to
// touch do touch, 9 to 1 that a half is as true as is let pass.
const (
	touchLogOdds = 3.0
	trueLogOdds  = 2.2
)

// How well instruments are read, beside the feel of the leaves.
const (
	leastFeelMM = 0.05 * thouMM // so that perfect data has a width
	dialMM      = 0.25 * thouMM // half a division (common practice, no source)
	roomModelMM = 0.10          // what the model of a shaft in its clearances is trusted to
	arcEndMM    = 0.5 * thouMM  // where along the rim a leaf begins to enter
	// A pilot that enters by hand is centred to this, with force to three times
	// as much (common practice, no source).
	pilotMM = 0.1
)

// Sure is the probability from which a verdict is given.
const Sure = 0.97

// oddsOfChance is how seldom a sound set may be called odd.
const oddsOfChance = 0.01
