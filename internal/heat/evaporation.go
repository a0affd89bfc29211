package heat

import "math"

// Menzel is the evaporation of bleed water in kg/m²/h after C. A. Menzel, 1954 (the ACI 305R nomograph): concrete
// and air temperature in °C, relative humidity from 0 to 1, wind in m/s half a meter above the surface. It is negative
// where dew forms. Measured rates lie within some 40 % of it (K. C. Hover, ACI SP-338, 2020).
func Menzel(concrete, air, humidity, wind float64) float64 {
	const psi = 6.894757   // kPa
	const lbft2 = 4.882428 // kg/m²
	e0, ea := SaturationPressure(concrete)/psi, humidity*SaturationPressure(air)/psi
	return 0.44 * (e0 - ea) * (0.253 + 0.096*wind/0.44704) * lbft2
}

// Uno is the same by the single formula of P. J. Uno, ACI Materials Journal 95-M34, 1998, as printed in US units. It
// runs up to 24 % above Menzel for warm concrete in cold air, and holds above 0 °F (-18 °C).
func Uno(concrete, air, humidity, wind float64) float64 {
	const lbft2 = 4.882428
	tc, ta := math.Max(0, 32+1.8*concrete), math.Max(0, 32+1.8*air)
	return (math.Pow(tc, 2.5) - humidity*math.Pow(ta, 2.5)) * (1 + 0.4*wind/0.44704) * 1e-6 * lbft2
}
