package heat

import "math"

// Rate is the speed at which concrete gains strength at a temperature in °C, 1 at 20 °C.
type Rate func(celsius float64) float64

// Arrhenius gives the rate of an apparent activation energy in J/mol (ASTM C1074, equation 2; 41,500 is its usual
// value for Type I cement without admixtures).
func Arrhenius(activation float64) Rate {
	return func(celsius float64) float64 {
		return math.Exp(-activation / gasConstant * (1/(celsius+273.15) - 1/293.15))
	}
}

// FreieslebenHansen is the rate with the activation energy of P. Freiesleben Hansen and E. J. Pedersen, 1977:
// 33,500 J/mol, and 1,470 more for each degree below 20 °C.
func FreieslebenHansen(celsius float64) float64 {
	activation := 33500.0
	if celsius < 20 {
		activation += 1470 * (20 - celsius)
	}
	return Arrhenius(activation)(celsius)
}

// EurocodeRate is the rate of the temperature-adjusted age of EN 1992-1-1, equation B.10, for 0 to 80 °C.
func EurocodeRate(celsius float64) float64 { return math.Exp(13.65 - 4000/(273+celsius)) }

// Age is the equivalent age in hours at 20 °C after each entry of a record of hours and temperatures, which run
// straight between them. Concrete at or below the temperature freezing does not age.
func Age(hours, celsius []float64, rate Rate, freezing float64) []float64 {
	age := make([]float64, len(hours))
	for i := 1; i < len(hours); i++ {
		age[i] = age[i-1] + (hours[i]-hours[i-1])*meanRate(celsius[i-1], celsius[i], rate, freezing)
	}
	return age
}

// meanRate is the mean rate while the temperature runs straight from a to b (Simpson's rule, in two halves).
func meanRate(a, b float64, rate Rate, freezing float64) float64 {
	sum := 0.0
	for i, weight := range [5]float64{1, 4, 2, 4, 1} {
		if t := a + (b-a)*float64(i)/4; t > freezing {
			sum += weight * rate(t)
		}
	}
	return sum / 12
}

// NurseSaul is the maturity in °C·h over a record of hours and temperatures, which run straight between its entries,
// above a datum temperature in °C (ASTM C1074, equation 1). What lies below the datum counts as nothing.
func NurseSaul(hours, celsius []float64, datum float64) float64 {
	sum := 0.0
	for i := 1; i < len(hours); i++ {
		a, b, dt := celsius[i-1]-datum, celsius[i]-datum, hours[i]-hours[i-1]
		switch {
		case a >= 0 && b >= 0:
			sum += dt * (a + b) / 2
		case a > 0:
			sum += dt * a / 2 * a / (a - b)
		case b > 0:
			sum += dt * b / 2 * b / (b - a)
		}
	}
	return sum
}

// Plowman is the strength at a maturity in °C·h above -11 °C over that at 19,800 °C·h (28 days near 18 °C), for a
// final strength in MPa: J. M. Plowman, Magazine of Concrete Research, 1956, with his constants for four classes of
// strength.
func Plowman(maturity, final float64) float64 {
	a, b := 42.0, 46.5
	switch {
	case final < 17.5:
		a, b = 10, 68
	case final < 35:
		a, b = 21, 61
	case final < 52.5:
		a, b = 32, 54
	}
	return math.Max(0, a+b*math.Log10(maturity/1000)) / 100
}
