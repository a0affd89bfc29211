package forecast

import (
	"os"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/job"
	"hearsay/rules"
)

// A job that starts at a time of day starts at its hour of a forecast that tells the time, in the zone of the forecast.
func TestStartHourInTheForecast(t *testing.T) {
	d, err := job.LoadDictionary(rules.Files)
	require.NoError(t, err)
	begin := time.Date(2026, 1, 15, 7, 0, 0, 0, time.FixedZone("", -6*3600))
	at := func(facts map[string]string) (float64, bool) {
		j := job.New()
		for path, written := range facts {
			require.NoError(t, j.State(d, path, written))
		}
		return StartHour(j, begin)
	}
	hour, ok := at(map[string]string{"job.start": "9:30 am", "job.date": "2026-01-16"})
	assert.True(t, ok)
	assert.InDelta(t, 26.5, hour, 1e-9)
	hour, ok = at(map[string]string{"job.start": "6:00"})
	assert.True(t, ok)
	assert.InDelta(t, 23, hour, 1e-9, "the first six o'clock after it begins")
	_, ok = at(map[string]string{"job.date": "2026-01-16"})
	assert.False(t, ok, "the hour is not known")
	_, ok = at(map[string]string{"job.start": "9:00", "weather.start_hour": "3 h"})
	assert.False(t, ok, "the job says it itself")
}

// A forecast read from a file comes out as the rows of a job, in the units of its columns.
func TestForecastRows(t *testing.T) {
	d, err := job.LoadDictionary(rules.Files)
	require.NoError(t, err)
	text, err := os.ReadFile("../../testdata/weather/cold-night.csv")
	require.NoError(t, err)
	f, err := Read("cold-night.csv", text)
	require.NoError(t, err)
	j := job.New()
	require.NoError(t, j.State(d, "weather.forecast", f.Rows))
	v, _ := j.Value("weather.forecast")
	rows := v.([]map[string]float64)
	require.Len(t, rows, len(f.Rows))
	assert.InDelta(t, 41, rows[0]["air"], 1e-9)
	assert.InDelta(t, 60, rows[0]["humidity"], 1e-9)
	assert.InDelta(t, 6, rows[0]["wind"], 1e-9)
	assert.InDelta(t, 30, rows[0]["cloud"], 1e-9)
	assert.NotContains(t, rows[0], "rain")
}
