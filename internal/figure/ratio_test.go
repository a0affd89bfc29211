package figure_test

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Table 6.3.4(a) of ACI 211.1-91 and the table of PCA's Design and Control of Concrete Mixtures.
func TestStrengthByRatio(t *testing.T) {
	plain := map[float64]float64{0.33: 7000, 0.41: 6000, 0.48: 5000, 0.57: 4000, 0.68: 3000, 0.82: 2000}
	entrained := map[float64]float64{0.32: 6000, 0.40: 5000, 0.48: 4000, 0.59: 3000, 0.74: 2000}
	for air, table := range map[bool]map[float64]float64{false: plain, true: entrained} {
		for ratio, psi := range table {
			assert.InDelta(t, psi, known(t, "strength_at_ratio", facts{"mix.wcm": ratio, "order.entrained_air": air}).Best, 0.01)
			assert.InDelta(t, ratio, known(t, "ratio_for_strength", facts{"order.strength": psi, "order.entrained_air": air}).Best, 1e-9)
		}
	}
	assert.InDelta(t, 0.625, known(t, "ratio_for_strength", facts{"order.strength": 3500.0, "order.entrained_air": false}).Best, 1e-9)
}

// The SI table of ACI 211.1-91 (from memory), in MPa: the two were rounded apart, so to 4 %.
func TestStrengthByRatioInSI(t *testing.T) {
	for ratio, mpa := range map[float64]float64{0.42: 40, 0.47: 35, 0.54: 30, 0.61: 25, 0.69: 20, 0.79: 15} {
		assert.InEpsilon(t, mpa/0.00689476, known(t, "strength_at_ratio", facts{"mix.wcm": ratio, "order.entrained_air": false}).Best, 0.04, "%g", ratio)
	}
}

func TestStrengthPastTheTable(t *testing.T) {
	r := compute(t, "strength_at_ratio", facts{"mix.wcm": 0.28, "order.entrained_air": false})
	assert.Contains(t, r.Problem, "0.33 to 0.82")
}

func TestStrengthOfBags(t *testing.T) {
	// Six bags: 275 lb of water at one end (1 1/2 in stone, little slump, w/cm 0.49, about 4,900 psi), 410 lb at the other
	// (3/8 in stone, much slump, w/cm 0.73, about 2,700 psi), both for angular stone without entrained air (computed from
	// the tables of ACI 211.1). Air and rounded gravel widen it.
	wet := facts{"mix.cementitious": 564.0, "order.slump": 7.0, "order.aggregate": 0.375, "order.entrained_air": false}
	stiff := facts{"mix.cementitious": 564.0, "order.slump": 2.0, "order.aggregate": 1.5, "order.entrained_air": false}
	assert.InDelta(t, 0.73, known(t, "wcm_from_bags", wet).High, 0.005)
	assert.InDelta(t, 2660, known(t, "strength_from_bags", wet).Low, 20)
	assert.InDelta(t, 0.49, known(t, "wcm_from_bags", stiff).High, 0.005)
	assert.InDelta(t, 4900, known(t, "strength_from_bags", stiff).Low, 50)
	open := compute(t, "strength_from_bags", facts{"mix.cementitious": 564.0})
	require.True(t, open.Bounded)
	assert.LessOrEqual(t, open.Low, known(t, "strength_from_bags", wet).Low)
	assert.GreaterOrEqual(t, open.High, known(t, "strength_from_bags", stiff).High)
	assert.NotEmpty(t, open.Assumed)
}

// Every combination of slump, stone and air lies in the range that is given where none of them is known.
func TestStrengthOfBagsIsBoundedByItsEnds(t *testing.T) {
	for _, bags := range []float64{4, 5, 6, 7} {
		open := compute(t, "strength_from_bags", facts{"mix.cementitious": bags * 94})
		for _, slump := range []float64{1, 2.5, 4, 5, 7} {
			for _, stone := range []float64{0.375, 0.75, 1, 1.5} {
				for _, air := range []bool{true, false} {
					v := known(t, "strength_from_bags", facts{"mix.cementitious": bags * 94, "order.slump": slump, "order.aggregate": stone, "order.entrained_air": air})
					assert.GreaterOrEqual(t, v.Low, open.Low-1e-6)
					assert.LessOrEqual(t, v.High, open.High+1e-6)
				}
			}
		}
	}
}

// Measured mixes (Yeh, UCI, CC BY 4.0): of plain portland cement at 28 days the strength is fitted as ln f = a + b w/c. At
// 564 lb of cement and 4,500 psi the rule's usual loss by one gallon in a yard lies inside the 95 % confidence interval of the
// fit, and the interval inside the rule's range.
func TestStrengthPerGallonInMeasuredMixes(t *testing.T) {
	x, y := plainMixesAt28Days(t)
	require.Greater(t, len(x), 50)
	slope, err := fit(x, y)
	t.Logf("%d mixes: ln(strength) falls by %.2f, standard error %.2f, per unit of w/c", len(x), -slope, err)
	const z = 1.96
	gallon := known(t, "wcm_after_water", facts{"mix.wcm": 0.0, "mix.cementitious": 564.0, "water.added": 1.0, "load.volume": 1.0}).Best
	loss := func(b float64) float64 { return 4500 * (1 - math.Exp(b*gallon)) }
	low, high := loss(slope+z*err), loss(slope-z*err)
	t.Logf("one gallon in a yard costs %.0f psi, 95 %% confidence %.0f to %.0f psi", loss(slope), low, high)
	rule := known(t, "strength_lost", facts{"water.added": 1.0, "load.volume": 1.0})
	assert.Greater(t, rule.Best, low)
	assert.Less(t, rule.Best, high)
	assert.Less(t, rule.Low, low)
	assert.Greater(t, rule.High, high)
}

func plainMixesAt28Days(t *testing.T) (ratio, logStrength []float64) {
	file, err := os.Open("../../testdata/uci-concrete.csv")
	require.NoError(t, err)
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment = '#'
	rows, err := r.ReadAll()
	require.NoError(t, err)
	for _, row := range rows[1:] {
		n := make([]float64, len(row))
		for i := range row {
			n[i], err = strconv.ParseFloat(row[i], 64)
			require.NoError(t, err)
		}
		cement, slag, ash, water, age, mpa := n[0], n[1], n[2], n[3], n[7], n[8]
		if slag == 0 && ash == 0 && age == 28 {
			ratio, logStrength = append(ratio, water/cement), append(logStrength, math.Log(mpa))
		}
	}
	return ratio, logStrength
}

// fit gives the slope of the least-squares line and its standard error.
func fit(x, y []float64) (slope, err float64) {
	n := float64(len(x))
	var mx, my, sxx, sxy, residual float64
	for i := range x {
		mx, my = mx+x[i]/n, my+y[i]/n
	}
	for i := range x {
		sxx += (x[i] - mx) * (x[i] - mx)
		sxy += (x[i] - mx) * (y[i] - my)
	}
	slope = sxy / sxx
	for i := range x {
		e := y[i] - my - slope*(x[i]-mx)
		residual += e * e
	}
	return slope, math.Sqrt(residual / (n - 2) / sxx)
}
