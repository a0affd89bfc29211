package cli

import (
	"fmt"

	"hearsay/internal/forecast"
	"hearsay/internal/job"
)

// stateForecast reads an hourly forecast from a file and states it in a job.
func (a *app) stateForecast(d *job.Dictionary, j *job.Job, file string) error {
	text, err := a.read(file)
	if err != nil {
		return err
	}
	f, err := forecast.Read(file, text)
	if err == nil {
		err = f.State(d, j)
	}
	if err != nil {
		return badInput{fmt.Errorf("%s: %w", file, err)}
	}
	return nil
}
