package heat

import "math"

// Stefan is the depth in m to which soil freezes or thaws under a surface index in °C·d by Stefan's formula, which
// neglects the heat that warms and cools the soil and so runs deep: √(2·k·index/L), with the conductivity k (W/m·K)
// of the layer that forms and the latent heat L (J/m³).
func Stefan(conductivity, index, latent float64) float64 {
	return math.Sqrt(2 * conductivity * index * 86400 / latent)
}

// Berggren is the modified Berggren formula of TM 5-852-6 / UFC 3-130-06: Stefan's depth by the mean of the frozen and
// the thawed conductivity, times the coefficient Lambda. index is the freezing index at the surface in °C·d, days the length of
// the freezing season, mean the mean annual temperature in °C. depth is in m.
func Berggren(s Soil, index, days, mean float64) (depth, lambda float64) {
	freezing := index / days // mean surface temperature below freezing through the season, K
	capacity := (s.HeatThawed() + s.HeatFrozen()) / 2
	lambda = Lambda(math.Max(0, mean)/freezing, freezing*capacity/s.LatentHeat())
	return lambda * Stefan((s.Thawed+s.Frozen)/2, index, s.LatentHeat()), lambda
}

// Lambda is the correction coefficient of the modified Berggren formula, from the exact solution of Neumann with equal
// properties frozen and thawed (H. P. Aldrich and H. M. Paynter). thermal is the ratio of the ground's initial temperature
// above freezing to the surface's mean below it, fusion the sensible heat of that cooling over the latent heat; both are
// called alpha and mu in TM 5-852-6.
func Lambda(thermal, fusion float64) float64 {
	if fusion <= 0 {
		return 1
	}
	// e^-b²/erf b - thermal·e^-b²/erfc b = b·√π/fusion falls with b on its left and rises on its right.
	low, high := 1e-9, 10.0
	for range 100 {
		b := (low + high) / 2
		e := math.Exp(-b * b)
		if e/math.Erf(b)-thermal*e/math.Erfc(b) > b*math.Sqrt(math.Pi)/fusion {
			low = b
		} else {
			high = b
		}
	}
	return low * math.Sqrt(2/fusion)
}

// Neumann is the depth in m that soil thaws within so many hours from a surface held at a temperature in °C above
// zero, the frozen soil being at or little below freezing: Stefan's depth with the correction for the heat that warms
// the thawed soil. frozen is how far below freezing the soil begins, K.
func Neumann(s Soil, surface, frozen, hours float64) float64 {
	capacity := (s.HeatThawed() + s.HeatFrozen()) / 2
	lambda := Lambda(frozen/surface, surface*capacity/s.LatentHeat())
	return lambda * Stefan(s.Thawed, surface*hours/24, s.LatentHeat())
}

// ThawHours is how long it takes to thaw a depth in m from a surface held at a temperature in °C, by the solution of
// Neumann.
func ThawHours(s Soil, surface, frozen, depth float64) float64 {
	if depth <= 0 {
		return 0
	}
	if surface <= 0 {
		return math.Inf(1)
	}
	one := Neumann(s, surface, frozen, 1) // the depth grows with the root of the time
	return depth / one * depth / one
}

// ThawHoursThrough is how long it takes to thaw a depth in m where the heat comes from air of a temperature in °C above
// zero through a resistance in m²·K/W (film and cover), by Stefan's heat balance.
func ThawHoursThrough(s Soil, air, resistance, depth float64) float64 {
	if depth <= 0 {
		return 0
	}
	if air <= 0 {
		return math.Inf(1)
	}
	return s.LatentHeat() / air * depth * (resistance + depth/(2*s.Thawed)) / 3600
}
