package heat

import "math"

// Gain is how concrete gains strength.
type Gain struct {
	Early    Early
	Set      float64 // final set at 20 °C, h; 0: eight hours
	Speed    float64 // how many times as fast an admixture makes the early reactions; 0: 1
	Freezing float64 // °C at which hydration stops
}

// Method is one published pair of a strength curve and the rate by which temperature ages concrete.
type Method struct {
	Name  string
	Rate  Rate
	Curve func(hours float64) float64 // strength over 28-day strength at an age in hours at 20 °C
}

// Methods gives the pairs every answer is computed by, quickest last at ordinary temperatures: Carino's hyperbola with
// the activation energy of Freiesleben Hansen and Pedersen, ACI 209 with that of ASTM C1074, and EN 1992 with its own
// rate. The first starts at final set; the others have no such start and would run ahead of concrete in its first hours,
// so they count from final set on only.
func (g Gain) Methods() []Method {
	g = g.filled()
	carino := CarinoThrough(g.Set, g.Early)
	quick := func(curve func(float64) float64) func(float64) float64 {
		return func(hours float64) float64 {
			if hours *= g.Speed; hours < g.Set {
				return 0
			}
			return curve(hours)
		}
	}
	return []Method{
		{"Carino's hyperbola, Freiesleben Hansen and Pedersen", FreieslebenHansen, quick(carino.At)},
		{"ACI 209, ASTM C1074", Arrhenius(41500), quick(func(h float64) float64 { return ACI209(h, g.Early) })},
		{"EN 1992-1-1", EurocodeRate, quick(func(h float64) float64 { return Eurocode(h, g.Early) })},
	}
}

func (g Gain) filled() Gain {
	if g.Set == 0 {
		g.Set = 8
	}
	if g.Speed == 0 {
		g.Speed = 1
	}
	return g
}

// Range is a best value between a low and a high one.
type Range struct{ Low, Best, High float64 }

func rangeOf(values []float64) Range {
	r := Range{Low: math.Inf(1), Best: values[len(values)/2], High: math.Inf(-1)}
	for _, v := range values {
		r.Low, r.High = math.Min(r.Low, v), math.Max(r.High, v)
	}
	return r
}

// Share is strength over 28-day strength at the end of a record of hours and temperatures, by each method; Best is that
// of ACI 209.
func (g Gain) Share(hours, celsius []float64) Range {
	var shares []float64
	for _, m := range g.Methods() {
		age := Age(hours, celsius, m.Rate, g.Freezing)
		shares = append(shares, m.Curve(age[len(age)-1]))
	}
	return rangeOf(shares)
}

// HoursTo is when a share of the 28-day strength is reached. The temperature of the last entry of the record goes on
// after it. High is +Inf where it is never reached.
func (g Gain) HoursTo(share float64, hours, celsius []float64) Range {
	var when []float64
	for _, m := range g.Methods() {
		when = append(when, m.hoursTo(share, hours, celsius, g.Freezing))
	}
	return rangeOf(when)
}

// hoursTo follows the age along the record until its curve gives the share.
func (m Method) hoursTo(share float64, hours, celsius []float64, freezing float64) float64 {
	need := m.ageAt(share)
	age := 0.0
	for i := 1; i < len(hours); i++ {
		dt := hours[i] - hours[i-1]
		rate := meanRate(celsius[i-1], celsius[i], m.Rate, freezing)
		if age+rate*dt >= need {
			return hours[i-1] + (need-age)/rate
		}
		age += rate * dt
	}
	last := celsius[len(celsius)-1]
	if last <= freezing {
		return math.Inf(1)
	}
	return hours[len(hours)-1] + (need-age)/m.Rate(last)
}

// ageAt is the age in hours at 20 °C at which the curve gives a share, +Inf where it never does.
func (m Method) ageAt(share float64) float64 {
	low, high := 0.0, 1.0
	for m.Curve(high) < share {
		if high *= 2; high > 1e6 {
			return math.Inf(1)
		}
	}
	for range 60 {
		if mid := (low + high) / 2; m.Curve(mid) < share {
			low = mid
		} else {
			high = mid
		}
	}
	return high
}
