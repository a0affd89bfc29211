package figure_test

import (
	"encoding/csv"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/figure"
)

// compute works one figure out from facts, known or not.
func compute(t testing.TB, name string, f facts) *figure.Result {
	t.Helper()
	return figures(t).Sheet(f).Result(name)
}

// The worked example of ACI 305R: 0.25 lb/ft²/h off the nomograph, 0.24 by Uno's single formula as Concrete
// International prints it.
func TestEvaporationOfTheExampleInACI305(t *testing.T) {
	v := known(t, "evaporation", facts{"load.temperature": 87.0, "weather.air": 80.0, "weather.humidity": 50.0, "weather.wind": 12.0})
	assert.InDelta(t, 0.24, v.Best, 0.01)
	assert.InDelta(t, 0.24, v.High, 0.005)
}

// Every row of Lerch's table, PCA 1957, against Menzel's formula; the rows are read with the tolerance of its rounding.
func TestEvaporationOfLerchsTable(t *testing.T) {
	file, err := os.Open("../../testdata/evaporation-lerch.csv")
	require.NoError(t, err)
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment = '#'
	rows, err := r.ReadAll()
	require.NoError(t, err)
	require.Greater(t, len(rows), 20)
	for _, row := range rows[1:] {
		var n [5]float64
		for i := range n {
			n[i], err = strconv.ParseFloat(row[i], 64)
			require.NoError(t, err)
		}
		v := known(t, "evaporation", facts{"load.temperature": n[0], "weather.air": n[1], "weather.humidity": n[2], "weather.wind": n[3]})
		assert.InDelta(t, n[4], v.Best, 0.008, "%v", row)
	}
}

func TestEvaporationByDewPointIsTheSame(t *testing.T) {
	job := facts{"load.temperature": 70.0, "weather.air": 70.0, "weather.wind": 10.0}
	job["weather.dew_point"] = 59.9 // of air at 70 F and 70 %, Lerch's table rounds it to 59
	byDew := known(t, "evaporation", job)
	delete(job, "weather.dew_point")
	job["weather.humidity"] = 70.0
	assert.InDelta(t, known(t, "evaporation", job).Best, byDew.Best, 0.001)
	job["weather.dew_point"] = 40.0
	assert.Contains(t, compute(t, "dew_point", job).Problem, "contradict")
}

// The table's own rows, and between 70 and 80 F a time between them.
func TestSettingTime(t *testing.T) {
	plain := facts{"order.retarder": false, "cold.accelerator": "none", "cold.chloride_dose": 0.0}
	at := func(f float64) *figure.Result { plain["load.temperature"] = f; return known(t, "set_hours", plain) }
	assert.InDelta(t, 6, at(70).Best, 1e-9)
	assert.InDelta(t, 19, at(30).Best, 1e-9)
	assert.InDelta(t, 4.9, at(75).Best, 0.1)
	assert.Less(t, at(110).Best, at(100).Best)
	v := at(70)
	assert.Less(t, v.Low, v.Best)
	assert.Greater(t, v.High, v.Best)

	chloride := facts{"order.retarder": false, "cold.accelerator": "calcium chloride", "cold.chloride_dose": 2.0, "load.temperature": 70.0}
	assert.InDelta(t, 2, known(t, "set_hours", chloride).Best, 1e-9, "P. Rapp: 2 h against 6 h")
	retarded := facts{"order.retarder": true, "cold.accelerator": "none", "cold.chloride_dose": 0.0, "load.temperature": 73.0}
	plain["load.temperature"] = 73.0
	assert.InDelta(t, 2.25, known(t, "set_hours", retarded).Best-known(t, "set_hours", plain).Best, 1e-9, "ASTM C494 Type B: 1 to 3.5 h")
	assert.NotEmpty(t, compute(t, "set_hours", facts{"load.temperature": 25.0, "order.retarder": false, "cold.accelerator": "none", "cold.chloride_dose": 0.0}).Problem)
}

