package heat_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/heat"
)

const (
	pcf     = 16.018463 // kg/m³ in a lb/ft³
	btuHrFt = 1.730735  // W/m·K in a Btu/h·ft·°F
	foot    = 0.3048    // m
)

// TM 5-852-6, paragraph 3-3: sandy silt of 100 lb/ft³ and 15 %, mean annual temperature 37.2 °F, surface freezing index
// 2500 °F·d in 160 days: λ 0.89 off the chart and 5.8 ft.
func TestFrostDepthOfTheArmyManual(t *testing.T) {
	soil := heat.Soil{Density: 100 * pcf, Moisture: 0.15, Thawed: 0.72 * btuHrFt, Frozen: 0.80 * btuHrFt}
	depth, lambda := heat.Berggren(soil, 2500/1.8, 160, 5.2/1.8)
	assert.InDelta(t, 0.89, lambda, 0.01)
	assert.InDelta(t, 5.8, depth/foot, 0.06)
	assert.InDelta(t, 6.50, heat.Stefan(0.76*btuHrFt, 2500/1.8, soil.LatentHeat())/foot, 0.02)
	assert.InDelta(t, 2160, soil.LatentHeat()/37258.9, 5, "Btu/ft³")
	assert.InDelta(t, 28.3, (soil.HeatThawed()+soil.HeatFrozen())/2/67066, 0.1, "Btu/ft³·°F")
}

// The coefficient of H. P. Aldrich and H. M. Paynter, recomputed for the table in TM 5-852-6.
func TestCoefficientOfTheBerggrenFormula(t *testing.T) {
	fusion := []float64{0.05, 0.1, 0.2, 0.3, 0.5, 0.8, 1.0}
	for thermal, row := range map[float64][]float64{
		0:    {0.992, 0.984, 0.969, 0.955, 0.930, 0.896, 0.877},
		0.33: {0.958, 0.935, 0.898, 0.867, 0.816, 0.757, 0.724},
		0.5:  {0.942, 0.911, 0.864, 0.826, 0.767, 0.700, 0.664},
		1:    {0.895, 0.846, 0.776, 0.725, 0.649, 0.572, 0.534},
		2:    {0.810, 0.735, 0.639, 0.576, 0.492, 0.416, 0.382},
		3:    {0.737, 0.645, 0.538, 0.473, 0.393, 0.325, 0.296},
	} {
		for i, want := range row {
			assert.InDelta(t, want, heat.Lambda(thermal, fusion[i]), 0.002, "alpha %g, mu %g", thermal, fusion[i])
		}
	}
}

// Stefan's formula as it is written in US units, √(48·k·n·F/L), for five soils.
func TestStefanInCustomaryUnits(t *testing.T) {
	for _, c := range []struct{ k, n, index, density, moisture, depth float64 }{
		{1.0, 1, 500, 120, 8, 4.17}, {0.8, 0.9, 1000, 100, 15, 4.00}, {1.8, 0.7, 1500, 135, 5, 9.66},
		{0.8, 0.9, 100, 100, 15, 1.26}, {0.72, 1, 50, 100, 15, 0.89},
	} {
		soil := heat.Soil{Density: c.density * pcf, Moisture: c.moisture / 100}
		got := heat.Stefan(c.k*btuHrFt, c.n*c.index/1.8, soil.LatentHeat()) / foot
		assert.InEpsilon(t, c.depth, got, 0.005)
	}
}

// Thaw of silt of 100 lb/ft³ and 15 % in a day from a surface held warm, by Stefan's formula with 0.72 Btu/h·ft·°F: it takes
// 90 °F to 120 °F to thaw the foot a day that makers of ground heaters name.
func TestThawOfAFootADay(t *testing.T) {
	soil := heat.Soil{Density: 100 * pcf, Moisture: 0.15}
	for surface, feet := range map[float64]float64{50: 0.54, 70: 0.78, 90: 0.96, 120: 1.19, 150: 1.37} {
		assert.InDelta(t, feet, heat.Stefan(0.72*btuHrFt, (surface-32)/1.8, soil.LatentHeat())/foot, 0.006, "%g °F", surface)
	}
}

// M. S. Kersten's equations at the soils of a frost chart: silt of 100 lb/ft³ and 15 % 0.72 and 0.80, a base of
// 135 lb/ft³ and 5 % 1.65 and (by the equation; the chart reads 1.8) 1.61 Btu/h·ft·°F.
func TestConductivityOfSoil(t *testing.T) {
	silt := heat.Kersten(heat.Fine, 100*pcf, 0.15)
	assert.InDelta(t, 0.715, silt.Thawed/btuHrFt, 0.005)
	assert.InDelta(t, 0.802, silt.Frozen/btuHrFt, 0.005)
	base := heat.Kersten(heat.Coarse, 135*pcf, 0.05)
	assert.InDelta(t, 1.66, base.Thawed/btuHrFt, 0.01)
	assert.InDelta(t, 1.61, base.Frozen/btuHrFt, 0.01)
}

// Soil at the point of freezing whose surface is held colder freezes as F. Neumann's exact solution says (Carslaw and
// Jaeger, section 11.2), and thaws so from a warm surface; Stefan's formula alone runs deeper.
func TestSoilFreezesAndThawsAsNeumannSays(t *testing.T) {
	soil := heat.Soil{Density: 1600, Moisture: 0.2, Thawed: 1.4, Frozen: 1.4} // equal conductivities, as the solution has them
	run := func(surface, start float64) []float64 {
		s := heat.Section{Ground: []heat.Layer{{Soil: soil, Thickness: 4, Top: start, Bottom: start}}}
		h, err := heat.Run(s, heat.Weather{}, []heat.Change{{Top: held(surface)}}, heat.Span{Hours: 240, Step: 0.1})
		require.NoError(t, err)
		return h.Thawed
	}
	thawed := run(20, -0.26)
	for _, hour := range []int{48, 120, 240} {
		exact := heat.Neumann(soil, 20, 0, float64(hour))
		assert.InEpsilon(t, exact, thawed[hour], 0.04, "after %d h", hour)
		assert.Less(t, exact, heat.Stefan(soil.Thawed, 20*float64(hour)/24, soil.LatentHeat()))
	}
	assert.InEpsilon(t, 120, heat.ThawHours(soil, 20, 0, heat.Neumann(soil, 20, 0, 120)), 1e-9)
	// Through a resistance, thawing is slower than from a held surface, and without one it is Stefan's.
	assert.InEpsilon(t, math.Pow(0.3/heat.Stefan(soil.Thawed, 20./24, soil.LatentHeat()), 2), heat.ThawHoursThrough(soil, 20, 0, 0.3), 1e-9)
	assert.Greater(t, heat.ThawHoursThrough(soil, 20, 0.3, 0.3), heat.ThawHoursThrough(soil, 20, 0, 0.3))
	assert.True(t, math.IsInf(heat.ThawHoursThrough(soil, -5, 0, 0.3), 1))
}
