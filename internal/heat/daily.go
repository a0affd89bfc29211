package heat

import "math"

// The hours of the day at which the air is taken to be coldest and warmest.
const (
	coldestHour = 6.0
	warmestHour = 15.0
)

// Steady is weather that does not change.
func Steady(h Hour, given Column) Weather {
	h.Hour = 0
	return Weather{Hours: []Hour{h}, Given: given}
}

// Daily makes an hourly course of so many hours from a daily low and high in °C, with the other columns of h constant
// (its humidity is that at the mean temperature, from which the dew point is held through the day). start is the hour of the day at which
// it begins, 0 to 24.
//
// The course is an assumption, not a forecast: a half cosine up from the low at 6:00 to the high at 15:00 and one down
// again to the next low, which is the usual shape of a clear day near the equinox. Every day is the same.
func Daily(low, high float64, h Hour, start, hours float64, given Column) Weather {
	dew := DewPoint((low+high)/2, h.Humidity)
	n := int(math.Ceil(hours)) + 1
	w := Weather{Given: given, Hours: make([]Hour, n)}
	for i := range w.Hours {
		one := h
		one.Hour = float64(i)
		one.Air = low + (high-low)*dayShape(start+float64(i))
		one.Humidity = Humidity(one.Air, dew)
		w.Hours[i] = one
	}
	return w
}

// dayShape runs from 0 at the coldest hour to 1 at the warmest.
func dayShape(clock float64) float64 {
	t := math.Mod(clock-coldestHour+48, 24)
	const rise = warmestHour - coldestHour
	if t <= rise {
		return (1 - math.Cos(math.Pi*t/rise)) / 2
	}
	return (1 + math.Cos(math.Pi*(t-rise)/(24-rise))) / 2
}
