package heat

import "math"

// Spot is a place in the section with its temperature through time.
type Spot struct {
	Name    string // top, middle, bottom or edge
	Celsius []float64
}

// Spots lists the places that a history follows.
func (h *History) Spots() []Spot {
	all := []Spot{{"top", h.Top}, {"middle", h.Middle}, {"bottom", h.Bottom}, {"edge", h.Edge}}
	var there []Spot
	for _, s := range all {
		if len(s.Celsius) > 0 {
			there = append(there, s)
		}
	}
	return there
}

// Freeze is whether, when and where concrete freezes first.
type Freeze struct {
	Freezes  bool
	Hour     float64 // when it first reaches the freezing point; +Inf when it does not
	Where    string
	Lowest   float64 // the lowest temperature of all, °C
	LowestAt float64 // the hour of it
	Coldest  string  // the place of it
}

// Freeze finds when a history first reaches a temperature in °C going down.
func (h *History) Freeze(celsius float64) Freeze {
	f := Freeze{Hour: math.Inf(1), Lowest: math.Inf(1)}
	for _, s := range h.Spots() {
		if hour := crossing(h.Hours, s.Celsius, celsius); hour < f.Hour {
			f.Freezes, f.Hour, f.Where = true, hour, s.Name
		}
		for i, t := range s.Celsius {
			if t < f.Lowest {
				f.Lowest, f.LowestAt, f.Coldest = t, h.Hours[i], s.Name
			}
		}
	}
	return f
}

// crossing is the hour at which a record first comes down to a temperature, +Inf where it never does.
func crossing(hours, celsius []float64, to float64) float64 {
	for i, t := range celsius {
		if t > to {
			continue
		}
		if i == 0 {
			return hours[0]
		}
		before := celsius[i-1]
		return hours[i-1] + (hours[i]-hours[i-1])*(before-to)/(before-t)
	}
	return math.Inf(1)
}

// At is the temperature of a record at an hour, straight between its entries.
func At(hours, celsius []float64, hour float64) float64 {
	for i := 1; i < len(hours); i++ {
		if hours[i] >= hour {
			f := math.Max(0, (hour-hours[i-1])/(hours[i]-hours[i-1]))
			return celsius[i-1] + f*(celsius[i]-celsius[i-1])
		}
	}
	return celsius[len(celsius)-1]
}

// HoursTo is when the slowest spot reaches a share of the 28-day strength.
func (h *History) HoursTo(share float64, gain Gain) Range {
	slowest := Range{}
	for _, s := range h.Spots() {
		r := gain.HoursTo(share, h.Hours, s.Celsius)
		slowest.Low, slowest.Best, slowest.High = math.Max(slowest.Low, r.Low), math.Max(slowest.Best, r.Best), math.Max(slowest.High, r.High)
	}
	return slowest
}

// Drop is how far the coldest face falls below what it was at an hour, within so many hours after it, in K.
func (h *History) Drop(hour, within float64) float64 {
	drop := 0.0
	for _, s := range h.Spots() {
		if s.Name == "middle" {
			continue
		}
		at := At(h.Hours, s.Celsius, hour)
		for i, t := range s.Celsius {
			if h.Hours[i] >= hour && h.Hours[i] <= hour+within+1e-9 {
				drop = math.Max(drop, at-t)
			}
		}
	}
	return drop
}
