// Package plan finds which mount nuts to turn and what to slide: the least
// effort that brings the gap inside the chosen rule with a wanted probability,
// in steps, and what stops it where nothing will do.
//
// With v the present gap [A, B], R the response and m the moves in whole steps,
// the gap after is Gaussian:
//
//	mean  v + R m,   covariance  Cov v + 2 Cov(v, R) m + m' Cov(R) m
//
// and the rule, a largest difference L across the faces about a target, is a
// disc of radius L/2 round it. The plan is the cheapest m, in minutes, with
//
//	P( gap after inside the disc ) >= wanted
//
// subject to what is left of each nut's thread and slide, stuck and forbidden
// ones left alone, every mount's load staying near its share (solid feet, in one
// plane), the engine upright within a few mm, the shaft clear of
// its log, and every bearing loaded downward once bolted. The search (package
// search) is exact; of equal efforts the one with the evenest loads is taken.
//
// Where no move is that sure, the wanted probability is lowered until one is
// found, and the plan says so: gauge, move, gauge again is then the shorter way.
//
// # What it supposes
//
// Nobody knows where the nuts stood when the faces were true. Ranges count from
// the hull's drawn heights by the moves the visit tells; loads, log and bearings
// are worked out as if the engine stood off by no more than makes the gap found
// (the least such in the spread of all nuts and slides).
package plan
