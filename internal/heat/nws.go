package heat

import (
	"encoding/json"
	"fmt"
	"strconv"
	"strings"
	"time"

	"hearsay/internal/quantity"
)

type nwsForecast struct {
	Properties struct {
		Periods []nwsPeriod `json:"periods"`
	} `json:"properties"`
}

type nwsPeriod struct {
	StartTime       string    `json:"startTime"`
	Temperature     *nwsValue `json:"temperature"`
	TemperatureUnit string    `json:"temperatureUnit"`
	WindSpeed       *nwsValue `json:"windSpeed"`
	Humidity        *nwsValue `json:"relativeHumidity"`
	DewPoint        *nwsValue `json:"dewpoint"`
	ShortForecast   string    `json:"shortForecast"`
}

// nwsValue is a number, a text such as "10 mph" or an object {unitCode, value}; the service writes all three.
type nwsValue struct {
	Number *float64
	Text   string
	Unit   string
}

func (v *nwsValue) UnmarshalJSON(text []byte) error {
	var number float64
	if json.Unmarshal(text, &number) == nil {
		v.Number = &number
		return nil
	}
	if json.Unmarshal(text, &v.Text) == nil {
		return nil
	}
	var object struct {
		Unit  string   `json:"unitCode"`
		Value *float64 `json:"value"`
	}
	if err := json.Unmarshal(text, &object); err != nil {
		return fmt.Errorf("%s is neither a number nor a text nor {unitCode, value}", text)
	}
	v.Number, v.Unit = object.Value, strings.TrimPrefix(object.Unit, "wmoUnit:")
	return nil
}

// nwsUnits are the unit codes of the service in the spelling of the quantity package.
var nwsUnits = map[string]string{"degC": "C", "degF": "F", "km_h-1": "km/h", "m_s-1": "m/s", "percent": "%", "F": "F", "C": "C", "": ""}

// ReadNWS reads the hourly forecast of the United States National Weather Service (GeoJSON with properties.periods),
// from its bytes. It gives the weather, its hours counted from the first period, and the time of that period. Cloud is
// read out of the short forecast by the service's own terms.
//
// Errors name the period and the field and say what is expected.
func ReadNWS(text []byte) (Weather, time.Time, error) {
	var f nwsForecast
	if err := json.Unmarshal(text, &f); err != nil {
		return Weather{}, time.Time{}, fmt.Errorf("this is no forecast in the JSON of the National Weather Service: %w", err)
	}
	periods := f.Properties.Periods
	if len(periods) == 0 {
		return Weather{}, time.Time{}, fmt.Errorf("properties.periods is empty or missing: give the hourly forecast (forecastHourly), not the summary of the point")
	}
	var start time.Time
	w := Weather{Given: HasHumidity | HasWind | HasCloud}
	for i, p := range periods {
		at, err := time.Parse(time.RFC3339, p.StartTime)
		if err != nil {
			return Weather{}, start, fmt.Errorf("period %d, startTime: %q is no time such as 2026-01-15T07:00:00-06:00", i+1, p.StartTime)
		}
		if i == 0 {
			start = at
		}
		h := Hour{Hour: at.Sub(start).Hours()}
		if i > 0 && h.Hour <= w.Hours[i-1].Hour {
			return Weather{}, start, fmt.Errorf("period %d does not start after period %d", i+1, i)
		}
		field, err := p.read(&h, &w.Given)
		if err != nil {
			return Weather{}, start, fmt.Errorf("period %d, %s: %w", i+1, field, err)
		}
		w.Hours = append(w.Hours, h)
	}
	return w, start, nil
}

// read fills h and takes out of given what the period lacks. It gives the name of the field an error is about.
func (p *nwsPeriod) read(h *Hour, given *Column) (field string, err error) {
	if h.Air, err = p.Temperature.in("C", p.TemperatureUnit, &elements[0]); err != nil {
		return "temperature", err
	}
	if p.WindSpeed == nil {
		*given &^= HasWind
	} else if h.Wind, err = p.WindSpeed.in("m/s", "mph", &elements[3]); err != nil {
		return "windSpeed", err
	}
	switch {
	case p.Humidity != nil && p.Humidity.Number != nil:
		if h.Humidity, err = p.Humidity.in("", "percent", &elements[1]); err != nil {
			return "relativeHumidity", err
		}
	case p.DewPoint != nil && p.DewPoint.Number != nil:
		dew, err := p.DewPoint.in("C", "degC", &elements[2])
		if err != nil {
			return "dewpoint", err
		}
		h.Humidity = Humidity(h.Air, dew)
	default:
		*given &^= HasHumidity
	}
	cloud, ok := cloudIn(p.ShortForecast)
	if !ok {
		*given &^= HasCloud
	}
	h.Cloud = cloud
	return "", nil
}

// in gives the value in a unit. A range such as "5 to 10 mph" counts with its upper end.
func (v *nwsValue) in(unit, otherwise string, e *element) (float64, error) {
	if v == nil || v.Number == nil && v.Text == "" {
		return 0, fmt.Errorf("is missing: write it as %s", e.example)
	}
	text := v.Text
	if v.Number != nil {
		code := v.Unit
		if code == "" {
			code = otherwise
		}
		name, ok := nwsUnits[code]
		if !ok {
			name = code
		}
		text = strconv.FormatFloat(*v.Number, 'g', -1, 64) + " " + name
	} else if _, after, ok := strings.Cut(text, " to "); ok {
		text = after
	}
	q, err := quantity.ParseAs(text, unit)
	if err != nil {
		return 0, err
	}
	return q.Value, e.possible(q.Value, text)
}

// cloudIn reads the cover of the sky out of a short forecast: the terms of the service stand for eighths of the sky, and
// whatever falls falls out of cloud. ok is false where it says nothing of the sky.
func cloudIn(forecast string) (cloud float64, ok bool) {
	text := strings.ToLower(forecast)
	for _, term := range []struct {
		words string
		cloud float64
	}{
		{"mostly cloudy", 6. / 8}, {"partly sunny", 4. / 8}, {"partly cloudy", 4. / 8}, {"mostly sunny", 2. / 8}, {"mostly clear", 2. / 8},
		{"sunny", 0}, {"clear", 0}, {"cloud", 1}, {"overcast", 1}, {"rain", 1}, {"snow", 1}, {"shower", 1}, {"storm", 1},
		{"drizzle", 1}, {"sleet", 1}, {"ice", 1}, {"fog", 1}, {"flurr", 1}, {"freezing", 1},
	} {
		if strings.Contains(text, term.words) {
			return term.cloud, true
		}
	}
	return 0, false
}
