// Package turn plays one turn of the bolted shaft, step by step through the whole
// model, and parts what stands still from what turns.
//
//	engine out of line          a half or the shaft crooked
//
//	  bend stands still            bend turns with the shaft
//	  load on a bearing: .         load on a bearing: o
//	  a fibre on the shaft         a fibre on the shaft feels
//	  is pulled and pressed        the same all round
//	  once a turn
//
// The shaft is bolted in a state of nuts and slides (where the engine stands) with
// run-outs of the two halves, counted as gap as in package kinematics; a bent shaft is
// its half's run-out. At each step both are turned on together and everything is
// solved afresh: nothing is faked by turning a picture.
//
// For each bearing, with forces F over a turn: Steady is what the mean has beyond the
// boat lined up and true, Swing the largest the force strays from that mean. Fibre is
// the bending stress at a mark on the shaft's surface just behind the coupling, on
// the clock at 12 when the shaft is at its mark; tension positive.
// The mounts' loads are parted in the same way, on the adjuster's axis.
//
// It leaves out that the shaft's speed shakes it (whirling is told apart), the
// propeller's own unbalance, and soft couplings, through which nothing is bolted.
package turn
