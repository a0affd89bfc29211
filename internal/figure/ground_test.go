package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// The cold batch of 564 lb cement and 3000 lb dry aggregate at 40 °F with 300 lb of water at 140 °F comes to 67.7 °F by the
// formulas of ACI 306R; the batch with ice of Design and Control of Concrete Mixtures, EB001, to 75 °F.
func TestTemperatureFromIngredients(t *testing.T) {
	cold := facts{"materials.cement_temperature": 40.0, "materials.aggregate_temperature": 40.0, "materials.water_temperature": 140.0,
		"mix.cementitious": 564.0, "mix.wcm": 300. / 564, "mix.fine_aggregate": 1200.0, "mix.coarse_aggregate": 1800.0}
	assert.InDelta(t, 67.7, known(t, "mix_temperature", cold).Best, 0.1)
	needed := known(t, "water_temperature_needed", with(cold, facts{"materials.wanted_temperature": 60.0})).Best
	assert.InDelta(t, 60, known(t, "mix_temperature", with(cold, facts{"materials.water_temperature": needed})).Best, 1e-6, "put back")
	least := known(t, "water_temperature_for_least", with(cold, facts{"member.thickness": 6.0})).Best
	assert.InDelta(t, 55, known(t, "mix_temperature", with(cold, facts{"materials.water_temperature": least})).Best, 1e-6)
	frozen := with(cold, facts{"materials.aggregate_temperature": 0.0, "materials.wanted_temperature": 75.0})
	assert.Contains(t, compute(t, "water_temperature_needed", frozen).Problem, "heat the aggregate")

	hot := facts{"materials.cement_temperature": 150.0, "materials.aggregate_temperature": 80.0, "materials.water_temperature": 80.0, "mix.cementitious": 564.0,
		"mix.wcm": 282. / 564, "mix.fine_aggregate": 1300.0, "mix.coarse_aggregate": 1800.0}
	assert.InDelta(t, 88.0, known(t, "mix_temperature", hot).Best, 0.1)
	assert.InDelta(t, 74.7, known(t, "mix_temperature", with(hot, facts{"materials.ice": 75.0})).Best, 0.1)
	assert.Zero(t, known(t, "ice_needed", hot).Best)
	hotter := with(hot, facts{"materials.aggregate_temperature": 110.0, "materials.water_temperature": 90.0})
	ice := known(t, "ice_needed", hotter).Best
	assert.InDelta(t, 95, known(t, "mix_temperature", with(hotter, facts{"materials.ice": ice})).Best, 1e-6, "put back")
	chilled := known(t, "water_temperature_for_most", hotter).Best
	assert.InDelta(t, 95, known(t, "mix_temperature", with(hotter, facts{"materials.water_temperature": chilled})).Best, 1e-6, "put back")
}

// Silt of 100 lb/ft³ and 15 % with its surface near 100 °F thaws about a foot a day, as makers of hydronic heaters say;
// warm air takes longer, the heat of deep ground under blankets weeks.
func TestHoursOfThawing(t *testing.T) {
	f := facts{"ground.frost_depth": 12.0, "ground.soil": "silt", "ground.moisture": 15.0, "ground.thaw_method": "hydronic heater"}
	hoses := known(t, "thaw_hours_needed", f).Best
	assert.InDelta(t, 24, hoses, 5)
	air := known(t, "thaw_hours_needed", with(f, facts{"ground.thaw_method": "hot air"})).Best
	assert.Greater(t, air, 2*hoses)
	blankets := known(t, "thaw_hours_needed", with(f, facts{"ground.thaw_method": "blankets"})).Best
	assert.Greater(t, blankets, 7*24.0)
	assert.Less(t, known(t, "thaw_hours_needed", with(f, facts{"ground.thawed_depth": 6.0})).Best, hoses)
	assert.Zero(t, known(t, "thaw_hours_needed", with(f, facts{"ground.thawed_depth": 12.0})).Best)
	assert.Contains(t, compute(t, "thaw_hours_needed", with(f, facts{"ground.thaw_method": "salt"})).Problem, "not known")
	dry := compute(t, "thaw_hours_needed", facts{"ground.frost_depth": 12.0, "ground.soil": "silt", "ground.thaw_method": "hydronic heater"})
	assert.True(t, dry.Bounded && dry.BestLow < hoses && dry.BestHigh > hoses)
	assert.Equal(t, 6.0, known(t, "frost_remaining", facts{"ground.frost_depth": 8.0, "ground.thawed_depth": 2.0}).Best)
}