func TestUnknownAdmixturesGiveTheWholeRange(t *testing.T) {
	r := compute(t, "set_hours", facts{"load.temperature": 70.0})
	require.True(t, r.Bounded)
	assert.ElementsMatch(t, []string{"order.retarder", "cold.accelerator", "cold.chloride_dose"}, r.Missing)
	for _, job := range []facts{
		{"load.temperature": 70.0, "order.retarder": true, "cold.accelerator": "none", "cold.chloride_dose": 0.0},
		{"load.temperature": 70.0, "order.retarder": false, "cold.accelerator": "calcium chloride", "cold.chloride_dose": 2.0},
		{"load.temperature": 70.0, "order.retarder": true, "cold.accelerator": "non-chloride", "cold.chloride_dose": 0.0},
	} {
		v := known(t, "set_hours", job)
		assert.GreaterOrEqual(t, v.Low, r.Low)
		assert.LessOrEqual(t, v.High, r.High)
	}
}

func TestBleedingEndsByInitialSet(t *testing.T) {
	job := facts{"order.retarder": false, "cold.accelerator": "none", "cold.chloride_dose": 0.0, "load.temperature": 70.0}
	set, end, final := known(t, "set_hours", job), known(t, "bleed_end_hours", job), known(t, "final_set_hours", job)
	assert.InDelta(t, 1.5, end.Low, 1e-9) // 2 h in the laboratory, by the quickest of cements
	assert.Equal(t, set.High, end.High)
	assert.Greater(t, final.Best, set.Best)
	assert.True(t, compute(t, "bleeding_rate", facts{}).Bounded)
	assert.Equal(t, 0.1, known(t, "bleeding_rate", facts{"mix.bleeding": 0.1}).Best)
}

// Further rows of Menzel's and of Uno's formula, worked by hand from steam-table pressures.
func TestBothEvaporationFormulas(t *testing.T) {
	for _, row := range [][6]float64{{75, 75, 50, 5, 0.069, 0.073}, {85, 90, 40, 10, 0.169, 0.179}, {90, 95, 25, 15, 0.368, 0.384},
		{60, 50, 40, 15, 0.138, 0.146}, {80, 60, 60, 8, 0.159, 0.170}, {70, 40, 30, 20, 0.312, 0.342}} {
		v := known(t, "evaporation", facts{"load.temperature": row[0], "weather.air": row[1], "weather.humidity": row[2], "weather.wind": row[3]})
		assert.InDelta(t, row[4], v.Low, 0.002, "%v", row)
		assert.InDelta(t, row[5], v.High, 0.002, "%v", row)
	}
}

// Cold air cannot hold the vapor: whatever its humidity, warm concrete dries. Damp calm air dries nothing, whatever else.
func TestEvaporationIsBoundedByUnknownWindAndHumidity(t *testing.T) {
	r := compute(t, "evaporation", facts{"load.temperature": 80.0, "weather.air": 40.0, "weather.wind": 10.0})
	require.True(t, r.Bounded)
	assert.InDelta(t, 0.205, r.BestLow, 0.008, "Lerch's row for saturated air")
	assert.Equal(t, []string{"weather.humidity"}, r.Missing)
	for _, wind := range []float64{0, 3, 12, 40, 150} {
		v := known(t, "evaporation", facts{"load.temperature": 70.0, "weather.air": 70.0, "weather.humidity": 60.0, "weather.wind": wind})
		r := compute(t, "evaporation", facts{"load.temperature": 70.0, "weather.air": 70.0, "weather.humidity": 60.0})
		require.True(t, r.Bounded)
		assert.GreaterOrEqual(t, v.Best, r.BestLow)
		assert.LessOrEqual(t, v.Best, r.BestHigh)
	}
}

func TestWorstHourOfAForecast(t *testing.T) {
	hours := []map[string]float64{{"hour": 0, "air": 70, "humidity": 70, "wind": 5}, {"hour": 1, "air": 90, "humidity": 10, "wind": 25}, {"hour": 2, "air": 70, "dew_point": 59.9, "wind": 10}}
	worst := known(t, "evaporation_worst", facts{"load.temperature": 90.0, "weather.forecast": hours})
	assert.InDelta(t, 0.74, worst.Best, 0.008, "Lerch's row for that hour")
	assert.Contains(t, worst.Working[len(worst.Working)-1], "hour 1")
	delete(hours[2], "dew_point")
	assert.Contains(t, compute(t, "evaporation_worst", facts{"load.temperature": 90.0, "weather.forecast": hours}).Problem, "humidity")
}
