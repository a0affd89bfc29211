package heat_test

import (
	"os"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"hearsay/internal/heat"
)

func TestForecastOfTheNationalWeatherService(t *testing.T) {
	text, err := os.ReadFile("testdata/nws-hourly.json")
	require.NoError(t, err)
	w, start, err := heat.ReadNWS(text)
	require.NoError(t, err)
	assert.Equal(t, "2026-01-15T13:00:00Z", start.UTC().Format(time.RFC3339))
	require.Len(t, w.Hours, 3)
	assert.True(t, w.Has(heat.HasHumidity|heat.HasWind|heat.HasCloud))
	assert.False(t, w.Has(heat.HasRain))
	first, second, third := w.Hours[0], w.Hours[1], w.Hours[2]
	assert.InDelta(t, -4.444, first.Air, 0.001)
	assert.InDelta(t, 0.73, first.Humidity, 1e-9)
	assert.InDelta(t, 2.235, first.Wind, 0.001)
	assert.InDelta(t, 0.25, first.Cloud, 1e-9)
	assert.InDelta(t, 4.470, second.Wind, 0.001, "the upper end of 5 to 10 mph")
	assert.InDelta(t, -1, third.Air, 1e-9)
	assert.InDelta(t, 5, third.Wind, 1e-9)
	assert.InDelta(t, heat.Humidity(-1, -7), third.Humidity, 1e-9, "from the dew point where humidity is missing")
	assert.InDelta(t, 1, third.Cloud, 1e-9)
	assert.Equal(t, 2.0, w.Length())
}

func TestForecastErrorsNameTheirPlace(t *testing.T) {
	for text, want := range map[string]string{
		`[`:                  "no forecast in the JSON",
		`{"properties": {}}`: "forecastHourly",
		`{"properties": {"periods": [{"startTime": "noon"}]}}`:                                                                                                                                            `period 1, startTime: "noon"`,
		`{"properties": {"periods": [{"startTime": "2026-01-15T07:00:00Z", "windSpeed": "5 mph"}]}}`:                                                                                                      "period 1, temperature: is missing",
		`{"properties": {"periods": [{"startTime": "2026-01-15T07:00:00Z", "temperature": 30, "temperatureUnit": "F", "windSpeed": "brisk"}]}}`:                                                           "period 1, windSpeed",
		`{"properties": {"periods": [{"startTime": "2026-01-15T07:00:00Z", "temperature": 300, "temperatureUnit": "F"}]}}`:                                                                                "is not possible",
		`{"properties": {"periods": [{"startTime": "2026-01-15T07:00:00Z", "temperature": 3, "temperatureUnit": "C"}, {"startTime": "2026-01-15T07:00:00Z", "temperature": 3, "temperatureUnit": "C"}]}}`: "period 2 does not start after period 1",
	} {
		_, _, err := heat.ReadNWS([]byte(text))
		assert.ErrorContains(t, err, want, text)
	}
}

const table = `hour, Air [F], wind (mph), humidity, rain [in/h]
# a clear morning
0, 41, 5, 60 %, 0
1, 5 C, , 58 %, 0
3, 32, 10, 0.5, 0.1
`

func TestTableOfWeather(t *testing.T) {
	w, err := heat.ReadCSV(strings.NewReader(table))
	require.NoError(t, err)
	require.Len(t, w.Hours, 3)
	assert.True(t, w.Has(heat.HasHumidity|heat.HasWind|heat.HasRain))
	assert.False(t, w.Has(heat.HasCloud))
	assert.InDelta(t, 5, w.Hours[0].Air, 1e-9)
	assert.InDelta(t, 5, w.Hours[1].Air, 1e-9, "a cell may carry its own unit")
	assert.InDelta(t, 2.2352, w.Hours[1].Wind, 1e-9, "an empty cell repeats the one above")
	assert.InDelta(t, 2.54, w.Hours[2].Rain, 1e-9)
	mid := w.At(2)
	assert.InDelta(t, 2.5, mid.Air, 1e-9)
	assert.InDelta(t, 0.54, mid.Humidity, 1e-9)
	assert.Equal(t, w.Hours[0].Air, w.At(-5).Air)
	assert.Equal(t, w.Hours[2].Air, w.At(50).Air, "less than a day goes on as it ends")
	later := w.From(1)
	assert.Equal(t, 2.0, later.Length())
	assert.InDelta(t, 2.5, later.At(1).Air, 1e-9)
	dew, err := heat.ReadCSV(strings.NewReader("hour,air [C],dew point [C]\n0,20,9.27\n"))
	require.NoError(t, err)
	assert.InDelta(t, 0.5, dew.Hours[0].Humidity, 0.001)
	filled := w.Fill(heat.Hour{Cloud: 0.5, Wind: 99})
	assert.Equal(t, 0.5, filled.Hours[1].Cloud)
	assert.Equal(t, w.Hours[1].Wind, filled.Hours[1].Wind, "what was given stays")
}

