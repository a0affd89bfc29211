// Package forecast reads an hourly forecast as people have it, a table (CSV) or the JSON of the National Weather Service,
// and puts it into a job.
package forecast

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

// Fact is the fact a forecast is stated as, and StartFact the hour in it at which a job starts.
const (
	Fact      = "weather.forecast"
	StartFact = "weather.start_hour"
)

// Forecast is an hourly forecast that was read.
type Forecast struct {
	Rows   []any     // as a job file states them; columns that were not given are left out
	Begins time.Time // the time of the first row; zero where the forecast does not tell it
}

// Read reads a forecast. The name of the file tells JSON from a table where its text does not.
func Read(name string, text []byte) (*Forecast, error) {
	var w heat.Weather
	var err error
	f := &Forecast{}
	if strings.EqualFold(filepath.Ext(name), ".json") || bytes.HasPrefix(bytes.TrimSpace(text), []byte("{")) {
		w, f.Begins, err = heat.ReadNWS(text)
	} else {
		w, err = heat.ReadCSV(bytes.NewReader(text))
	}
	if err != nil {
		return nil, err
	}
	f.Rows = rows(w)
	return f, nil
}

// State states a forecast in a job. Where the forecast tells the time and the job says when it starts, its hour in the
// forecast is stated, too; where the forecast tells no time, its hour 0 is the start.
func (f *Forecast) State(d *job.Dictionary, j *job.Job) error {
	if err := j.State(d, Fact, f.Rows); err != nil {
		return err
	}
	if hour, ok := StartHour(j, f.Begins); ok {
		if f.Begins.IsZero() {
			j.Warnings = append(j.Warnings, "The forecast tells no time of day: its hour 0 is taken as the start of the work. State "+StartFact+" where it starts at another.")
		}
		if err := j.State(d, StartFact, Written(hour)); err != nil {
			return fmt.Errorf("the forecast begins %s, the job %g hours later: %w", f.Begins.Format(time.RFC3339), hour, err)
		}
	}
	return j.Follow(d)
}

// Written is an hour in a forecast as a job states it.
func Written(hour float64) string { return fmt.Sprintf("%g h", hour) }

// rows writes weather as the rows of a job file.
func rows(w heat.Weather) []any {
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

// StartHour is the hour of a forecast that begins at a time, at which a job starts on its day. Without the day it is the
// first time that the clock shows the job's hour. A forecast that tells no time begins where the work does. ok is false where
// the job has no forecast or tells no time, or tells its start hour.
func StartHour(j *job.Job, begins time.Time) (hour float64, ok bool) {
	if _, told := j.Value(StartFact); told {
		return 0, false
	}
	if begins.IsZero() {
		_, has := j.Value(Fact)
		return 0, has
	}
	clock, hasClock := j.Value("job.start")
	if !hasClock {
		return 0, false
	}
	at := time.Duration(clock.(float64) * float64(time.Hour))
	if date, ok := j.Value("job.date"); ok {
		day, err := time.ParseInLocation(time.DateOnly, date.(string), begins.Location())
		if err != nil {
			return 0, false
		}
		return day.Add(at).Sub(begins).Hours(), true
	}
	midnight := time.Date(begins.Year(), begins.Month(), begins.Day(), 0, 0, 0, 0, begins.Location())
	return math.Mod(midnight.Add(at).Sub(begins).Hours()+24, 24), true
}
