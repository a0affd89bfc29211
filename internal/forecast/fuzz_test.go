package forecast

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"hearsay/internal/job"
	"hearsay/rules"
)

const nws = `{"properties": {"periods": [
  {"startTime": "2026-01-15T07:00:00-06:00", "temperature": 22, "temperatureUnit": "F", "relativeHumidity": {"value": 60}, "windSpeed": "5 to 10 mph", "windDirection": "NW", "probabilityOfPrecipitation": {"value": 20}},
  {"startTime": "2026-01-15T08:00:00-06:00", "temperature": -3, "temperatureUnit": "C", "relativeHumidity": {"value": null}, "windSpeed": "10 mph"}]}}`

// FuzzRead: whatever file is given as a forecast, it is refused, or its rows are numbers that a job can state or refuse.
func FuzzRead(f *testing.F) {
	d, err := job.LoadDictionary(rules.Files)
	if err != nil {
		f.Fatal(err)
	}
	files, err := filepath.Glob("../../testdata/weather/*")
	if err != nil {
		f.Fatal(err)
	}
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(filepath.Base(file), text)
	}
	f.Add("nws.json", []byte(nws))
	f.Add("x.csv", []byte("time,air (C),wind (km/h)\n2026-01-15T07:00,-5,12\n2026-01-15T08:00,-6,13\n"))
	f.Fuzz(func(t *testing.T, name string, text []byte) {
		read, err := Read(name, text)
		if err != nil {
			if len(err.Error()) > 4000 {
				t.Errorf("the error is as long as the file: %d bytes", len(err.Error()))
			}
			return
		}
		if len(read.Rows) == 0 {
			t.Error("nothing is read, and nothing is said")
		}
		j := job.New()
		if j.State(d, "weather.forecast", read.Rows) != nil {
			return
		}
		v, _ := j.Value("weather.forecast")
		rows, ok := v.([]map[string]float64)
		if !ok {
			t.Fatalf("%T", v)
		}
		for _, row := range rows {
			for column, x := range row {
				if math.IsNaN(x) || math.IsInf(x, 0) {
					t.Errorf("%s is %v: %s", column, x, strings.ToValidUTF8(string(text), "?"))
				}
			}
		}
	})
}
