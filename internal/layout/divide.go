// Package layout owns the panel plan of a slab: where its contraction joints lie, and the drawing of it.
package layout

import "math"

// Divide divides a slab evenly into panels: as few along its length and across its width as keep every stretch within
// spacing, and then as many more as keep each panel's longer side within aspect times its shorter one. Lengths are in one
// unit, all above 0; aspect is at least 1, and one below 1.42 cannot always be kept and is then come as near to as one more
// division allows.
func Divide(length, width, spacing, aspect float64) (along, across int) {
	along, across = parts(length, spacing), parts(width, spacing)
	for {
		a, b := length/float64(along), width/float64(across)
		better, other := along, across
		if a > b {
			better++
		} else {
			other++
		}
		if ratio(a, b) <= aspect*(1+1e-9) || ratio(length/float64(better), width/float64(other)) >= ratio(a, b) {
			return along, across
		}
		along, across = better, other
	}
}

// parts is how many even parts of at most spacing a length makes. A hair too long is not one part more.
func parts(length, spacing float64) int { return max(1, int(math.Ceil(length/spacing-1e-6))) }

func ratio(a, b float64) float64 { return math.Max(a, b) / math.Min(a, b) }