func TestTableErrorsNameTheirPlace(t *testing.T) {
	for text, want := range map[string]string{
		"":                                    "must name the columns",
		"hour,breeze\n":                       `no column is called "breeze"`,
		"hour,wind [mph]\n":                   "a column hour and a column air are needed",
		"hour,air [F]\n":                      "no hours below",
		"hour,air [mph]\n":                    "column air",
		"hour,air [F],air [C]\n":              "two columns",
		"hour,air\n0,41\n":                    "line 2, air",
		"hour,air [F]\n0,\n":                  "line 2, air: the first line of hours has no value",
		"hour,air [F]\n0,41\nnoon,50\n":       "line 3, hour",
		"hour,air [F]\n1,41\n0,50\n":          "line 3, hour: 0 does not come after 1",
		"hour,air [F]\n0,41,5\n":              "line 2 has 3 cells",
		"hour,air [F],humidity\n0,41,130 %\n": "line 2, humidity: 130 % is not possible",
		"hour,air [F]\n0,400\n":               "is not possible",
	} {
		_, err := heat.ReadCSV(strings.NewReader(text))
		assert.ErrorContains(t, err, want, text)
	}
}

func TestLongForecastRepeatsItsLastDay(t *testing.T) {
	w := heat.Daily(-5, 5, heat.Hour{Humidity: 0.7}, 0, 36, 0)
	assert.InDelta(t, w.At(30).Air, w.At(54).Air, 1e-9)
	assert.InDelta(t, w.At(20).Air, w.At(44).Air, 1e-9)
}

// The daily course keeps to its low and high, reaches both at their hours and holds the dew point.
func TestDailyCourse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low := rapid.Float64Range(-30, 30).Draw(t, "low")
		high := low + rapid.Float64Range(0, 25).Draw(t, "swing")
		start := rapid.Float64Range(0, 24).Draw(t, "start")
		w := heat.Daily(low, high, heat.Hour{Humidity: 0.6}, start, 72, 0)
		if w.Length() != 72 {
			t.Fatal(w.Length())
		}
		for _, h := range w.Hours {
			if h.Air < low-1e-9 || h.Air > high+1e-9 {
				t.Fatalf("%g outside %g to %g", h.Air, low, high)
			}
		}
	})
	w := heat.Daily(-5, 5, heat.Hour{Humidity: 0.7}, 0, 24, 0)
	assert.InDelta(t, -5, w.At(6).Air, 1e-9)
	assert.InDelta(t, 5, w.At(15).Air, 1e-9)
	assert.InDelta(t, w.At(3).DewPoint(), w.At(15).DewPoint(), 1e-6)
}

// Whatever is read, it never fails by panic, and what it gives is in order.
func FuzzReaders(f *testing.F) {
	f.Add(table)
	f.Add(`{"properties": {"periods": [{"startTime": "2026-01-15T07:00:00Z", "temperature": 30, "temperatureUnit": "F"}]}}`)
	f.Fuzz(func(t *testing.T, text string) {
		check := func(w heat.Weather, err error) {
			for i := 1; err == nil && i < len(w.Hours); i++ {
				if w.Hours[i].Hour <= w.Hours[i-1].Hour {
					t.Fatal("hours out of order")
				}
			}
		}
		check(heat.ReadCSV(strings.NewReader(text)))
		w, _, err := heat.ReadNWS([]byte(text))
		check(w, err)
	})
}
