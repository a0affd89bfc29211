package heat

import "math"

// Film is the heat transfer from a surface to moving air in W/m²·K at a wind speed in m/s: the two formulas of ETL
// 1110-2-365, equations, which meet with a step of about 6 % at 10.9 mph.
func Film(wind float64) float64 {
	const btuDayIn2 = 6 * 5.678263 // W/m²·K in a Btu/day·in²·°F
	mph := math.Max(wind, 0) / 0.44704
	if mph > 10.9 {
		return 0.1132 * math.Pow(mph, 0.8) * btuDayIn2
	}
	return (0.165 + 0.0513*mph) * btuDayIn2
}

const (
	stefanBoltzmann = 5.670374e-8 // W/m²·K⁴
	emissivity      = 0.90        // of concrete, soil and covers in the long wave
	absorptance     = 0.65        // of gray concrete and soil in sunlight (ASHRAE Handbook of Fundamentals)
)

// SkyEmissivity is the emissivity of the sky at a dew point in °C and a cloud cover from 0 to 1: the clear sky of
// P. Berdahl and M. Martin, Solar Energy, 1984, closed by cloud as in M. H. Unsworth and J. L. Monteith, Quarterly
// Journal of the Royal Meteorological Society, 1975.
func SkyEmissivity(dewPoint, cloud float64) float64 {
	t := dewPoint / 100
	clear := 0.711 + 0.56*t + 0.73*t*t
	return clear*(1-0.84*cloud) + 0.84*cloud
}

// SkyLoss is what a horizontal surface at air temperature loses to the sky, W/m², never negative.
func SkyLoss(air, dewPoint, cloud float64) float64 {
	k := air + 273.15
	return math.Max(0, emissivity*stefanBoltzmann*k*k*k*k*(1-SkyEmissivity(dewPoint, cloud)))
}

// outside gives, for a face in this weather, the temperature that drives its heat flow (the sol-air temperature of the
// ASHRAE Handbook of Fundamentals: air, plus sun less sky over the film) and the resistance of film and cover.
func (f Face) outside(h Hour) (celsius, resistance float64) {
	switch f.Kind {
	case Held:
		return f.Celsius, f.R
	case Enclosed:
		return f.Celsius, f.R + 1/Film(0)
	}
	film := Film(h.Wind)
	gain := f.Sky * (absorptance*h.Solar - SkyLoss(h.Air, h.DewPoint(), h.Cloud))
	return h.Air + gain/film, f.R + 1/film
}
