// Package say turns numbers into the sentences of assets/words, so that the
// command line, the screen and paper say the same thing of the same answer.
//
// Numbers inside are mm, N, rad. People read thou or mm, pounds-feet or newton
// metres, at their choice (Units), rounded to what a leaf can tell.
package say