// The frost depth grows with the winter; a thousand degree-days drive it two to three feet into silt.
func TestFrostOfTheWinterSoFar(t *testing.T) {
	at := func(index float64) float64 {
		return known(t, "frost_depth_expected", facts{"ground.freezing_index": index, "ground.soil": "silt", "ground.moisture": 15.0}).Best
	}
	assert.Zero(t, at(0))
	assert.Less(t, at(200), at(1000))
	assert.InDelta(t, 30, at(1000), 8)
}

// ACI 306R: ground no more than 10 °F colder than the least placing temperature; the bottom of a slab on such ground
// comes between both and sets later.
func TestGroundColderThanConcrete(t *testing.T) {
	f := facts{"member.thickness": 6.0, "load.temperature": 66.0, "ground.temperature": 34.0}
	assert.Equal(t, 45.0, known(t, "least_ground_temperature", f).Best)
	assert.Equal(t, 32.0, known(t, "ground_difference", f).Best)
	bottom := known(t, "bottom_temperature", f).Best
	assert.Greater(t, bottom, 40.0)
	assert.Less(t, bottom, 60.0)
	delay := known(t, "set_delay", f).Best
	assert.Greater(t, delay, 1.0)
	assert.Less(t, delay, 8.0)
	assert.Less(t, known(t, "set_delay", with(f, facts{"ground.temperature": 60.0})).Best, delay)
}

func TestWaterInTheFormsAndFall(t *testing.T) {
	f := facts{"ground.standing_water": 0.5, "member.thickness": 4.5, "mix.wcm": 0.5, "mix.cementitious": 564.0}
	// Half an inch of water under 4 in of concrete is 1/8 of its volume: 62.4 × 27 / 8 = 210.6 lb in a yard.
	assert.InDelta(t, 0.5+210.6/564, known(t, "wcm_with_ground_water", f).Best, 1e-4)
	slope := facts{"member.length": 20.0, "member.fall": 0.25}
	assert.Equal(t, 2.5, known(t, "fall_needed", slope).Best)
	assert.Equal(t, 5.0, known(t, "fall_planned", slope).Best)
}

// On a hot dry afternoon the best start of a day lies in the night or the evening; slump falls an inch for 20 °F (ACI
// 305R).
func TestHotDay(t *testing.T) {
	var rows []map[string]float64
	for hour := range 24 {
		air, wind := 95.0, 12.0
		if hour > 8 {
			air, wind = 72, 4
		}
		rows = append(rows, map[string]float64{"hour": float64(hour), "air": air, "dew_point": 58, "wind": wind})
	}
	f := facts{"load.temperature": 88.0, "weather.forecast": rows, "weather.start_hour": 0.0, "job.hours": 4.0}
	best := known(t, "best_start", f).Best
	assert.Greater(t, best, 8.0)
	assert.Greater(t, known(t, "start_evaporation", f).Best, known(t, "best_start_evaporation", f).Best)
	assert.Greater(t, known(t, "start_gain", f).Best, 20.0)
	assert.InDelta(t, 0, known(t, "start_gain", with(f, facts{"weather.start_hour": best})).Best, 25)
	assert.Equal(t, 1.0, known(t, "slump_lost_to_heat", facts{"load.temperature": 90.0}).Best)
	assert.Zero(t, known(t, "slump_lost_to_heat", facts{"load.temperature": 60.0}).Best)
}
