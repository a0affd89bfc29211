package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// ASTM C94, tolerances in slump by how it is specified (from memory of the table): target 2 in and less ±1/2, to 4 in ±1,
// above ±1-1/2; maximum 3 in and less -1-1/2, above -2-1/2, never above. In inches.
func TestSlumpTolerancesOfC94(t *testing.T) {
	for _, row := range []struct {
		ordered, least, most float64
		meaning              string
	}{
		{2, 1.5, 2.5, "target"}, {2.5, 1.5, 3.5, "target"}, {4, 3, 5, "target"}, {5, 3.5, 6.5, "target"}, {9, 7.5, 10.5, "target"},
		{3, 1.5, 3, "maximum"}, {4, 1.5, 4, "maximum"}, {1, 0, 1, "maximum"},
	} {
		job := facts{"order.slump": row.ordered, "order.slump_meaning": row.meaning}
		assert.Equal(t, row.least, known(t, "slump_least", job).Best, "%v", row)
		assert.Equal(t, row.most, known(t, "slump_most", job).Best, "%v", row)
	}
}

func TestSlumpBandWithoutItsMeaningIsTheWiderOne(t *testing.T) {
	least := compute(t, "slump_least", facts{"order.slump": 4.0})
	require.True(t, least.Bounded)
	assert.Equal(t, []float64{1.5, 3}, []float64{least.BestLow, least.BestHigh})
	assert.Equal(t, []string{"order.slump_meaning"}, least.Missing)
	most := compute(t, "slump_most", facts{"order.slump": 4.0})
	assert.Equal(t, []float64{4, 5}, []float64{most.BestLow, most.BestHigh})
}

// ASTM C94, 7.2: air within 1.5 points of what is ordered.
func TestAirToleranceOfC94(t *testing.T) {
	assert.Equal(t, 4.5, known(t, "air_least", facts{"order.air": 6.0}).Best)
	assert.Equal(t, 7.5, known(t, "air_most", facts{"order.air": 6.0}).Best)
}

func TestSpreadOfSlumpCountsThisTruck(t *testing.T) {
	job := facts{"load.slump": 6.0, "load.other_slumps": []float64{4, 3.5}, "order.slump": 4.0, "order.slump_meaning": "target"}
	assert.Equal(t, 2.5, known(t, "slump_spread", job).Best)
	assert.Equal(t, 0.5, known(t, "slump_spread_of_others", job).Best)
	assert.Equal(t, 2.0, known(t, "slump_spread_allowed", job).Best)
}

// ASTM C94: 90 minutes by default to 2013 and to C94-20, none from C94-21 on; the order's own limit goes before either.
func TestTimeLimitHangsOnTheEdition(t *testing.T) {
	standard := facts{"load.limit_source": "standard", "load.age": 100.0}
	for _, edition := range []string{"to 2013", "2013 to 2020"} {
		standard["job.delivery_standard"] = edition
		assert.Equal(t, 90.0, known(t, "time_limit", standard).Best)
		assert.Equal(t, -10.0, known(t, "minutes_left", standard).Best)
	}
	standard["job.delivery_standard"] = "2021 on"
	assert.Equal(t, []string{"load.time_limit"}, compute(t, "time_limit", standard).Missing, "only the order can set one")
	assert.Equal(t, 120.0, known(t, "time_limit", facts{"load.time_limit": 120.0, "load.limit_source": "order", "job.delivery_standard": "2021 on"}).Best)
}

func TestLoadAgeAddsUpTheTrip(t *testing.T) {
	job := facts{"load.haul": 55.0, "load.wait": 40.0, "load.unloading": 25.0}
	assert.Equal(t, 120.0, known(t, "load_age", job).Best)
	delete(job, "load.wait")
	r := compute(t, "load_age", job)
	require.True(t, r.Bounded)
	assert.Equal(t, 80.0, r.BestLow)
	job["load.age"] = 60.0
	assert.Contains(t, compute(t, "load_age", job).Problem, "contradict", "it cannot be younger than its haul")
}

// Worked by hand: 10 yd³ at 20 yd³/h takes 30 min; six trucks 15 min apart, the last of which waits 5 × 15 = 75 min.
func TestTrucksByThePaceOfTheCrew(t *testing.T) {
	job := facts{"load.volume": 10.0, "load.placing_rate": 20.0, "load.spacing": 15.0, "load.haul": 25.0, "order.volume": 60.0}
	assert.InDelta(t, 30, known(t, "unloading_time", job).Best, 1e-9)
	assert.InDelta(t, 30, known(t, "truck_spacing_to_order", job).Best, 1e-9)
	assert.InDelta(t, 130, known(t, "worst_load_age", job).Best, 1e-9)
	job["load.spacing"] = 30.0
	assert.InDelta(t, 55, known(t, "worst_load_age", job).Best, 1e-9)
	assert.InDelta(t, 20, known(t, "placing_rate", facts{"load.volume": 10.0, "load.unloading": 30.0}).Best, 1e-9)
}

// The gap that still knits goes with the set: hot concrete leaves less than the hour that cool concrete leaves.
func TestGapShrinksInTheHeat(t *testing.T) {
	plain := facts{"order.retarder": false, "cold.accelerator": "none", "cold.chloride_dose": 0.0, "load.temperature": 95.0}
	hot := known(t, "knit_minutes", plain).Best
	plain["load.temperature"] = 60.0
	cool := known(t, "knit_minutes", plain).Best
	assert.Less(t, hot, 70.0)
	assert.InDelta(t, 240, cool, 1e-6)
	plain["order.retarder"] = true
	assert.Greater(t, known(t, "knit_minutes", plain).Best, cool)
}
