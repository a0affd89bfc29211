package cli

import (
	"bytes"
	"fmt"
	"math"
	"path/filepath"
	"strings"
	"time"

	"hearsay/internal/heat"
	"hearsay/internal/job"
)

// stateForecast reads an hourly forecast from a file, a table (CSV) or the JSON of the National Weather Service, and states
// it. Where the forecast tells the time and the job says when it starts, its start hour in the forecast is stated, too.
func (a *app) stateForecast(d *job.Dictionary, j *job.Job, file string) error {
	text, err := a.read(file)
	if err != nil {
		return err
	}
	weather, start, err := readForecast(file, text)
	if err != nil {
		return badInput{fmt.Errorf("%s: %w", file, err)}
	}
	if err := j.State(d, "weather.forecast", forecastRows(weather)); err != nil {
		return badInput{fmt.Errorf("%s: %w", file, err)}
	}
	if hour, ok := startHour(j, start); ok {
		if err := j.State(d, "weather.start_hour", fmt.Sprintf("%g h", hour)); err != nil {
			return badInput{fmt.Errorf("%s begins %s, the job %g hours later: %w", file, start.Format(time.RFC3339), hour, err)}
		}
	}
	return j.Follow(d)
}

func readForecast(file string, text []byte) (heat.Weather, time.Time, error) {
	head := bytes.TrimSpace(text)
	if strings.EqualFold(filepath.Ext(file), ".json") || bytes.HasPrefix(head, []byte("{")) {
		return heat.ReadNWS(text)
	}
	w, err := heat.ReadCSV(bytes.NewReader(text))
	return w, time.Time{}, err
}

// forecastRows writes weather as the rows of a job file. Columns that were not given are left out.
func forecastRows(w heat.Weather) []any {
	rows := make([]any, len(w.Hours))
	for i, h := range w.Hours {
		row := map[string]any{"hour": h.Hour, "air": fmt.Sprintf("%g C", h.Air)}
		write := func(given heat.Column, column, text string) {
			if w.Has(given) {
				row[column] = text
			}
		}
		write(heat.HasHumidity, "humidity", fmt.Sprintf("%g %%", 100*h.Humidity))
		write(heat.HasWind, "wind", fmt.Sprintf("%g m/s", h.Wind))
		write(heat.HasCloud, "cloud", fmt.Sprintf("%g %%", 100*h.Cloud))
		write(heat.HasSolar, "solar", fmt.Sprintf("%g W/m2", h.Solar))
		write(heat.HasRain, "rain", fmt.Sprintf("%g mm/h", h.Rain))
		rows[i] = row
	}
	return rows
}

// startHour is the hour of a forecast that begins at a time, at which a job starts on its day. Without the day it is the
// first time that the clock shows the job's hour. ok is false where either tells no time, or the job tells its start hour.
func startHour(j *job.Job, begin time.Time) (hour float64, ok bool) {
	clock, hasClock := j.Value("job.start")
	if _, told := j.Value("weather.start_hour"); told || !hasClock || begin.IsZero() {
		return 0, false
	}
	at := time.Duration(clock.(float64) * float64(time.Hour))
	if date, ok := j.Value("job.date"); ok {
		day, err := time.ParseInLocation(time.DateOnly, date.(string), begin.Location())
		if err != nil {
			return 0, false
		}
		return day.Add(at).Sub(begin).Hours(), true
	}
	midnight := time.Date(begin.Year(), begin.Month(), begin.Day(), 0, 0, 0, 0, begin.Location())
	return math.Mod(midnight.Add(at).Sub(begin).Hours()+24, 24), true
}
