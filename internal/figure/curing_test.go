package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// C. Beall, Masonry and Concrete, 2004, p. 35: 50 % in air, 80 % after 3 days, 100 % after 7, more than 125 % after 28.
func TestStrengthByDaysOfCuring(t *testing.T) {
	for days, share := range map[float64]float64{0: 50, 3: 80, 7: 100, 28: 125, 90: 125} {
		assert.Equal(t, share, known(t, "strength_share_at_days", facts{"cure.days": days}).Best, "%v", days)
	}
	at5 := known(t, "strength_share_at_days", facts{"cure.days": 5.0})
	assert.InDelta(t, 90, at5.Best, 1e-9)
	assert.LessOrEqual(t, at5.Low, at5.Best)
	air := known(t, "strength_share_without_curing", facts{})
	assert.Equal(t, [3]float64{40, 50, 55}, [3]float64{air.Low, air.Best, air.High})
}

// ACI 308R-01, minimum curing periods (from memory): 3, 7, 10 and 14 days by cement, at 50 °F and above.
func TestCuringDaysByCementAndTemperature(t *testing.T) {
	for kind, days := range map[string]float64{"III": 3, "I": 7, "II": 10, "IV": 14, "V": 14, "blended": 14} {
		assert.Equal(t, days, known(t, "curing_days_needed", facts{"mix.cement_type": kind, "cure.temperature": 50.0}).Best, kind)
		assert.Equal(t, days, known(t, "curing_days_needed", facts{"mix.cement_type": kind, "cure.temperature": 75.0}).Best, kind)
	}
	assert.Equal(t, 10.0, known(t, "curing_days_needed", facts{"mix.cement_type": "I", "cure.temperature": 40.0}).Best, "a third more for ten degrees")
	at32, below := known(t, "curing_days_needed", facts{"mix.cement_type": "I", "cure.temperature": 32.0}), known(t, "curing_days_needed", facts{"mix.cement_type": "I", "cure.temperature": 5.0})
	assert.Equal(t, at32.Best, below.Best)
	r := compute(t, "curing_days_needed", facts{})
	require.True(t, r.Bounded)
	assert.Equal(t, 3.0, r.BestLow)
	assert.GreaterOrEqual(t, r.BestHigh, known(t, "curing_days_needed", facts{"mix.cement_type": "V", "cure.temperature": -10.0}).Best)
}

// ASTM C309 lets 0.55 kg/m² through in 72 h: 0.113 lb/ft². At 0.226 lb/ft²/h that is gone in half an hour.
func TestCuringStartsBeforeAMembranesWorthIsLost(t *testing.T) {
	windy := facts{"load.temperature": 87.0, "weather.air": 80.0, "weather.humidity": 50.0, "weather.wind": 12.0, "cure.delay": 3.0}
	rate := known(t, "evaporation", windy).Best
	assert.InDelta(t, 0.113/rate, known(t, "latest_curing", windy).Best, 1e-9)
	assert.InDelta(t, 3*rate, known(t, "water_lost_before_curing", windy).Best, 1e-9)
	assert.InDelta(t, 0.55, 0.113*4.882428, 0.002)
	damp := facts{"load.temperature": 60.0, "weather.air": 62.0, "weather.humidity": 98.0, "weather.wind": 0.0}
	assert.Equal(t, 6.0, known(t, "latest_curing", damp).Best)
}

// ACI 308R-01: 200 ft²/gal, 150 on a rough surface. 2400 ft² take 12 and 16 gal.
func TestCuringCompound(t *testing.T) {
	job := facts{"member.area": 2400.0, "cure.compound_volume": 5.0, "cure.rough_surface": false}
	assert.Equal(t, 12.0, known(t, "compound_needed", job).Best)
	assert.Equal(t, 480.0, known(t, "compound_coverage", job).Best)
	job["cure.rough_surface"] = true
	assert.Equal(t, 16.0, known(t, "compound_needed", job).Best)
	assert.Equal(t, 5.0, known(t, "compound_planned", facts{"member.length": 40.0, "member.width": 25.0, "cure.compound_coverage": 200.0}).Best)
}

func TestCuringWater(t *testing.T) {
	job := facts{"cure.surface_temperature": 88.0, "cure.water_temperature": 52.0}
	assert.Equal(t, 36.0, known(t, "curing_water_difference", job).Best)
	assert.Equal(t, 68.0, known(t, "coldest_curing_water", job).Best)
	assert.Equal(t, 32.0, known(t, "coldest_curing_water", facts{"cure.surface_temperature": 45.0}).Best)
}
