package heat

import "math"

// SaturationPressure of water vapor over water in kPa at a temperature in °C (Tetens; FAO Irrigation and Drainage
// Paper 56, equation 11).
func SaturationPressure(celsius float64) float64 {
	return 0.6108 * math.Exp(17.27*celsius/(celsius+237.3))
}

// DewPoint in °C of air at a temperature in °C and a relative humidity from 0 to 1. Below 1 % it is taken at 1 %.
func DewPoint(celsius, humidity float64) float64 {
	b := math.Log(math.Max(humidity, 0.01))/17.27 + celsius/(237.3+celsius)
	return 237.3 * b / (1 - b)
}

// Humidity, from 0 to 1, of air at a temperature and with a dew point in °C.
func Humidity(celsius, dewPoint float64) float64 {
	return math.Min(1, SaturationPressure(dewPoint)/SaturationPressure(celsius))
}

// WetBulb in °C by R. Stull's fit, Journal of Applied Meteorology and Climatology, 2011: for sea-level pressure,
// -20 to 50 °C and 5 to 99 % relative humidity (given from 0 to 1), within -1 to +0.65 °C.
func WetBulb(celsius, humidity float64) float64 {
	r := 100 * humidity
	return celsius*math.Atan(0.151977*math.Sqrt(r+8.313659)) + math.Atan(celsius+r) - math.Atan(r-1.676331) +
		0.00391838*math.Pow(r, 1.5)*math.Atan(0.023101*r) - 4.686035
}
