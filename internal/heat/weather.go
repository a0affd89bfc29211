package heat

import (
	"math"
	"sort"
)

// Hour is the weather at one moment.
type Hour struct {
	Hour     float64 // after the start
	Air      float64 // °C
	Humidity float64 // relative, 0 to 1
	Wind     float64 // m/s
	Cloud    float64 // share of the sky covered, 0 to 1
	Solar    float64 // sun on a horizontal surface, W/m²
	Rain     float64 // mm/h
}

// DewPoint in °C.
func (h Hour) DewPoint() float64 { return DewPoint(h.Air, h.Humidity) }

// Column is one element of the weather beside the air temperature.
type Column uint8

// The columns, to be joined with |.
const (
	HasHumidity Column = 1 << iota
	HasWind
	HasCloud
	HasSolar
	HasRain
)

// Weather is the weather through time, in order of the hours. What was not given holds a stand-in (see Fill), and
// Given tells what was.
type Weather struct {
	Hours []Hour
	Given Column
}

// Has tells whether all of these columns were given.
func (w Weather) Has(c Column) bool { return w.Given&c == c }

// Length is the number of hours from the start to the last hour.
func (w Weather) Length() float64 {
	if len(w.Hours) == 0 {
		return 0
	}
	return w.Hours[len(w.Hours)-1].Hour
}

// At gives the weather at an hour, straight between the hours that enclose it. Before the first hour it is that of the
// first; after the last, the last day repeats itself, or with less than a day the last hour goes on.
func (w Weather) At(hour float64) Hour {
	n := len(w.Hours)
	if n == 0 {
		return Hour{Hour: hour}
	}
	at := hour
	if last := w.Hours[n-1].Hour; at > last && last-w.Hours[0].Hour >= 24 {
		at = last - 24 + math.Mod(at-last, 24)
	}
	i := sort.Search(n, func(i int) bool { return w.Hours[i].Hour >= at })
	switch {
	case i == 0:
		h := w.Hours[0]
		h.Hour = hour
		return h
	case i == n:
		h := w.Hours[n-1]
		h.Hour = hour
		return h
	}
	a, b := w.Hours[i-1], w.Hours[i]
	f := (at - a.Hour) / (b.Hour - a.Hour)
	mix := func(x, y float64) float64 { return x + f*(y-x) }
	return Hour{Hour: hour, Air: mix(a.Air, b.Air), Humidity: mix(a.Humidity, b.Humidity), Wind: mix(a.Wind, b.Wind),
		Cloud: mix(a.Cloud, b.Cloud), Solar: mix(a.Solar, b.Solar), Rain: mix(a.Rain, b.Rain)}
}

// From gives the same weather with the start moved to a later hour of it.
func (w Weather) From(hour float64) Weather {
	moved := Weather{Given: w.Given, Hours: []Hour{w.At(hour)}}
	moved.Hours[0].Hour = 0
	for _, h := range w.Hours {
		if h.Hour > hour {
			h.Hour -= hour
			moved.Hours = append(moved.Hours, h)
		}
	}
	return moved
}

// Fill puts a stand-in into every column that was not given: those of h. Given is not changed by it.
func (w Weather) Fill(h Hour) Weather {
	filled := Weather{Given: w.Given, Hours: make([]Hour, len(w.Hours))}
	for i, one := range w.Hours {
		for _, c := range []struct {
			column Column
			to     *float64
			value  float64
		}{{HasHumidity, &one.Humidity, h.Humidity}, {HasWind, &one.Wind, h.Wind}, {HasCloud, &one.Cloud, h.Cloud},
			{HasSolar, &one.Solar, h.Solar}, {HasRain, &one.Rain, h.Rain}} {
			if !w.Has(c.column) {
				*c.to = c.value
			}
		}
		filled.Hours[i] = one
	}
	return filled
}
