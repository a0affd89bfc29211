package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Put back into the formula, each condition solved for gives the limit it was solved for.
func TestConditionsSolvedForGiveTheLimit(t *testing.T) {
	job := func() facts {
		return facts{"load.temperature": 82.0, "weather.air": 80.0, "weather.humidity": 40.0, "weather.wind": 16.0, "mix.low_bleed": false}
	}
	require.Greater(t, known(t, "evaporation", job()).Best, 0.2)
	for name, fact := range map[string]string{"wind_for_evaporation": "weather.wind", "concrete_for_evaporation": "load.temperature", "humidity_for_evaporation": "weather.humidity"} {
		solved := job()
		solved[fact] = known(t, name, job()).Best
		assert.InDelta(t, 0.2, known(t, "evaporation", solved).Best, 0.0005, name)
	}
}

// Lerch's row of warm concrete in cold damp air: no humidity helps, and neither does a calm for concrete at 120 °F.
func TestConditionsThatCannotHelpSaySo(t *testing.T) {
	cold := facts{"load.temperature": 80.0, "weather.air": 40.0, "weather.humidity": 100.0, "weather.wind": 12.0, "mix.low_bleed": false}
	assert.Contains(t, compute(t, "humidity_for_evaporation", cold).Problem, "no humidity")
	hot := facts{"load.temperature": 120.0, "weather.air": 90.0, "weather.humidity": 10.0, "mix.low_bleed": true, "member.kind": "topping"}
	assert.Contains(t, compute(t, "wind_for_evaporation", hot).Problem, "still air")
}

// ACI 305R and Lerch 0.2; 0.1 for concrete that hardly bleeds, 0.05 for overlays of it (both from memory).
func TestEvaporationLimitByConcrete(t *testing.T) {
	assert.Equal(t, 0.2, known(t, "evaporation_limit", facts{"mix.low_bleed": false}).Best)
	assert.Equal(t, 0.1, known(t, "evaporation_limit", facts{"mix.low_bleed": true, "member.kind": "slab on ground"}).Best)
	assert.Equal(t, 0.05, known(t, "evaporation_limit", facts{"mix.low_bleed": true, "member.kind": "topping"}).Best)
	r := compute(t, "evaporation_limit", facts{})
	assert.Equal(t, []float64{0.05, 0.2}, []float64{r.BestLow, r.BestHigh})
}

func TestStartThatKeepsEvaporationWithin(t *testing.T) {
	row := func(hour, air, rh, wind float64) map[string]float64 {
		return map[string]float64{"hour": hour, "air": air, "humidity": rh, "wind": wind}
	}
	job := facts{"load.temperature": 82.0, "mix.low_bleed": false, "job.hours": 2.0, "weather.forecast": []map[string]float64{
		row(0, 84, 32, 18), row(1, 85, 30, 17), row(2, 82, 40, 14), row(3, 78, 60, 4), row(4, 75, 65, 4), row(5, 72, 70, 3)}}
	assert.Equal(t, 3.0, known(t, "start_for_evaporation", job).Best)
	job["job.hours"] = 3.0
	assert.Contains(t, compute(t, "start_for_evaporation", job).Problem, "no stretch")
}

// Worked by hand: 1/4 in of 100 ft² is 0.0772 yd³ with 43.5 lb of cement at 564 lb/yd³; 1 gal more is 8.33 lb.
func TestWaterWorkedIntoTheSurface(t *testing.T) {
	v := known(t, "surface_wcm", facts{"mix.wcm": 0.48, "mix.cementitious": 564.0, "finish.water_rate": 1.0})
	assert.InDelta(t, 0.48+8.33/43.52, v.Best, 0.001)
	r := compute(t, "surface_wcm", facts{"mix.wcm": 0.48, "mix.cementitious": 564.0})
	require.True(t, r.Bounded)
	assert.Less(t, r.BestLow, v.Best)
	assert.Greater(t, r.BestHigh, v.Best)
}

func TestRainAgainstSet(t *testing.T) {
	job := facts{"weather.rain_in": 5.0, "load.temperature": 62.0, "order.retarder": false, "cold.accelerator": "none", "cold.chloride_dose": 0.0}
	assert.Equal(t, 1.0, known(t, "rain_before_set", job).Best)
	job["weather.rain_in"] = 20.0
	assert.Equal(t, 0.0, known(t, "rain_before_set", job).Best)
	job["weather.rain"] = true
	assert.Contains(t, compute(t, "rain_before_set", job).Problem, "contradict")
}
