package figure

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestGergelyLutz against the pairs of z = fs ∛(dc A) and crack width in use with ACI 318-95 and ACI 224R, at β = 1.2: 131 and
// 77 kip/in for 0.012 and 0.007 in, 175 and 145 for 0.016 and 0.013 in; and a constructed case, 0.0120 in.
func TestGergelyLutz(t *testing.T) {
	for z, width := range map[float64]float64{131: 0.0119, 77: 0.0070, 175: 0.0160, 145: 0.0132} {
		assert.InDelta(t, width, gergelyLutzWidth(1.2, 1000*z, 1, 1), 0.00006, "z = %v", z)
	}
	assert.InDelta(t, 0.0120, gergelyLutzWidth(1.2, 34000, 2.5, 70.0/3), 0.00005)
}

// TestFrosch against a constructed case: fs 36 ksi, β 1.2, dc 2.5 in, bars at 10 in give 0.0167 in.
func TestFrosch(t *testing.T) {
	assert.InDelta(t, 0.0167, froschWidth(36000, 29e6, 1.2, 2.5, 10), 0.00005)
}

// TestCurlingCoefficient against Bradbury's chart, from the closed form (its largest value is 1.086, at a ratio of 9).
func TestCurlingCoefficient(t *testing.T) {
	for ratio, c := range map[float64]float64{1: 0.003, 2: 0.040, 3: 0.181, 4: 0.438, 5: 0.714, 6: 0.914, 7: 1.027, 8: 1.076, 9: 1.086, 10: 1.076, 12: 1.039} {
		assert.InDelta(t, c, curlingCoefficient(ratio), 0.0006, "B/l = %v", ratio)
	}
	assert.Equal(t, 1.0, curlingCoefficient(2000), "long slabs")
	assert.False(t, math.IsNaN(curlingCoefficient(0.01)))
}
