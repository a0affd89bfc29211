// Package layout owns the panel plan of a slab: where its contraction joints lie, and the drawing of it.
package layout

import "math"

// Divide divides a plain rectangle evenly into panels: as few along its length and across its width as keep every stretch
// within spacing, and then as many more as keep each panel's longer side within aspect times its shorter one, or come as
// near to that as one more division does. Lengths are in one unit, all above 0.
func Divide(length, width, spacing, aspect float64) (along, across int) {
	p := Plan{Slab: Slab{Length: length, Width: width, Aspect: aspect}}
	x, y := []bay{{0, length, parts(length, spacing)}}, []bay{{0, width, parts(width, spacing)}}
	p.square(x, y)
	return x[0].parts, y[0].parts
}

// parts is how many even parts of at most spacing a length makes. A hair too long is not one part more.
func parts(length, spacing float64) int { return max(1, int(math.Ceil(length/spacing-1e-6))) }

func ratio(a, b float64) float64 { return math.Max(a, b) / math.Min(a, b) }
