package heat

import (
	"encoding/csv"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"hearsay/internal/quantity"
)

// element is a column of weather as tables name it: the unit it is kept in, the range that is possible and where it
// belongs in an Hour.
type element struct {
	name      string
	unit      string
	low, high float64
	given     Column
	set       func(h *Hour, v float64)
	example   string
}

var elements = []element{
	{"air", "C", -75, 60, 0, func(h *Hour, v float64) { h.Air = v }, "28 F"},
	{"humidity", "", 0, 1, HasHumidity, func(h *Hour, v float64) { h.Humidity = v }, "60 %"},
	{"dew point", "C", -95, 40, HasHumidity, nil, "21 F"},
	{"wind", "m/s", 0, 110, HasWind, func(h *Hour, v float64) { h.Wind = v }, "10 mph"},
	{"cloud", "", 0, 1, HasCloud, func(h *Hour, v float64) { h.Cloud = v }, "40 %"},
	{"solar", "W/m2", 0, 1500, HasSolar, func(h *Hour, v float64) { h.Solar = v }, "300 W/m2"},
	{"rain", "mm/h", 0, 400, HasRain, func(h *Hour, v float64) { h.Rain = v }, "0.1 in/h"},
}

// ReadCSV reads weather from a table with a line of column names: hour (after the start) and air, and any of
// humidity, dew point, wind, cloud, solar and rain. A column names its unit in brackets, "air [F]", "wind (mph)", or
// each cell carries its own, "28 F". Empty cells of a column repeat the one above. Of humidity and dew point one is
// enough; where both are given humidity counts.
//
// Errors name the line and the column and say what is expected.
func ReadCSV(r io.Reader) (Weather, error) {
	table := csv.NewReader(r)
	table.Comment, table.TrimLeadingSpace, table.FieldsPerRecord = '#', true, -1
	names, err := table.Read()
	if err != nil {
		return Weather{}, fmt.Errorf("the first line must name the columns, for example: hour, air [F], wind [mph], humidity [%%]: %w", err)
	}
	t := csvTable{weather: Weather{}, hour: -1}
	if err := t.head(names); err != nil {
		return Weather{}, err
	}
	for {
		row, err := table.Read()
		if err == io.EOF {
			break
		}
		if err != nil {
			return Weather{}, err
		}
		line, _ := table.FieldPos(0)
		if err := t.row(row, line); err != nil {
			return Weather{}, err
		}
	}
	if len(t.weather.Hours) == 0 {
		return Weather{}, fmt.Errorf("the table has column names but no hours below them")
	}
	return t.weather, nil
}

type csvTable struct {
	weather Weather
	hour    int // the column that holds it
	columns []*element
	units   []string // of each column, "" where cells carry their own
	last    []float64
	dew     bool // humidity comes from the dew point
}

func (t *csvTable) head(names []string) error {
	seen := map[string]bool{}
	for i, written := range names {
		name, unit := splitUnit(strings.TrimPrefix(written, "\ufeff"))
		var found *element
		for j := range elements {
			if e := &elements[j]; e.name == name || e.name == "air" && name == "temperature" {
				found = e
			}
		}
		switch {
		case name == "hour":
			t.hour = i
		case found == nil:
			return fmt.Errorf("line 1: no column is called %q: write hour, air, humidity, dew point, wind, cloud, solar or rain", written)
		case seen[found.name]:
			return fmt.Errorf("line 1: two columns are called %s", found.name)
		case unit != "":
			if _, err := (quantity.Quantity{Value: 1, Unit: unit}).In(found.unit); err != nil {
				return fmt.Errorf("line 1: column %s: %w", found.name, err)
			}
		}
		if found != nil {
			seen[found.name] = true
			t.weather.Given |= found.given
		}
		t.columns, t.units = append(t.columns, found), append(t.units, unit)
	}
	if t.hour < 0 || !seen["air"] {
		return fmt.Errorf("line 1: a column hour and a column air are needed")
	}
	t.last = make([]float64, len(names))
	t.dew = seen["dew point"] && !seen["humidity"]
	return nil
}

// splitUnit takes "Air [F]" or "air (F)" apart.
func splitUnit(written string) (name, unit string) {
	name = strings.ToLower(strings.TrimSpace(written))
	if at := strings.IndexAny(name, "[("); at >= 0 {
		whole := strings.TrimSpace(written)
		unit = strings.TrimSpace(strings.TrimRight(whole[strings.IndexAny(whole, "[(")+1:], "])"))
		name = strings.TrimSpace(name[:at])
	}
	return strings.ReplaceAll(name, "_", " "), unit
}

func (t *csvTable) row(row []string, line int) error {
	if len(row) != len(t.columns) {
		return fmt.Errorf("line %d has %d cells, but there are %d columns", line, len(row), len(t.columns))
	}
	var h Hour
	hour, err := strconv.ParseFloat(strings.TrimSpace(row[t.hour]), 64)
	if err != nil || math.IsNaN(hour) || math.IsInf(hour, 0) {
		return fmt.Errorf("line %d, hour: %q is no number of hours after the start: write 0, 1, 2", line, row[t.hour])
	}
	h.Hour = hour
	if n := len(t.weather.Hours); n > 0 && hour <= t.weather.Hours[n-1].Hour {
		return fmt.Errorf("line %d, hour: %g does not come after %g: put the lines in order", line, hour, t.weather.Hours[n-1].Hour)
	}
	dew := 0.0
	for i, e := range t.columns {
		if e == nil {
			continue
		}
		v, err := t.cell(e, i, strings.TrimSpace(row[i]))
		if err != nil {
			return fmt.Errorf("line %d, %s: %w", line, e.name, err)
		}
		t.last[i] = v
		if e.set == nil {
			dew = v
		} else {
			e.set(&h, v)
		}
	}
	if t.dew {
		h.Humidity = Humidity(h.Air, dew)
	}
	t.weather.Hours = append(t.weather.Hours, h)
	return nil
}

func (t *csvTable) cell(e *element, i int, text string) (float64, error) {
	if text == "" {
		if len(t.weather.Hours) == 0 {
			return 0, fmt.Errorf("the first line of hours has no value: write one such as %q", e.example)
		}
		return t.last[i], nil
	}
	if t.units[i] != "" {
		if _, err := strconv.ParseFloat(text, 64); err == nil {
			text += " " + t.units[i]
		}
	}
	q, err := quantity.ParseAs(text, e.unit)
	if err != nil {
		return 0, err
	}
	return q.Value, e.possible(q.Value, text)
}

func (e *element) possible(v float64, text string) error {
	if v < e.low || v > e.high {
		low, high := quantity.Quantity{Value: e.low, Unit: e.unit}, quantity.Quantity{Value: e.high, Unit: e.unit}
		return fmt.Errorf("%s is not possible: it lies between %s and %s", text, low.Print(quantity.US), high.Print(quantity.US))
	}
	return nil
}
