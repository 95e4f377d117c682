package shaftline

// This file is the contact law: what one spring of a bearing, one lip of the
// log or a stuffing box pushes with when the shaft has moved.

import "math"

// contact is one spring inside a clearance, radial in y and z together.
type contact struct {
	xMM     float64
	kNPerMM float64
	roomMM  float64 // radial travel before it touches; 0: holds at once
	axisMM  [2]float64
	group   int  // which bearing, the log, or which spring
	lip     bool // of the log
}

// push is the linearised law about a travel: force on the contact F, and its
// tangent, symmetric and never negative.
type push struct {
	fy, fz        float64
	kyy, kyz, kzz float64
}

// at works the law out where the shaft is at (y, z).
//
// With r the distance from the axis and n its direction, F = k (r - room) n
// beyond the room and nothing within; the tangent is k along n and
// k (r - room)/r across it, the resistance of a ball in a bowl to rolling.
func (c *contact) at(y, z float64) push {
	dy, dz := y-c.axisMM[0], z-c.axisMM[1]
	if c.roomMM == 0 {
		return push{fy: c.kNPerMM * dy, fz: c.kNPerMM * dz, kyy: c.kNPerMM, kzz: c.kNPerMM}
	}
	rr := dy*dy + dz*dz
	if rr <= c.roomMM*c.roomMM {
		return push{}
	}
	r := math.Sqrt(rr)
	ny, nz := dy/r, dz/r
	f := c.kNPerMM * (r - c.roomMM)
	across := f / r
	along := c.kNPerMM - across
	return push{
		fy: f * ny, fz: f * nz,
		kyy: across + along*ny*ny,
		kyz: along * ny * nz,
		kzz: across + along*nz*nz,
	}
}

// held is the law with its clearance forgotten, to start an iteration from
// nothing: lips of the log let go, everything else holds.
func (c *contact) held(y, z float64) push {
	if c.lip {
		return push{}
	}
	k := c.kNPerMM
	return push{fy: k * (y - c.axisMM[0]), fz: k * (z - c.axisMM[1]), kyy: k, kzz: k}
}
