package figure

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func curledPanel(shrinkage, thickness, length float64) curled {
	return curled{length: length * 12, thickness: thickness, modulus: 57000 * 63.2456, weight: 12.5 / 144, shrinkage: shrinkage, share: 0.6}
}

// TestEdgeLiftOfLongPanels against the ratio that B. A. Suprenant, Why Slabs Curl, part II, takes from the measurements of
// Tremper and Spellman: 0.15 in of curl for a drying shrinkage of 0.05 %. The thickness makes no difference to panels long
// enough for the weight to hold their middle down.
func TestEdgeLiftOfLongPanels(t *testing.T) {
	for _, thickness := range []float64{4, 6, 8} {
		assert.InDelta(t, 0.15, curledPanel(500, thickness, 40).rise(), 0.01, "%v in", thickness)
	}
}

// TestEdgeLiftOfShortPanels: a light or stiff short panel rises nearly as a weightless one would, L² κ / 8, and never
// higher (mechanics).
func TestEdgeLiftOfShortPanels(t *testing.T) {
	for _, length := range []float64{3, 6, 10, 15, 25} {
		s := curledPanel(600, 6, length)
		weightless := s.difference() / s.thickness * s.length * s.length / 8
		assert.LessOrEqual(t, s.rise(), weightless)
		if length <= 6 {
			assert.InEpsilon(t, weightless, s.rise(), 0.1)
		}
		longer := curledPanel(600, 6, length*1.2)
		assert.GreaterOrEqual(t, longer.rise()+1e-12, s.rise(), "a longer panel rises no less")
	}
}
