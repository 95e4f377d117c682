package scene

// This file is the boat's bottom: its shape, the cut-away shell, the water.

// bottomOver is how far over the shaft line the bottom is at x.
func (d *dims) bottomOver(x float64) float64 {
	return (d.hull.Log.AtMM - x) * d.up[0] / d.up[2]
}

func hullParts(d *dims) []piece { return nil }

func standParts(d *dims) []piece { return nil }
