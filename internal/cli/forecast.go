package cli

import (
	"fmt"
	"time"

	"hearsay/internal/forecast"
	"hearsay/internal/job"
)

const forecastUse = "take the weather from this `file`: a table (CSV) with named columns, or the hourly\nforecast of the National Weather Service (JSON)"

// stateForecast reads an hourly forecast from a file and states it in a job, in place of one that it states already. It
// gives the time at which the forecast begins, where that is told. No file, no forecast.
func (a *app) stateForecast(d *job.Dictionary, j *job.Job, file string) (begins time.Time, err error) {
	if file == "" {
		return begins, nil
	}
	text, err := a.read(file)
	if err != nil {
		return begins, err
	}
	f, err := forecast.Read(file, text)
	if err == nil {
		j.Drop(forecast.Fact)
		err = f.State(d, j)
	}
	if err != nil {
		return begins, badInput{fmt.Errorf("%s: %w", file, err)}
	}
	return f.Begins, nil
}
